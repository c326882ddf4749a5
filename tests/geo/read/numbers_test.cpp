#include "geo/read/numbers.h"

#include <gtest/gtest.h>

namespace plugside {
namespace {

TEST(Numbers, are_read_whole_or_not_at_all) {
    EXPECT_EQ(parse_number("38.5"), 38.5);
    EXPECT_EQ(parse_number(" -120.25\n"), -120.25);
    EXPECT_EQ(parse_number("+7"), 7.0);
    EXPECT_EQ(parse_number("1e2"), 100.0);
    EXPECT_EQ(parse_number(".5"), 0.5);
    for (const char* text : {"", " ", "abc", "38.5x", "38,5", "0x10", "nan", "NaN", "inf", "-inf", "infinity", "1e400",
                             "-1e400", "1e", "--1", "+-1", "++1", "1 2", "38.5\xC2\xB0"})
        EXPECT_FALSE(parse_number(text).has_value()) << text;
}

TEST(Numbers, are_read_as_times_with_zone_and_fraction) {
    EXPECT_EQ(format_utc_time(*parse_utc_time("2026-03-01T09:30:00Z")), "2026-03-01T09:30:00Z");
    EXPECT_EQ(format_utc_time(*parse_utc_time("2026-03-01T09:30:00.5Z")), "2026-03-01T09:30:00.500Z");
    EXPECT_EQ(format_utc_time(*parse_utc_time("2026-03-01T09:30:00.123987Z")), "2026-03-01T09:30:00.123Z");
    EXPECT_EQ(format_utc_time(*parse_utc_time("2026-03-01T00:30:00+02:00")), "2026-02-28T22:30:00Z");
    EXPECT_EQ(format_utc_time(*parse_utc_time("2024-02-29T23:59:60-07:30")), "2024-03-01T07:30:00Z");
    EXPECT_EQ(format_utc_time(*parse_utc_time("2026-03-01T09:30:00")), "2026-03-01T09:30:00Z");
    for (const char* text :
         {"", "2026-03-01", "2026-02-29T00:00:00Z", "2026-13-01T00:00:00Z", "2026-03-01T24:00:00Z", "0000-01-01T00:00:00Z",
          "2026-03-01T09:30:00.Z", "2026-03-01T09:30:00Zx", "2026-03-01T09:30:00+15:00", "2026-3-1T9:30:00Z",
          "2026-03-01 09:30:00Z", "-2026-03-01T09:30:00Z"})
        EXPECT_FALSE(parse_utc_time(text).has_value()) << text;
}

}  // namespace
}  // namespace plugside
