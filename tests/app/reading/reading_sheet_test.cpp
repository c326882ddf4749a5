// Messy files dropped on the window: the sheet, what is said on it, and the survey that comes of it.
#include "app/reading/reading_sheet.h"

#include <QElapsedTimer>
#include <QMenu>
#include <QSignalSpy>
#include <QTimer>
#include <fstream>

#include "app/window/main_window.h"
#include "geo/read/north_of_walk.h"
#include "tests/app/application.h"
#include "tests/app/reading/messy_walk.h"

namespace plugside {
namespace {

class Reading : public OnScreen {
protected:
    Reading() {
        window_.resize(1280, 800);
        window_.show();
        window_.activateWindow();
        EXPECT_TRUE(QTest::qWaitForWindowActive(&window_));
    }
    ReadingSheet& sheet() { return window_.reading(); }
    ReadingDesk& desk() { return window_.reading().desk(); }
    static bool wait_for(const std::function<bool()>& done) { return QTest::qWaitFor(done, 120000); }
    void lay_out(const FieldSession::Files& files) {
        window_.open_files(files);
        ASSERT_TRUE(wait_for([&] { return sheet().isVisible() && desk().settled(); }));
    }
    void press(Qt::Key key, Qt::KeyboardModifiers modifiers = {}) {
        QWidget* focus = QApplication::focusWidget();
        QTest::keyClick(focus ? focus : &window_, key, modifiers);
    }
    std::size_t entry_of(const std::string& file) {
        for (std::size_t i = 0; i < desk().looks().size(); ++i)
            if (desk().looks()[i].file().filename() == file) return i;
        ADD_FAILURE() << file << " does not lie on the desk";
        return 0;
    }
    void look_at(const std::string& file) { sheet().list().setCurrentRow(static_cast<int>(entry_of(file))); }
    // By the list of meanings that opens under the column.
    void mean(int column, const QString& meaning) {
        sheet().entry().columns().open_meanings(column);
        auto* menu = qobject_cast<QMenu*>(QApplication::activePopupWidget());
        ASSERT_NE(menu, nullptr);
        for (QAction* action : menu->actions())
            if (action->text() == meaning) action->trigger();
        menu->close();
        ASSERT_TRUE(wait_for([&] { return desk().settled(); }));
    }
    void take_first_system() {
        ASSERT_TRUE(
            wait_for([&] { return !sheet().entry().system().searching() && !sheet().entry().system().found().empty(); }));
        QTest::keyClick(&sheet().entry().system().line(), Qt::Key_Return);
        ASSERT_TRUE(wait_for([&] { return desk().settled(); }));
    }
    void read() {
        sheet().read();
        ASSERT_TRUE(wait_for([&] { return !sheet().isVisible(); })) << sheet().message().toStdString();
    }
    std::shared_ptr<const FieldSurvey> field() { return window_.session().field(); }

