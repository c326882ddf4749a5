// Every text that the window shows goes through a translation, and every one of those has its Spanish.
//
// A translator marks what it translates, piece by piece between the places for values: "«All »12« fans of »walk 1". What then
// stands outside of the marks is a value: a name, a number with its unit, a word of somebody's note; or a text that was forgotten.
#include <QAbstractButton>
#include <QAbstractItemView>
#include <QComboBox>
#include <QDialog>
#include <QLabel>
#include <QLineEdit>
#include <QMenu>
#include <QMutex>
#include <QRegularExpression>
#include <QTranslator>
#include <fstream>
#include <set>

#include "app/stages/mound_facts.h"
#include "app/window/main_window.h"
#include "app/words/language.h"
#include "core/sets/cautions.h"
#include "core/words/words.h"
#include "tests/app/application.h"

namespace plugside {
namespace {

// Wraps each piece of a text in marks; remembers what has no Spanish.
class Marking : public QTranslator {
public:
    [[nodiscard]] bool load_spanish() {
        return spanish_.load(QStringLiteral("plugside_es"), QStringLiteral(":/translations"));
    }
    [[nodiscard]] bool isEmpty() const override { return false; }
    [[nodiscard]] QString translate(const char* context, const char* source, const char* disambiguation,
                                    int n) const override {
        const QByteArray of(context);
        if (of.startsWith("Q")) return {};  // the toolkit's own
        const QString text = QString::fromUtf8(source);
        if (text.contains(QChar(0xAB))) return {};  // composed of texts that were translated
        const QMutexLocker lock(&mutex_);
        if (spanish_.translate(context, source, disambiguation, n).isNull() && !text.isEmpty())
            without_spanish_.insert((QString::fromUtf8(of) + ": " + text).toStdString());
        static const QRegularExpression place(QStringLiteral("%\\d+|\\{\\d\\}"));
        QString marked;
        qsizetype at = 0;
        for (auto found = place.globalMatch(text); found.hasNext();) {
            const QRegularExpressionMatch one = found.next();
            marked += in_marks(text.mid(at, one.capturedStart() - at)) + one.captured();
            at = one.capturedEnd();
        }
        return marked + in_marks(text.mid(at));
    }
    [[nodiscard]] std::set<std::string> without_spanish() const {
        const QMutexLocker lock(&mutex_);
        return without_spanish_;
    }

private:
    static QString in_marks(const QString& text) {
        static const QRegularExpression letter(QStringLiteral("\\p{L}"));
        return text.contains(letter) ? QChar(0xAB) + text + QChar(0xBB) : text;
    }

