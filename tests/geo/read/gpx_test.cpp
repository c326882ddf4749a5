#include "geo/read/gpx.h"

#include <gtest/gtest.h>

#include "geo/read/numbers.h"
#include "tests/geo/read/gpx_text.h"
#include "tests/geo/temporary_folder.h"

namespace plugside {
namespace {

using namespace testing_support;

GpxFile read(const std::string& text) {
    auto file = read_gpx_text(text, "walk.gpx");
    EXPECT_TRUE(file.has_value()) << (file ? "" : sentence(file.error()));
    return file.value_or(GpxFile{});
}

TEST(Gpx, reads_waypoints_with_all_that_is_used_of_them) {
    const GpxFile file =
        read(gpx("<metadata><name>Upper piece</name></metadata>" +
                 wpt("<ele>210.5</ele><time>2026-03-01T09:30:00Z</time><name> M031 </name><cmt>fan 135</cmt>"
                     "<desc>by the &quot;ditch&quot; &amp; fence</desc><sym>Flag, "
                     "Blue</sym><type>mole</type><fix>3d</fix><sat>9</sat><hdop>1.4</hdop>") +
                 wpt("", "-90", "180")));
    EXPECT_EQ(file.title, "Upper piece");
    ASSERT_EQ(file.waypoints.size(), 2U);
    const GpxWaypoint& mark = file.waypoints[0];
    EXPECT_EQ(mark.at, (GeographicPoint{-120.5, 38.25}));
    EXPECT_EQ(place_of(mark), "waypoint 1, M031");
    EXPECT_EQ(mark.comment, "fan 135");
    EXPECT_EQ(mark.description, "by the \"ditch\" & fence");
    EXPECT_EQ(mark.symbol, "Flag, Blue");
    EXPECT_EQ(mark.type, "mole");
    EXPECT_EQ(mark.fix, "3d");
    EXPECT_EQ(mark.hdop, 1.4);
    EXPECT_EQ(mark.time, parse_utc_time("2026-03-01T09:30:00Z"));
    EXPECT_EQ(file.waypoints[1].at, (GeographicPoint{-180.0, -90.0}));  // 180 is -180
    EXPECT_EQ(place_of(file.waypoints[1]), "waypoint 2");
    EXPECT_TRUE(file.findings.empty());
}

TEST(Gpx, reads_tracks_with_segments_and_times) {
    const GpxFile file =
        read(gpx("<trk><name>way</name><trkseg><trkpt lat=\"38\" "
                 "lon=\"-120\"><ele>1</ele><time>2026-03-01T09:30:00.250Z</time></trkpt>"
                 "<trkpt lat=\"38.001\" lon=\"-120\"/></trkseg><trkseg/></trk>"
                 "<trk><trkseg><trkpt lat=\"38.002\" lon=\"-120\"/></trkseg></trk>"));
    ASSERT_EQ(file.segments.size(), 2U);  // an empty segment is none
    ASSERT_EQ(file.segments[0].size(), 2U);
    EXPECT_EQ(file.segments[0][0].time, parse_utc_time("2026-03-01T09:30:00.25Z"));
    EXPECT_FALSE(file.segments[0][1].time.has_value());
    EXPECT_EQ(file.segments[1][0].at, (GeographicPoint{-120.0, 38.002}));
}

TEST(Gpx, reads_version_1_0_as_receivers_still_write_it) {
    const GpxFile file =
        read(gpx("<name>Old device</name><time>2026-03-01T09:30:00Z</time>" + wpt("<name>1</name><hdop>2</hdop>"), "1.0"));
    EXPECT_EQ(file.title, "Old device");
    ASSERT_EQ(file.waypoints.size(), 1U);
    EXPECT_EQ(file.waypoints[0].hdop, 2.0);
}

TEST(Gpx, reads_other_encodings_prefixes_and_no_namespace) {
    EXPECT_EQ(read("<gpx version=\"1.1\">" + wpt("<name>a</name>") + "</gpx>").waypoints.size(), 1U);
    EXPECT_EQ(read("<g:gpx xmlns:g=\"http://www.topografix.com/GPX/1/1\" version=\"1.1\"><g:wpt lat=\"1\" "
                   "lon=\"2\"><g:name>a</g:name></g:wpt></g:gpx>")
                  .waypoints[0]
                  .name,
              "a");
    EXPECT_EQ(read("<?xml version=\"1.0\" encoding=\"ISO-8859-1\"?><gpx version=\"1.1\">" + wpt("<name>H\xFCgel</name>") +
                   "</gpx>")
                  .waypoints[0]
                  .name,
              "H\xC3\xBCgel");
    EXPECT_EQ(read("\xEF\xBB\xBF" + gpx(wpt("<name>bom</name>"))).waypoints[0].name, "bom");
    std::string wide = "\xFF\xFE";
    for (const char c : "<gpx version=\"1.1\"><wpt lat=\"1\" lon=\"2\"/></gpx>")
        wide.append(c == 0 ? "" : std::string{c, '\0'});
    EXPECT_EQ(read(wide).waypoints.size(), 1U);
}

TEST(Gpx, passes_over_extensions_with_names_like_its_own) {
    const GpxFile file = read(
        gpx(wpt("<name>M1</name><extensions><name>not this</name><x:wpt xmlns:x=\"urn:other\" lat=\"abc\"/></extensions>") +
            "<extensions><wpt lat=\"abc\" lon=\"1e400\"/></extensions>"));
    ASSERT_EQ(file.waypoints.size(), 1U);
    EXPECT_EQ(file.waypoints[0].name, "M1");
}

TEST(Gpx, reads_what_a_receiver_says_of_a_mark_and_of_a_route_point) {
    const GpxFile file = read(
        gpx(wpt("<ele>151.5</ele><name>M1</name><link href=\"pictures/IMG_1.jpg\"><text>plug</text></link><sat>9</sat>"
                "<hdop>1.2</hdop><extensions><d:depth xmlns:d=\"urn:d\">3</d:depth><d:a xmlns:d=\"urn:d\"> <d:fan>SE</d:fan>"
                "</d:a></extensions>") +
            "<rte><rtept lat=\"1\" lon=\"2\"><name>R1</name><cmt>fan 90</cmt></rtept><rtept lat=\"1\" lon=\"2\"/></rte>"));
    ASSERT_EQ(file.waypoints.size(), 1U);
    EXPECT_EQ(file.waypoints[0].satellites, 9);
    EXPECT_EQ(file.waypoints[0].elevation_m, 151.5);
    EXPECT_EQ(file.waypoints[0].link, "pictures/IMG_1.jpg");
    EXPECT_EQ(file.waypoints[0].extensions, "depth: 3; fan: SE");
    ASSERT_EQ(file.route_points.size(), 2U);
    EXPECT_EQ(file.route_points[0].comment, "fan 90");
    EXPECT_EQ(place_of(file.route_points[0]), "route point 1, R1");
    EXPECT_TRUE(file.segments.empty());
}

TEST(Gpx, reads_version_1_0_with_its_own_elements) {
    const GpxFile file = read(gpx("<name>Creek</name>" + wpt("<name>M1</name><url>IMG_2.jpg</url><urlname>plug</urlname>"
                                                             "<x:note xmlns:x=\"urn:x\">near the gate</x:note>"),
                                  "1.0"));
    EXPECT_EQ(file.title, "Creek");
    ASSERT_EQ(file.waypoints.size(), 1U);
    EXPECT_EQ(file.waypoints[0].link, "IMG_2.jpg");
    EXPECT_EQ(file.waypoints[0].extensions, "note: near the gate");
}

TEST(Gpx, takes_latitude_for_longitude_only_where_nothing_else_is_on_the_earth) {
    const GpxFile file = read(gpx(wpt("", "-120.5", "38.25") + wpt("", "38.25", "-120.5") + wpt("", "-38.25", "12")));
    EXPECT_TRUE(file.waypoints[0].exchanged);
    EXPECT_EQ(file.waypoints[0].at, file.waypoints[1].at);
    EXPECT_FALSE(file.waypoints[1].exchanged);
    EXPECT_FALSE(file.waypoints[2].exchanged);
}

TEST(Gpx, goes_on_with_a_text_around_a_stray_element) {
    EXPECT_EQ(read(gpx(wpt("<name>M<b>bold</b>1</name><cmt>fan <i/>135</cmt>"))).waypoints[0].name, "M1");
    EXPECT_EQ(read(gpx(wpt("<name>M<b>bold</b>1</name><cmt>fan <i/>135</cmt>"))).waypoints[0].comment, "fan 135");
}

TEST(Gpx, lists_what_it_does_not_use_or_understand) {
    const GpxFile file =
        read(gpx(wpt("<name>a</name><time>yesterday</time><hdop>good</hdop><sat>many</sat><ele>high</ele>") +
                 wpt("<time>yesterday</time>")));
    ASSERT_EQ(file.findings.size(), 4U);
    EXPECT_EQ(file.findings[0],
              (ReadFinding{"walk.gpx", "waypoint 1, a and 1 more", "the time \"yesterday\" was not understood"}));
    EXPECT_EQ(file.findings[1], (ReadFinding{"walk.gpx", "waypoint 1, a", "the hdop \"good\" was not understood"}));
    EXPECT_EQ(file.findings[2].sentence, "the elevation \"high\" was not understood");
    EXPECT_EQ(file.findings[3].sentence, "the number of satellites \"many\" was not understood");
    EXPECT_EQ(read("<gpx>" + wpt("") + "</gpx>").findings[0].sentence, "the file does not say its GPX version; read as 1.1");
}

TEST(Gpx, reads_a_file_in_pieces_as_it_does_from_memory) {
    std::string inside;
    for (int i = 0; i < 30000; ++i) inside += wpt("<name>M" + std::to_string(i) + "</name><cmt>fan 135 \xC3\xBC</cmt>");
    const TemporaryFolder folder;
    const auto file = read_gpx(folder.file("walk.gpx", gpx(inside)));
    ASSERT_TRUE(file.has_value()) << sentence(file.error());
    const GpxFile memory = read(gpx(inside));
    ASSERT_EQ(file->waypoints.size(), 30000U);
    ASSERT_EQ(memory.waypoints.size(), 30000U);
    for (std::size_t i = 0; i < 30000; i += 997) {
        EXPECT_EQ(file->waypoints[i].name, memory.waypoints[i].name);
        EXPECT_EQ(file->waypoints[i].comment, "fan 135 \xC3\xBC");
        EXPECT_EQ(file->waypoints[i].line, i + 3);
    }
}

TEST(Gpx, is_stopped_when_asked) {
    const TemporaryFolder folder;
    std::stop_source stop;
    stop.request_stop();
    const auto file = read_gpx(folder.file("walk.gpx", gpx(wpt(""))), {stop.get_token(), {}});
    ASSERT_FALSE(file.has_value());
    EXPECT_EQ(file.error().code, Refusal::Code::stopped);
}

}  // namespace
}  // namespace plugside
