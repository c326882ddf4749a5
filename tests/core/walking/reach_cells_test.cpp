#include "core/walking/reach_cells.h"

#include <gtest/gtest.h>

#include <chrono>
#include <cmath>
#include <numbers>
#include <random>

#include "core/geometry/area_operations.h"
#include "core/walking/coverage.h"
#include "core/walking/thinned_track.h"

namespace plugside {
namespace {

Polyline wandering(std::size_t points, double side, std::uint64_t seed) {
    std::mt19937_64 random(seed);
    std::normal_distribution<double> turn(0.0, 0.3);
    Polyline line{{{0.5 * side, 0.5 * side}}};
    for (double heading = 0.0; line.vertices.size() < points;) {
        heading += turn(random);
        const LocalPoint next = line.vertices.back() + LocalVector{1.4 * std::sin(heading), 1.4 * std::cos(heading)};
        const bool inside = next.east_m > 0 && next.east_m < side && next.north_m > 0 && next.north_m < side;
        if (!inside) heading += 1.5;
        line.vertices.push_back(inside ? next : line.vertices.back());
    }
    return line;
}

// Steiner's formula: the ground within r of a convex figure is A + r P + pi r^2; of a line 2 r L + pi r^2.
TEST(ReachCells, agrees_with_steiners_formula_for_a_line_and_a_disc) {
    const double disc = std::numbers::pi * 25.0;
    for (const double turn : {0.0, 0.3, 1.1}) {
        const Polyline line{{{3, 4}, {3 + 60 * std::cos(turn), 4 + 60 * std::sin(turn)}}};
        EXPECT_NEAR(area_m2(*within_reach_by_cells({line}, Metres::of(5))), 600.0 + disc, 0.003 * disc + 0.05);
    }
    EXPECT_NEAR(area_m2(*within_reach_by_cells({{{{7, 7}}}}, Metres::of(5))), disc, 0.003 * disc);
}

TEST(ReachCells, of_a_closed_round_has_one_hole_of_the_right_size) {
    const Polyline round{{{0, 0}, {50, 0}, {50, 40}, {0, 40}, {0, 0}}};
    const MultiPolygon area = *within_reach_by_cells({round}, Metres::of(4));
    ASSERT_EQ(area.parts.size(), 1U);
    ASSERT_EQ(area.parts[0].holes.size(), 1U);
    // Steiner outside the rectangle, a smaller rectangle inside
    EXPECT_NEAR(area_m2(area), (2000.0 + 4.0 * 180.0 + 16.0 * std::numbers::pi) - 42.0 * 32.0, 0.5);
}

TEST(ReachCells, of_lines_apart_has_a_part_each_with_its_own_holes) {
    const Polyline round{{{0, 0}, {30, 0}, {30, 30}, {0, 30}, {0, 0}}};
    Polyline far = round;
    for (LocalPoint& p : far.vertices) p = p + LocalVector{200, 10};
    const Polyline inner{{{15, 15}, {15.5, 15}}};  // a part inside another's hole
    const MultiPolygon area = *within_reach_by_cells({round, far, inner}, Metres::of(2));
    ASSERT_EQ(area.parts.size(), 3U);
    std::size_t holes = 0;
    for (const Polygon& part : area.parts) holes += part.holes.size();
    EXPECT_EQ(holes, 2U);
    EXPECT_TRUE(contains(area, {15, 15}));
    EXPECT_FALSE(contains(area, {15, 8}));
    EXPECT_TRUE(contains(area, {230, 25}));
}

TEST(ReachCells, agrees_with_joined_buffers_and_a_raster_count_on_walks_that_cross_themselves) {
    for (std::uint64_t seed = 1; seed <= 4; ++seed) {
        const Polyline line = wandering(1500, 120.0, seed);
        const MultiPolygon by_cells = *within_reach_by_cells({line}, Metres::of(3));
        const MultiPolygon by_buffers = buffered({line}, Metres::of(3));
        EXPECT_NEAR(area_m2(by_cells), area_m2(by_buffers), 0.003 * area_m2(by_buffers));
        // valid rings: joining them with themselves changes nothing
        EXPECT_NEAR(area_m2(union_of({by_cells})), area_m2(by_cells), 1e-6 * area_m2(by_cells));
        EXPECT_LT(area_m2(difference(by_cells, by_buffers)) + area_m2(difference(by_buffers, by_cells)),
                  0.006 * area_m2(by_buffers));
    }
}

TEST(ReachCells, of_nothing_is_nothing_and_stops_when_told) {
    EXPECT_TRUE(within_reach_by_cells({}, Metres::of(5))->empty());
    EXPECT_TRUE(within_reach_by_cells({{{{0, 0}, {5, 5}}}}, Metres::of(0))->empty());
    std::stop_source source;
    source.request_stop();
    EXPECT_FALSE(within_reach_by_cells({{{{0, 0}, {5, 5}}}}, Metres::of(5), source.get_token()));
    EXPECT_FALSE(within_reach_by_cells({{{{0, 0}, {1e6, 1e6}}}}, Metres::of(5)));  // too wide a net
}

TEST(ThinnedTrack, leaves_out_only_what_lies_within_the_tolerance) {
    const Polyline line = wandering(5000, 300.0, 7);
    const Polyline thin = simplified(line, Metres::of(0.25));
    EXPECT_LT(thin.vertices.size(), line.vertices.size() / 2);
    EXPECT_EQ(thin.vertices.front(), line.vertices.front());
    EXPECT_EQ(thin.vertices.back(), line.vertices.back());
    for (std::size_t i = 0; i < line.vertices.size(); i += 7)
        EXPECT_LE(distance(line.vertices[i], thin)->value(), 0.25 + 1e-9);
    EXPECT_EQ(simplified({{{1, 1}, {2, 2}}}, Metres::of(1)).vertices.size(), 2U);
}

// Measured: .25 s and 3 s in a release build with both cores busy; the bars leave room for slower ones.
TEST(Coverage, of_a_hundred_thousand_fixes_takes_a_moment_and_of_a_million_seconds) {
    for (const auto& [points, bar_s] : {std::pair<std::size_t, double>{100000, 4.0}, {1000000, 30.0}}) {
        const Polyline line = wandering(points, 900.0, 3);
        Walk walk{"walk 1", "walk.gpx", {{}}};
        for (const LocalPoint p : line.vertices) walk.segments[0].push_back({p, std::nullopt});
        const MultiPolygon field{{{{{{0, 0}, {900, 0}, {900, 900}, {0, 900}}}, {}}}};
        const auto begin = std::chrono::steady_clock::now();
        const auto coverage = coverage_of({walk}, field, Metres::of(5));
        const std::chrono::duration<double> taken = std::chrono::steady_clock::now() - begin;
        ASSERT_TRUE(coverage);
        EXPECT_NEAR(coverage->walked_area_m2 + coverage->unwalked_area_m2, 810000.0, 1e-2);
        RecordProperty("seconds_" + std::to_string(points), std::to_string(taken.count()));
        EXPECT_LT(taken.count(), bar_s);
    }
}

}  // namespace
}  // namespace plugside
