// What a search for a reference system finds, and where it says that a file's marks would lie.
#include "app/reading/system_matches.h"

#include <gtest/gtest.h>

namespace plugside {
namespace {

// Easting 500,000 m lies on a zone's central meridian by the definition of UTM (USGS Professional Paper 1395, Snyder 1987):
// 105 degrees west in zone 13, 99 degrees west in zone 14; northing 0 on the equator.
const std::vector<std::array<double, 2>> on_the_meridian{{500000.0, 4538700.0}};
const NamedPlace in_zone_13{"walk.gpx", {-105.0, 41.0}};

TEST(SystemMatches, TheWordsThatWereMeantComeFirst) {
    const auto found = match_systems({"UTM 14", on_the_meridian, {}});
    ASSERT_FALSE(found.empty());
    EXPECT_EQ(found.front().system.code, "EPSG:32614");
    ASSERT_TRUE(found.front().at);
    EXPECT_NEAR(found.front().at->longitude_degrees, -99.0, 1e-9);
}

TEST(SystemMatches, ACodeIsFoundWhole) {
    EXPECT_EQ(match_systems({"32613", on_the_meridian, {}}).front().system.code, "EPSG:32613");
    EXPECT_EQ(match_systems({"EPSG:32613", on_the_meridian, {}}).front().system.code, "EPSG:32613");
}

TEST(SystemMatches, WhatLiesBesideTheOtherFilesComesFirst) {
    const auto found = match_systems({"UTM zone", on_the_meridian, {in_zone_13}});
    const auto proposed = match_systems({"", on_the_meridian, {in_zone_13}});
    ASSERT_FALSE(proposed.empty());
    EXPECT_EQ(proposed.front().system.code, "EPSG:32613");
    for (const SystemMatch& match : proposed) {
        ASSERT_TRUE(match.nearest);
        EXPECT_TRUE(in_reach(match.nearest->second));
    }
    EXPECT_FALSE(found.empty());
}

TEST(SystemMatches, NothingIsProposedWithoutAnythingToGoBy) {
    EXPECT_TRUE(match_systems({"", on_the_meridian, {}}).empty());
}

TEST(SystemMatches, NumbersThatCouldBeDegreesAreProposedAsSuch) {
    const auto found = match_systems({"", {{-104.9, 41.0}}, {}});
    ASSERT_EQ(found.size(), 1U);
    EXPECT_EQ(found.front().system.code, "EPSG:4326");
    EXPECT_NEAR(found.front().at->latitude_degrees, 41.0, 1e-9);
}

TEST(SystemMatches, AFarPlaceIsSaidToBeNoneOfTheField) {
    EXPECT_TRUE(distance_words(in_zone_13, 500000.0, LengthUnits::metres).contains("hardly the same field"));
    EXPECT_FALSE(distance_words(in_zone_13, 500.0, LengthUnits::metres).contains("hardly"));
    EXPECT_EQ(degrees_words({-104.9, 41.0}), "41.00000° N, 104.90000° W");
    // a degree of latitude is 60 nautical miles of 1852 m, to half a percent
    EXPECT_NEAR(distance_on_earth_m({0.0, 40.0}, {0.0, 41.0}), 60.0 * 1852.0, 600.0);
}

}  // namespace
}  // namespace plugside
