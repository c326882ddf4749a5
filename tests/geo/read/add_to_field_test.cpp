#include <gtest/gtest.h>

#include "geo/read/field_reader.h"
#include "tests/geo/read/gpx_text.h"
#include "tests/geo/temporary_folder.h"

namespace plugside {
namespace {

using namespace testing_support;

FieldSurvey good(tl::expected<FieldSurvey, Refusal> field) {
    EXPECT_TRUE(field.has_value()) << (field ? "" : sentence(field.error()));
    return field.value_or(FieldSurvey{});
}

std::string track(const std::string& lon) {
    return "<trk><trkseg><trkpt lat=\"38.25\" lon=\"" + lon + "\"/><trkpt lat=\"38.2501\" lon=\"" + lon +
           "\"/></trkseg></trk>";
}

const std::string morning_marks =
    wpt("<time>2026-03-01T09:00:00Z</time><name>a</name><cmt>fan 90</cmt>", "38.25", "-120.0002") +
    wpt("<time>2026-03-01T09:01:00Z</time><name>a</name>", "38.2501", "-120.0002") + wpt("", "38.2502", "-120");

TEST(AddToField, adds_nothing_of_a_file_that_was_read_before) {
    const TemporaryFolder folder;
    const auto file = folder.file("walk.gpx", gpx(morning_marks + track("-120")));
    const FieldSurvey first = good(read_field({file}));
    const FieldSurvey again = good(add_to_field(first, {file}));
    EXPECT_EQ(again.survey, first.survey);
    EXPECT_EQ(again.findings.back().sentence, "3 marks of the file are there already; they are not added again");
}

TEST(AddToField, adds_what_a_longer_file_of_the_same_walk_has_more_and_keeps_what_was_answered) {
    const TemporaryFolder folder;
    const auto file = folder.file("walk.gpx", gpx(morning_marks + track("-120")));
    FieldSurvey field = good(read_field({file}));
    decide(field.survey, {{ProbeKind::plug_side, "a", ""}, SetChoice::dropped, std::nullopt});
    field.survey.known.push_back({FactKind::not_a_gopher, {"a (2)"}, std::nullopt, std::nullopt, "", std::nullopt});
    Mend mend;
    mend.kind = MendKind::move;
    mend.marks = {"a"};
    mend.to = {{5.0, 5.0}};
    answer_finding(field.survey, {"own move: a", Answer::accepted, mend});
    const FieldSurvey before = field;
    const auto longer = folder.file(
        "walk.gpx", gpx(morning_marks + wpt("<name>d</name>", "38.2503", "-120") + track("-120") + track("-120.0001")));
    const FieldSurvey more = good(add_to_field(field, {longer}));
    EXPECT_EQ(field.survey, before.survey);
    ASSERT_EQ(more.survey.walks.size(), 1U);
    EXPECT_EQ(more.survey.walks[0].segments.size(), 2U);
    ASSERT_EQ(more.survey.mounds.size(), 4U);
    EXPECT_EQ(more.survey.mounds[3].name, "d");
    EXPECT_TRUE(std::equal(before.survey.mounds.begin(), before.survey.mounds.end(), more.survey.mounds.begin()));
    EXPECT_EQ(more.survey.decisions, before.survey.decisions);
    EXPECT_EQ(more.survey.known, before.survey.known);
    EXPECT_EQ(more.survey.answers, before.survey.answers);
    EXPECT_EQ(more.survey.revision, before.survey.revision + 1);
    EXPECT_EQ(more.frame.centre(), before.frame.centre());
}

TEST(AddToField, adds_a_second_walk_of_other_names_and_of_the_same_file_name) {
    const TemporaryFolder folder;
    const FieldSurvey field = good(read_field({folder.file("walk.gpx", gpx(morning_marks))}));
    const auto other = folder.file("walk.gpx", gpx(wpt("<name>a</name>", "38.2509", "-120.0009")));
    const FieldSurvey both = good(add_to_field(field, {other}));
    ASSERT_EQ(both.survey.walks.size(), 2U);
    EXPECT_EQ(both.survey.mounds.back().name, "a (3)");
    EXPECT_EQ(both.survey.mounds.back().walk, 1U);
    const auto far = folder.file("far.gpx", gpx(wpt("<name>z</name>", "45", "-100")));
    EXPECT_FALSE(add_to_field(field, {far}).has_value());
}

TEST(AddToField, starts_a_field_where_there_is_none_and_adds_ground_once) {
    const TemporaryFolder folder;
    const auto ground = folder.file(
        "field.geojson",
        "{\"type\":\"FeatureCollection\",\"features\":[{\"type\":\"Feature\",\"properties\":{},\"geometry\":{\"type\":"
        "\"Polygon\",\"coordinates\":[[[-120.001,38.249],[-119.999,38.249],[-119.999,38.251],[-120.001,38.249]]]}}]}");
    const FieldSurvey field = good(add_to_field(FieldSurvey{}, {folder.file("walk.gpx", gpx(morning_marks))}));
    EXPECT_EQ(field.survey.mounds.size(), 3U);
    const FieldSurvey once = good(add_to_field(field, {ground}));
    const FieldSurvey twice = good(add_to_field(once, {ground}));
    EXPECT_EQ(once.survey.ground.boundary.parts.size(), 1U);
    EXPECT_EQ(twice.survey, once.survey);
}

TEST(AddToField, finds_faults_of_coordinates_against_the_field_that_is_open) {
    const TemporaryFolder folder;
    const FieldSurvey field = good(read_field({folder.file("walk.gpx", gpx(morning_marks))}));
    const auto lost = folder.file("phone.csv", "name,lat,lon\np,38.2501,120.0001\nq,38.2502,120.0002\n");
    const FieldSurvey more = good(add_to_field(field, {lost}));
    ASSERT_EQ(more.of_reading.size(), 1U);
    EXPECT_EQ(more.of_reading[0].kind, FindingKind::lost_sign);
    EXPECT_EQ(more.of_reading[0].marks, (std::vector<std::string>{"p", "q"}));
    const FieldSurvey again = good(add_to_field(more, {lost}));
    EXPECT_EQ(again.survey, more.survey);
    EXPECT_EQ(again.of_reading, more.of_reading);
}

TEST(FieldReader, takes_route_points_with_notes_as_marks_and_says_what_it_does_not_use) {
    const TemporaryFolder folder;
    const FieldSurvey field = good(read_field({folder.file(
        "route.gpx",
        gpx("<rte><rtept lat=\"38.25\" lon=\"-120\"><name>r</name><cmt>fan SE fresh</cmt></rtept><rtept lat=\"38.2501\" "
            "lon=\"-120\"><name>s</name></rtept></rte>"))}));
    ASSERT_EQ(field.survey.mounds.size(), 1U);
    EXPECT_EQ(field.survey.mounds[0].name, "r");
    EXPECT_EQ(field.findings[0].sentence, "taken as marks, as they carry notes of mounds: 1 point of a route");
    EXPECT_EQ(field.findings[1].sentence, "not used, as they carry no note of a mound: 1 point of a route");
}

}  // namespace
}  // namespace plugside
