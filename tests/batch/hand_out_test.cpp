// plugside-batch plan in every format that is handed out, looked at by a reader without the program's code; sets dropped at a stop; all or
// nothing.
#include <gtest/gtest.h>

#include "core/plan/make_plan.h"
#include "geo/read/field_reader.h"
#include "tests/batch/run_program.h"
#include "tests/geo/expected_hand_out.h"

namespace plugside::testing_batch {
namespace {

const std::string meadow = PLUGSIDE_SOURCE_DIR "/sample-projects/creek-meadow/";
const std::string school = PLUGSIDE_SOURCE_DIR "/sample-projects/school-field/";

bool has(const std::string& text, const std::string& part) { return text.find(part) != std::string::npos; }

std::size_t times(const std::string& text, const std::string& part) {
    std::size_t count = 0;
    for (std::size_t at = text.find(part); at != std::string::npos; at = text.find(part, at + 1)) ++count;
    return count;
}

std::vector<std::string> school_plan(const std::vector<std::string>& more) {
    std::vector<std::string> words{"plan",  school + "walk.gpx", "--ground",     school + "ground.gpkg",
                                   "--day", "2025-04-10",        "--conditions", school + "conditions.txt"};
    words.insert(words.end(), more.begin(), more.end());
    return words;
}

TEST(HandOut, InEveryFormatCarriesEverySetToASecondReaderWithinACentimetre) {
    const TemporaryFolder folder;
    const Outcome outcome =
        run_batch({"plan", meadow + "walk.gpx", "--ground", meadow + "ground.gpkg", "--out", folder.at("p.gpkg"),
                   "--waypoints", folder.at("s.gpx"), "--route", folder.at("r.gpx"), "--export", folder.at("p.KML"),
                   "--export", folder.at("p.geojson"), "--export", folder.at("p.shp"), "--export", folder.at("p.csv")});
    ASSERT_EQ(outcome.code, 0) << outcome.err;
    EXPECT_TRUE(
        has(outcome.out, "Written: " + folder.at("p_*.shp") + " (66 files)\n  Names of columns have ten characters"));
    EXPECT_TRUE(has(outcome.out, "notes in all but the GeoPackage."));
    const auto field = read_field({meadow + "walk.gpx", meadow + "ground.gpkg"});
    ASSERT_TRUE(field.has_value());
    const auto plan = make_plan(field->survey);
    ASSERT_TRUE(plan.has_value());
    const testing_support::TemporaryFolder scratch;
    using enum HandOutFormat;
    EXPECT_EQ(testing_support::hand_out_reader_says({{geopackage, folder.at("p.gpkg")},
                                                     {gpx_waypoints, folder.at("s.gpx")},
                                                     {gpx_route, folder.at("r.gpx")},
                                                     {kml, folder.at("p.KML")},
                                                     {geojson, folder.at("p.geojson")},
                                                     {shapefile, folder.at("p.shp")},
                                                     {csv, folder.at("p.csv")}},
                                                    *field, *plan, PrivateRows::left_out, scratch),
              "");
}

TEST(HandOut, HoldsNotesOnlyWhereTheyAreAskedFor) {
    const TemporaryFolder folder;
    for (const bool asked : {false, true}) {
        std::vector<std::string> words{"plan", meadow + "walk.gpx", "--export", folder.at("p.csv")};
        if (asked) words.emplace_back("--with-private");
        ASSERT_EQ(run_batch(words).code, 0);
        EXPECT_EQ(has(content_of(folder.at("p_mounds.csv")), ",note"), asked);
    }
}

TEST(HandOut, OfWhichOneFileCannotBeWrittenWritesNone) {
    const TemporaryFolder folder;
    std::filesystem::create_directory(folder.at("p_mounds.shp"));
    const Outcome outcome = run_batch({"plan", meadow + "walk.gpx", "--out", folder.at("p.gpkg"), "--waypoints",
                                       folder.at("s.gpx"), "--export", folder.at("p.shp")});
    EXPECT_EQ(outcome.code, 3);
    EXPECT_TRUE(has(outcome.err, folder.at("p_mounds.shp"))) << outcome.err;
    EXPECT_TRUE(folder.holds_nothing_but({"p_mounds.shp"}));
    const Outcome unknown = run_batch({"plan", meadow + "walk.gpx", "--export", folder.at("p.docx")});
    EXPECT_EQ(unknown.code, 2);
    EXPECT_TRUE(has(unknown.err, ".gpkg, .gpx, .kml, .geojson, .shp, .csv, not ")) << unknown.err;
    // an input of the name that a table would have is not lost
    std::filesystem::copy_file(meadow + "walk.gpx", folder.at("p_mounds.csv"));
    EXPECT_EQ(run_batch({"plan", folder.at("p_mounds.csv"), "--export", folder.at("p.csv")}).code, 3);
    EXPECT_EQ(content_of(folder.at("p_mounds.csv")), content_of(meadow + "walk.gpx"));
}

TEST(HandOut, WithAStopWritesOnlyTheGeoPackageOfAllFormats) {
    const TemporaryFolder folder;
    const Outcome outcome =
        run_batch(school_plan({"--method", "paired-traps", "--export", folder.at("p.gpkg"), "--export", folder.at("p.kml"),
                               "--export", folder.at("p.csv"), "--route", folder.at("r.gpx")}));
    EXPECT_EQ(outcome.code, 4) << outcome.err;
    EXPECT_TRUE(folder.holds_nothing_but({"p.gpkg"}));
    for (const char* name : {"p.kml", "p_set_points.csv", "r.gpx"})
        EXPECT_TRUE(has(outcome.err, "Not written: " + folder.at(name) + "\n")) << name;
}

TEST(HandOut, WithoutTheSetsThatMeetAStopIsMadeAndTellsOfEach) {
    const TemporaryFolder folder;
    const Outcome outcome =
        run_batch(school_plan({"--method", "paired-traps", "--drop-stopped", "--out", folder.at("p.gpkg"), "--waypoints",
                               folder.at("s.gpx"), "--phone", folder.at("p.html")}));
    EXPECT_EQ(outcome.code, 0) << outcome.err;
    // the README of the school field names the four that lie near its gas line, of systems F and H
    EXPECT_EQ(times(outcome.out, "\nDropped "), 4U);
    EXPECT_EQ(
        times(outcome.out, ": gas line lies within 16 ft (5 m) of the probe row, and has not been marked out. (utility)"),
        4U);
    EXPECT_FALSE(has(outcome.out, "Stop ("));
    EXPECT_TRUE(folder.holds_nothing_but({"p.gpkg", "s.gpx", "p.html"}));
    for (const char* system : {" F</name>", " H</name>"}) EXPECT_FALSE(has(content_of(folder.at("s.gpx")), system));
    EXPECT_TRUE(has(content_of(folder.at("s.gpx")), " A</name>"));
    // the GeoPackage carries the decisions: nothing is left to drop
    const Outcome again = run_batch({"plan", folder.at("p.gpkg"), "--day", "2025-04-10", "--drop-stopped"});
    EXPECT_EQ(again.code, 0) << again.err;
    EXPECT_EQ(times(again.out, "Dropped "), 0U);
}

TEST(HandOut, WithoutAnySetThatMeetsNoStopIsAPlanWithoutSets) {
    const Outcome outcome = run_batch(school_plan({"--method", "fumigant", "--drop-stopped", "--language", "es"}));
    EXPECT_EQ(outcome.code, 0) << outcome.err;
    EXPECT_EQ(times(outcome.out, "\nQuitado: "), 16U) << outcome.out;
    EXPECT_TRUE(has(outcome.out, "\nNo queda ningún punto.\n"));
}

TEST(HandOut, ToldInSpanishHasNoEnglishHeading) {
    const Outcome outcome =
        run_batch(school_plan({"--method", "fumigant", "--summary", "--language", "es", "--route", "r.gpx"}));
    EXPECT_EQ(outcome.code, 4);
    for (const char* part : {"Animals", "systems", "Stop (", "Hold back", "Not known", "Mind (", "Asked for", "more",
                             " sets", "Judged", "What else", "Walked", "decide.", "mounds", "Written"})
        EXPECT_FALSE(has(outcome.out, part)) << part << " in " << outcome.out;
    for (const char* part : {"This plan", "Not written"}) EXPECT_FALSE(has(outcome.err, part)) << outcome.err;
    EXPECT_TRUE(has(outcome.out, "Alto (building, 2 puntos): "));
}

}  // namespace
}  // namespace plugside::testing_batch
