// No text of the window is cut, nothing lies over its neighbour or out of its parent, and every text stands out from its ground: in every
// step, part and panel, in both languages and themes, at 100 and 200 in 100, at 1280x800.
#include <QAbstractButton>
#include <QAbstractItemView>
#include <QAbstractScrollArea>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QScrollBar>
#include <QVBoxLayout>
#include <cstdio>
#include <optional>
#include <set>
#include <tuple>

#include "app/canvas/palette.h"
#include "app/words/language.h"
#include "tests/app/painted_words.h"
#include "tests/app/window/every_scene.h"

namespace plugside {
namespace {

constexpr QSize window_size(1280, 800);

std::string named(const QWidget& widget) {
    std::string name = widget.metaObject()->className();
    if (!widget.objectName().isEmpty()) name += " " + widget.objectName().toStdString();
    if (const auto* button = qobject_cast<const QAbstractButton*>(&widget))
        name += " \"" + button->text().toStdString() + "\"";
    if (const auto* label = qobject_cast<const QLabel*>(&widget))
        name += " \"" + label->text().left(50).toStdString() + "\"";
    return name;
}

bool is_viewport(const QWidget& widget) {
    const auto* area = qobject_cast<const QAbstractScrollArea*>(widget.parentWidget());
    return area != nullptr && area->viewport() == &widget;
}

bool managed(const QLayout& layout, const QWidget& widget) {
    for (int i = 0; i < layout.count(); ++i) {
        QLayoutItem* item = layout.itemAt(i);
        if (item->widget() == &widget) return true;
        if (item->layout() != nullptr && managed(*item->layout(), widget)) return true;
    }
    return false;
}

// What is wrong with how the visible widgets under `top` lie and what their words look like.
class Looking {
public:
    void look(QWidget& top, const std::string& scene) {
        QList<QWidget*> widgets{&top};
        for (QWidget* widget : top.findChildren<QWidget*>())
            if (widget->isVisibleTo(&top) && widget->window() == &top) widgets << widget;
        for (QWidget* widget : widgets) {
            if (widget->size().isEmpty()) continue;
            const std::string where = scene + ": " + named(*widget);
            look_at_place(*widget, top, where);
            look_at_words(*widget, where);
        }
    }
    [[nodiscard]] const std::set<std::string>& faults() const { return faults_; }
    [[nodiscard]] long texts() const { return texts_; }

private:
    void fault(const std::string& words) { faults_.insert(words); }

    void look_at_place(const QWidget& widget, const QWidget& top, const std::string& where) {
        if (&widget == &top) return;
        const QWidget& parent = *widget.parentWidget();
        if (!is_viewport(parent) && qobject_cast<const QAbstractScrollArea*>(&parent) == nullptr &&
            !parent.rect().contains(widget.geometry()))
            fault(where + " lies out of " + named(parent));
        if (const auto* label = qobject_cast<const QLabel*>(&widget); label != nullptr && label->pixmap().isNull()) {
            if (label->wordWrap()
                    ? label->height() < label->heightForWidth(label->width())
                    : label->width() < label->sizeHint().width() || label->height() < label->sizeHint().height())
                fault(where + " is smaller than its words");
        }
        if (parent.layout() == nullptr || !managed(*parent.layout(), widget)) return;
        for (const QWidget* other : parent.findChildren<QWidget*>(QString(), Qt::FindDirectChildrenOnly))
            if (other > &widget && other->isVisible() && !other->size().isEmpty() && managed(*parent.layout(), *other) &&
                other->geometry().intersects(widget.geometry()))
                fault(where + " overlaps " + named(*other));
    }

    // The widget alone, without its children, as if all of it were in sight.
    void look_at_words(QWidget& widget, const std::string& where) {
        WordSheet sheet(widget.size());
        widget.render(&sheet, QPoint(), QRegion(), QWidget::RenderFlags());
        const bool scrolls = is_viewport(widget);
        // what is typed or chosen may be longer than its field: it is told whole in the list, or by the cursor
        const bool typed_in =
            qobject_cast<const QLineEdit*>(&widget) != nullptr || qobject_cast<const QComboBox*>(&widget) != nullptr;
        for (const PaintedWords& words : sheet.words()) {
            ++texts_;
            const std::string text = " \"" + words.text.toStdString() + "\"";
            if (typed_in) continue;
            if (scrolls && !QRectF(widget.rect()).contains(words.place)) continue;  // a row at the rim of a list
            if (words.cut_by_clip) fault(where + ":" + text + " is cut where it is painted");
            if (words.cut_by_widget && !scrolls) fault(where + ":" + text + " is cut at its rim");
            if (words.text.endsWith(QChar(0x2026)) && !told_whole(widget, words.text))
                fault(where + ":" + text + " is shortened without a tooltip that tells the whole");
        }
        if (const auto* line = qobject_cast<const QLineEdit*>(&widget); line != nullptr && line->text().isEmpty()) {
            const int room = line->width() - 16;
            if (line->fontMetrics().horizontalAdvance(line->placeholderText()) > room && line->toolTip().isEmpty())
                fault(where + ": \"" + line->placeholderText().toStdString() + "\" is longer than its field");
        }
    }
    static bool told_whole(const QWidget& widget, const QString& shortened) {
        const auto* view = is_viewport(widget) ? qobject_cast<const QAbstractItemView*>(widget.parentWidget()) : nullptr;
        if (view == nullptr || view->model() == nullptr) {
            const auto* button = qobject_cast<const QAbstractButton*>(&widget);
            const bool own_dots = button != nullptr && button->text().endsWith(QChar(0x2026));
            const auto* label = qobject_cast<const QLabel*>(&widget);
            return own_dots || (label != nullptr && label->text().contains(shortened)) || !widget.toolTip().isEmpty();
        }
        // one of the cells that begin so tells the whole
        const QString begin = shortened.chopped(1).trimmed();
        const QAbstractItemModel& model = *view->model();
        for (int row = 0; row < model.rowCount(); ++row)
            for (int column = 0; column < model.columnCount(); ++column) {
                const QModelIndex index = model.index(row, column);
                if (index.data(Qt::ToolTipRole).toString().contains(begin)) return true;
            }
        return model.headerData(0, Qt::Horizontal, Qt::ToolTipRole).toString().contains(begin);
    }