    QTranslator spanish_;
    mutable QMutex mutex_;
    mutable std::set<std::string> without_spanish_;
};

// What is left of a text without what stands in marks and without data.
class Remains {
public:
    void take_data(const QString& words) {
        if (!words.trimmed().isEmpty()) data_.insert({-words.size(), words});
    }
    void take_data(const std::string& words) { take_data(QString::fromStdString(words)); }
    [[nodiscard]] QString of(QString text) const {
        static const QRegularExpression marked(QStringLiteral("\\x{AB}[^\\x{AB}\\x{BB}]*\\x{BB}"));
        static const QRegularExpression tags(QStringLiteral("<[^>]*>|&nbsp;"));
        static const QRegularExpression units(QStringLiteral("(?<=\\d)\\s(m|cm|km|ha|s|min)\\b|\\b(UTC|[A-Z]{3,4}T)\\b"));
        static const QRegularExpression letter(QStringLiteral("\\p{L}"));
        static const QRegularExpression dates(
            QStringLiteral("\\d+ (January|February|March|April|May|June|July|August|September|"
                           "October|November|December) \\d+"));
        text.replace(tags, QStringLiteral(" "));
        while (text.contains(marked)) text.replace(marked, QStringLiteral(" "));
        text.remove(dates);
        for (const auto& [length, words] : data_) text.replace(words, QStringLiteral(" "));
        text.remove(units);
        return text.contains(letter) ? text.trimmed() : QString();
    }

private:
    std::set<std::pair<qsizetype, QString>> data_;  // the longest first
};

// All texts of a widget that a person reads or hears.
QStringList texts_of(const QWidget& widget) {
    QStringList texts{widget.toolTip(), widget.accessibleName(), widget.accessibleDescription(), widget.windowTitle()};
    if (const auto* label = qobject_cast<const QLabel*>(&widget)) texts << label->text();
    if (const auto* button = qobject_cast<const QAbstractButton*>(&widget)) texts << button->text();
    if (const auto* line = qobject_cast<const QLineEdit*>(&widget)) texts << line->placeholderText();
    if (const auto* box = qobject_cast<const QComboBox*>(&widget))
        for (int i = 0; i < box->count(); ++i) texts << box->itemText(i);
    if (const auto* menu = qobject_cast<const QMenu*>(&widget))
        for (const QAction* action : menu->actions()) texts << action->text() << action->toolTip();
    if (const auto* view = qobject_cast<const QAbstractItemView*>(&widget); view && view->model()) {
        const QAbstractItemModel& model = *view->model();
        for (int column = 0; column < model.columnCount(); ++column) {
            texts << model.headerData(column, Qt::Horizontal).toString();
            for (int row = 0; row < std::min(model.rowCount(), 60); ++row)
                for (const int role : {static_cast<int>(Qt::DisplayRole), static_cast<int>(Qt::ToolTipRole),
                                       static_cast<int>(Qt::AccessibleTextRole)})
                    texts << model.index(row, column).data(role).toString();
        }
    }
    return texts;
}

class EveryText : public OnScreen {
protected:
    EveryText() {
        speak(Language::english);
        EXPECT_TRUE(marking_.load_spanish());
        QCoreApplication::installTranslator(&marking_);
    }
    ~EveryText() override {
        QCoreApplication::removeTranslator(&marking_);
        speak_with(nullptr);
        QLocale::setDefault(QLocale::system());
    }

    // The sample's walk with one note that speaks of a mole, one of people and a word that nobody knows.
    void open_walk(MainWindow& window) {
        const std::filesystem::path sample = std::filesystem::path(PLUGSIDE_SOURCE_DIR) / "sample-projects" / "creek-meadow";
        std::ifstream walk(sample / "walk.gpx");
        std::string text((std::istreambuf_iterator<char>(walk)), std::istreambuf_iterator<char>());
        for (const char* note :
             {"round hill, hole in the middle", "crushed, two children near, zzqx", "fan 90 magnetic, fan 200"})
            text.replace(text.find("<cmt>crushed</cmt>"), 18, "<cmt>" + std::string(note) + "</cmt>");
        const std::filesystem::path doubtful = folder_.filePath("walk.gpx").toStdString();
        std::ofstream(doubtful) << text;
        window.open_files({doubtful, sample / "ground.gpkg"});
        ASSERT_TRUE(wait_for([&] { return window.session().looked_back() && window.session().findings(); }));
        take_data(*window.session().field());
        window.show();
        window.activateWindow();
        ASSERT_TRUE(QTest::qWaitForWindowActive(&window));
    }
    void take_data(const FieldSurvey& field) {
        remains_.take_data(field.field_name);
        for (const Mound& mound : field.survey.mounds) {
            remains_.take_data(mound.name);
            remains_.take_data(mound.note);
        }
        for (const Walk& walk : field.survey.walks) {
            remains_.take_data(walk.id);
            remains_.take_data(walk.source);
        }
        for (const Barrier& barrier : field.survey.ground.barriers) remains_.take_data(barrier.name);
        for (const Gap& gap : field.survey.ground.gates) remains_.take_data(gap.name);
        for (const Gap& gap : field.survey.ground.crossings) remains_.take_data(gap.name);
        for (const KeepClearArea& area : field.survey.ground.keep_clear) {
            remains_.take_data(area.name);
            remains_.take_data(area.reason);
        }
        // they have tables of their own, which tests/house compares
        for (const Caution& caution : all_cautions()) {
            remains_.take_data(caution.sentence);
            remains_.take_data(caution.reason);
            remains_.take_data(caution.source);
        }
        for (const char* words :
             {"walk.gpx", "ground.gpkg", "two children", "zzqx", "round hill hole in the middle",
              "round hill hole in middle", "hole in the middle", "round hill, hole in", "near zzqx",
              // publications, by name
              "UC IPM Pest Notes 7433", "Dalquest 1948", "Montana Dept of Agriculture", "Driscoll & Watson"})
            remains_.take_data(QString::fromLatin1(words));
    }
    void expect_all_marked(const QWidget& window, const char* where) {
        QList<const QWidget*> widgets{&window};
        for (const QWidget* widget : window.findChildren<QWidget*>()) widgets << widget;
        for (const QWidget* widget : widgets) {
            if (widget->metaObject()->className() == QByteArray("QLabel") && widget->objectName().startsWith("qt_"))
                continue;
            for (const QString& text : texts_of(*widget)) {
                ++texts_seen_;
                if (text == code_of(spoken())) continue;
                if (const QString left = remains_.of(text); !left.isEmpty() && !is_letters_of_systems(left))
                    ADD_FAILURE() << where << ", " << widget->metaObject()->className() << " \"" << text.toStdString()
                                  << "\": not translated: " << left.toStdString();
            }
        }
    }
    // Systems are called A, B, ..., AA; keys are letters, too.
    static bool is_letters_of_systems(const QString& left) {
        static const QRegularExpression letters(QStringLiteral("^([^\\p{L}]|\\b[A-Z]{1,2}\\b)*$"));
        return letters.match(left).hasMatch();
    }
    void press(MainWindow& window, Qt::Key key, Qt::KeyboardModifiers modifiers = {}) {
        QWidget* focus = QApplication::focusWidget();
        QTest::keyClick(focus ? focus : &window, key, modifiers);
        QCoreApplication::processEvents();
    }
    static bool wait_for(const std::function<bool()>& done) { return QTest::qWaitFor(done, 60000); }

