#include "geo/write/waypoints.h"

#include <gtest/gtest.h>

#include "core/sets/cautions.h"
#include "geo/read/field_reader.h"
#include "geo/read/gpx.h"
#include "geo/write/gpx_text.h"
#include "geo/write/walk_gpx.h"
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

TEST(Waypoints, are_valid_against_the_schema_on_every_meridian) {
    for (const GeographicPoint centre : {GeographicPoint{-120.0, 38.25}, {180.0, -41.0}, {-180.0, 52.0}, {0.0, 0.0}}) {
        const TemporaryFolder folder;
        const FieldSurvey field =
            example_field(centre.longitude_degrees == 180.0 ? GeographicPoint{-180.0, centre.latitude_degrees} : centre);
        ASSERT_EQ(refusal_of(write_waypoints(field, example_plan(field), folder / "sets.gpx", LengthUnits::metres)), "");
        EXPECT_EQ(schema_says(folder / "sets.gpx", folder), "");
        ASSERT_EQ(refusal_of(write_walk(field.survey, field.frame, field.field_name, folder / "walk.gpx")), "");
        EXPECT_EQ(schema_says(folder / "walk.gpx", folder), "");
    }
}

TEST(Waypoints, come_in_walking_order_without_the_dropped_ones) {
    const TemporaryFolder folder;
    const FieldSurvey field = example_field();
    const Plan plan = example_plan(field);
    ASSERT_EQ(refusal_of(write_waypoints(field, plan, folder / "sets.gpx", LengthUnits::metres)), "");
    const auto file = read_gpx(folder / "sets.gpx");
    ASSERT_TRUE(file.has_value()) << sentence(file.error());
    EXPECT_EQ(file->title, "Upper hay piece");
    ASSERT_EQ(file->waypoints.size(), 3U);
    EXPECT_EQ(file->waypoints[0].name, "S01 A");
    EXPECT_EQ(file->waypoints[1].name, "S02 B");
    EXPECT_EQ(file->waypoints[2].name, "S03 A");
    EXPECT_EQ(file->waypoints[0].comment, "chance of a hit 93 in 100");  // .925
    EXPECT_NE(file->waypoints[0].description.find("M001"), std::string::npos);
    const GeographicPoint middle = field.frame.to_geographic(plan.probes[1].middle);
    EXPECT_NEAR(file->waypoints[0].at.longitude_degrees, middle.longitude_degrees, 1e-9);
    EXPECT_NEAR(file->waypoints[0].at.latitude_degrees, middle.latitude_degrees, 1e-9);
    for (const GpxWaypoint& waypoint : file->waypoints) EXPECT_TRUE(waypoint.symbol.empty());
}

TEST(Waypoints, carry_what_stops_a_set_into_the_field) {
    const auto& cautions = all_cautions();
    const auto stop =
        std::find_if(cautions.begin(), cautions.end(), [](const Caution& c) { return c.weight == CautionWeight::stop; });
    ASSERT_NE(stop, cautions.end());
    const TemporaryFolder folder;
    const FieldSurvey field = example_field();
    Plan plan = example_plan(field);
    plan.sets[1].cautions = {stop->id, "decides"};
    ASSERT_EQ(refusal_of(write_waypoints(field, plan, folder / "sets.gpx", LengthUnits::metres)), "");
    const auto file = read_gpx(folder / "sets.gpx");
    ASSERT_TRUE(file.has_value());
    EXPECT_NE(file->waypoints[0].description.find("STOP: " + stop->sentence), std::string::npos);
    EXPECT_EQ(file->waypoints[1].description.find("STOP"), std::string::npos);
}

TEST(Waypoints, of_a_plan_without_sets_are_a_valid_empty_file) {
    const TemporaryFolder folder;
    ASSERT_EQ(refusal_of(write_waypoints({}, {}, folder / "sets.gpx", LengthUnits::metres)), "");
    EXPECT_EQ(schema_says(folder / "sets.gpx", folder), "");
}

TEST(WalkGpx, reads_back_as_the_walks_it_was_made_from) {
    for (const GeographicPoint centre : {GeographicPoint{-120.0, 38.25}, {179.9999, -41.0}, {-180.0, 69.0}}) {
        const TemporaryFolder folder;
        const FieldSurvey field = example_field(centre);
        ASSERT_EQ(refusal_of(write_walk(field.survey, field.frame, field.field_name, folder / "walk.gpx")), "");
        const auto back = read_field({folder / "walk.gpx"});
        ASSERT_TRUE(back.has_value()) << sentence(back.error());
        EXPECT_EQ(back->field_name, field.field_name);
        expect_same_mounds(field, *back, 0.5 + 1e-9);  // a person writes whole degrees
        for (std::size_t i = 0; i < field.survey.mounds.size(); ++i)
            EXPECT_NEAR(back->survey.mounds[i].position_sd.value(), field.survey.mounds[i].position_sd.value(), 1e-15);
        ASSERT_EQ(back->survey.walks.size(), 1U);
        expect_same_segments(field, field.survey.walks[0].segments, *back, back->survey.walks[0].segments);
    }
}

TEST(WalkGpx, says_what_a_mark_is_before_a_note_that_no_longer_does) {
    const TemporaryFolder folder;
    FieldSurvey field = example_field();
    field.survey.mounds = {example_mound("a", {0, 0}, 0), example_mound("b", {1, 0}, 0)};
    field.survey.mounds[0].note = "fan 10 fresh by the willow";  // turned by hand since
    field.survey.mounds[0].fan = Bearing::degrees(90.0);
    field.survey.mounds[0].freshness = Freshness::older;
    field.survey.mounds[1].note = "mole";  // a person knew better
    ASSERT_EQ(refusal_of(write_walk(field.survey, field.frame, "f", folder / "walk.gpx")), "");
    const auto back = read_field({folder / "walk.gpx"});
    ASSERT_TRUE(back.has_value());
    expect_same_mounds(field, *back, 0.5);
}

TEST(GpxText, drops_what_xml_cannot_hold_and_escapes_the_rest) {
    using namespace gpx_text;
    EXPECT_EQ(xml_text("a<b>&\"c\""), "a&lt;b&gt;&amp;&quot;c&quot;");
    EXPECT_EQ(xml_text(std::string_view("a\0b\x01\x1F\x7F"
                                        "c\td\ne",
                                        11)),
              "abc d e");
    EXPECT_EQ(xml_text("\xC3\xBC \xE2\x82\xAC \xF0\x9F\x90\xBF"), "\xC3\xBC \xE2\x82\xAC \xF0\x9F\x90\xBF");
    EXPECT_EQ(xml_text("\xC3 \xFF\xFE \xC0\x80 \xED\xA0\x80 \xEF\xBF\xBF \xF4\x90\x80\x80 \xE2\x82"), "      ");
    EXPECT_EQ(coordinates({179.99999999999, -0.5}), " lat=\"-0.5000000000\" lon=\"-180.0000000000\"");
    EXPECT_EQ(decimal_text(1e-7), "0.0000001");
    EXPECT_EQ(decimal_text(1.5), "1.5");
}

}  // namespace
}  // namespace plugside