    std::set<std::string> faults_;
    long texts_ = 0;
};

// The contrast of everything painted in the window, and whether its two colours are a pair that is known.
class Contrasts {
public:
    void look(QWidget& top, const std::string& scene, const MapStyle& style) {
        WordSheet sheet(top.size());
        top.render(&sheet, QPoint(), QRegion(), QWidget::RenderFlags(QWidget::DrawWindowBackground | QWidget::DrawChildren));
        for (const PaintedWords& words : sheet.words())
            if (words.in_sight) look_at(words, scene, style);
    }
    void look_at(const PaintedWords& words, const std::string& scene, const MapStyle& style) {
        ++texts_;
        const auto key =
            std::make_tuple(words.ink.rgb(), words.ground.rgb(), words.px >= 24 || (words.bold && words.px >= 19));
        if (!seen_.insert(key).second) return;
        const bool large = std::get<2>(key);
        std::optional<ColourPair> known;
        for (const ColourPair& pair : colour_pairs(style)) {
            const bool for_words =
                pair.use == PairUse::text || pair.use == PairUse::inactive || (large && pair.use == PairUse::large_text);
            if (for_words && like(pair.ink, words.ink) && like(pair.ground, words.ground)) {
                known.emplace(pair);
                break;
            }
        }
        const double contrast = contrast_ratio(words.ink, words.ground);
        const std::string what = scene + ": \"" + words.text.left(40).toStdString() + "\" " +
                                 words.ink.name().toStdString() + " on " + words.ground.name().toStdString() + ", " +
                                 std::to_string(contrast);
        if (!known)
            faults_.insert(what + " is no pair of colour_pairs");
        else if (known->use != PairUse::inactive) {
            worst_ = std::min(worst_, contrast);
            if (contrast < least_contrast(large ? PairUse::large_text : PairUse::text) - 0.01)
                faults_.insert(what + " is too little");
        }
    }
    [[nodiscard]] const std::set<std::string>& faults() const { return faults_; }
    [[nodiscard]] long texts() const { return texts_; }
    [[nodiscard]] std::size_t pairs() const { return seen_.size(); }
    [[nodiscard]] double worst() const { return worst_; }

private:
    static bool like(const QColor& a, const QColor& b) {
        return std::abs(a.red() - b.red()) <= 2 && std::abs(a.green() - b.green()) <= 2 &&
               std::abs(a.blue() - b.blue()) <= 2;
    }
    std::set<std::tuple<QRgb, QRgb, bool>> seen_;
    std::set<std::string> faults_;
    long texts_ = 0;
    double worst_ = 21.0;
};

std::string listed(const std::set<std::string>& faults) {
    std::string words;
    for (const std::string& fault : faults) words += "\n  " + fault;
    return words;
}

struct Look {
    Theme theme;
    int percent;
};

std::string named(const Look& look) {
    return (look.theme == Theme::light ? "light " : "sunlight ") + std::to_string(look.percent);
}

// With PLUGSIDE_EVERY_LOOK in the environment every language in every look; otherwise the ones in which most was ever found.
bool every_look() { return qEnvironmentVariableIsSet("PLUGSIDE_EVERY_LOOK"); }

std::vector<Look> looks() {
    if (!every_look()) return {{Theme::sunlight, 200}};
    return {{Theme::light, 100}, {Theme::light, 200}, {Theme::sunlight, 100}, {Theme::sunlight, 200}};
}

std::vector<Language> languages() {
    if (!every_look()) return {Language::spanish};
    return {Language::english, Language::spanish};
}

// Parts whose words are held to fit. The notes, what was not seen, the facts of a mark, those of a shape and the plat's pairs are cut at
// twice the text: they are gone through, pictured and held to stand out, not to fit.
bool held(const std::string& scene) {
    for (const char* part : {"walk, notes", "walk, not seen", "walk, read, a mark", "ground, a shape", "a plat, pairs"})
        if (scene.starts_with(part)) return false;
    return true;
}

class FittingWords : public OnScreen {
protected:
    ~FittingWords() override {
        speak(Language::english);
        speak_with(nullptr);
        QLocale::setDefault(QLocale::system());
    }
    void look_everywhere(Language language) {
        speak(language);
        MainWindow window;
        window.resize(window_size);
        EveryScene scenes(window);
        ASSERT_TRUE(scenes.open());
        for (const Look& look : looks()) {
            Contrasts contrasts;
            window.choices().use(look.theme);
            window.choices().use_text(look.percent);
            scenes.settle();
            const std::string name = named(look) + " ";
            scenes.walk_through([&](QWidget& shown, const std::string& scene) {
                EXPECT_EQ(window.size(), window_size) << name << scene;
                contrasts.look(shown, name + scene, window.choices().style());
                if (held(scene)) fitting_.look(shown, name + scene);
            });
            EXPECT_TRUE(contrasts.faults().empty()) << listed(contrasts.faults());
            EXPECT_GT(contrasts.pairs(), 8U);
            std::printf("%s: %ld texts in %zu pairs of colours, least contrast %.2f\n", name.c_str(), contrasts.texts(),
                        contrasts.pairs(), contrasts.worst());
        }
        EXPECT_TRUE(fitting_.faults().empty()) << listed(fitting_.faults());
        EXPECT_GT(fitting_.texts(), 1000);
        std::printf("%ld texts looked at\n", fitting_.texts());
    }
    Looking fitting_;
};

// The window before anything is open, and the walk-through of the job on the sample.
void look_at_first_start(Language language, Looking& fitting) {
    speak(language);
    MainWindow window;
    window.resize(window_size);
    window.show();
    window.activateWindow();
    EveryScene scenes(window);
    const auto look_at = [&](const std::string& scene) {
        for (const Look& look : looks()) {
            window.choices().use(look.theme);
            window.choices().use_text(look.percent);
            scenes.settle();
            scenes.look_at(window, scene, [&](QWidget& shown, const std::string& name) {
                EXPECT_EQ(window.size(), window_size) << name;
                fitting.look(shown, named(look) + " " + name);
            });
        }
    };
    look_at("nothing open");
    scenes.press(Qt::Key_F2);
    ASSERT_TRUE(EveryScene::wait([&] { return window.session().plan_is_current(); }));
    for (int lesson = 1; lesson <= 6; ++lesson) {
        look_at("first start " + std::to_string(lesson));
        scenes.press(Qt::Key_F2);
    }
}

TEST_F(FittingWords, OfTheFirstStartFitInBothLanguages) {
    for (const Language language : languages()) look_at_first_start(language, fitting_);
    EXPECT_TRUE(fitting_.faults().empty()) << listed(fitting_.faults());
    EXPECT_GT(fitting_.texts(), 150);
}

TEST_F(FittingWords, FitInEveryPart) {
    for (const Language language : languages()) look_everywhere(language);
}

TEST_F(FittingWords, ACutAnOverlappingAndAnOutlyingTextAreFound) {
    QWidget top;
    top.resize(300, 200);
    auto* column = new QVBoxLayout(&top);
    auto* label = new QLabel(QStringLiteral("words that need more room than they have"));
    auto* other = new QLabel(QStringLiteral("beside"));
    column->addWidget(label);
    column->addWidget(other);
    top.show();
    Looking sound;
    sound.look(top, "sound");
    EXPECT_TRUE(sound.faults().empty()) << listed(sound.faults());
    EXPECT_GE(sound.texts(), 2);
    label->setFixedWidth(60);
    QCoreApplication::processEvents();
    Looking cut;
    cut.look(top, "cut");
    EXPECT_FALSE(cut.faults().empty());
    label->setFixedWidth(280);
    QCoreApplication::processEvents();
    other->move(label->pos() + QPoint(5, 5));
    Looking over;
    over.look(top, "over");
    EXPECT_FALSE(over.faults().empty());
    other->move(-20, 150);
    Looking out;
    out.look(top, "out");
    EXPECT_FALSE(out.faults().empty());
}

TEST_F(FittingWords, AColourThatIsNoPairAndOneThatIsTooPaleAreFound) {
    QLabel label(QStringLiteral("pale words"));
    label.setStyleSheet(QStringLiteral("background: #FFFDF6; color: #AAAAAA"));
    label.resize(200, 40);
    Contrasts contrasts;
    contrasts.look(label, "pale", style_of(Theme::light));
    ASSERT_EQ(contrasts.faults().size(), 1U);
    EXPECT_NE(contrasts.faults().begin()->find("no pair"), std::string::npos) << *contrasts.faults().begin();
    label.setStyleSheet(QStringLiteral("background: #FFFDF6; color: #22261F"));
    Contrasts sound;
    sound.look(label, "sound", style_of(Theme::light));
    EXPECT_TRUE(sound.faults().empty()) << listed(sound.faults());
    EXPECT_EQ(sound.pairs(), 1U);
}

}  // namespace
}  // namespace plugside
