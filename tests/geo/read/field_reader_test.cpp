#include "geo/read/field_reader.h"

#include <gtest/gtest.h>

#include "geo/write/ground_layers.h"
#include "tests/geo/example_field.h"
#include "tests/geo/read/gpx_text.h"
#include "tests/geo/temporary_folder.h"

namespace plugside {
namespace {

using namespace testing_support;

FieldSurvey read(const std::vector<std::filesystem::path>& files) {
    auto field = read_field(files);
    EXPECT_TRUE(field.has_value()) << (field ? "" : sentence(field.error()));
    return field.value_or(FieldSurvey{});
}

bool has_finding(const FieldSurvey& field, const std::string& part) {
    for (const ReadFinding& finding : field.findings)
        if (finding.sentence.find(part) != std::string::npos) return true;
    return false;
}

std::string geojson(const std::string& geometry, const std::string& more = "") {
    return "{\"type\":\"FeatureCollection\"," + more +
           "\"features\":[{\"type\":\"Feature\",\"properties\":{\"name\":\"n\"},\"geometry\":" + geometry + "}]}";
}

TEST(FieldReader, puts_walks_and_ground_on_one_plane) {
    const TemporaryFolder folder;
    const FieldSurvey example = example_field();
    ASSERT_EQ(refusal_of(write_ground(example.survey.ground, example.frame, folder / "ground.gpkg")), "");
    const auto one = folder.file(
        "one.gpx",
        gpx("<metadata><name>Creek</name></metadata>" + wpt("<name>a</name><cmt>fan 90</cmt>", "38.25", "-120.0002") +
            "<trk><trkseg><trkpt lat=\"38.25\" lon=\"-120\"/><trkpt lat=\"38.2501\" lon=\"-120\"/></trkseg></trk>"));
    const auto two = folder.file("two.gpx", gpx(wpt("<name>b</name>", "38.2502", "-120.0001")));
    const FieldSurvey field = read({one, two, folder / "ground.gpkg"});
    EXPECT_EQ(field.field_name, "Creek");
    ASSERT_EQ(field.survey.walks.size(), 2U);
    EXPECT_EQ(field.survey.walks[0].id, "walk 1");
    EXPECT_EQ(field.survey.walks[1].source, "two.gpx");
    ASSERT_EQ(field.survey.mounds.size(), 2U);
    EXPECT_EQ(field.survey.mounds[1].walk, 1U);
    EXPECT_NEAR(field.frame.centre().latitude_degrees, 38.2501, 1e-12);
    EXPECT_NEAR(field.frame.centre().longitude_degrees, -120.00015, 1e-12);
    FieldSurvey ground_only = example;
    expect_same_ground(ground_only, field);
}

TEST(FieldReader, reads_ground_without_a_walk) {
    const TemporaryFolder folder;
    const FieldSurvey example = example_field();
    ASSERT_EQ(refusal_of(write_ground(example.survey.ground, example.frame, folder / "south piece.gpkg")), "");
    const FieldSurvey field = read({folder / "south piece.gpkg"});
    EXPECT_EQ(field.field_name, "south piece");
    EXPECT_TRUE(field.survey.mounds.empty());
    EXPECT_EQ(field.survey.ground.keep_clear.size(), 2U);
    expect_same_ground(example, field);
}

TEST(FieldReader, gives_every_mark_a_name_of_its_own) {
    const TemporaryFolder folder;
    const auto one = folder.file("one.gpx", gpx(wpt("<name>a</name>") + wpt("") + wpt("<name>a</name>") +
                                                wpt("<name>M001</name>") + wpt("<name> </name>")));
    const auto two = folder.file("two.gpx", gpx(wpt("<name>a</name>") + wpt("<name>a (2)</name>")));
    const FieldSurvey field = read({one, two});
    std::vector<std::string> names;
    for (const Mound& mound : field.survey.mounds) names.push_back(mound.name);
    EXPECT_EQ(names, (std::vector<std::string>{"a", "M002", "a (2)", "M001", "M003", "a (3)", "a (2) (2)"}));
    EXPECT_TRUE(has_finding(field, "the name \"a\" is used before; the mark is called \"a (2)\""));
    EXPECT_TRUE(has_finding(field, "the mark has no name"));
}

TEST(FieldReader, turns_a_noted_fan_onto_the_plane) {
    const TemporaryFolder folder;
    // Two marks 8 km apart at latitude 60: the plane's north is off by about 0.06 degrees at each.
    const auto walk = folder.file("walk.gpx", gpx(wpt("<name>w</name><cmt>fan 90</cmt>", "60", "10") +
                                                  wpt("<name>e</name><cmt>fan 90</cmt>", "60", "10.144")));
    const FieldSurvey field = read({walk});
    for (const Mound& mound : field.survey.mounds) {
        ASSERT_TRUE(mound.fan.has_value());
        EXPECT_NEAR(mound.fan->degrees(), 90.0 + field.frame.convergence_degrees(mound.plug), 1e-12);
        EXPECT_GT(std::abs(mound.fan->degrees() - 90.0), 0.05);
    }
    EXPECT_GT(field.survey.mounds[0].fan->degrees(), 90.0);  // west of the middle, true north leans east of the plane's
    EXPECT_LT(field.survey.mounds[1].fan->degrees(), 90.0);
}

TEST(FieldReader, holds_a_field_across_the_180th_meridian_together) {
    const TemporaryFolder folder;
    const auto walk =
        folder.file("walk.gpx", gpx(wpt("<name>w</name>", "-17", "179.9999") + wpt("<name>e</name>", "-17", "-179.9999") +
                                    wpt("<name>m</name>", "-17", "180")));
    const FieldSurvey field = read({walk});
    // 0.0002 degrees of longitude at latitude 17: 0.0002 * 111319.49 * cos(17) * (1 + e2 sin2 / 2) = 21.29 m.
    EXPECT_NEAR(distance_m(field.survey.mounds[0].plug, field.survey.mounds[1].plug), 21.29, 0.02);
    EXPECT_LT(field.survey.mounds[0].plug.east_m, 0.0);
    EXPECT_NEAR(field.survey.mounds[2].plug.east_m, 0.0, 1e-6);
}

TEST(FieldReader, takes_unnamed_geojson_as_boundary_and_barriers_and_says_so) {
    const TemporaryFolder folder;
    const FieldSurvey field = read({folder.file("field.geojson",
                                                "{\"type\":\"FeatureCollection\",\"features\":["
                                                "{\"type\":\"Feature\",\"properties\":{},\"geometry\":{\"type\":\"Polygon\","
                                                "\"coordinates\":[[[10,50],[10.001,50],[10.001,50.001],[10,50]]]}},"
                                                "{\"type\":\"Feature\",\"properties\":{\"name\":\"lane\"},\"geometry\":{"
                                                "\"type\":\"LineString\",\"coordinates\":[[10,50],[10.001,50.0005]]}}]}")});
    ASSERT_EQ(field.survey.ground.boundary.parts.size(), 1U);
    EXPECT_EQ(field.survey.ground.boundary.parts[0].outer.vertices.size(), 3U);
    ASSERT_EQ(field.survey.ground.barriers.size(), 1U);
    EXPECT_EQ(field.survey.ground.barriers[0].name, "lane");
    EXPECT_TRUE(has_finding(field, "taken as the field boundary"));
}

TEST(FieldReader, knows_a_geojson_layer_by_its_name) {
    const TemporaryFolder folder;
    const FieldSurvey field = read({folder.file(
        "x.geojson", geojson("{\"type\":\"Polygon\",\"coordinates\":[[[10,50],[10.001,50],[10.001,50.001],[10,50]]]}",
                             "\"name\":\"keep_clear_areas\","))});
    EXPECT_TRUE(field.survey.ground.boundary.empty());
    ASSERT_EQ(field.survey.ground.keep_clear.size(), 1U);
    EXPECT_EQ(field.survey.ground.keep_clear[0].name, "n");
    EXPECT_EQ(field.survey.ground.keep_clear[0].kind, KeepClearKind::other);
}

// IOGP Guidance Note 7-2, Popular Visualisation Pseudo-Mercator: 24 22 54.433 N, 100 20 W is -11169055.58, 2800000.00 m
// [memory].
TEST(FieldReader, turns_another_reference_system_into_longitude_and_latitude) {
    const TemporaryFolder folder;
    const FieldSurvey field = read({folder.file(
        "field.geojson",
        geojson("{\"type\":\"LineString\",\"coordinates\":[[-11169055.58,2800000.00],[-11169055.58,2800100.00]]}",
                "\"crs\":{\"type\":\"name\",\"properties\":{\"name\":\"urn:ogc:def:crs:EPSG::3857\"}},"))});
    ASSERT_EQ(field.survey.ground.barriers.size(), 1U);
    const GeographicPoint place = field.frame.to_geographic(field.survey.ground.barriers[0].line.vertices[0]);
    EXPECT_NEAR(place.longitude_degrees, -(100.0 + 20.0 / 60.0), 1e-7);  // 0.01 m
    EXPECT_NEAR(place.latitude_degrees, 24.0 + 22.0 / 60.0 + 54.433 / 3600.0, 1e-7);
}

TEST(FieldReader, repairs_a_boundary_that_crosses_itself_and_says_so) {
    const TemporaryFolder folder;
    const FieldSurvey field = read({folder.file(
        "bow.geojson",
        geojson("{\"type\":\"Polygon\",\"coordinates\":[[[10,50],[10.002,50.001],[10.002,50],[10,50.001],[10,50]]]}"))});
    EXPECT_EQ(field.survey.ground.boundary.parts.size(), 2U);
    EXPECT_TRUE(has_finding(field, "it was repaired"));
}

TEST(FieldReader, refuses_a_mark_that_lies_nowhere_near_the_others_and_leaves_far_tracks_out) {
    const TemporaryFolder folder;
    const auto stray = read_field(
        {folder.file("walk.gpx", gpx(wpt("<name>zero</name>", "0", "0") + wpt("<name>a</name>") + wpt("<name>b</name>")))});
    ASSERT_FALSE(stray.has_value());
    EXPECT_EQ(stray.error().code, Refusal::Code::out_of_range);
    EXPECT_EQ(stray.error().place, "waypoint 1, zero");
    const FieldSurvey field = read({folder.file(
        "old.gpx", gpx(wpt("<name>a</name>") + "<trk><trkseg><trkpt lat=\"10\" lon=\"10\"/></trkseg>"
                                               "<trkseg><trkpt lat=\"38.25\" lon=\"-120.5\"/></trkseg></trk>"))});
    EXPECT_EQ(field.survey.walks[0].segments.size(), 1U);
    EXPECT_TRUE(has_finding(field, "more than 50 km"));
    const auto pole = read_field({folder.file("pole.gpx", gpx(wpt("<name>p</name>", "89.95", "0")))});
    ASSERT_FALSE(pole.has_value());
    EXPECT_EQ(pole.error().code, Refusal::Code::out_of_range);
}

TEST(FieldReader, reports_how_far_it_is_and_stops_when_asked) {
    const TemporaryFolder folder;
    std::string inside;
    for (int i = 0; i < 40000; ++i) inside += wpt("<name>M" + std::to_string(i) + "</name>");
    const auto walk = folder.file("walk.gpx", gpx(inside));
    std::vector<double> shares;
    ASSERT_TRUE(
        read_field({walk, walk}, {{}, [&](double share, std::string_view) { shares.push_back(share); }}).has_value());
    ASSERT_GT(shares.size(), 1U);
    EXPECT_TRUE(std::is_sorted(shares.begin(), shares.end()));
    EXPECT_LE(shares.back(), 1.0);
    std::stop_source stop;
    const auto stopped =
        read_field({walk, walk}, {stop.get_token(), [&](double, std::string_view) { stop.request_stop(); }});
    ASSERT_FALSE(stopped.has_value());
    EXPECT_EQ(stopped.error().code, Refusal::Code::stopped);
}

TEST(FieldReader, refuses_no_files_and_says_that_a_walk_has_no_marks) {
    EXPECT_FALSE(read_field({}).has_value());
    const TemporaryFolder folder;
    EXPECT_TRUE(has_finding(read({folder.file("empty.gpx", gpx(""))}), "no waypoints"));
}

}  // namespace
}  // namespace plugside
