// Who does not use a mouse, and who does not see the window, reach all of it: whatever takes the focus has a name in the language spoken and
// shows that it has the focus, Tab comes to every key, and the map tells what is picked.
#include <QAbstractButton>
#include <QAccessible>
#include <QButtonGroup>
#include <QComboBox>
#include <QLineEdit>
#include <QPointer>
#include <QRegularExpression>
#include <cstdio>
#include <set>

#include "app/window/map_speech.h"
#include "app/words/language.h"
#include "tests/app/window/every_scene.h"

namespace plugside {
namespace {

QString told_of(QWidget& widget, QAccessible::Text text) {
    QAccessibleInterface* interface = QAccessible::queryAccessibleInterface(&widget);
    return interface != nullptr ? interface->text(text) : QString();
}

bool takes_focus(const QWidget& widget) {
    return widget.isVisible() && widget.isEnabled() && (widget.focusPolicy() & Qt::TabFocus) != 0;
}

std::string told(const QWidget& widget, const std::string& scene) {
    return scene + ": " + widget.metaObject()->className() + " \"" + widget.accessibleName().toStdString() + "\"";
}

class Reach : public OnScreen {
protected:
    ~Reach() override {
        speak(Language::english);
        speak_with(nullptr);
        QLocale::setDefault(QLocale::system());
    }
    // Each focusable widget of each scene, once in each language.
    void hear_everything(Language language) {
        speak(language);
        MainWindow window;
        window.resize(1280, 800);
        EveryScene scenes(window);
        ASSERT_TRUE(scenes.open());
        std::set<std::string> nameless;
        long widgets = 0;
        scenes.walk_through([&](QWidget& shown, const std::string& scene) {
            static const QRegularExpression word(QStringLiteral("\\p{L}{2}"));
            for (QWidget* widget : shown.findChildren<QWidget*>()) {
                // what hands the focus on, such as the line in a spin box, is never come to
                if (!takes_focus(*widget) || widget->window() != &shown || widget->focusProxy() != nullptr) continue;
                ++widgets;
                // a choice is told by what is chosen; what it is a choice of goes with it
                const QString name = qobject_cast<QComboBox*>(widget) != nullptr ? widget->accessibleName()
                                                                                 : told_of(*widget, QAccessible::Name);
                if (!name.contains(word)) nameless.insert(told(*widget, scene));
            }
        });
        for (const std::string& name : nameless) ADD_FAILURE() << name << " has no name to be read out";
        EXPECT_GT(widgets, 300);
        std::printf("%ld focusable widgets heard\n", widgets);
    }
};

TEST_F(Reach, WhateverTakesTheFocusHasANameInEnglish) { hear_everything(Language::english); }

TEST_F(Reach, WhateverTakesTheFocusHasANameInSpanish) { hear_everything(Language::spanish); }

TEST_F(Reach, WhateverTakesTheFocusShowsIt) {
    MainWindow window;
    window.resize(1280, 800);
    EveryScene scenes(window);
    ASSERT_TRUE(scenes.open());
    std::set<std::string> unseen;
    long widgets = 0;
    scenes.walk_through([&](QWidget& shown, const std::string& scene) {
        const QPointer<QWidget> before = QApplication::focusWidget();
        for (QWidget* widget : shown.findChildren<QWidget*>()) {
            if (!takes_focus(*widget) || widget->window() != &shown || widget->focusProxy() != nullptr) continue;
            if (widget->size().isEmpty()) continue;
            ++widgets;
            widget->clearFocus();
            const QImage without = widget->grab().toImage();
            widget->setFocus(Qt::TabFocusReason);
            if (!widget->hasFocus()) {
                unseen.insert(told(*widget, scene) + " does not take the focus");
                continue;
            }
            if (qobject_cast<QLineEdit*>(widget) == nullptr && widget->grab().toImage() == without)
                unseen.insert(told(*widget, scene) + " looks the same with the focus");
        }
        if (before) before->setFocus(Qt::OtherFocusReason);
    });
    for (const std::string& name : unseen) ADD_FAILURE() << name;
    EXPECT_GT(widgets, 300);
}

TEST_F(Reach, TabComesToEveryKeyOfEachStep) {
    MainWindow window;
    window.resize(1280, 800);
    EveryScene scenes(window);
    ASSERT_TRUE(scenes.open());
    for (const Qt::Key step : {Qt::Key_1, Qt::Key_2, Qt::Key_3, Qt::Key_4, Qt::Key_5}) {
        scenes.go_to(step);
        std::set<QWidget*> wanted;
        for (QAbstractButton* button : window.findChildren<QAbstractButton*>())
            if (takes_focus(*button) && button->window() == &window) wanted.insert(button);
        ASSERT_GT(wanted.size(), 12U);
        window.map().setFocus();
        for (int tab = 0; tab < 200 && !wanted.empty(); ++tab) {
            QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab);
            wanted.erase(QApplication::focusWidget());
        }
        for (QWidget* left : wanted) {
            const auto* button = qobject_cast<QAbstractButton*>(left);
            // of keys that exclude each other the arrows choose
            if (button->autoExclusive() || (button->group() != nullptr && button->group()->exclusive())) continue;
            ADD_FAILURE() << "Tab does not come to " << told(*left, "step") << button->text().toStdString();
        }
    }
}

TEST_F(Reach, TheMapTellsTheMarkTheAnimalAndTheSetThatArePicked) {
    MainWindow window;
    EveryScene scenes(window);
    ASSERT_TRUE(scenes.open());
    // not through QAccessible's handler: Qt calls it where a screen reader runs alone, and a test without a desktop has none
    const auto* speech = window.map().findChild<MapSpeech*>();
    ASSERT_NE(speech, nullptr);
    QStringList heard;
    QObject::connect(speech, &MapSpeech::value_changed, speech, [&heard](const QString& told) { heard << told; });
    const auto value = [&] { return told_of(window.map(), QAccessible::Value); };
    scenes.press(Qt::Key_3);
    const Survey& survey = window.session().field()->survey;
    EXPECT_TRUE(value().contains(QString::number(survey.mounds.size()))) << value().toStdString();
    heard.clear();
    window.choices().pick_mound(3);
    EXPECT_TRUE(value().contains(QString::fromStdString(survey.mounds[3].name))) << value().toStdString();
    ASSERT_FALSE(heard.isEmpty());
    EXPECT_EQ(heard.back(), value());
    window.choices().pick_mound(std::nullopt);
    window.choices().pick_system(0);
    EXPECT_TRUE(value().contains(QStringLiteral("animal A"))) << value().toStdString();
    scenes.press(Qt::Key_5);
    EXPECT_TRUE(value().contains(QStringLiteral("set "))) << value().toStdString();
    EXPECT_TRUE(value().contains(QStringLiteral("undecided"))) << value().toStdString();
    const QString before = value();
    scenes.press(Qt::Key_K);
    EXPECT_NE(value(), before);
    EXPECT_EQ(heard.back(), value());
}

}  // namespace
}  // namespace plugside
