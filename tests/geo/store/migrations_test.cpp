// Files of earlier forms come forward with a copy kept; newer ones are refused; both leave nothing lost.
#include "geo/store/migrations.h"

#include <gtest/gtest.h>

#include "geo/store/project_store.h"
#include "tests/geo/example_field.h"
#include "tests/geo/store/form_1.h"
#include "tests/geo/store/form_2.h"
#include "tests/geo/temporary_folder.h"

namespace plugside {
namespace {

using namespace testing_support;

void run_on(const std::filesystem::path& file, const std::string& sql) {
    sqlite3* database = nullptr;
    ASSERT_EQ(sqlite3_open(file.c_str(), &database), SQLITE_OK);
    char* said = nullptr;
    EXPECT_EQ(sqlite3_exec(database, sql.c_str(), nullptr, nullptr, &said), SQLITE_OK) << said;
    sqlite3_close(database);
}

std::string why(const std::filesystem::path& file) {
    const auto opened = ProjectStore::open(file);
    return opened ? "" : sentence(opened.error());
}

TEST(Migrations, AFileOfTheFirstFormComesForwardWithACopyKeptBeside) {
    const TemporaryFolder folder;
    const auto file = folder / "hay.plugside";
    run_on(file, project_of_form_1);
    const std::string before = content_of(file);
    {
        const auto opened = ProjectStore::open(file);
        ASSERT_TRUE(opened) << sentence(opened.error());
        ASSERT_TRUE(opened->earlier_kept_as());
        EXPECT_EQ(*opened->earlier_kept_as(), folder / "hay (form 1).plugside");
        const Project& project = *opened->project();
        const Survey& survey = project.field->survey;
        EXPECT_EQ(project.field->field_name, "Upper hay piece");
        EXPECT_EQ(survey.revision, 12U);
        EXPECT_EQ(project.field->frame.centre(), (GeographicPoint{-120.5, 38.25}));
        ASSERT_EQ(survey.walks.size(), 1U);
        EXPECT_EQ(survey.walks.front().bearings_from, North::not_told);
        const TrackSegment track{{{1.0, 2.0}, UtcTime{std::chrono::seconds(1)}}, {{3.0, 4.0}, std::nullopt}};
        EXPECT_EQ(survey.walks.front().segments, std::vector<TrackSegment>{track});
        ASSERT_EQ(survey.mounds.size(), 1U);
        EXPECT_EQ(survey.mounds.front().plug, (LocalPoint{12.5, -40.25}));
        EXPECT_EQ(survey.mounds.front().fan, Bearing::degrees(135.0));
        const SetDecision moved{
            {ProbeKind::plug_side, "M001", ""}, SetChoice::moved, LadderPlace{Metres::of(0.25), Metres::of(-0.125)}};
        EXPECT_EQ(survey.decisions, std::vector<SetDecision>{moved});
        EXPECT_EQ(project.steps, (std::vector<std::vector<std::filesystem::path>>{{folder / "morning.gpx"}}));
        EXPECT_TRUE(project.pictures.empty());
        EXPECT_TRUE(project.not_handed_out);  // there is a decision, and nothing says that it went out
    }
    EXPECT_EQ(content_of(folder / "hay (form 1).plugside").size(), before.size());
    const auto again = ProjectStore::open(file);
    ASSERT_TRUE(again);
    EXPECT_FALSE(again->earlier_kept_as());
    EXPECT_EQ(folder.entries(), 2U);
}

TEST(Migrations, APicturePlacedInTheSecondFormHasNoPairsYetAndStaysPlaced) {
    const TemporaryFolder folder;
    run_on(folder / "hay.plugside", project_of_form_2);
    const auto opened = ProjectStore::open(folder / "hay.plugside");
    ASSERT_TRUE(opened) << sentence(opened.error());
    const Project& project = *opened->project();
    ASSERT_EQ(project.pictures.size(), 1U);
    ImageryAnswers placed;
    placed.placement = PicturePlacement{{10.0, 20.0}, {0.5, 0.0}, {0.0, -0.5}};
    EXPECT_EQ(project.pictures.front(), (ProjectPicture{folder / "plat.jpg", true, placed}));
    EXPECT_EQ(project.imagery_tone, 0.25);
    EXPECT_EQ(project.units, LengthUnits::metres);
    EXPECT_EQ(project.field->survey.walks.front().bearings_from, North::magnetic_north);
}

TEST(Migrations, TheCopyThatIsKeptIsAWholeProjectOfItsForm) {
    const TemporaryFolder folder;
    run_on(folder / "hay.plugside", project_of_form_1);
    { ASSERT_TRUE(ProjectStore::open(folder / "hay.plugside")); }
    const auto copy = ProjectStore::open(folder / "hay (form 1).plugside");
    ASSERT_TRUE(copy) << sentence(copy.error());
    EXPECT_EQ(*copy->earlier_kept_as(), folder / "hay (form 1) (form 1).plugside");
    EXPECT_EQ(copy->project()->field->survey.revision, 12U);
}

TEST(Migrations, ACopyNeverTakesAnotherFilesName) {
    const TemporaryFolder folder;
    run_on(folder / "hay.plugside", project_of_form_1);
    folder.file("hay (form 1).plugside", "someone's own");
    const auto opened = ProjectStore::open(folder / "hay.plugside");
    ASSERT_TRUE(opened);
    EXPECT_EQ(*opened->earlier_kept_as(), folder / "hay (form 1, 2).plugside");
    EXPECT_EQ(content_of(folder / "hay (form 1).plugside"), "someone's own");
}

TEST(Migrations, AnEarlierFileThatCannotBeReadStaysAsItWasAndLeavesNoCopy) {
    const TemporaryFolder folder;
    const auto file = folder / "hay.plugside";
    run_on(file, project_of_form_1);
    run_on(file, "UPDATE mounds SET kind = 'dragon'");
    const std::string before = content_of(file);
    EXPECT_NE(why(file).find("table mounds, row 0"), std::string::npos) << why(file);
    EXPECT_EQ(content_of(file), before);
    EXPECT_EQ(folder.entries(), 1U);
}

TEST(Migrations, ANewerFormIsRefusedByASentenceAndLeftAlone) {
    const TemporaryFolder folder;
    const auto file = folder / "hay.plugside";
    Project project;
    project.field = std::make_shared<const FieldSurvey>(answered_field());
    { ASSERT_TRUE(ProjectStore::make(file, std::make_shared<const Project>(project))); }
    run_on(file, "PRAGMA user_version = 4; CREATE TABLE what_is_to_come (number INTEGER PRIMARY KEY) STRICT");
    const std::string before = content_of(file);
    EXPECT_NE(why(file).find("hay.plugside: found a project of form 4, which a later version wrote, expected form 3"),
              std::string::npos)
        << why(file);
    EXPECT_EQ(content_of(file), before);
    EXPECT_EQ(folder.entries(), 1U);
}

TEST(Migrations, AFileThatWasBroughtForwardHasTheTablesOfANewOne) {
    const TemporaryFolder folder;
    run_on(folder / "hay.plugside", project_of_form_1);
    { ASSERT_TRUE(ProjectStore::open(folder / "hay.plugside")); }
    const auto database = Database::open(folder / "hay.plugside", "hay");
    ASSERT_TRUE(database);
    EXPECT_TRUE(judge(*database, newest_project_form));
    EXPECT_EQ(database->whole("PRAGMA user_version").value(), newest_project_form);
    EXPECT_EQ(database->whole("SELECT count(*) FROM pragma_foreign_key_check").value(), 0);
}

TEST(Migrations, PairsOfWhichOneSideIsMissingAreRefusedByTableAndRow) {
    const TemporaryFolder folder;
    const auto file = folder / "hay.plugside";
    run_on(file, project_of_form_2);
    { ASSERT_TRUE(ProjectStore::open(file)); }
    run_on(file, "UPDATE pictures SET pair_spots = x'01000000000000000000F03F0000000000000040'");
    EXPECT_NE(why(file).find("table pictures, row 0"), std::string::npos) << why(file);
}

}  // namespace
}  // namespace plugside
