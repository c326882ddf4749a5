#include <gtest/gtest.h>
#include <sqlite3.h>

#include <random>

#include "geo/read/field_reader.h"
#include "geo/write/geopackage_layers.h"
#include "geo/write/ground_layers.h"
#include "tests/geo/example_field.h"
#include "tests/geo/temporary_folder.h"

namespace plugside {
namespace {

using namespace testing_support;
using Code = Refusal::Code;

std::string feature(const std::string& geometry) {
    return "{\"type\":\"FeatureCollection\",\"features\":[{\"type\":\"Feature\",\"properties\":{},\"geometry\":" + geometry +
           "}]}";
}

std::string said_of(const std::filesystem::path& file) {
    const auto field = read_field({file});
    EXPECT_FALSE(field.has_value()) << file << " was read";
    return field ? "" : sentence(field.error());
}

struct Trap {
    const char* name;
    std::string content;
    const char* part;  // of the sentence
};

TEST(HostileGround, in_geojson_is_refused_with_one_sentence) {
    const TemporaryFolder folder;
    std::string deep;
    for (int i = 0; i < 100000; ++i) deep += '[';
    for (const Trap& trap : std::vector<Trap>{
             {"truncated.geojson", "{\"type\":\"FeatureCollection\",\"features\":[{\"type\":\"Feature\",", "cannot be read"},
             {"other.json", "{\"a\": 1}", "expected GeoJSON features"},
             {"deep.geojson", "{\"type\":\"FeatureCollection\",\"features\":" + deep, "expected GeoJSON features"},
             {"huge.geojson", feature("{\"type\":\"LineString\",\"coordinates\":[[1e400,50],[10,50]]}"), "expected"},
             {"nan.geojson", feature("{\"type\":\"LineString\",\"coordinates\":[[NaN,50],[10,50]]}"), "expected"},
             {"range.geojson", feature("{\"type\":\"LineString\",\"coordinates\":[[190,50],[10,50]]}"),
              "feature 0: found a place at 190.000000, 50.000000, expected a longitude"},
             {"north.geojson", feature("{\"type\":\"LineString\",\"coordinates\":[[10,95],[10,50]]}"),
              "expected a longitude"},
             {"ring.geojson", feature("{\"type\":\"Polygon\",\"coordinates\":[[[10,50],[10.1,50],[10,50]]]}"),
              "found a ring of 2 places, expected at least three"},
             {"none.geojson", feature("null"), "found a feature without a shape"},
             {"far.geojson", feature("{\"type\":\"LineString\",\"coordinates\":[[10,50],[30,50]]}"),
              "km from the middle of the field"},
             {"flat.geojson", feature("{\"type\":\"Polygon\",\"coordinates\":[[[10,50],[10.1,50],[10.2,50],[10,50]]]}"),
              "crosses itself and cannot be repaired"}}) {
        SCOPED_TRACE(trap.name);
        const auto file = folder.file(trap.name, trap.content);
        const std::string said = said_of(file);
        EXPECT_EQ(said.rfind(file.string(), 0), 0U) << said;
        EXPECT_NE(said.find(trap.part), std::string::npos) << said;
        EXPECT_EQ(said.find('\n'), std::string::npos);
    }
}

// A ground file with one statement run on it.
std::filesystem::path spoilt(const TemporaryFolder& folder, const std::string& name, const std::string& sql) {
    const FieldSurvey field = example_field();
    EXPECT_EQ(refusal_of(write_ground(field.survey.ground, field.frame, folder / name)), "");
    sqlite3* db = nullptr;
    EXPECT_EQ(sqlite3_open((folder / name).c_str(), &db), SQLITE_OK);
    // The spatial index's triggers ask for functions that only the library has; what is spoilt here needs no index.
    const std::string without_triggers =
        "PRAGMA writable_schema=ON; DELETE FROM sqlite_master WHERE type='trigger'; PRAGMA writable_schema=RESET; " + sql;
    char* error = nullptr;
    EXPECT_EQ(sqlite3_exec(db, without_triggers.c_str(), nullptr, nullptr, &error), SQLITE_OK)
        << (error != nullptr ? error : "");
    sqlite3_close(db);
    return folder / name;
}

TEST(HostileGround, in_a_geopackage_is_refused_with_layer_and_feature) {
    const TemporaryFolder folder;
    const std::string place = "layer keep_clear_areas, feature 2: ";
    const std::vector<std::pair<std::string, std::string>> cases = {
        {"UPDATE keep_clear_areas SET geom = NULL WHERE fid = 2",
         place + "found a feature without a shape, expected a polygon."},
        {"UPDATE keep_clear_areas SET geom = (SELECT geom FROM barriers LIMIT 1) WHERE fid = 2",
         place + "found a line, expected a polygon."},
        {"UPDATE keep_clear_areas SET geom = X'00112233' WHERE fid = 2", "layer keep_clear_areas"},
        {"UPDATE gpkg_geometry_columns SET srs_id = -1; UPDATE gpkg_contents SET srs_id = -1", "found no reference system"},
        {"UPDATE gpkg_geometry_columns SET srs_id = 0; UPDATE gpkg_contents SET srs_id = 0", "found no reference system"},
        {"DELETE FROM gpkg_contents", "expected"},
        {"DROP TABLE gpkg_geometry_columns", "expected"}};
    int number = 0;
    for (const auto& [sql, part] : cases) {
        SCOPED_TRACE(sql);
        const auto file = spoilt(folder, "ground" + std::to_string(++number) + ".gpkg", sql);
        const std::string said = said_of(file);
        EXPECT_EQ(said.rfind(file.string(), 0), 0U) << said;
        EXPECT_NE(said.find(part), std::string::npos) << said;
    }
}

TEST(HostileGround, of_another_data_base_or_with_only_a_header_is_refused) {
    const TemporaryFolder folder;
    sqlite3* db = nullptr;
    ASSERT_EQ(sqlite3_open((folder / "other.gpkg").c_str(), &db), SQLITE_OK);
    ASSERT_EQ(sqlite3_exec(db, "CREATE TABLE t (a)", nullptr, nullptr, nullptr), SQLITE_OK);
    sqlite3_close(db);
    EXPECT_NE(said_of(folder / "other.gpkg"), "");
    EXPECT_NE(said_of(folder.file("header.gpkg", std::string("SQLite format 3\0", 16))), "");
    EXPECT_NE(said_of(folder.file("noise.gpkg", std::string("SQLite format 3\0", 16) + std::string(5000, '\xA5'))), "");
}

TEST(HostileGround, cut_anywhere_or_with_bytes_changed_is_read_or_refused_and_nothing_else) {
    const TemporaryFolder folder;
    const FieldSurvey field = example_field();
    ASSERT_EQ(refusal_of(write_geopackage(field, example_plan(field), folder / "plan.gpkg", LengthUnits::metres)), "");
    const std::string whole = content_of(folder / "plan.gpkg");
    std::mt19937_64 random(99);
    int refused = 0;
    for (int i = 0; i < 150; ++i) {
        std::string spoiled = whole;
        if (i % 3 == 0) spoiled.resize(100 + random() % (whole.size() - 200));
        for (int flips = 0; flips < 40; ++flips)
            spoiled[16 + random() % (spoiled.size() - 16)] = static_cast<char>(random());
        const auto read = read_field({folder.file("spoiled.gpkg", spoiled)});
        if (read) continue;
        ++refused;
        EXPECT_EQ(read.error().file, (folder / "spoiled.gpkg").string());
        EXPECT_FALSE(sentence(read.error()).empty());
    }
    EXPECT_GT(refused, 0);
}

TEST(HostileGround, numbers_of_a_plan_out_of_range_are_refused) {
    const TemporaryFolder folder;
    const FieldSurvey field = example_field();
    const auto file = folder / "plan.gpkg";
    for (const auto& [sql, part] : std::vector<std::pair<std::string, std::string>>{
             {"UPDATE mounds SET fan_bearing = 1e308 WHERE fid = 1", "layer mounds, feature 1: found fan_bearing"},
             {"UPDATE mounds SET fan_bearing = -1 WHERE fid = 1", "expected degrees from 0 to 360"},
             {"UPDATE mounds SET position_sd_m = 0 WHERE fid = 2", "layer mounds, feature 2: found position_sd_m"},
             {"UPDATE mounds SET geom = NULL WHERE fid = 3",
              "layer mounds, feature 3: found a mound that is not one point"}}) {
        SCOPED_TRACE(sql);
        ASSERT_EQ(refusal_of(write_geopackage(field, example_plan(field), file, LengthUnits::metres)), "");
        sqlite3* db = nullptr;
        ASSERT_EQ(sqlite3_open(file.c_str(), &db), SQLITE_OK);
        const std::string all =
            "PRAGMA writable_schema=ON; DELETE FROM sqlite_master WHERE type='trigger'; PRAGMA writable_schema=RESET; " +
            sql;
        ASSERT_EQ(sqlite3_exec(db, all.c_str(), nullptr, nullptr, nullptr), SQLITE_OK);
        sqlite3_close(db);
        const std::string said = said_of(file);
        EXPECT_NE(said.find(part), std::string::npos) << said;
    }
}

}  // namespace
}  // namespace plugside
