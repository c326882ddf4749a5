// Files of a farm's own, written by the vector library's own command: what other programs write, not what ours would.
#include "geo/read/gis_layers.h"

#include <gtest/gtest.h>

#include "geo/read/field_reader.h"
#include "tests/geo/temporary_folder.h"

namespace plugside {
namespace {

using namespace testing_support;

const std::string points =
    R"({"type":"FeatureCollection","name":"heaps","features":[
{"type":"Feature","properties":{"Nombre":"M1","rumbo":135.5,"nota":"fresh","when":"2026-03-01T09:30:00Z","hdop":1.5,"colour":"red"},"geometry":{"type":"Point","coordinates":[-120.0001,38.2501]}},
{"type":"Feature","properties":{"Nombre":"M2","rumbo":null,"nota":"mole","when":null,"hdop":null,"colour":"red"},"geometry":{"type":"Point","coordinates":[-120.0003,38.2502]}}]})";

std::string shape(const std::string& layer, const std::string& geometry) {
    return R"({"type":"FeatureCollection","name":")" + layer +
           R"(","features":[{"type":"Feature","properties":{"name":"n","note":"why"},"geometry":)" + geometry + "}]}";
}
const std::string a_line = R"({"type":"LineString","coordinates":[[-120.0001,38.2501],[-120.0003,38.2502]]})";
const std::string an_area =
    R"({"type":"Polygon","coordinates":[[[-120.001,38.249],[-119.999,38.249],[-119.999,38.251],[-120.001,38.249]]]})";

// Writes `content` as another format; options go to the writer.
std::filesystem::path written(const TemporaryFolder& folder, const std::string& content, const std::string& name,
                              const std::string& driver, const std::string& options = "") {
    const auto source = folder.file("source.geojson", content);
    const auto file = folder / name;
    const std::string program =
        "/usr/bin/python3 -c \"from osgeo import gdal; gdal.UseExceptions(); gdal.VectorTranslate('" + file.string() +
        "','" + source.string() + "',options='-f \\\"" + driver + "\\\" " + options + "')\"";
    EXPECT_EQ(run(program, folder / "said.txt"), 0) << content_of(folder / "said.txt");
    return file;
}

GeographicFile good(tl::expected<GeographicFile, Refusal> file) {
    EXPECT_TRUE(file.has_value()) << (file ? "" : sentence(file.error()));
    return file.value_or(GeographicFile{});
}

struct Format {
    const char* name;
    const char* driver;
    const char* options;
};

class OfEachFormat : public ::testing::TestWithParam<Format> {};

TEST_P(OfEachFormat, points_are_mounds_by_the_meaning_of_their_columns) {
    const TemporaryFolder folder;
    const auto file = written(folder, points, GetParam().name, GetParam().driver, GetParam().options);
    auto guesses = guess_layers(file);
    ASSERT_TRUE(guesses.has_value()) << sentence(guesses.error());
    ASSERT_EQ(guesses->size(), 1U);
    const auto role_of = [&](const std::string& column) {
        for (std::size_t i = 0; i < guesses->front().columns.size(); ++i)
            if (guesses->front().columns[i] == column) return guesses->front().roles[i];
        return ColumnRole::none;
    };
    EXPECT_EQ(role_of("rumbo"), ColumnRole::fan_bearing);
    const GeographicFile read = good(read_gis_layers(file, *guesses));
    ASSERT_EQ(read.walks.size(), 1U);
    ASSERT_EQ(read.walks[0].marks.size(), 2U);
    const GeographicMark& first = read.walks[0].marks[0];
    EXPECT_NEAR(first.at.longitude_degrees, -120.0001, 1e-9);
    EXPECT_NEAR(first.at.latitude_degrees, 38.2501, 1e-9);
    EXPECT_EQ(first.fan_degrees, 135.5);
    EXPECT_EQ(first.mound.freshness, Freshness::fresh);
    ASSERT_TRUE(first.mound.receiver.has_value());
    EXPECT_EQ(first.mound.receiver->hdop, 1.5);
    EXPECT_EQ(first.mound.name, "M1");
    EXPECT_EQ(read.walks[0].marks[1].mound.kind, SignKind::mole);
    EXPECT_FALSE(read.walks[0].marks[1].fan_degrees.has_value());
}

