#include "geo/write/walk_route.h"

#include <gtest/gtest.h>

#include "tests/geo/example_field.h"
#include "tests/geo/temporary_folder.h"

namespace plugside {
namespace {

using namespace testing_support;

// Outside check: libxml2's xmllint against the GPX 1.1 schema by TopoGrafix.
std::string schema_says(const std::filesystem::path& file, const TemporaryFolder& folder) {
    const int code = run("xmllint --noout --schema '" + std::string(PLUGSIDE_SOURCE_DIR) + "/tests/published/gpx11.xsd' '" +
                             file.string() + "'",
                         folder / "said.txt");
    return code == 0 ? "" : content_of(folder / "said.txt");
}

WalkLines example_lines() {
    Ground ground;
    ground.boundary.parts.push_back({{{{0, 0}, {100, 0}, {100, 60}, {0, 60}}}, {}});
    ground.barriers.push_back({"ditch", {{{-5, 30}, {105, 30}}}});
    WalkLineOptions options;
    options.walkers = 2;
    return walk_lines(ground, {}, options);
}

TEST(WalkRoute, is_valid_against_the_schema_on_every_meridian) {
    for (const GeographicPoint centre : {GeographicPoint{-120.0, 38.25}, {-180.0, 52.0}, {179.9999, -41.0}, {0.0, 0.0}}) {
        const TemporaryFolder folder;
        const LocalFrame frame = LocalFrame::centred_on(centre);
        ASSERT_EQ(
            refusal_of(write_walk_route(example_lines(), frame, "Hay & <oats>", folder / "lines.gpx", LengthUnits::metres)),
            "");
        EXPECT_EQ(schema_says(folder / "lines.gpx", folder), "");
    }
}

TEST(WalkRoute, holds_each_route_with_its_points_in_walking_order) {
    const TemporaryFolder folder;
    const WalkLines lines = example_lines();
    const LocalFrame frame = LocalFrame::centred_on({-120.0, 38.25});
    ASSERT_EQ(refusal_of(write_walk_route(lines, frame, "Oats", folder / "lines.gpx", LengthUnits::metres)), "");
    const std::string text = content_of(folder / "lines.gpx");
    const auto count = [&](const std::string& word) {
        std::size_t found = 0;
        for (std::size_t at = text.find(word); at != std::string::npos; at = text.find(word, at + 1)) ++found;
        return found;
    };
    EXPECT_EQ(count("<rte>"), lines.routes.size());
    std::size_t points = 0;
    for (const WalkRoute& route : lines.routes) {
        points += route.way.vertices.size();
        EXPECT_NE(text.find("<name>" + route.name + "</name>"), std::string::npos);
        EXPECT_NE(text.find("<desc>" + route_in_words(route, LengthUnits::metres) + "</desc>"), std::string::npos);
    }
    EXPECT_EQ(count("<rtept "), points);
    std::size_t at = 0;
    for (const WalkRoute& route : lines.routes)
        for (const LocalPoint p : route.way.vertices) {
            at = text.find("<rtept lat=\"", at + 1);
            ASSERT_NE(at, std::string::npos);
            const double latitude = std::stod(text.substr(at + 12));
            const double longitude = std::stod(text.substr(text.find("lon=\"", at) + 5));
            const LocalPoint back = frame.to_local({longitude, latitude});
            EXPECT_NEAR(back.east_m, p.east_m, 1e-3);
            EXPECT_NEAR(back.north_m, p.north_m, 1e-3);
        }
}

TEST(WalkRoute, without_lines_is_a_valid_empty_file) {
    const TemporaryFolder folder;
    ASSERT_EQ(
        refusal_of(write_walk_route({}, LocalFrame::centred_on({0, 0}), "", folder / "lines.gpx", LengthUnits::metres)), "");
    EXPECT_EQ(schema_says(folder / "lines.gpx", folder), "");
}

}  // namespace
}  // namespace plugside
