// How many acts a person needs: from decided sets to printed cards, by mouse and by keys alone; and to see why a fumigant is stopped. Each
// click and each key press counts as one act.
#include <QAbstractButton>
#include <QFile>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <algorithm>

#include "app/stages/caution_view.h"
#include "app/window/main_window.h"
#include "core/sets/cautions.h"
#include "tests/app/application.h"

namespace plugside {
namespace {

class ActsToCards : public OnScreen {
protected:
    static constexpr int most_acts = 12;

    void open_sample(const char* name) {
        const std::filesystem::path sample = std::filesystem::path(PLUGSIDE_SOURCE_DIR) / "sample-projects" / name;
        window_.open_files({sample / "walk.gpx", sample / "ground.gpkg"});
        ASSERT_TRUE(wait_for([&] { return session().plan_is_current(); }));
        window_.resize(1280, 800);
        window_.show();
        window_.activateWindow();
        ASSERT_TRUE(QTest::qWaitForWindowActive(&window_));
        ASSERT_TRUE(judged());
    }
    void decide_all() {
        std::vector<SetDecision> decisions;
        for (const SetPoint& set : session().plan()->sets)
            decisions.push_back({session().plan()->probes.at(set.probe).key, SetChoice::kept, {}});
        session().decide_on_all(decisions, QStringLiteral("keep all"));
        window_.choices().go_to(Step::sets);
        ASSERT_TRUE(judged());
    }
    bool judged() {
        return wait_for([&] {
            const auto known = window_.work().judged();
            return session().plan_is_current() && window_.work().holds() && !window_.work().working() && !known->looks.empty();
        });
    }
    void press(Qt::Key key, Qt::KeyboardModifiers modifiers = {}) {
        ++acts_;
        QWidget* focus = QApplication::focusWidget();
        QTest::keyClick(focus ? focus : &window_, key, modifiers);
        QTest::qWait(1);
    }
    // What cannot be seen is not clicked on: a turn of the wheel first, which counts.
    void click(QWidget& widget) {
        if (widget.visibleRegion().boundingRect().size() != widget.size()) {
            ++acts_;
            for (QWidget* up = widget.parentWidget(); up != nullptr; up = up->parentWidget())
                if (auto* scroll = qobject_cast<QScrollArea*>(up)) scroll->ensureWidgetVisible(&widget);
            QTest::qWait(1);
        }
        ASSERT_FALSE(widget.visibleRegion().isEmpty()) << widget.accessibleName().toStdString();
        ++acts_;
        QTest::mouseClick(&widget, Qt::LeftButton);
        QTest::qWait(1);
    }
    static QAbstractButton* button(QWidget& in, const QString& named) {
        for (QAbstractButton* one : in.findChildren<QAbstractButton*>())
            if (one->isVisible() && (one->accessibleName().startsWith(named) || one->text().startsWith(named))) return one;
        return nullptr;
    }
    void click_on(QWidget& in, const char* named) {
        QAbstractButton* one = button(in, QString::fromLatin1(named));
        ASSERT_NE(one, nullptr) << named;
        click(*one);
    }
    // Tab until the focus is on a button of that name.
    void tab_to(const QString& named) {
        for (int k = 0; k < 40; ++k) {
            const QWidget* focus = QApplication::focusWidget();
            if (focus != nullptr && focus->accessibleName().startsWith(named)) return;
            press(Qt::Key_Tab);
        }
        FAIL() << "not reached: " << named.toStdString();
    }
    // The cards are on the disk, whole.
    void expect_cards(const QString& folder, QSignalSpy& done) {
        ASSERT_TRUE(wait_for([&] { return done.count() == 1; }));
        QFile file(folder + QStringLiteral("/cards.pdf"));
        ASSERT_TRUE(file.open(QIODevice::ReadOnly)) << file.fileName().toStdString();
        EXPECT_TRUE(file.readAll().startsWith("%PDF"));
        EXPECT_LE(acts_, most_acts);
        RecordProperty("acts", acts_);
    }
    // Where the files go is no part of the count: the test must not write beside the sample.
    void lead_into(const QString& folder) {
        HandOutDialog* dialog = window_.hand_out_dialog();
        ASSERT_NE(dialog, nullptr) << "something speaks against it: " << window_.slip().notice().toStdString();
        dialog->set_folder(folder);
        for (QLineEdit* name : dialog->findChildren<QLineEdit*>())
            if (name->text().endsWith(QLatin1String("-sheets.pdf"))) name->setText(QStringLiteral("cards.pdf"));
    }
    static bool wait_for(const std::function<bool()>& done) { return QTest::qWaitFor(done, 240000); }
    FieldSession& session() { return window_.session(); }

