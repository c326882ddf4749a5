#include "geo/read/position_file.h"

#include <gtest/gtest.h>

#include <cmath>
#include <cstdio>
#include <fstream>

#include "geo/read/nmea.h"
#include "geo/read/numbers.h"
#include "tests/geo/temporary_folder.h"

namespace plugside {
namespace {

using namespace std::chrono;
using testing_support::TemporaryFolder;

std::string with_sum(const std::string& between) {
    char sum[4];
    std::snprintf(sum, sizeof sum, "*%02X", static_cast<unsigned>(nmea_sum(between)));
    return "$" + between + sum + "\r\n";
}

std::string gga(const std::string& time, const std::string& quality = "1", const std::string& hdop = "0.9") {
    return with_sum("GPGGA," + time + ",4100.0600,N,10454.0000,W," + quality + ",08," + hdop + ",1800,M,-20,M,,");
}

std::string rmc(const std::string& time, const std::string& day, const std::string& minutes = "00.0600") {
    return with_sum("GPRMC," + time + ",A,41" + minutes + ",N,10454.0000,W,0.4,84.4," + day + ",,,A");
}

PositionReading read(const std::string& text, const char* written = "2026-03-01T12:00:00Z") {
    FileEnd end;
    end.bytes = text;
    end.size = text.size();
    end.first_line = text.substr(0, text.find('\n'));
    end.written = *parse_utc_time(written);
    return read_positions(end, "track");
}

TEST(PositionFile, the_latest_whole_sentence_tells_the_place_with_its_time_and_radius) {
    const auto reading =
        read(gga("115958") + rmc("115958", "010326") + gga("115959") + rmc("115959", "010326") + "$GPGGA,12000");
    ASSERT_TRUE(reading.last);
    EXPECT_NEAR(reading.last->at.latitude_degrees, 41.001, 1e-12);
    EXPECT_NEAR(reading.last->at.longitude_degrees, -104.9, 1e-12);
    EXPECT_EQ(reading.last->time, parse_utc_time("2026-03-01T11:59:59Z"));
    // sqrt(-2 ln .05) = 2.4477 times the standard deviation of an axis, hypot(0.5, 1.8) m times hdop
    EXPECT_NEAR(*reading.last->radius_m, std::sqrt(-2.0 * std::log(0.05)) * std::hypot(0.5, 1.8) * 0.9, 1e-3);
    EXPECT_FALSE(reading.lost);
    EXPECT_TRUE(reading.remarks.empty());
}

TEST(PositionFile, a_sentence_without_a_day_gets_the_one_nearest_to_when_the_file_was_written) {
    EXPECT_EQ(read(gga("235959"), "2026-03-01T00:00:03Z").last->time, parse_utc_time("2026-02-28T23:59:59Z"));
    EXPECT_EQ(read(gga("000001"), "2026-02-28T23:59:58Z").last->time, parse_utc_time("2026-03-01T00:00:01Z"));
    // past midnight with the day of the sentence before
    EXPECT_EQ(read(rmc("235959", "280226") + gga("000000")).last->time, parse_utc_time("2026-03-01T00:00:00Z"));
}

TEST(PositionFile, a_receiver_that_lost_its_place_is_not_shown_where_it_was) {
    const std::string none = with_sum("GPGGA,120001,,,,,0,00,99.9,,,,,,");
    EXPECT_TRUE(read(gga("120000") + none).lost);
    EXPECT_TRUE(read(gga("120000") + with_sum("GPRMC,120000,V,,,,,,,010326,,,N")).lost);
    EXPECT_TRUE(read(with_sum("GPRMC,120000,V,,,,,,,010326,,,N") + gga("120000")).lost) << "both of one second";
    EXPECT_FALSE(read(gga("120000") + none + gga("120002")).lost);
}

TEST(PositionFile, errors_that_the_receiver_tells_go_before_its_hdop) {
    const std::string errors = with_sum("GNGST,120000,1.1,2,2,0,3.0,4.0,5");
    const double radius = std::sqrt(-2.0 * std::log(0.05)) * 5.0 / std::sqrt(2.0);
    EXPECT_NEAR(*read(gga("120000") + errors).last->radius_m, radius, 1e-3);
    EXPECT_NEAR(*read(errors + gga("120000")).last->radius_m, radius, 1e-3);
    EXPECT_NEAR(*read(gga("120000", "4")).last->radius_m, 0.05, 1e-12);
    EXPECT_FALSE(read(rmc("120000", "010326")).last->radius_m);
    EXPECT_FALSE(read(gga("120000", "8")).last->by_receiver);
}

TEST(PositionFile, a_wrong_sum_is_told_and_the_place_before_it_keeps_its_time) {
    std::string wrong = gga("120005");
    wrong[20] = '7';
    const auto reading = read(gga("120000") + wrong);
    ASSERT_TRUE(reading.last);
    EXPECT_EQ(reading.last->time, parse_utc_time("2026-03-01T12:00:00Z"));
    ASSERT_EQ(reading.remarks.size(), 1U);
    EXPECT_EQ(reading.remarks[0].rfind("last line: the sum says", 0), 0U) << reading.remarks[0];
}

TEST(PositionFile, a_track_that_grows_is_read_to_its_last_closed_point) {
    const std::string head =
        "<?xml version=\"1.0\"?>\n<gpx version=\"1.1\" creator=\"x\" "
        "xmlns=\"http://www.topografix.com/GPX/1/1\"><trk><trkseg>\n"
        "<trkpt lat=\"41.0\" lon=\"-104.9\"><time>2026-03-01T11:59:00Z</time></trkpt>\n"
        "<trkpt lat=\"41.002\" lon=\"-104.901\"><ele>1800</ele><time>2026-03-01T11:59:30Z</time><hdop>1.5</hdop>"
        "<extensions><a:b>3</a:b></extensions></trkpt>\n";
    for (const std::string tail :
         {"", "<trkpt lat=\"41.0", "<trkpt lat=\"41.003\" lon=\"-104.9\"><time>2026", "</trkseg></trk></gpx>"}) {
        const auto reading = read(head + tail);
        ASSERT_TRUE(reading.last) << tail;
        EXPECT_EQ(reading.last->at, (GeographicPoint{-104.901, 41.002}));
        EXPECT_EQ(reading.last->time, parse_utc_time("2026-03-01T11:59:30Z"));
        EXPECT_TRUE(reading.last->radius_m);
        EXPECT_TRUE(reading.remarks.empty());
    }
    const auto closed = read(head + "<trkpt lat=\"41.5\" lon=\"-104.9\"/>");
    EXPECT_EQ(closed.last->at.latitude_degrees, 41.5);
}

TEST(PositionFile, a_table_that_grows_is_read_to_its_last_whole_row) {
    const std::string rows =
        "time,lat,lon,accuracy\n2026-03-01T11:59:00Z,41.0,-104.9,4\n2026-03-01T11:59:30Z,41.002,-104.901,6\n2026-03-01T12:"
        "00:00Z,41";
    const auto reading = read(rows);
    ASSERT_TRUE(reading.last) << (reading.remarks.empty() ? "" : reading.remarks[0]);
    EXPECT_EQ(reading.last->at, (GeographicPoint{-104.901, 41.002}));
    EXPECT_EQ(reading.last->time, parse_utc_time("2026-03-01T11:59:30Z"));
    // 68 in 100 within 6 m are 95 in 100 within 6 sqrt(ln .05 / ln .32)
    EXPECT_NEAR(*reading.last->radius_m, 6.0 * std::sqrt(std::log(0.05) / std::log(0.32)), 0.02);
}

TEST(PositionFile, where_nothing_has_a_time_a_row_that_is_not_understood_makes_the_place_an_old_one) {
    const auto reading = read("lat,lon\n41.0,-104.9\n41.1,-104.9\nabc,-104.9\n");
    ASSERT_TRUE(reading.last);
    EXPECT_EQ(reading.last->at.latitude_degrees, 41.1);
    EXPECT_TRUE(reading.lost);
    ASSERT_EQ(reading.remarks.size(), 1U);
    EXPECT_NE(reading.remarks[0].find("\"abc\""), std::string::npos) << reading.remarks[0];
}

TEST(PositionFile, of_a_large_file_only_the_end_is_read) {
    const TemporaryFolder folder;
    std::string text;
    while (text.size() < 3'000'000) text += gga("110000");
    text += rmc("120000", "010326", "00.1200");
    const auto end = end_of_file(folder.file("long.nmea", text));
    ASSERT_TRUE(end);
    EXPECT_EQ(end->size, text.size());
    EXPECT_LE(end->bytes.size(), 65536U);
    const auto reading = read_positions(*end, "long.nmea");
    ASSERT_TRUE(reading.last);
    EXPECT_NEAR(reading.last->at.latitude_degrees, 41.002, 1e-12);
    EXPECT_EQ(reading.last->ends_at, text.size());
    EXPECT_TRUE(reading.remarks.empty()) << reading.remarks[0];
}

}  // namespace
}  // namespace plugside
