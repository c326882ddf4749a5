#include "core/geometry/area_operations.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>
#include <random>

namespace plugside {
namespace {

// Area of a disc of radius 1 drawn with 64 straight pieces (area of a regular polygon: n/2 sin(2 pi/n)).
const double drawn_disc = 32.0 * std::sin(2.0 * std::numbers::pi / 64.0);

MultiPolygon rectangle(double west, double south, double east, double north) {
    return {{{{{{west, south}, {east, south}, {east, north}, {west, north}}}, {}}}};
}

TEST(AreaOperations, no_line_has_no_buffer) {
    EXPECT_TRUE(buffered({}, Metres::of(3.0)).empty());
    EXPECT_TRUE(buffered({Polyline{}}, Metres::of(3.0)).empty());
    EXPECT_TRUE(buffered({Polyline{{{0, 0}, {5, 0}}}}, Metres::of(0.0)).empty());
}

TEST(AreaOperations, one_place_is_buffered_to_a_disc) {
    EXPECT_NEAR(area_m2(buffered({Polyline{{{7, -2}}}}, Metres::of(3.0))), 9.0 * drawn_disc, 1e-9);
    EXPECT_NEAR(area_m2(buffered({Polyline{{{7, -2}, {7, -2}}}}, Metres::of(3.0))), 9.0 * drawn_disc, 1e-9);
}

// Closed form: a straight line of length L and reach r covers 2 r L + pi r^2.
TEST(AreaOperations, a_straight_line_covers_twice_reach_times_length_and_a_disc) {
    for (const double length : {0.5, 10.0, 400.0}) {
        const double area = area_m2(buffered({Polyline{{{1, 2}, {1 + 0.6 * length, 2 + 0.8 * length}}}}, Metres::of(4.0)));
        EXPECT_NEAR(area, 8.0 * length + 16.0 * drawn_disc, 1e-9 * (1.0 + area));
        EXPECT_NEAR(area, 8.0 * length + 16.0 * std::numbers::pi, 0.0017 * 16.0 * std::numbers::pi);
    }
}

// Steiner's formula: the parallel body of a convex ring of perimeter P and area A has area A + P r + pi r^2. The ring's own
// line buffered is that body less what lies further than r inside: for a rectangle a smaller rectangle.
TEST(AreaOperations, the_walk_around_a_rectangle_obeys_steiners_formula) {
    const double w = 30.0;
    const double h = 20.0;
    const double r = 4.0;
    const MultiPolygon around = buffered({Polyline{{{0, 0}, {w, 0}, {w, h}, {0, h}, {0, 0}}}}, Metres::of(r));
    const double steiner = w * h + 2.0 * (w + h) * r + r * r * drawn_disc;
    EXPECT_NEAR(area_m2(around), steiner - (w - 2 * r) * (h - 2 * r), 1e-8);
    ASSERT_EQ(around.parts.size(), 1U);
    EXPECT_EQ(around.parts[0].holes.size(), 1U);
}

TEST(AreaOperations, a_long_line_in_chunks_has_the_buffer_of_the_whole) {
    Polyline line;
    for (int i = 0; i <= 1000; ++i) line.vertices.push_back({0.37 * i, 0.0});
    EXPECT_NEAR(area_m2(buffered({line}, Metres::of(2.0))), 4.0 * 370.0 + 4.0 * drawn_disc, 1e-6);
}

TEST(AreaOperations, a_place_is_in_the_buffer_when_its_distance_is_less_than_the_reach) {
    std::mt19937_64 random(20250101);
    std::uniform_real_distribution<double> anywhere(0.0, 40.0);
    for (int round = 0; round < 20; ++round) {
        Polyline line;
        for (int i = 0; i < 8; ++i) line.vertices.push_back({anywhere(random), anywhere(random)});
        const MultiPolygon area = buffered({line}, Metres::of(3.0));
        for (int i = 0; i < 400; ++i) {
            const LocalPoint place{anywhere(random), anywhere(random)};
            const double away = distance(place, line)->value();
            // between the inscribed polygon and the circle either answer is right
            if (away > 3.0 * 0.998 && away < 3.0 + 1e-9) continue;
            EXPECT_EQ(contains(area, place), away < 3.0) << "round " << round << ", " << away << " m away";
        }
    }
}

TEST(AreaOperations, areas_of_overlaid_rectangles_are_those_of_arithmetic) {
    const MultiPolygon a = rectangle(0, 0, 10, 10);
    const MultiPolygon b = rectangle(6, 5, 20, 30);
    EXPECT_NEAR(area_m2(intersection(a, b)), 20.0, 1e-9);
    EXPECT_NEAR(area_m2(difference(a, b)), 80.0, 1e-9);
    EXPECT_NEAR(area_m2(union_of(a, b)), 100.0 + 350.0 - 20.0, 1e-9);
    EXPECT_NEAR(area_m2(union_of(std::vector<MultiPolygon>{a, b, a})), 430.0, 1e-9);
    EXPECT_TRUE(intersection(a, rectangle(11, 11, 12, 12)).empty());
    EXPECT_TRUE(difference(a, rectangle(-1, -1, 11, 11)).empty());
}

TEST(AreaOperations, nothing_overlaid_with_something_is_nothing_or_that) {
    const MultiPolygon a = rectangle(0, 0, 10, 10);
    EXPECT_TRUE(intersection(a, {}).empty());
    EXPECT_NEAR(area_m2(difference(a, {})), 100.0, 1e-9);
    EXPECT_TRUE(difference({}, a).empty());
    EXPECT_NEAR(area_m2(union_of({}, a)), 100.0, 1e-9);
    EXPECT_TRUE(union_of(std::vector<MultiPolygon>{}).empty());
}

TEST(AreaOperations, a_hole_stays_a_hole) {
    MultiPolygon a = rectangle(0, 0, 10, 10);
    a.parts[0].holes.push_back({{{4, 4}, {6, 4}, {6, 6}, {4, 6}}});
    const MultiPolygon west = intersection(a, rectangle(0, 0, 5, 10));
    EXPECT_NEAR(area_m2(west), 48.0, 1e-9);
    const MultiPolygon whole = union_of(a, a);
    ASSERT_EQ(whole.parts.size(), 1U);
    EXPECT_EQ(whole.parts[0].holes.size(), 1U);
}

// A boundary drawn by hand as a bow tie: two triangles of 25 m2 each.
TEST(AreaOperations, a_ring_that_crosses_itself_is_mended) {
    const MultiPolygon bow{{{{{{0, 0}, {10, 10}, {10, 0}, {0, 10}}}, {}}}};
    EXPECT_NEAR(area_m2(intersection(bow, rectangle(-5, -5, 15, 15))), 50.0, 1e-9);
}

TEST(AreaOperations, rings_without_area_enclose_nothing) {
    const MultiPolygon two_vertices{{{{{{0, 0}, {10, 10}}}, {}}}};
    const MultiPolygon flat{{{{{{0, 0}, {10, 10}, {20, 20}}}, {}}}};
    EXPECT_TRUE(intersection(two_vertices, rectangle(0, 0, 5, 5)).empty());
    EXPECT_TRUE(intersection(flat, rectangle(0, 0, 5, 5)).empty());
}

TEST(AreaOperations, the_place_for_a_label_lies_inside) {
    const MultiPolygon bent{{{{{{0, 0}, {30, 0}, {30, 2}, {2, 2}, {2, 30}, {0, 30}}}, {}}}};
    EXPECT_TRUE(contains(bent, point_inside(bent)));
    EXPECT_TRUE(contains(rectangle(5, 5, 6, 9), point_inside(rectangle(5, 5, 6, 9))));
}

TEST(AreaOperations, buffering_gives_nothing_once_stopped) {
    std::stop_source source;
    source.request_stop();
    EXPECT_FALSE(buffered({Polyline{{{0, 0}, {5, 0}}}}, Metres::of(1.0), source.get_token()).has_value());
}

}  // namespace
}  // namespace plugside