    MainWindow window_;
    int acts_ = 0;
};

TEST_F(ActsToCards, are_at_most_twelve_by_mouse) {
    open_sample("creek-meadow");
    decide_all();
    QTemporaryDir folder;
    QSignalSpy done(&session(), &FieldSession::handed_out);
    window_.set_ask([](const QString& question, const QStringList& answers) {
        ADD_FAILURE() << question.toStdString();
        return static_cast<int>(answers.size()) - 1;
    });
    ASSERT_NO_FATAL_FAILURE(click_on(window_, "Method"));
    ASSERT_NO_FATAL_FAILURE(click_on(window_.slip().method(), "choose for the field: paired traps"));
    ASSERT_TRUE(judged());
    EXPECT_EQ(session().field()->survey.work->method, "paired-traps");
    ASSERT_NO_FATAL_FAILURE(click_on(window_, "hand out"));
    ASSERT_NO_FATAL_FAILURE(lead_into(folder.path()));
    ASSERT_NO_FATAL_FAILURE(click_on(*window_.hand_out_dialog(), "hand out"));
    expect_cards(folder.path(), done);
}

TEST_F(ActsToCards, are_at_most_twelve_by_keys_alone) {
    open_sample("creek-meadow");
    decide_all();
    QTemporaryDir folder;
    QSignalSpy done(&session(), &FieldSession::handed_out);
    press(Qt::Key_4);
    press(Qt::Key_M);
    ASSERT_NO_FATAL_FAILURE(tab_to(QStringLiteral("choose for the field: paired traps")));
    press(Qt::Key_Space);
    ASSERT_TRUE(judged());
    EXPECT_EQ(session().field()->survey.work->method, "paired-traps");
    press(Qt::Key_S, Qt::ControlModifier);
    ASSERT_NO_FATAL_FAILURE(lead_into(folder.path()));
    ++acts_;
    QTest::keyClick(window_.hand_out_dialog(), Qt::Key_Return);
    expect_cards(folder.path(), done);
}

TEST_F(ActsToCards, show_within_one_screen_why_a_fumigant_is_stopped_at_the_school) {
    open_sample("school-field");
    press(Qt::Key_4);
    press(Qt::Key_M);
    ASSERT_NO_FATAL_FAILURE(tab_to(QStringLiteral("choose for the field: fumigant")));
    press(Qt::Key_Space);
    ASSERT_TRUE(judged());
    press(Qt::Key_A);
    RecordProperty("acts", acts_);
    AgainstView& against = window_.slip().method().against();
    const auto& groups = against.groups();
    ASSERT_FALSE(groups.empty());
    EXPECT_EQ(groups.front().weight, CautionWeight::stop);
    EXPECT_TRUE(groups.front().holds);
    QTest::qWait(50);
    const auto seen = [&](const QString& words) {
        for (const QLabel* label : against.findChildren<QLabel*>())
            if (label->text().contains(words) && label->visibleRegion().boundingRect().size() == label->size()) return true;
        return false;
    };
    EXPECT_TRUE(seen(QString::fromStdString(groups.front().because))) << groups.front().because;
    const auto cautions = against.findChildren<CautionView*>();
    ASSERT_FALSE(cautions.empty());
    EXPECT_EQ(cautions.front()->visibleRegion().boundingRect().size(), cautions.front()->size())
        << find_caution(groups.front().caution)->sentence;
    // and where it is, on the map, by one act more
    if (!groups.front().where.empty()) {
        against.show_on_map(groups.front().caution);
        EXPECT_TRUE(window_.map().show_choices().reasons);
    }
}

}  // namespace
}  // namespace plugside
