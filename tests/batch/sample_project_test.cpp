// The sample is what its README says: made by its command, whole, and planned into every layer.
#include <gtest/gtest.h>
#include <sqlite3.h>

#include <memory>
#include <set>

#include "app/batch/sample_fields.h"
#include "geo/imagery/tile_maker.h"
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
    const Outcome outcome = run_batch({"simulate", "--sample", "creek-meadow", "--imagery", "--out", folder.at("again")});
    ASSERT_EQ(outcome.code, 0) << outcome.err;
    EXPECT_EQ(content_of(folder.at("again/walk.gpx")), content_of(sample + "walk.gpx"));
    // the database file itself carries the version of the library that wrote it: its rows are compared
    const auto same_rows = [&](const std::string& file, const std::string& query) {
        const std::string rows = rows_of(sample + file, query);
        EXPECT_GT(rows.size(), 10u) << query;
        EXPECT_EQ(rows, rows_of(folder.at("again/" + file), query)) << query;
    };
    // another version of the JPEG library may pack the picture differently, but not far from as well
    const auto picture_bytes = [](const std::string& file) { return static_cast<double>(std::filesystem::file_size(file)); };
    EXPECT_NEAR(picture_bytes(folder.at("again/imagery.tif")) / picture_bytes(sample + "imagery.tif"), 1.0, 0.02);
    same_rows("truth.gpkg", "select hex(geom), system_id, fan_bearing, mark from true_mounds");
    same_rows("truth.gpkg", "select hex(geom), system_id, depth_m from true_runs");
    same_rows("ground.gpkg", "select hex(geom) from field_boundaries");
    same_rows("ground.gpkg", "select hex(geom), name from barriers");
    same_rows("ground.gpkg", "select hex(geom), name, reason, kind from keep_clear_areas");
    same_rows("ground.gpkg", "select hex(geom), name, width_m from gates");
}

TEST(SampleProject, HasItsImageWhereItsGroundIs) {
    ASSERT_LE(std::filesystem::file_size(sample + "imagery.tif"), 3u * 1024 * 1024);
    const LocalFrame frame = LocalFrame::centred_on(made_up_place());
    const auto source = ImagerySource::open(sample + "imagery.tif", frame);
    ASSERT_TRUE(source) << sentence(source.error());
    EXPECT_NEAR(source->facts().metres_per_pixel, 0.07, 1e-6);
    EXPECT_GE(source->facts().reduced_copies, 3);
    Polygon outline;
    outline.outer.vertices = source->facts().outline;
    const SimulatedField field = simulate_field(find_sample("creek-meadow")->options);
    for (const LocalPoint corner : field.survey.ground.boundary.parts.at(0).outer.vertices)
        EXPECT_TRUE(contains(outline, corner));
    // soil is darker and less green than the grass beside it: at fresh mounds more often than at places 3 m away
    auto maker = TileMaker::on(*source, {.size = 2048});
    ASSERT_TRUE(maker);
    const auto brown_at = [&](const ImageryTile& tile, LocalPoint corner, LocalPoint place) {
        const auto column = static_cast<std::size_t>((place.east_m - corner.east_m) * 8.0);
        const auto row = 2047 - static_cast<std::size_t>((place.north_m - corner.north_m) * 8.0);
        const std::uint8_t* seen = &tile.rgba[(row * 2048 + column) * 4];
        return seen[0] > seen[1];
    };
    int mounds = 0;
    int brown = 0;
    int brown_beside = 0;
    for (const int column : {-1, 0})
        for (const int row : {-1, 0}) {
            const TilePlace at{3, column, row};
            const auto tile = maker->make(at, TileCare::whole);
            ASSERT_TRUE(tile && !tile->empty);
            const LocalPoint corner = tile_corner(at, 2048);
            for (const TrueMound& mound : field.truth.mounds) {
                const LocalPoint fan = mound.plug + mound.fan.unit() * 0.3;
                const LocalVector in = fan - corner;
                if (in.east_m < 4.0 || in.north_m < 4.0 || in.east_m > 252.0 || in.north_m > 252.0) continue;
                ++mounds;
                brown += brown_at(*tile, corner, fan) ? 1 : 0;
                brown_beside += brown_at(*tile, corner, fan + LocalVector{3.0, 0.0}) ? 1 : 0;
            }
        }
    EXPECT_GT(mounds, 120);
    EXPECT_GT(brown, mounds * 8 / 10);
    EXPECT_LT(brown_beside, mounds * 4 / 10);
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
          "barriers", "keep_clear_areas", "gates", "unwalked_areas", "rounds", "system_alternatives", "survey_summary"}) {
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