    const MessyWalk& messy_ = MessyWalk::written();
    MainWindow window_;
};

TEST_F(Reading, MixedFilesBecomeTheSurveyThatReadingThemWithTheseChoicesGives) {
    lay_out(messy_.all());
    EXPECT_EQ(desk().looks().size(), 9U);  // photographs together, the Shapefile with its parts
    EXPECT_TRUE(desk().left_out(entry_of("cut-off.gpx")));
    EXPECT_EQ(desk().open_questions(), 2U);
    // the sheet has gone to the first question by itself, and goes to the second one
    EXPECT_EQ(sheet().entry().entry(), entry_of("from-the-office.txt"));
    EXPECT_EQ(QApplication::focusWidget(), &sheet().entry().system().line());
    take_first_system();
    EXPECT_EQ(sheet().entry().entry(), entry_of("heaps.shp"));
    take_first_system();
    EXPECT_EQ(desk().open_questions(), 0U);
    mean(1, "fan bearing");
    look_at("from-the-office.txt");
    mean(3, "fan bearing");
    look_at("phone.csv");
    EXPECT_TRUE(sheet().entry().where_text().contains("41.0001"));
    sheet().entry().north().pick(2);
    // without a window manager nobody hands the focus back from the lists that popped up
    QTest::keyClick(&sheet().list(), Qt::Key_Return);
    ASSERT_TRUE(wait_for([&] { return field() != nullptr; })) << sheet().message().toStdString();
    EXPECT_FALSE(sheet().isVisible());

    ReadChoices choices;
    auto table = guess_table(messy_ / "from-the-office.txt");
    ASSERT_TRUE(table);
    table->roles.at(3) = ColumnRole::fan_bearing;
    table->reference_system = "EPSG:32613";
    choices.tables[messy_ / "from-the-office.txt"] = *table;
    auto layers = guess_layers(messy_ / "heaps.shp");
    ASSERT_TRUE(layers);
    layers->at(0).roles.at(1) = ColumnRole::fan_bearing;
    layers->at(0).reference_system = "EPSG:32613";
    choices.layers[messy_ / "heaps.shp"] = *layers;
    auto expected = read_field(
        messy_.files({"north-half.gpx", "second-receiver.gpx", "from-the-office.txt", "phone.csv", "heaps.shp", "heaps.dbf",
                      "heaps.shx", "paddock.geojson", "well.kml", "IMG_0001.jpg", "IMG_0002.jpg", "IMG_0003.jpg"}),
        choices);
    ASSERT_TRUE(expected) << sentence(expected.error());
    for (std::size_t i = 0; i < expected->survey.walks.size(); ++i)
        if (expected->survey.walks[i].source == "phone.csv") {
            ASSERT_TRUE(tell_north(expected->survey, i, expected->frame, North::magnetic_north));
        }
    EXPECT_EQ(field()->survey.mounds.size(), 128U);
    EXPECT_TRUE(field()->survey == expected->survey);
    EXPECT_EQ(field()->field_name, "north-half");
    EXPECT_TRUE(window_.slip().notice().contains("cut-off.gpx"));
}

TEST_F(Reading, ReceiversWalksAloneAreReadWithoutASheet) {
    window_.open_files(messy_.files({"north-half.gpx", "second-receiver.gpx"}));
    ASSERT_TRUE(wait_for([&] { return field() != nullptr; }));
    EXPECT_FALSE(sheet().isVisible());
    EXPECT_EQ(field()->survey.walks.size(), 2U);
}

TEST_F(Reading, EscapeLeavesTheFieldAsItWasAndGivesTheKeysBack) {
    window_.open_files(messy_.files({"north-half.gpx"}));
    ASSERT_TRUE(wait_for([&] { return window_.session().plan_is_current(); }));
    const auto before = field();
    window_.set_ask([](const QString&, const QStringList&) { return 0; });  // add to it
    lay_out(messy_.files({"phone.csv"}));
    press(Qt::Key_5);
    EXPECT_EQ(window_.choices().step(), Step::walk) << "a key of the window while the sheet lies over it";
    press(Qt::Key_Escape);
    EXPECT_FALSE(sheet().isVisible());
    EXPECT_EQ(field(), before);
    EXPECT_TRUE(desk().empty());
    press(Qt::Key_5);
    EXPECT_EQ(window_.choices().step(), Step::sets);
}

TEST_F(Reading, FilesAddedToAFieldAreToldWhereTheyLieFromIt) {
    window_.open_files(messy_.files({"north-half.gpx"}));
    ASSERT_TRUE(wait_for([&] { return window_.session().plan_is_current(); }));
    window_.set_ask([](const QString&, const QStringList&) { return 0; });
    lay_out(messy_.files({"from-the-office.txt"}));
    take_first_system();
    EXPECT_EQ(desk().looks()[0].table->reference_system, "EPSG:32613");
    EXPECT_TRUE(sheet().entry().where_text().contains("the open field"));
    read();
    EXPECT_EQ(field()->survey.mounds.size(), 65U);
    EXPECT_EQ(field()->survey.walks.size(), 2U);
}

TEST_F(Reading, AWrongSystemIsSeenBeforeAndRefusedOnTheSheetWithNothingLost) {
    lay_out(messy_.files({"north-half.gpx", "from-the-office.txt"}));
    sheet().entry().system().line().setText("32633");
    ASSERT_TRUE(wait_for([&] { return !sheet().entry().system().searching(); }));
    take_first_system();
    look_at("from-the-office.txt");
    EXPECT_TRUE(sheet().entry().where_text().contains("hardly the same field"));
    sheet().read();
    ASSERT_TRUE(wait_for([&] { return !sheet().message().isEmpty(); }));
    EXPECT_TRUE(sheet().isVisible());
    EXPECT_EQ(field(), nullptr);
    EXPECT_TRUE(window_.slip().notice().isEmpty());
    sheet().entry().system().line().setText("32613");
    ASSERT_TRUE(wait_for([&] { return !sheet().entry().system().searching(); }));
    take_first_system();
    read();
    EXPECT_EQ(field()->survey.mounds.size(), 65U);
}

TEST_F(Reading, AnotherSeparatorPartsTheRowsAnewAndGuessesTheColumnsByTheirHeadings) {
    lay_out(messy_.files({"phone.csv"}));
    const FileLook guessed = desk().looks()[0];
    sheet().entry().separator().pick(2);  // tab
    ASSERT_TRUE(wait_for([&] { return desk().settled(); }));
    EXPECT_EQ(desk().looks()[0].preview->columns, 1U);
    EXPECT_TRUE(needs_answer(desk().looks()[0]));
    sheet().entry().separator().pick(1);
    ASSERT_TRUE(wait_for([&] { return desk().settled(); }));
    EXPECT_EQ(desk().looks()[0].table->roles, guessed.table->roles);
    EXPECT_EQ(desk().looks()[0].marks, guessed.marks);
    EXPECT_GT(guessed.marks, 0U);
}

TEST_F(Reading, ProseAmongTheFilesIsLeftOutAndTheRestIsRead) {
    const QTemporaryDir folder;
    const std::filesystem::path prose = folder.filePath("read-me.txt").toStdString();
    std::ofstream(prose) << "walked on a wet morning\nthe dog came along too\nsee you next week then";
    lay_out({messy_ / "phone.csv", prose});
    EXPECT_TRUE(desk().left_out(entry_of("read-me.txt")));
    EXPECT_FALSE(desk().left_out(entry_of("phone.csv")));
    EXPECT_EQ(desk().open_questions(), 0U);
    read();
    EXPECT_EQ(field()->survey.mounds.size(), 20U);
    EXPECT_TRUE(window_.slip().notice().contains("read-me.txt"));
}

TEST_F(Reading, ReadAgainWithOtherColumnsKeepsDecisionsAndTheirHistory) {
    lay_out(messy_.files({"phone.csv", "north-half.gpx"}));
    look_at("phone.csv");
    mean(3, "not used");
    read();
    ASSERT_TRUE(wait_for([&] { return window_.session().plan_is_current(); }));
    ASSERT_FALSE(window_.session().plan()->sets.empty());
    window_.session().decide_on(window_.session().plan()->probes.front().key, SetChoice::dropped);
    const auto decisions = field()->survey.decisions;
    const auto fans = [&] {
        return std::count_if(field()->survey.mounds.begin(), field()->survey.mounds.end(),
                             [](const Mound& mound) { return mound.fan.has_value(); });
    };
    const auto fans_before = fans();
    desk().lay_out_again();
    ASSERT_TRUE(wait_for([&] { return sheet().isVisible() && desk().settled(); }));
    look_at("phone.csv");
    EXPECT_EQ(desk().looks()[entry_of("phone.csv")].table->roles.at(3), ColumnRole::none) << "what was said is remembered";
    mean(3, "fan bearing");
    read();
    EXPECT_EQ(fans(), fans_before + 15);
    EXPECT_EQ(field()->survey.decisions, decisions);
    EXPECT_TRUE(window_.session().not_handed_out());
    // reading anew is an act, too
    window_.session().history().undo();
    EXPECT_EQ(fans(), fans_before);
    EXPECT_EQ(window_.session().told().read.tables.at(messy_ / "phone.csv").roles.at(3), ColumnRole::none);
    EXPECT_EQ(field()->survey.decisions, decisions);
    window_.session().history().undo();
    EXPECT_TRUE(field()->survey.decisions.empty());
}

TEST_F(Reading, FilesDroppedWhileOthersLieOpenJoinThem) {
    lay_out(messy_.files({"phone.csv"}));
    mean(4, "not used");
    window_.open_files(messy_.files({"second-receiver.gpx"}));
    ASSERT_TRUE(wait_for([&] { return desk().looks().size() == 2 && desk().settled(); }));
    EXPECT_EQ(desk().looks()[entry_of("phone.csv")].table->roles.at(4), ColumnRole::none);
}

TEST_F(Reading, AFileThatIsGoneIsNotTakenOutOfTheFieldUnasked) {
    const QTemporaryDir folder;
    const std::filesystem::path copy = folder.filePath("second-receiver.gpx").toStdString();
    std::filesystem::copy_file(messy_ / "second-receiver.gpx", copy);
    window_.open_files({messy_ / "north-half.gpx", copy});
    ASSERT_TRUE(wait_for([&] { return window_.session().plan_is_current(); }));
    const auto before = field();
    std::filesystem::remove(copy);
    desk().lay_out_again();
    ASSERT_TRUE(wait_for([&] { return sheet().isVisible() && desk().settled(); }));
    sheet().read();
    EXPECT_TRUE(sheet().isVisible());
    EXPECT_TRUE(sheet().message().contains("second-receiver.gpx"));
    EXPECT_EQ(field(), before);
}

TEST_F(Reading, ALargeTableIsLookedIntoWhileTheWindowGoesOn) {
    const QTemporaryDir folder;
    const std::filesystem::path large = folder.filePath("large.csv").toStdString();
    {
        std::ofstream stream(large);
        stream << "name,lat,lon,fan";
        for (int i = 4; i < 1000; ++i) stream << ",c" << i;
        for (int row = 0; row < 20; ++row) {
            stream << "\nw" << row << ",41.0" << 100 + row << ",-104.9,90";
            for (int i = 4; i < 1000; ++i) stream << ',' << i;
        }
        for (int row = 20; row < 200000; ++row) stream << "\nm" << row << ",41.00" << 1000 + row % 9000 << ",-104.9,90";
    }
    QElapsedTimer since;
    since.start();
    qint64 longest_ms = 0;
    int beats = 0;
    QTimer beat;
    QObject::connect(&beat, &QTimer::timeout, &window_, [&] {
        longest_ms = std::max(longest_ms, since.restart());
        ++beats;
    });
    beat.start(1);
    lay_out({large});
    EXPECT_EQ(desk().looks()[0].marks, 200000U);
    EXPECT_EQ(desk().looks()[0].preview->rows.size(), 20U);
    EXPECT_EQ(sheet().entry().columns().columns().columnCount(), 1000);
    EXPECT_GT(beats, 20);
    RecordProperty("longest_block_ms", std::to_string(longest_ms));
}

}  // namespace
}  // namespace plugside
