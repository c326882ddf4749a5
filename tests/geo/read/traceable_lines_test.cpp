#include "geo/read/traceable_lines.h"

#include <gtest/gtest.h>

#include "tests/geo/temporary_folder.h"

namespace plugside {
namespace {

using namespace testing_support;

const LocalFrame frame = LocalFrame::centred_on({-120.0, 38.25});

const std::string farm =
    R"({"type":"FeatureCollection","name":"farm","features":[
{"type":"Feature","properties":{"name":"ditch"},"geometry":{"type":"LineString","coordinates":[[-120.001,38.25],[-119.999,38.25],[-119.999,38.251]]}},
{"type":"Feature","properties":{"name":"yard"},"geometry":{"type":"Polygon","coordinates":[
[[-120.001,38.249],[-119.999,38.249],[-119.999,38.251],[-120.001,38.249]],
[[-119.9996,38.2494],[-119.9994,38.2494],[-119.9994,38.2496],[-119.9996,38.2494]]]}},
{"type":"Feature","properties":{"name":"pole"},"geometry":{"type":"Point","coordinates":[-120.0,38.25]}}]})";

std::filesystem::path as(const TemporaryFolder& folder, const char* name, const char* driver) {
    const auto source = folder.file("farm.geojson", farm);
    const std::string program =
        "/usr/bin/python3 -c \"from osgeo import gdal; gdal.UseExceptions(); gdal.VectorTranslate('" +
        (folder / name).string() + "','" + source.string() + "',options='-f \\\"" + driver + "\\\"')\"";
    EXPECT_EQ(run(program, folder / "said.txt"), 0) << content_of(folder / "said.txt");
    return folder / name;
}

void expect_ditch_and_yard(const std::vector<Traceable>& lines) {
    ASSERT_EQ(lines.size(), 2U);
    EXPECT_EQ(lines[0].name, "farm, ditch");
    EXPECT_FALSE(lines[0].line.closed);
    ASSERT_EQ(lines[0].line.vertices.size(), 3U);
    const LocalPoint start = frame.to_local({-120.001, 38.25});
    EXPECT_NEAR(lines[0].line.vertices[0].east_m, start.east_m, 1e-3);
    EXPECT_NEAR(lines[0].line.vertices[0].north_m, start.north_m, 1e-3);
    EXPECT_EQ(lines[1].name, "farm, yard");
    EXPECT_TRUE(lines[1].line.closed);
    EXPECT_EQ(lines[1].line.vertices.size(), 3U);  // the first is not repeated
    ASSERT_EQ(lines[1].holes.size(), 1U);
    EXPECT_EQ(lines[1].holes[0].size(), 3U);
}

std::string why(const tl::expected<std::vector<Traceable>, Refusal>& read) { return read ? "" : sentence(read.error()); }

TEST(TraceableLines, are_the_lines_and_outlines_of_a_farms_file) {
    const TemporaryFolder folder;
    for (const auto& [name, driver] : {std::pair{"farm.gpkg", "GPKG"}, std::pair{"again.geojson", "GeoJSON"}}) {
        const auto lines = read_traceable(as(folder, name, driver), frame);
        ASSERT_TRUE(lines) << why(lines);
        expect_ditch_and_yard(*lines);
    }
}

TEST(TraceableLines, of_a_map_file_have_their_names_too) {
    const TemporaryFolder folder;
    const auto lines = read_traceable(as(folder, "farm.kml", "LIBKML"), frame);
    ASSERT_TRUE(lines) << why(lines);
    EXPECT_EQ(lines->size(), 2U);
    EXPECT_NE(lines->front().name.find("ditch"), std::string::npos);
}

TEST(TraceableLines, are_refused_where_there_are_none_or_none_near_the_field) {
    const TemporaryFolder folder;
    const auto points =
        folder.file("points.geojson", R"({"type":"FeatureCollection","features":[{"type":"Feature","properties":{},)"
                                      R"("geometry":{"type":"Point","coordinates":[-120.0,38.25]}}]})");
    EXPECT_NE(why(read_traceable(points, frame)).find("no line and no area"), std::string::npos);
    const auto far_off = folder.file("farm.geojson", farm);
    EXPECT_NE(why(read_traceable(far_off, LocalFrame::centred_on({10.0, 50.0}))).find("further than 50 km"),
              std::string::npos);
    EXPECT_NE(why(read_traceable(folder.file("walk.csv", "name,x\n1,2\n"), frame)).find("another kind"), std::string::npos);
    EXPECT_NE(why(read_traceable(folder / "not-there.gpkg", frame)), "");
}

}  // namespace
}  // namespace plugside