INSTANTIATE_TEST_SUITE_P(GisLayers, OfEachFormat,
                         ::testing::Values(Format{"heaps.gpkg", "GPKG", ""}, Format{"heaps.geojson", "GeoJSON", ""},
                                           Format{"heaps.kml", "KML", "-dsco NameField=Nombre"},
                                           Format{"heaps.shp", "ESRI Shapefile", "-t_srs EPSG:32610"},
                                           Format{"heaps.fgb", "FlatGeobuf", "-t_srs EPSG:26943"}),
                         [](const auto& format) {
                             std::string name = format.param.driver;
                             std::erase(name, ' ');
                             return name;
                         });

TEST(GisLayers, are_used_as_their_names_say_and_as_a_person_says) {
    const TemporaryFolder folder;
    const auto track = written(folder, shape("Recorrido", a_line), "track.gpkg", "GPKG");
    EXPECT_EQ(good(read_gis_layers(track, {})).walks.at(0).segments.size(), 1U);
    auto guesses = *guess_layers(track);
    EXPECT_EQ(guesses[0].lines, LineUse::walks);
    guesses[0].lines = LineUse::barriers;
    const GeographicFile as_barriers = good(read_gis_layers(track, guesses));
    EXPECT_TRUE(as_barriers.walks.empty());
    EXPECT_EQ(as_barriers.ground.barriers.at(0).name, "n");
    EXPECT_EQ(as_barriers.findings.at(0).sentence, "its lines are taken as barriers");
    const auto houses = written(folder, shape("houses", an_area), "houses.fgb", "FlatGeobuf");
    const GeographicFile kept = good(read_gis_layers(houses, {}));
    EXPECT_EQ(kept.ground.keep_clear.at(0).reason, "why");
    auto as_boundary = *guess_layers(houses);
    as_boundary[0].polygons = PolygonUse::boundary;
    EXPECT_EQ(good(read_gis_layers(houses, as_boundary)).ground.boundary.size(), 1U);
}

TEST(GisLayers, without_a_reference_system_ask_for_one_and_take_it) {
    const TemporaryFolder folder;
    const auto file = written(folder, points, "heaps.shp", "ESRI Shapefile", "-t_srs EPSG:32610");
    std::filesystem::remove(folder / "heaps.prj");
    const auto refused = read_field({file});
    ASSERT_FALSE(refused.has_value());
    EXPECT_EQ(refused.error().code, Refusal::Code::needs_reference_system);
    auto guesses = *guess_layers(file);
    EXPECT_FALSE(guesses[0].has_reference_system);
    guesses[0].reference_system = "EPSG:32610";
    ReadChoices choices;
    choices.layers[file] = guesses;
    const auto field = read_field({file}, choices);
    ASSERT_TRUE(field.has_value()) << sentence(field.error());
    EXPECT_NEAR(field->frame.to_geographic(field->survey.mounds.at(0).plug).longitude_degrees, -120.0001, 1e-8);
}

TEST(GisLayers, of_a_shapefile_dropped_with_all_its_parts_are_one_file) {
    const TemporaryFolder folder;
    const auto file = written(folder, points, "heaps.shp", "ESRI Shapefile");
    const auto field = read_field({folder / "heaps.dbf", folder / "heaps.shp", folder / "heaps.shx", folder / "heaps.prj"});
    ASSERT_TRUE(field.has_value()) << sentence(field.error());
    EXPECT_EQ(field->survey.mounds.size(), 2U);
    EXPECT_EQ(field->survey.walks.at(0).source, "heaps.shp, heaps");
    EXPECT_FALSE(read_field({folder / "heaps.dbf"}).has_value());
}

TEST(GisLayers, of_our_own_names_need_no_guess) {
    const TemporaryFolder folder;
    const auto guesses = guess_layers(written(folder, shape("keep_clear_areas", an_area), "ours.gpkg", "GPKG"));
    ASSERT_TRUE(guesses.has_value());
    EXPECT_TRUE(guesses->empty());
}

}  // namespace
}  // namespace plugside
