// Whole sessions in the window, by keys alone where it says so.
#include <QDir>
#include <QLabel>
#include <QSignalSpy>
#include <fstream>

#include "app/stages/mound_facts.h"
#include "app/window/main_window.h"
#include "app/words/language.h"
#include "tests/app/application.h"

namespace plugside {
namespace {

class WindowSession : public OnScreen {
protected:
    void open_sample() {
        const std::filesystem::path sample = std::filesystem::path(PLUGSIDE_SOURCE_DIR) / "sample-projects" / "creek-meadow";
        window_.open_files({sample / "walk.gpx", sample / "ground.gpkg"});
        ASSERT_TRUE(wait_for([&] { return window_.session().plan_is_current(); }));
        show_window();
    }
    void show_window() {
        window_.show();
        window_.activateWindow();
        ASSERT_TRUE(QTest::qWaitForWindowActive(&window_));
    }
    void press(Qt::Key key, Qt::KeyboardModifiers modifiers = {}) {
        QWidget* focus = QApplication::focusWidget();
        QTest::keyClick(focus ? focus : &window_, key, modifiers);
    }
    // What is decided now, once the plan has followed.
    SetProgress progress() {
        EXPECT_TRUE(wait_for([&] { return window_.session().plan_is_current(); }));
        return set_progress(window_.session().field()->survey, *window_.session().plan());
    }
    static bool wait_for(const std::function<bool()>& done) { return QTest::qWaitFor(done, 120000); }

