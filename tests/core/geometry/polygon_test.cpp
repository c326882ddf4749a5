#include "core/geometry/polygon.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>
#include <random>

namespace plugside {
namespace {

Polygon square_with_hole() { return {{{{0, 0}, {10, 0}, {10, 10}, {0, 10}}}, {{{{4, 4}, {6, 4}, {6, 6}, {4, 6}}}}}; }

TEST(Polygon, area_is_the_outer_rings_less_the_holes) {
    EXPECT_DOUBLE_EQ(area_m2(square_with_hole()), 96.0);
    EXPECT_DOUBLE_EQ(area_m2(MultiPolygon{{square_with_hole(), square_with_hole()}}), 192.0);
    EXPECT_EQ(area_m2(MultiPolygon{}), 0.0);
}

TEST(Polygon, area_does_not_depend_on_the_ring_s_direction_or_place) {
    const Ring there{{{1e6, 1e6}, {1e6 + 3, 1e6}, {1e6 + 3, 1e6 + 2}, {1e6, 1e6 + 2}}};
    const Ring back{{there.vertices.rbegin(), there.vertices.rend()}};
    EXPECT_NEAR(area_m2(Polygon{there, {}}), 6.0, 1e-9);
    EXPECT_NEAR(area_m2(Polygon{back, {}}), 6.0, 1e-9);
}

// Area of a regular polygon of n corners on a circle of radius r: n/2 r^2 sin(2 pi/n).
TEST(Polygon, a_regular_polygon_has_its_closed_form_area) {
    for (const int corners : {3, 7, 64}) {
        Ring ring;
        for (int i = 0; i < corners; ++i) {
            const double angle = 2.0 * std::numbers::pi * i / corners;
            ring.vertices.push_back({5.0 * std::cos(angle), 5.0 * std::sin(angle)});
        }
        EXPECT_NEAR(area_m2(Polygon{ring, {}}), corners * 12.5 * std::sin(2.0 * std::numbers::pi / corners), 1e-10);
    }
}

TEST(Polygon, fewer_than_three_vertices_enclose_nothing) {
    const Polygon line{{{{0, 0}, {5, 5}}}, {}};
    EXPECT_EQ(area_m2(line), 0.0);
    EXPECT_FALSE(contains(line, {2, 2}));
    EXPECT_NEAR(distance({0, 2}, line).value(), std::numbers::sqrt2, 1e-12);
    EXPECT_EQ(distance({0, 0}, Polygon{}).value(), INFINITY);
}

TEST(Polygon, a_place_in_a_hole_is_outside) {
    EXPECT_TRUE(contains(square_with_hole(), {2, 5}));
    EXPECT_FALSE(contains(square_with_hole(), {5, 5}));
    EXPECT_FALSE(contains(square_with_hole(), {12, 5}));
    EXPECT_TRUE(contains(MultiPolygon{{square_with_hole()}}, {2, 5}));
    EXPECT_FALSE(contains(MultiPolygon{}, {2, 5}));
}

TEST(Polygon, distance_is_nought_inside_and_to_the_nearest_edge_outside) {
    EXPECT_EQ(distance({2, 5}, square_with_hole()).value(), 0.0);
    EXPECT_DOUBLE_EQ(distance({13, 14}, square_with_hole()).value(), 5.0);
    EXPECT_DOUBLE_EQ(distance({5, -2}, square_with_hole()).value(), 2.0);
    EXPECT_DOUBLE_EQ(distance({5, 4.5}, square_with_hole()).value(), 0.5);
}

// The share of random places inside tends to the share of the area.
TEST(Polygon, holds_the_share_of_random_places_that_its_area_says) {
    std::mt19937_64 random(17);
    std::uniform_real_distribution<double> any(0.0, 10.0);
    const Polygon star{{{{5, 10}, {4, 6}, {0, 5}, {4, 4}, {5, 0}, {6, 4}, {10, 5}, {6, 6}}}, {}};
    int inside = 0;
    const int places = 40000;
    for (int i = 0; i < places; ++i)
        if (contains(star, {any(random), any(random)})) ++inside;
    const double share = area_m2(star) / 100.0;
    EXPECT_NEAR(inside / static_cast<double>(places), share, 4.0 * std::sqrt(share * (1.0 - share) / places));
}

}  // namespace
}  // namespace plugside