    QTemporaryDir folder_;
    Marking marking_;
    Remains remains_;
    long texts_seen_ = 0;
};

TEST_F(EveryText, AForgottenTextIsFound) {
    Remains remains;
    remains.take_data(QStringLiteral("M007"));
    EXPECT_EQ(remains.of(QStringLiteral("«All »12« fans of »M007 1.5 m")), QString());
    EXPECT_EQ(remains.of(QStringLiteral("«All » mounds of M007")), QStringLiteral("mounds of"));
    EXPECT_FALSE(is_letters_of_systems(QStringLiteral("mounds of")));
    EXPECT_EQ(remains.of(QStringLiteral("«fan »south")), QStringLiteral("south"));
}

TEST_F(EveryText, OfTheWindowWithoutAFieldIsTranslated) {
    MainWindow window;
    window.show();
    expect_all_marked(window, "empty");
    EXPECT_EQ(marking_.without_spanish(), std::set<std::string>());
    EXPECT_GT(texts_seen_, 200);
}

TEST_F(EveryText, OfTheWalkStepIsTranslated) {
    MainWindow window;
    open_walk(window);
    for (const Qt::Key part : {Qt::Key_V, Qt::Key_L, Qt::Key_T, Qt::Key_W}) {
        press(window, part);
        expect_all_marked(window, "walk");
        EXPECT_FALSE(window.slip().walk().not_seen().told().isEmpty());
    }
    press(window, Qt::Key_L);
    for (std::size_t i = 0; i < window.session().findings()->size(); ++i) {
        press(window, Qt::Key_N);
        expect_all_marked(window, "findings");
    }
    press(window, Qt::Key_V);
    window.choices().pick_mound(4);
    expect_all_marked(window, "a mark");
    press(window, Qt::Key_I);
    for (const Qt::Key answer : {Qt::Key_1, Qt::Key_2, Qt::Key_1}) {
        expect_all_marked(window, "who dug");
        press(window, answer);
    }
    expect_all_marked(window, "who dug, told");
    press(window, Qt::Key_Return);
    ASSERT_TRUE(wait_for([&] { return window.session().plan_is_current(); }));
    expect_all_marked(window, "a mole's");
    EXPECT_EQ(marking_.without_spanish(), std::set<std::string>());
}

TEST_F(EveryText, OfTheGroundStepIsTranslated) {
    MainWindow window;
    open_walk(window);
    press(window, Qt::Key_2);
    for (const Qt::Key stroke : {Qt::Key_B, Qt::Key_D, Qt::Key_X, Qt::Key_T, Qt::Key_K, Qt::Key_U, Qt::Key_H, Qt::Key_Y}) {
        press(window, stroke);
        expect_all_marked(window, "ground");
    }
    for (const GroundShape shape : shapes_of(window.session().field()->survey.ground)) {
        window.drawing().pick(shape);
        expect_all_marked(window, "a shape");
    }
    // two areas that cannot be joined, and a hole in nothing: what is refused is said
    press(window, Qt::Key_J);
    expect_all_marked(window, "joining");
    EXPECT_EQ(marking_.without_spanish(), std::set<std::string>());
}

TEST_F(EveryText, OfTheSystemsStepIsTranslated) {
    MainWindow window;
    open_walk(window);
    press(window, Qt::Key_3);
    expect_all_marked(window, "systems");
    for (std::size_t system = 0; system < window.session().plan()->systems.size(); ++system) {
        window.choices().pick_system(system);
        expect_all_marked(window, "a system");
    }
    press(window, Qt::Key_L);
    window.choices().pick_mound(3);
    for (const Qt::Key saying : {Qt::Key_O, Qt::Key_T, Qt::Key_R, Qt::Key_X, Qt::Key_Z}) {
        press(window, saying);
        expect_all_marked(window, "corrections");
        press(window, Qt::Key_Escape);
    }
    window.choices().pick_mound(3);
    press(window, Qt::Key_N);
    press(window, Qt::Key_D);
    ASSERT_TRUE(wait_for([&] { return window.session().plan_is_current(); }));
    expect_all_marked(window, "said");
    EXPECT_EQ(marking_.without_spanish(), std::set<std::string>());
}

TEST_F(EveryText, OfTheSetsStepTheSheetOfKeysAndHandingOutIsTranslated) {
    MainWindow window;
    open_walk(window);
    press(window, Qt::Key_5);
    for (const Qt::Key decision : {Qt::Key_K, Qt::Key_D, Qt::Key_N, Qt::Key_M}) {
        press(window, decision);
        expect_all_marked(window, "sets");
    }
    press(window, Qt::Key_Escape);
    for (int i = 0; i < 12; ++i) {
        press(window, Qt::Key_PageDown);
        expect_all_marked(window, "a set");
    }
    press(window, Qt::Key_U, Qt::ControlModifier);
    expect_all_marked(window, "metres");
    press(window, Qt::Key_F1);
    expect_all_marked(window, "keys");
    press(window, Qt::Key_F1);
    ASSERT_TRUE(wait_for([&] { return window.session().plan_is_current(); }));
    ASSERT_TRUE(window.open_hand_out());
    remains_.take_data(window.hand_out_dialog()->findChildren<QLineEdit*>().front()->text());
    for (const char* file : {"barriers.cpg", "walk_tracks.shx", "mounds.csv", "work_order.csv"})
        remains_.take_data(QStringLiteral("creek-meadow-plan_") + QLatin1String(file));
    expect_all_marked(*window.hand_out_dialog(), "hand out");
    window.hand_out_dialog()->reject();
    EXPECT_EQ(marking_.without_spanish(), std::set<std::string>());
}

TEST_F(EveryText, OfReadingFilesAndOfWhatIsRefusedIsTranslated) {
    MainWindow window;
    open_walk(window);
    const std::filesystem::path table = folder_.filePath("marks.csv").toStdString();
    std::ofstream(table) << "name;east;north;fan\nm1;500000;4000000;90\nm2;500020;4000010;180\n";
    const std::filesystem::path broken = folder_.filePath("broken.gpx").toStdString();
    std::ofstream(broken) << "<gpx><wpt lat='x' lon='2'></gpx>";
    for (const char* words :
         {"marks.csv", "broken.gpx", "east", "north", "fan", "name", "m1", "m2", "mismatched tag", "EPSG", "NAD83", "WGS"})
        remains_.take_data(QString::fromLatin1(words));
    window.add_files({table, broken});
    ASSERT_TRUE(wait_for([&] { return window.reading().isVisible() && !window.reading().desk().reading(); }));
    expect_all_marked(window.reading(), "reading");
    EXPECT_EQ(marking_.without_spanish(), std::set<std::string>());
}

}  // namespace
}  // namespace plugside
