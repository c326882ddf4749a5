#include "geo/read/walking_direction.h"

#include <gtest/gtest.h>

namespace plugside {
namespace {

UtcTime at_second(int second) { return UtcTime{} + std::chrono::hours(500000) + std::chrono::seconds(second); }

// East along a parallel, about 1.1 m a step at the equator, one step a second.
std::vector<std::vector<GeographicTrackPoint>> eastward(int steps) {
    std::vector<std::vector<GeographicTrackPoint>> segments(1);
    for (int i = 0; i < steps; ++i) segments[0].push_back({{1e-5 * i, 0.0}, at_second(i)});
    return segments;
}

TEST(WalkingDirection, is_that_of_the_track_around_the_mark) {
    const TrackTimes track(eastward(40));
    const auto direction = track.walking_direction({2e-4, 0.0}, at_second(20));
    ASSERT_TRUE(direction.has_value());
    EXPECT_NEAR(direction->degrees(), 90.0, 1e-9);
}

TEST(WalkingDirection, is_told_from_one_side_at_the_tracks_ends) {
    const TrackTimes track(eastward(40));
    EXPECT_NEAR(track.walking_direction({0.0, 0.0}, at_second(-5)).value().degrees(), 90.0, 1e-9);
    EXPECT_NEAR(track.walking_direction({4e-4, 0.0}, at_second(60)).value().degrees(), 90.0, 1e-9);
}

TEST(WalkingDirection, takes_no_heed_of_a_walker_who_turns_about_at_the_mound) {
    auto segments = eastward(40);
    for (int i = 0; i < 30; ++i)
        segments[0].push_back({{1e-5 * (20 + (i % 3)), 1e-5 * (i % 2)}, at_second(20) + std::chrono::milliseconds(30 * i)});
    EXPECT_NEAR(TrackTimes(segments).walking_direction({2e-4, 0.0}, at_second(20)).value().degrees(), 90.0, 1e-9);
}

TEST(WalkingDirection, is_unknown_without_times_or_far_from_them_or_where_nobody_walked) {
    EXPECT_FALSE(TrackTimes(eastward(40)).walking_direction({2e-4, 0.0}, std::nullopt).has_value());
    EXPECT_FALSE(TrackTimes(eastward(40)).walking_direction({2e-4, 0.0}, at_second(5000)).has_value());
    EXPECT_FALSE(TrackTimes(eastward(2)).walking_direction({0.0, 0.0}, at_second(1)).has_value());
    EXPECT_FALSE(TrackTimes({}).walking_direction({0.0, 0.0}, at_second(1)).has_value());
    EXPECT_FALSE(
        TrackTimes({{{{0.0, 0.0}, std::nullopt}, {{1.0, 0.0}, std::nullopt}}}).walking_direction({0.0, 0.0}, at_second(1)));
}

TEST(WalkingDirection, goes_the_short_way_across_the_180th_meridian) {
    const TrackTimes track({{{{179.9999, 0.0}, at_second(0)}, {{-179.9999, 0.0}, at_second(20)}}});
    EXPECT_NEAR(track.walking_direction({180.0, 0.0}, at_second(10)).value().degrees(), 90.0, 1e-9);
}

}  // namespace
}  // namespace plugside
