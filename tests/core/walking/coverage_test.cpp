#include "core/walking/coverage.h"

#include <gtest/gtest.h>

#include <chrono>
#include <cmath>
#include <numbers>
#include <random>

#include "core/geometry/polyline.h"

namespace plugside {
namespace {

MultiPolygon square_field(double side) { return {{{{{{0, 0}, {side, 0}, {side, side}, {0, side}}}, {}}}}; }

Walk walk_along(const std::vector<LocalPoint>& places) {
    Walk walk{"walk 1", "walk.gpx", {{}}};
    for (const LocalPoint p : places) walk.segments[0].push_back({p, std::nullopt});
    return walk;
}

TEST(Coverage, without_a_track_all_of_the_boundary_is_unwalked) {
    const auto coverage = coverage_of({}, square_field(50), Metres::of(5));
    ASSERT_TRUE(coverage);
    EXPECT_TRUE(coverage->walked.empty());
    EXPECT_DOUBLE_EQ(coverage->walked_area_m2, 0.0);
    EXPECT_DOUBLE_EQ(coverage->unwalked_area_m2, 2500.0);
}

TEST(Coverage, without_a_boundary_nothing_says_what_was_missed) {
    const auto coverage = coverage_of({walk_along({{0, 0}, {30, 0}})}, {}, Metres::of(5));
    ASSERT_TRUE(coverage);
    EXPECT_TRUE(coverage->unwalked.empty());
    // Closed form 2 r L + pi r^2; round ends are drawn with 64 straight pieces, .16 % less than a disc.
    EXPECT_NEAR(coverage->walked_area_m2, 300.0 + 25.0 * std::numbers::pi, 0.0017 * 25.0 * std::numbers::pi);
}

TEST(Coverage, a_track_of_one_point_is_a_disc) {
    const auto coverage = coverage_of({walk_along({{25, 25}})}, square_field(50), Metres::of(5));
    ASSERT_TRUE(coverage);
    EXPECT_NEAR(coverage->walked_area_m2, 25.0 * std::numbers::pi, 0.0017 * 25.0 * std::numbers::pi);
    EXPECT_NEAR(coverage->unwalked_area_m2, 2500.0 - coverage->walked_area_m2, 1e-9);
}

TEST(Coverage, a_walk_outside_the_boundary_covers_nothing_of_it) {
    const auto coverage = coverage_of({walk_along({{100, 0}, {100, 50}})}, square_field(50), Metres::of(5));
    ASSERT_TRUE(coverage);
    EXPECT_DOUBLE_EQ(coverage->walked_area_m2, 0.0);
    EXPECT_DOUBLE_EQ(coverage->unwalked_area_m2, 2500.0);
}

// A raster count is another way to the same area: cells of 10 cm whose middle lies within reach.
TEST(Coverage, the_area_agrees_with_a_raster_count) {
    const std::vector<LocalPoint> places{{2, 3}, {35, 8}, {30, 30}, {8, 12}, {20, 38}, {38, 20}, {5, 34}};
    const auto coverage = coverage_of({walk_along(places)}, square_field(40), Metres::of(3));
    ASSERT_TRUE(coverage);
    const Polyline line{places};
    int cells = 0;
    for (int row = 0; row < 400; ++row)
        for (int column = 0; column < 400; ++column)
            if (distance({0.1 * column + 0.05, 0.1 * row + 0.05}, line)->value() <= 3.0) ++cells;
    EXPECT_NEAR(coverage->walked_area_m2, 0.01 * cells, 0.002 * coverage->walked_area_m2);
    EXPECT_NEAR(coverage->walked_area_m2 + coverage->unwalked_area_m2, 1600.0, 1e-6);
}

TEST(Coverage, rows_as_far_apart_as_twice_the_reach_leave_nothing_out) {
    std::vector<LocalPoint> rows;
    for (int row = 0; row < 11; ++row) {
        const double north = 10.0 * row;
        rows.push_back({row % 2 == 0 ? -5.0 : 105.0, north});
        rows.push_back({row % 2 == 0 ? 105.0 : -5.0, north});
    }
    const auto coverage = coverage_of({walk_along(rows)}, square_field(100), Metres::of(5.0));
    ASSERT_TRUE(coverage);
    EXPECT_NEAR(coverage->unwalked_area_m2, 0.0, 1e-6);
    EXPECT_NEAR(coverage->walked_area_m2, 10000.0, 1e-6);
}

TEST(Coverage, gives_nothing_once_stopped) {
    std::stop_source source;
    source.request_stop();
    Progress progress;
    progress.stop = source.get_token();
    EXPECT_FALSE(coverage_of({walk_along({{0, 0}, {30, 0}})}, square_field(50), Metres::of(5), progress));
}

// One buffer of such a walk was measured at about a minute; the bar here leaves room for a busy machine.
TEST(Coverage, a_walk_of_twenty_thousand_points_that_crosses_itself_takes_seconds) {
    std::mt19937_64 random(4);
    std::normal_distribution<double> turn(0.0, 0.3);
    std::vector<LocalPoint> places{{200, 200}};
    double heading = 0.0;
    for (int i = 1; i < 20000; ++i) {
        heading += turn(random);
        LocalPoint next = places.back() + LocalVector{1.4 * std::sin(heading), 1.4 * std::cos(heading)};
        if (next.east_m < 0 || next.east_m > 400 || next.north_m < 0 || next.north_m > 400) {
            heading += std::numbers::pi / 2;
            next = places.back();
        }
        places.push_back(next);
    }
    const auto begin = std::chrono::steady_clock::now();
    const auto coverage = coverage_of({walk_along(places)}, square_field(400), Metres::of(5));
    const std::chrono::duration<double> taken = std::chrono::steady_clock::now() - begin;
    ASSERT_TRUE(coverage);
    EXPECT_NEAR(coverage->walked_area_m2 + coverage->unwalked_area_m2, 160000.0, 1e-3);
    EXPECT_GT(coverage->walked_area_m2, 50000.0);
    RecordProperty("seconds", std::to_string(taken.count()));
    EXPECT_LT(taken.count(), 10.0);
}

}  // namespace
}  // namespace plugside
