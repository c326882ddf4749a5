// Rows of answers, findings and recorded marks that no program of ours wrote: each is told in a sentence, nothing of the marks is
// lost, and nothing else of the file suffers.
#include <gtest/gtest.h>
#include <sqlite3.h>

#include "geo/read/field_reader.h"
#include "geo/write/geopackage_layers.h"
#include "tests/geo/example_field.h"
#include "tests/geo/temporary_folder.h"

namespace plugside {
namespace {

using namespace testing_support;

FieldSurvey spoilt_and_read(const TemporaryFolder& folder, const std::string& sql) {
    const FieldSurvey field = answered_field();
    EXPECT_EQ(refusal_of(write_geopackage(field, example_plan(field), folder / "plan.gpkg", LengthUnits::metres)), "");
    sqlite3* db = nullptr;
    EXPECT_EQ(sqlite3_open((folder / "plan.gpkg").c_str(), &db), SQLITE_OK);
    const std::string all =
        "PRAGMA writable_schema=ON; DELETE FROM sqlite_master WHERE type='trigger'; PRAGMA writable_schema=RESET; " + sql;
    char* error = nullptr;
    EXPECT_EQ(sqlite3_exec(db, all.c_str(), nullptr, nullptr, &error), SQLITE_OK) << (error != nullptr ? error : "");
    sqlite3_close(db);
    auto back = read_field({folder / "plan.gpkg"});
    EXPECT_TRUE(back.has_value()) << (back ? "" : sentence(back.error()));
    return back.value_or(FieldSurvey{});
}

bool is_told(const FieldSurvey& field, const std::string& part) {
    return std::any_of(field.findings.begin(), field.findings.end(), [&](const ReadFinding& finding) {
        return (finding.place + ": " + finding.sentence).find(part) != std::string::npos;
    });
}

std::string all_told(const FieldSurvey& field) {
    std::string text;
    for (const ReadFinding& finding : field.findings) text += finding.place + ": " + finding.sentence + "\n";
    return text;
}

// As they stand, whatever became of the answers: what an answer made of a mark and is lost stays as a mend of its own.
void expect_marks_kept(const FieldSurvey& back) {
    const FieldSurvey field = answered_field();
    expect_same_mounds(field, back, 0.3);
    for (std::size_t i = 0; i < back.survey.mounds.size(); ++i)
        EXPECT_EQ(back.survey.mounds[i].set_aside_because, field.survey.mounds[i].set_aside_because) << i;
}

struct Trap {
    const char* sql;
    const char* part;       // of the finding
    const char* gone = "";  // the answer that counts no more
};

TEST(HostileAnswers, are_told_and_lose_no_mark) {
    const std::string place = "layer finding_answers, feature ";
    for (const Trap& trap : std::vector<Trap>{
             {"UPDATE finding_answers SET answer = 'perhaps' WHERE fid = 2", "(\"perhaps\" to \"own move: other mole\")"},
             {"UPDATE finding_answers SET answer = NULL WHERE fid = 3", "an answer was not understood"},
             {"UPDATE finding_answers SET finding_id = '' WHERE fid = 4", "an answer was not understood",
              "compass offset: walk 1"},
             {"UPDATE finding_answers SET mend = 'explode' WHERE fid = 2", "(mend \"explode\"); the finding is open again"},
             {"UPDATE finding_answers SET mend = NULL WHERE fid = 2", "(mend \"\"); the finding is open again"},
             {"UPDATE finding_answers SET mend = 7 WHERE fid = 1", "(mend \"7\"); the finding stays refused"},
             {"UPDATE finding_answers SET marks = 'M001' WHERE fid = 4", "(marks \"M001\")", "compass offset: walk 1"},
             {"UPDATE finding_answers SET marks = '[\"nobody\"]' WHERE fid = 4",
              "names the mark \"nobody\", which is not there"},
             {"UPDATE finding_answers SET marks = '[\"M001\"' WHERE fid = 1", "stays refused"},
             {"UPDATE finding_answers SET to_places = '[[1e999,0]]' WHERE fid = 2", "(to_places"},
             {"UPDATE finding_answers SET to_places = '[[10,20],[1,2]]' WHERE fid = 2", "moves a mark away from the field"},
             {"UPDATE finding_answers SET to_places = '[[10,20]]' WHERE fid = 1", "stays refused"},
             {"UPDATE finding_answers SET fan_bearing = 9e999 WHERE fid = 3", "(fan_bearing"},
             {"UPDATE finding_answers SET fan_bearing = -1 WHERE fid = 3", "(fan_bearing"},
             {"UPDATE finding_answers SET turn_degrees = 9e999 WHERE fid = 4", "(turn_degrees", "compass offset: walk 1"},
             {"UPDATE finding_answers SET turn_degrees = 1e300 WHERE fid = 4", "(turn_degrees", "compass offset: walk 1"},
             {"UPDATE finding_answers SET sign = 'dragon' WHERE fid = 6", "(sign \"dragon\")"},
             {"UPDATE finding_answers SET freshness = 'crisp' WHERE fid = 7", "(freshness \"crisp\")"},
             {"UPDATE finding_answers SET position_sd_m = -2 WHERE fid = 6", "(position_sd_m"},
             {"UPDATE finding_answers SET finding_id = 'own move: other mole' WHERE fid = 3", "a second answer"}}) {
        SCOPED_TRACE(trap.sql);
        const TemporaryFolder folder;
        const FieldSurvey back = spoilt_and_read(folder, trap.sql);
        EXPECT_TRUE(is_told(back, trap.part)) << all_told(back);
        EXPECT_TRUE(is_told(back, place)) << all_told(back);
        if (*trap.gone != '\0') {
            EXPECT_EQ(answer_to(back.survey, trap.gone), nullptr);
        }
        expect_marks_kept(back);
    }
}

TEST(HostileAnswers, a_column_of_the_wrong_type_is_told_and_loses_no_mark) {
    const TemporaryFolder folder;
    const FieldSurvey back = spoilt_and_read(
        folder,
        "ALTER TABLE finding_answers DROP COLUMN turn_degrees; ALTER TABLE finding_answers ADD COLUMN turn_degrees "
        "TEXT; UPDATE finding_answers SET turn_degrees = 'a little'");
    EXPECT_TRUE(is_told(back, "(turn_degrees \"a little\"")) << all_told(back);
    expect_marks_kept(back);
}

TEST(HostileAnswers, records_that_cannot_be_are_told_and_the_mark_stands_as_its_row_says) {
    for (const Trap& trap : std::vector<Trap>{
             {"UPDATE mounds SET recorded_lon = 400 WHERE mound_id = 'other mole'", "(recorded_lon \"400.0"},
             {"UPDATE mounds SET recorded_lat = 9e999 WHERE mound_id = 'other mole'", "(recorded_lat"},
             {"UPDATE mounds SET recorded_lat = NULL WHERE mound_id = 'other mole'", "(recorded_lat \"\""},
             {"UPDATE mounds SET recorded_lon = 10 WHERE mound_id = 'other mole'", "lies away from the field"},
             {"UPDATE mounds SET recorded_fan_bearing = 361 WHERE mound_id = 'M001'", "(recorded_fan_bearing"},
             {"UPDATE mounds SET recorded_kind = 'dragon' WHERE mound_id = 'other other'", "(recorded_kind \"dragon\""},
             {"UPDATE mounds SET recorded_freshness = 3 WHERE mound_id = 'other vole'", "(recorded_freshness \"3\""},
             {"UPDATE mounds SET recorded_position_sd_m = 0 WHERE mound_id = 'M002'", "(recorded_position_sd_m"},
             {"UPDATE mounds SET recorded_kind = 'vole' WHERE mound_id = 'M004'", "feature 4: what was recorded"}}) {
        SCOPED_TRACE(trap.sql);
        const TemporaryFolder folder;
        const FieldSurvey back = spoilt_and_read(folder, trap.sql);
        EXPECT_TRUE(is_told(back, trap.part)) << all_told(back);
        EXPECT_TRUE(is_told(back, "layer mounds, feature ")) << all_told(back);
        expect_marks_kept(back);
        EXPECT_GE(back.survey.answers.size(), answered_field().survey.answers.size());
    }
}

TEST(HostileAnswers, findings_of_coordinates_that_cannot_be_are_told_and_not_used) {
    for (const Trap& trap : std::vector<Trap>{
             {"UPDATE findings SET marks = 'M005' WHERE fid = 1", "(marks \"M005\""},
             {"UPDATE findings SET marks = '[]' WHERE fid = 1", "(marks \"\""},
             {"UPDATE findings SET marks = '[\"nobody\"]' WHERE fid = 1", "of marks or a place that are not there"},
             {"UPDATE findings SET finding_id = NULL WHERE fid = 1", "(finding_id \"\""},
             {"UPDATE findings SET probability = 1.5 WHERE fid = 1", "(probability \"1.5"},
             {"UPDATE findings SET probability = 9e999 WHERE fid = 1", "(probability"},
             {"UPDATE findings SET geom = NULL WHERE fid = 1", "it is not at one point"}}) {
        SCOPED_TRACE(trap.sql);
        const TemporaryFolder folder;
        const FieldSurvey back = spoilt_and_read(folder, trap.sql);
        EXPECT_TRUE(is_told(back, trap.part)) << all_told(back);
        EXPECT_TRUE(is_told(back, "layer findings, feature 1")) << all_told(back);
        EXPECT_TRUE(back.of_reading.empty());
        expect_marks_kept(back);
    }
}

TEST(HostileAnswers, corrections_of_notes_that_cannot_be_are_told_and_not_used) {
    for (const Trap& trap : std::vector<Trap>{
             {"UPDATE note_rules SET words = NULL WHERE fid = 1", "feature 1: a correction of notes has no words"},
             {"UPDATE note_rules SET walk_id = 'walk 9' WHERE fid = 1", "is of the walk \"walk 9\", which is not there"}}) {
        SCOPED_TRACE(trap.sql);
        const TemporaryFolder folder;
        const FieldSurvey back = spoilt_and_read(folder, trap.sql);
        EXPECT_TRUE(is_told(back, trap.part)) << all_told(back);
        EXPECT_EQ(back.survey.note_rules.size(), 2U);
        expect_marks_kept(back);
    }
}

// What a correction made of a mark stays, where the correction itself is gone.
TEST(HostileAnswers, an_answer_of_a_correction_that_is_not_there_leaves_the_mark_as_its_row_says) {
    const TemporaryFolder folder;
    const FieldSurvey back = spoilt_and_read(
        folder,
        "UPDATE finding_answers SET finding_id = 'note rule freshness: other vole' WHERE fid = 7; DELETE FROM note_rules");
    EXPECT_EQ(answer_to(back.survey, "note rule freshness: other vole"), nullptr);
    EXPECT_NE(answer_to(back.survey, "own freshness: other vole"), nullptr);
    expect_marks_kept(back);
}

// A kind that is not known is a later version's: judged anew like all others.
TEST(HostileAnswers, a_finding_of_an_unknown_kind_is_judged_anew_like_any) {
    const TemporaryFolder folder;
    const FieldSurvey back = spoilt_and_read(folder, "UPDATE findings SET kind = 'lost shoe'");
    EXPECT_TRUE(back.of_reading.empty());
    EXPECT_FALSE(is_told(back, "layer findings")) << all_told(back);
    expect_marks_kept(back);
}

}  // namespace
}  // namespace plugside
