#include "geo/read/nmea.h"

#include <gtest/gtest.h>

#include <cstdio>
#include <memory>
#include <sstream>

namespace plugside {
namespace {

using namespace std::chrono;

std::string with_sum(const std::string& between) {
    char sum[4];
    std::snprintf(sum, sizeof sum, "*%02X", static_cast<unsigned>(nmea_sum(between)));
    return "$" + between + sum;
}

std::optional<NmeaPosition> position(const std::string& line) {
    const auto sentence = read_nmea_line(line);
    return sentence ? nmea_position(*sentence) : std::nullopt;
}

// The two sentences that descriptions of NMEA 0183 use as their example, with their sums [memory].
constexpr const char* example_gga = "$GPGGA,123519,4807.038,N,01131.000,E,1,08,0.9,545.4,M,46.9,M,,*47";
constexpr const char* example_rmc = "$GPRMC,123519,A,4807.038,N,01131.000,E,022.4,084.4,230394,003.1,W*6A";

TEST(Nmea, the_well_known_examples_are_read_as_they_are_explained) {
    const auto gga = position(example_gga);
    ASSERT_TRUE(gga);
    EXPECT_EQ(gga->time_of_day, hours(12) + minutes(35) + seconds(19));
    EXPECT_FALSE(gga->day);
    ASSERT_TRUE(gga->at);
    EXPECT_DOUBLE_EQ(gga->at->latitude_degrees, 48.0 + 7.038 / 60.0);
    EXPECT_DOUBLE_EQ(gga->at->longitude_degrees, 11.0 + 31.0 / 60.0);
    EXPECT_EQ(gga->quality, 1);
    EXPECT_EQ(gga->hdop, 0.9);
    const auto rmc = position(example_rmc);
    ASSERT_TRUE(rmc);
    EXPECT_EQ(rmc->at, gga->at);
    EXPECT_EQ(rmc->day, sys_days(year(1994) / March / 23));
}

// The example of descriptions of GST [memory]: errors of 0.023 and 0.020 m.
TEST(Nmea, errors_are_read_from_the_sentence_that_tells_them) {
    const auto sentence = read_nmea_line("$GPGST,172814.0,0.006,0.023,0.020,273.6,0.023,0.020,0.031*6A");
    ASSERT_TRUE(sentence) << sentence.error();
    const auto errors = nmea_errors(*sentence);
    ASSERT_TRUE(errors);
    EXPECT_EQ(errors->latitude_sd_m, 0.023);
    EXPECT_EQ(errors->longitude_sd_m, 0.020);
    EXPECT_EQ(errors->time_of_day, hours(17) + minutes(28) + seconds(14));
}

TEST(Nmea, a_sum_that_does_not_fit_is_told_with_both_numbers) {
    std::string wrong = example_gga;
    wrong[20] = '9';
    const auto read = read_nmea_line(wrong);
    ASSERT_FALSE(read);
    EXPECT_NE(read.error().find("the sum says 47, but the sentence makes"), std::string::npos) << read.error();
    EXPECT_FALSE(read_nmea_line("$GPGGA,123519,4807.038,N,01131.000,E,1,08,0.9,545.4,M,46.9,M,,"));
    EXPECT_FALSE(read_nmea_line("$GPGGA,123519,4807.038,N,01131.000,E,1,08,0.9,545.4,M,46.9,M,,*4"));
    EXPECT_FALSE(read_nmea_line("$GPGGA,123519,4807.038,N,01131.000,E,1,08,0.9,545.4,M,46.9,M,,*4G"));
}

TEST(Nmea, every_single_changed_character_of_a_sentence_is_noticed) {
    const std::string whole = example_rmc;
    for (std::size_t i = 1; i < whole.size(); ++i)
        for (const char other : {'0', '7', 'W', ',', '.'}) {
            if (whole[i] == other) continue;
            std::string changed = whole;
            changed[i] = other;
            EXPECT_FALSE(read_nmea_line(changed)) << changed;
        }
}

TEST(Nmea, what_a_cut_off_sentence_left_before_the_next_is_passed_over) {
    const auto read = position(std::string("$GPGGA,123519,4807.0") + example_gga);
    ASSERT_TRUE(read);
    EXPECT_TRUE(read->at);
}

TEST(Nmea, south_and_west_are_negative_and_places_beyond_the_earth_are_not_taken) {
    const auto south = position(with_sum("GNGGA,000001.25,4103.500,S,10454.250,W,2,11,0.7,10,M,0,M,,"));
    ASSERT_TRUE(south && south->at);
    EXPECT_NEAR(south->at->latitude_degrees, -41.0583333333, 1e-9);
    EXPECT_NEAR(south->at->longitude_degrees, -104.9041666667, 1e-9);
    EXPECT_EQ(south->time_of_day, milliseconds(1250));
    for (const char* fields :
         {"9000.001,N,01131.000,E", "4807.038,N,18000.001,E", "4860.000,N,01131.000,E", "4807.038,E,01131.000,N",
          "-4807.038,N,01131.0,E", "4807.038,,01131.000,E", ",,,", "nan,N,01131.000,E", "1e3,N,01131.000,E"})
        EXPECT_FALSE(position(with_sum("GPGGA,123519," + std::string(fields) + ",1,08,0.9,5,M,4,M,,"))) << fields;
    EXPECT_EQ(position(with_sum("GPGGA,123519,0000.000,N,18000.000,E,1,08,0.9,5,M,4,M,,"))->at->longitude_degrees, -180.0);
}

TEST(Nmea, a_receiver_without_a_place_says_so) {
    for (const std::string between : {"GPGGA,,,,,,0,00,99.99,,,,,,", "GPRMC,123519,V,,,,,,,230394,,",
                                       "GPRMC,123519,A,4807.038,N,01131.000,E,0,0,230394,,,N"}) {
        const auto none = position(with_sum(between));
        ASSERT_TRUE(none) << between;
        EXPECT_FALSE(none->at) << between;
    }
}

TEST(Nmea, times_and_days_that_there_are_not_are_not_taken) {
    EXPECT_FALSE(position(with_sum("GPGGA,243519,4807.038,N,01131.000,E,1,08,0.9,5,M,4,M,,")));
    EXPECT_FALSE(position(with_sum("GPGGA,126019,4807.038,N,01131.000,E,1,08,0.9,5,M,4,M,,")));
    EXPECT_FALSE(position(with_sum("GPRMC,123519,A,4807.038,N,01131.000,E,0,0,310294,,"))->day);
    EXPECT_EQ(position(with_sum("GPRMC,123519,A,4807.038,N,01131.000,E,0,0,290224,,"))->day,
              sys_days(year(2024) / February / 29));
}

// Against another reader of these sentences: python3-nmea2 (Debian), over random places, times and hemispheres.
TEST(Nmea, random_sentences_are_read_as_another_library_reads_them) {
    const std::string call = "/usr/bin/python3 -B " PLUGSIDE_SOURCE_DIR "/tests/geo/read/nmea_sentences.py 20260301 200";
    const std::unique_ptr<FILE, int (*)(FILE*)> pipe(popen(call.c_str(), "r"), pclose);
    ASSERT_TRUE(pipe);
    char buffer[400];
    int rows = 0;
    for (; std::fgets(buffer, sizeof buffer, pipe.get()) != nullptr; ++rows) {
        std::istringstream row(buffer);
        std::string line;
        double latitude = 0.0;
        double longitude = 0.0;
        long long ms = 0;
        row >> line >> latitude >> longitude >> ms;
        const auto read = position(line);
        ASSERT_TRUE(read && read->at) << line;
        EXPECT_NEAR(read->at->latitude_degrees, latitude, 1e-9) << line;
        EXPECT_NEAR(read->at->longitude_degrees, longitude, 1e-9) << line;
        EXPECT_EQ(read->time_of_day, milliseconds(ms)) << line;
    }
    EXPECT_EQ(rows, 200);
}

}  // namespace
}  // namespace plugside
