// The sample is what its README says: made by its command, whole, and planned into every layer.
#include <gtest/gtest.h>
#include <sqlite3.h>

#include <memory>
#include <set>

#include "app/batch/sample_fields.h"
#include "tests/batch/run_program.h"

namespace plugside::testing_batch {
namespace {

const std::string sample = PLUGSIDE_SOURCE_DIR "/sample-projects/creek-meadow/";

std::string rows_of(const std::string& file, const std::string& query) {
    sqlite3* opened = nullptr;
    const int code = sqlite3_open_v2(file.c_str(), &opened, SQLITE_OPEN_READONLY, nullptr);
    const std::unique_ptr<sqlite3, int (*)(sqlite3*)> database(opened, sqlite3_close);
    if (code != SQLITE_OK) return "cannot open " + file;
    std::string text;
    const auto add_row = [](void* to, int count, char** values, char**) {
        for (int i = 0; i < count; ++i) *static_cast<std::string*>(to) += std::string(values[i] ? values[i] : "") + "|";
        *static_cast<std::string*>(to) += "\n";
        return 0;
    };
    char* message = nullptr;
    if (sqlite3_exec(database.get(), query.c_str(), add_row, &text, &message) != SQLITE_OK) text = message;
    sqlite3_free(message);
    return text;
}

std::string layers_of(const std::string& file) {
    return rows_of(file, "select table_name from gpkg_contents order by table_name");
}

TEST(SampleProject, IsMadeAgainByItsCommand) {
    const TemporaryFolder folder;
    const Outcome outcome = run_batch({"simulate", "--sample", "creek-meadow", "--out", folder.at("again")});
    ASSERT_EQ(outcome.code, 0) << outcome.err;
    EXPECT_EQ(content_of(folder.at("again/walk.gpx")), content_of(sample + "walk.gpx"));
    // the database file itself carries the version of the library that wrote it: its rows are compared
    const auto same_rows = [&](const std::string& file, const std::string& query) {
        const std::string rows = rows_of(sample + file, query);
        EXPECT_GT(rows.size(), 10u) << query;
        EXPECT_EQ(rows, rows_of(folder.at("again/" + file), query)) << query;
    };
    same_rows("truth.gpkg", "select hex(geom), system_id, fan_bearing, mark from true_mounds");
    same_rows("truth.gpkg", "select hex(geom), system_id, depth_m from true_runs");
    same_rows("ground.gpkg", "select hex(geom) from field_boundaries");
    same_rows("ground.gpkg", "select hex(geom), name from barriers");
    same_rows("ground.gpkg", "select hex(geom), name, reason, kind from keep_clear_areas");
}

TEST(SampleProject, IsAMeadowOfAboutOneHundredAndFortyMoundsOverTwoAndAHalfHectares) {
    const SampleField* meadow = find_sample("creek-meadow");
    ASSERT_NE(meadow, nullptr);
    EXPECT_EQ(find_sample("no such meadow"), nullptr);
    const SimulatedField field = simulate_field(meadow->options);
    EXPECT_NEAR(static_cast<double>(field.truth.mounds.size()), 140.0, 7.0);
    EXPECT_NEAR(area_m2(field.survey.ground.boundary), 25000.0, 2000.0);
    std::set<SignKind> others;
    for (const Mound& mark : field.survey.mounds)
        if (!is_gopher_sign(mark.kind)) others.insert(mark.kind);
    EXPECT_GE(others.size(), 3u);
    ASSERT_EQ(field.survey.ground.barriers.size(), 1u);
    EXPECT_EQ(field.survey.ground.barriers[0].name, "ditch");
    const Polyline& ditch = field.survey.ground.barriers[0].line;
    for (const TrueRun& run : field.truth.runs)
        for (const LocalPoint place : run.line.vertices) {
            ASSERT_GT(distance(place, ditch)->value(), 1.0);
            ASSERT_GT(distance(place, field.survey.ground.keep_clear.at(0).area).value(), 5.0);
        }
}

TEST(SampleProject, IsPlannedIntoEveryLayer) {
    const TemporaryFolder folder;
    const std::string plan = folder.at("plan.gpkg");
    const Outcome outcome = run_batch({"plan", sample + "walk.gpx", "--ground", sample + "ground.gpkg", "--out", plan});
    ASSERT_EQ(outcome.code, 0) << outcome.err;
    const std::string layers = layers_of(plan);
    for (const std::string layer :
         {"mounds", "burrow_systems", "main_runs", "probe_points", "set_points", "walk_tracks", "field_boundaries",
          "barriers", "keep_clear_areas", "unwalked_areas", "rounds", "system_alternatives", "survey_summary"}) {
        EXPECT_NE(layers.find(layer + "|"), std::string::npos) << layer;
        if (layer != "rounds" && layer != "unwalked_areas") {
            EXPECT_NE(rows_of(plan, "select count(*) from " + layer), "0|\n") << layer;
        }
    }
    // a set is meant for a system that the plan holds, and taped from a mark that it used
    EXPECT_EQ(rows_of(plan, "select count(*) from set_points where probe_id not in (select probe_id from probe_points)"),
              "0|\n");
    EXPECT_EQ(
        rows_of(plan, "select count(*) from probe_points where from_mound not in (select mound_id from mounds where used)"),
        "0|\n");
    EXPECT_EQ(rows_of(plan, "select count(*) from mounds where used = 0 and not_used_because is null"), "0|\n");
}

}  // namespace
}  // namespace plugside::testing_batch