    MainWindow window_;
};

TEST_F(WindowSession, FiveSetsAreDecidedTwoUndoneAndThePlanHandedOutByKeysAlone) {
    open_sample();
    press(Qt::Key_3);
    EXPECT_EQ(window_.choices().step(), Step::systems);
    press(Qt::Key_5);
    EXPECT_EQ(window_.choices().step(), Step::sets);
    press(Qt::Key_K);
    press(Qt::Key_D);
    press(Qt::Key_K);
    press(Qt::Key_M);
    press(Qt::Key_Up);
    press(Qt::Key_Right, Qt::ShiftModifier);
    press(Qt::Key_Return);
    press(Qt::Key_N);
    press(Qt::Key_K);
    EXPECT_EQ(progress().decided, 5U);
    EXPECT_EQ(window_.session().field()->survey.decisions.size(), 5U);
    press(Qt::Key_Z, Qt::ControlModifier);
    press(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(progress().decided, 3U);
    EXPECT_TRUE(window_.session().not_handed_out());
    press(Qt::Key_S, Qt::ControlModifier);
    HandOutDialog* dialog = window_.hand_out_dialog();
    ASSERT_NE(dialog, nullptr);
    const QTemporaryDir folder;
    dialog->set_folder(folder.path());
    const FieldSession::HandOut where = dialog->chosen();
    QTest::keyClick(dialog, Qt::Key_Return);
    ASSERT_TRUE(wait_for([&] { return !window_.session().not_handed_out(); }));
    EXPECT_TRUE(std::filesystem::exists(where.file_of(HandOutFormat::geopackage)));
    EXPECT_TRUE(std::filesystem::exists(where.file_of(HandOutFormat::gpx_waypoints)));
    EXPECT_TRUE(std::filesystem::exists(where.sheets));
    EXPECT_TRUE(where.phone.empty());
    EXPECT_TRUE(window_.slip().notice().contains(folder.path()));
    // opened again, the GeoPackage gives the decisions back and says so
    const auto decided = window_.session().field()->survey.decisions.size();
    window_.session().open({where.file_of(HandOutFormat::geopackage)});
    ASSERT_TRUE(wait_for([&] { return !window_.session().file_work().running() && window_.session().plan_is_current(); }));
    EXPECT_EQ(window_.session().field()->survey.decisions.size(), decided);
    EXPECT_FALSE(window_.slip().notice().isEmpty());
}

TEST_F(WindowSession, OpeningFilesBesideAFieldAsksAndStayingLosesNothing) {
    open_sample();
    press(Qt::Key_5);
    press(Qt::Key_K);
    const auto before = window_.session().field();
    int asked = 0;
    window_.set_ask([&](const QString&, const QStringList& answers) {
        ++asked;
        return static_cast<int>(answers.size()) - 1;
    });
    window_.open_files({"another.gpx"});
    EXPECT_EQ(asked, 1);
    EXPECT_FALSE(window_.session().file_work().running());
    EXPECT_EQ(window_.session().field(), before);
}

TEST_F(WindowSession, ARefusalStandsOnTheSlipUntilItIsPutAway) {
    show_window();
    const QTemporaryDir folder;
    const std::filesystem::path file = folder.filePath("no-walk.gpx").toStdString();
    std::ofstream(file) << "this is no walk";
    window_.open_files({file});
    ASSERT_TRUE(wait_for([&] { return !window_.slip().notice().isEmpty(); }));
    EXPECT_TRUE(window_.slip().notice().contains("no-walk.gpx"));
    QTest::qWait(50);
    EXPECT_FALSE(window_.slip().notice().isEmpty());
    press(Qt::Key_Escape);
    EXPECT_TRUE(window_.slip().notice().isEmpty());
    EXPECT_EQ(window_.session().field(), nullptr);
}

TEST_F(WindowSession, TheInstructionIsToldInTheUnitsChosenAndTheyAreRemembered) {
    open_sample();
    press(Qt::Key_5);
    const QString in_feet = window_.slip().sets().instruction_text();
    EXPECT_TRUE(in_feet.contains(" in")) << in_feet.toStdString();
    EXPECT_FALSE(in_feet.contains(" cm"));
    press(Qt::Key_U, Qt::ControlModifier);
    const QString in_metres = window_.slip().sets().instruction_text();
    EXPECT_TRUE(in_metres.contains(" cm")) << in_metres.toStdString();
    const MainWindow next;
    EXPECT_EQ(const_cast<MainWindow&>(next).choices().units(), LengthUnits::metres);
}

TEST_F(WindowSession, TheLastWordOnEverySetIsTheLabelsAndTheLocalRules) {
    open_sample();
    press(Qt::Key_5);
    const std::size_t sets = window_.session().plan()->sets.size();
    ASSERT_GT(sets, 4U);
    for (std::size_t i = 0; i < sets; ++i) {
        bool said = false;
        for (const QLabel* label : window_.slip().sets().findChildren<QLabel*>())
            said = said || label->text().contains("local rules");
        EXPECT_TRUE(said) << i;
        press(Qt::Key_PageDown);
    }
}

TEST_F(WindowSession, APickedMarkTellsItsOwnFactsAndMarksAreReachedByKeys) {
    open_sample();
    window_.map().setFocus();
    press(Qt::Key_BracketRight);
    ASSERT_TRUE(window_.choices().mound().has_value());
    EXPECT_EQ(*window_.choices().mound(), 0U);
    const auto field = window_.session().field();
    const QStringList facts = mound_facts(*field, window_.session().plan().get(), 0);
    EXPECT_EQ(facts.front().toStdString(), field->survey.mounds[0].name);
    bool shown = false;
    for (const QLabel* label : window_.slip().walk().findChildren<QLabel*>())
        shown = shown || (label->isVisible() && label->text().contains(facts.front()));
    EXPECT_TRUE(shown);
    press(Qt::Key_Escape);
    EXPECT_FALSE(window_.choices().mound().has_value());
}

TEST_F(WindowSession, AClickOnAMarkPicksItAndADragDoesNot) {
    open_sample();
    MapView& map = window_.map();
    const LocalPoint plug = window_.session().field()->survey.mounds[10].plug;
    const QPoint at = map.view().to_screen(plug).toPoint();
    QTest::mousePress(&map, Qt::LeftButton, {}, at);
    QTest::mouseMove(&map, at + QPoint(40, 10));
    QTest::mouseRelease(&map, Qt::LeftButton, {}, at + QPoint(40, 10));
    EXPECT_FALSE(window_.choices().mound().has_value());
    QTest::mouseClick(&map, Qt::LeftButton, {}, map.view().to_screen(plug).toPoint());
    ASSERT_TRUE(window_.choices().mound().has_value());
    const LocalPoint picked = window_.session().field()->survey.mounds[*window_.choices().mound()].plug;
    EXPECT_LT(distance_m(picked, plug) * map.view().pixels_per_metre(), 17.0);
}

TEST_F(WindowSession, EveryControlHasANameThatCanBeReadAloudOrATextOfItsOwn) {
    open_sample();
    for (const QAbstractButton* button : window_.findChildren<QAbstractButton*>())
        EXPECT_TRUE(button->focusPolicy() == Qt::NoFocus || !button->accessibleName().isEmpty() || !button->text().isEmpty())
            << button->metaObject()->className();
}

TEST(FileStem, KeepsLettersAndDigitsOfTheFieldsName) {
    EXPECT_EQ(file_stem("Creek meadow (2)"), "creek-meadow-2");
    EXPECT_EQ(file_stem("../..\\ "), "field");
    EXPECT_EQ(file_stem(QString::fromUtf8("Año nuevo")), QString::fromUtf8("año-nuevo"));
}

TEST_F(WindowSession, ALanguageAskedForWhileAnotherIsBeingPutOnIsTheOneThatHolds) {
    struct SpeakEnglishAgain {
        ~SpeakEnglishAgain() { speak(Language::english); }
    } english_again;
    open_sample();
    const auto words = [this] {
        QString all;
        for (const QWidget* part :
             {static_cast<QWidget*>(&window_.slip()), window_.findChild<QWidget*>(QStringLiteral("top_bar"))})
            if (part != nullptr)
                for (const QLabel* label : part->findChildren<QLabel*>())
                    if (label->isVisible()) all += label->text() + QLatin1Char('\n');
        return all;
    };
    const auto made = [this] {
        return window_.layout() != nullptr && window_.updatesEnabled() && !window_.dresser().at_work() &&
               window_.session().plan_is_current();
    };
    const QString before = words();
    speak(Language::spanish);
    ASSERT_TRUE(wait_for([&] { return window_.layout() == nullptr; })) << "the parts are on their way";
    for (int turn = 0; turn < 8; ++turn) QApplication::processEvents(QEventLoop::AllEvents, 0);
    speak(Language::english);
    ASSERT_TRUE(wait_for(made));
    QTest::qWait(50);
    ASSERT_TRUE(wait_for(made));
    EXPECT_EQ(words(), before);
}

}  // namespace
}  // namespace plugside
