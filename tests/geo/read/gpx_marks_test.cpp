#include "geo/read/gpx_marks.h"

#include <gtest/gtest.h>

#include "geo/frame/declination.h"
#include "geo/read/numbers.h"
#include "tests/geo/read/gpx_text.h"

namespace plugside {
namespace {

using namespace testing_support;

struct Read {
    std::vector<GeographicMark> marks;
    std::vector<ReadFinding> findings;
};

Read read(const std::string& inside) {
    const auto file = read_gpx_text(gpx(inside), "walk.gpx");
    EXPECT_TRUE(file.has_value());
    FindingList findings("walk.gpx");
    Read result{marks_of(*file, "walk.gpx", findings), {}};
    result.findings = findings.listed();
    return result;
}

GeographicMark one(const std::string& inside) { return read(wpt(inside)).marks.at(0); }

TEST(GpxMarks, take_the_note_from_comment_and_description) {
    EXPECT_EQ(one("<name>a</name><cmt>fan 135 fresh</cmt>").fan_degrees, 135.0);
    EXPECT_EQ(one("<name>a</name><desc>fan 135</desc>").fan_degrees, 135.0);
    const GeographicMark both = one("<cmt>fan 135</cmt><desc>old</desc>");
    EXPECT_EQ(both.fan_degrees, 135.0);
    EXPECT_EQ(both.mound.freshness, Freshness::older);
    EXPECT_EQ(both.mound.note, "fan 135; old");
    EXPECT_EQ(one("<cmt>fan 135</cmt><desc>fan 135</desc>").mound.note, "fan 135");
}

TEST(GpxMarks, have_names_of_one_line) { EXPECT_EQ(one("<name> M1\n\t  b </name>").mound.name, "M1 b"); }

// The declination at 38.25 N, 120.5 W is 12.8 degrees east in 2026 by the World Magnetic Model 2025, which
// tests/geo/frame/declination_test.cpp holds against its published values.
TEST(GpxMarks, turn_a_magnetic_note_by_the_declination_at_their_place_and_time) {
    const Read result = read(wpt("<time>2026-03-01T09:30:00Z</time><name>a</name><cmt>fan 135M</cmt>"));
    ASSERT_TRUE(result.marks[0].fan_degrees.has_value());
    const auto declination = declination_degrees({-120.5, 38.25}, *parse_utc_time("2026-03-01T09:30:00Z"));
    EXPECT_NEAR(*result.marks[0].fan_degrees, 135.0 + *declination, 1e-9);
    EXPECT_NEAR(*declination, 12.8, 0.3);
    EXPECT_EQ(result.marks[0].mound.note, "fan 135M");
    ASSERT_EQ(result.findings.size(), 1U);
    EXPECT_NE(result.findings[0].sentence.find("magnetic bearings are turned to true ones"), std::string::npos);
}

TEST(GpxMarks, take_a_stated_date_for_a_magnetic_note_without_a_time) {
    const Read result = read(wpt("<name>fan 135 mag</name>"));
    EXPECT_NEAR(*result.marks[0].fan_degrees, 147.7, 0.3);
    ASSERT_EQ(result.findings.size(), 1U);
    EXPECT_NE(result.findings[0].sentence.find("middle of 2027 since the mark has no time"), std::string::npos);
}

TEST(GpxMarks, have_no_fan_from_a_magnetic_note_of_years_that_the_model_does_not_know) {
    const Read result = read(wpt("<time>2019-03-01T09:30:00Z</time><name>a</name><cmt>fan 135M</cmt>"));
    EXPECT_FALSE(result.marks[0].fan_degrees.has_value());
    ASSERT_EQ(result.findings.size(), 1U);
    EXPECT_NE(result.findings[0].sentence.find("expected 2025.0 to 2030.0"), std::string::npos);
}

TEST(GpxMarks, turn_a_fan_told_by_the_clock_by_the_walking_direction) {
    const std::string mark = wpt("<time>2026-03-01T09:00:10Z</time><name>a</name><cmt>fan at 3 o'clock</cmt>");
    const auto point = [](const char* lon, const char* second) {
        return "<trkpt lat=\"38.25\" lon=\"" + std::string(lon) + "\"><time>2026-03-01T09:00:" + second + "Z</time></trkpt>";
    };
    const std::string east = "<trk><trkseg>" + point("-120.5002", "00") + point("-120.4998", "20") + "</trkseg></trk>";
    const Read walked = read(mark + east);
    ASSERT_TRUE(walked.marks[0].fan_degrees.has_value());
    EXPECT_NEAR(*walked.marks[0].fan_degrees, 180.0, 0.01);
    const Read trackless = read(mark);
    EXPECT_FALSE(trackless.marks[0].fan_degrees.has_value());
    ASSERT_EQ(trackless.findings.size(), 1U);
    EXPECT_NE(trackless.findings[0].sentence.find("walking direction"), std::string::npos);
}

TEST(GpxMarks, say_when_a_note_counts_more_than_one_mound) {
    const Read result = read(wpt("<name>a</name><cmt>3 fresh mounds</cmt>"));
    ASSERT_EQ(result.findings.size(), 1U);
    EXPECT_EQ(result.findings[0].sentence, "the note counts 3 mounds; the mark is taken as one, where it stands");
}

TEST(GpxMarks, are_gophers_mounds_unless_something_says_otherwise) {
    EXPECT_EQ(one("<name>M001</name>").mound.kind, SignKind::gopher_mound);
    EXPECT_EQ(one("<name>M001</name><type>mound</type>").mound.kind, SignKind::gopher_mound);
    EXPECT_EQ(one("<name>M001</name><cmt>mole hill</cmt>").mound.kind, SignKind::mole);
    EXPECT_EQ(one("<name>M001</name><type>vole</type>").mound.kind, SignKind::vole);
    EXPECT_EQ(one("<name>M001</name><sym>Mole</sym>").mound.kind, SignKind::mole);
    EXPECT_EQ(one("<name>mole 3</name>").mound.kind, SignKind::mole);
    EXPECT_EQ(one("<name>gate</name>").mound.kind, SignKind::other);
    EXPECT_EQ(one("<name>x</name><type>Gate</type>").mound.kind, SignKind::other);
    EXPECT_EQ(one("<name>x</name><type>other</type>").mound.kind, SignKind::other);
    EXPECT_EQ(one("<name>gate</name><cmt>fan 135</cmt>").mound.kind, SignKind::gopher_mound);
    EXPECT_EQ(one("<name>mole</name><type>gopher mound</type>").mound.kind, SignKind::gopher_mound);
    EXPECT_EQ(one("<name>vole</name><cmt>mole</cmt>").mound.kind, SignKind::mole);
}

TEST(GpxMarks, read_a_fan_from_a_name_only_when_it_says_fan) {
    EXPECT_EQ(one("<name>fan 135</name>").fan_degrees, 135.0);
    EXPECT_FALSE(one("<name>F135</name>").fan_degrees.has_value());
    EXPECT_FALSE(one("<name>135</name>").fan_degrees.has_value());
    EXPECT_EQ(one("<name>fan 135</name><cmt>fan 140</cmt>").fan_degrees, 140.0);
    const Read result = read(wpt("<name>F1</name>") + wpt("<name>F2</name>"));
    ASSERT_EQ(result.findings.size(), 1U);
    EXPECT_EQ(result.findings[0].place, "waypoint 1, F1 and 1 more");
}

TEST(GpxMarks, list_a_devices_symbol_once_and_an_ordinary_name_never) {
    std::string marks;
    for (int i = 1; i <= 300; ++i)
        marks += wpt("<name>M" + std::to_string(i) + "</name><cmt>fan 90</cmt><sym>Flag, Blue</sym>");
    const Read result = read(marks);
    EXPECT_EQ(result.marks.size(), 300U);
    ASSERT_EQ(result.findings.size(), 1U);
    EXPECT_EQ(result.findings[0], (ReadFinding{"walk.gpx", "waypoint 1, M1 and 299 more",
                                               "the symbol \"Flag, Blue\" tells nothing of a mound; it is not used"}));
}

TEST(GpxMarks, list_what_was_not_understood_and_pass_over_a_repeated_name) {
    const Read result =
        read(wpt("<name>M1</name><cmt>M1</cmt>") + wpt("<name>M2</name><cmt>fan 90 beside the willow</cmt>") +
             wpt("<name>M3</name><cmt>12-JUL-24 9:14:33AM</cmt>"));
    ASSERT_EQ(result.findings.size(), 2U);
    EXPECT_EQ(result.findings[0],
              (ReadFinding{"walk.gpx", "waypoint 2, M2", "in the note, \"beside willow\" was not understood"}));
    EXPECT_EQ(result.findings[1].sentence, "a note that is only a date or time is not used");
    EXPECT_EQ(result.marks[2].mound.note, "");
}

// Our assumption: 0.5 m times hdop, held within 0.3 and 5 m.
TEST(GpxMarks, are_as_good_as_the_receivers_hdop) {
    EXPECT_EQ(one("").mound.position_sd, Metres::of(0.5));
    EXPECT_EQ(one("<hdop>1</hdop>").mound.position_sd, Metres::of(0.5));
    EXPECT_EQ(one("<hdop>2.4</hdop>").mound.position_sd, Metres::of(1.2));
    EXPECT_EQ(one("<hdop>0.1</hdop>").mound.position_sd, Metres::of(0.3));
    EXPECT_EQ(one("<hdop>50</hdop>").mound.position_sd, Metres::of(5.0));
    EXPECT_EQ(one("<hdop>-1</hdop>").mound.position_sd, Metres::of(0.5));
    EXPECT_EQ(one("<fix>none</fix><hdop>1</hdop>").mound.position_sd, Metres::of(5.0));
    EXPECT_EQ(one("").mound.shared_sd, std::nullopt);
    EXPECT_EQ(one("<hdop>1.5</hdop>").mound.shared_sd, Metres::of(1.8 * 1.5));
    EXPECT_EQ(hdop_from_position_sd(Metres::of(0.5)), std::nullopt);
    EXPECT_EQ(position_sd_from_hdop(hdop_from_position_sd(Metres::of(0.75))), Metres::of(0.75));
}

}  // namespace
}  // namespace plugside
