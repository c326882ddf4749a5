#include "core/geometry/polyline.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <random>

namespace plugside {
namespace {

TEST(Polyline, length_is_the_sum_of_its_pieces) {
    EXPECT_EQ(length(Polyline{}).value(), 0.0);
    EXPECT_EQ(length(Polyline{{{4, 5}}}).value(), 0.0);
    EXPECT_DOUBLE_EQ(length(Polyline{{{0, 0}, {3, 4}, {3, 4}, {3, 10}}}).value(), 11.0);
}

TEST(Polyline, distance_is_to_the_nearest_place_of_the_line) {
    const Polyline bent{{{0, 0}, {10, 0}, {10, 10}}};
    EXPECT_DOUBLE_EQ(distance({5, 3}, bent)->value(), 3.0);
    EXPECT_DOUBLE_EQ(distance({-3, -4}, bent)->value(), 5.0);
    EXPECT_DOUBLE_EQ(distance({12, 5}, bent)->value(), 2.0);
    EXPECT_DOUBLE_EQ(distance({10, 7}, bent)->value(), 0.0);
}

TEST(Polyline, nothing_lies_at_no_distance_from_no_line) {
    EXPECT_FALSE(distance({1, 1}, Polyline{}));
    EXPECT_DOUBLE_EQ(distance({1, 1}, Polyline{{{4, 5}}})->value(), 5.0);
}

TEST(Polyline, the_distance_to_a_segment_is_the_least_over_its_places) {
    std::mt19937_64 random(11);
    std::uniform_real_distribution<double> any(-10.0, 10.0);
    for (int round = 0; round < 300; ++round) {
        const LocalPoint p{any(random), any(random)};
        const LocalPoint a{any(random), any(random)};
        const LocalPoint b{any(random), any(random)};
        double least = INFINITY;
        for (int i = 0; i <= 2000; ++i) least = std::min(least, distance_m(p, a + (b - a) * (i / 2000.0)));
        const double found = distance_to_segment_m(p, a, b);
        EXPECT_LE(found, least + 1e-12) << "round " << round;
        EXPECT_GE(found, least - 0.01) << "round " << round;
        EXPECT_NEAR(found, distance_to_segment_m(p, b, a), 1e-12) << "round " << round;
    }
}

TEST(Polyline, segments_that_cross_touch_or_overlap_meet) {
    EXPECT_TRUE(segments_meet({0, 0}, {10, 10}, {0, 10}, {10, 0}));
    EXPECT_TRUE(segments_meet({0, 0}, {10, 0}, {5, 0}, {5, 5}));
    EXPECT_TRUE(segments_meet({0, 0}, {10, 0}, {10, 0}, {20, 5}));
    EXPECT_TRUE(segments_meet({0, 0}, {10, 0}, {4, 0}, {20, 0}));
    EXPECT_TRUE(segments_meet({0, 0}, {10, 0}, {3, 0}, {3, 0}));
}

TEST(Polyline, segments_apart_parallel_or_in_line_do_not_meet) {
    EXPECT_FALSE(segments_meet({0, 0}, {10, 0}, {0, 1}, {10, 1}));
    EXPECT_FALSE(segments_meet({0, 0}, {10, 0}, {11, 0}, {20, 0}));
    EXPECT_FALSE(segments_meet({0, 0}, {10, 0}, {5, 0.001}, {5, 5}));
    EXPECT_FALSE(segments_meet({0, 0}, {1, 1}, {3, 0}, {0, 3}));
    EXPECT_FALSE(segments_meet({0, 0}, {0, 0}, {1, 1}, {1, 1}));
}

TEST(Polyline, whether_segments_meet_does_not_depend_on_how_they_are_told) {
    std::mt19937_64 random(13);
    std::uniform_int_distribution<int> any(0, 5);  // a coarse lattice: touching and overlapping are common
    const auto place = [&] { return LocalPoint{static_cast<double>(any(random)), static_cast<double>(any(random))}; };
    for (int round = 0; round < 2000; ++round) {
        const LocalPoint a = place();
        const LocalPoint b = place();
        const LocalPoint c = place();
        const LocalPoint d = place();
        const bool meet = segments_meet(a, b, c, d);
        EXPECT_EQ(meet, segments_meet(b, a, c, d)) << "round " << round;
        EXPECT_EQ(meet, segments_meet(a, b, d, c)) << "round " << round;
        EXPECT_EQ(meet, segments_meet(c, d, a, b)) << "round " << round;
    }
}

}  // namespace
}  // namespace plugside
