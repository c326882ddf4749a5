#include "core/survey/walk_outline.h"

#include <gtest/gtest.h>

#include <cmath>
#include <random>

#include "core/geometry/polygon.h"

namespace plugside {
namespace {

Survey marks_at(const std::vector<LocalPoint>& places) {
    Survey survey;
    for (const LocalPoint place : places) {
        survey.mounds.emplace_back();
        survey.mounds.back().plug = place;
    }
    return survey;
}

TEST(WalkOutline, a_square_walk_gets_a_square_that_lies_two_metres_outside) {
    const auto outline = walk_outline(marks_at({{0, 0}, {100, 0}, {100, 50}, {0, 50}, {40, 20}}));
    ASSERT_EQ(outline.size(), 4U);
    EXPECT_NEAR(area_m2(Polygon{Ring{outline}, {}}), 104.0 * 54.0, 1e-6);
}

TEST(WalkOutline, has_at_most_so_many_corners_and_holds_every_place_at_that_distance) {
    std::mt19937 random(20260301);
    std::normal_distribution<double> spread(0.0, 60.0);
    for (int round = 0; round < 300; ++round) {
        std::vector<LocalPoint> places;
        for (int i = 0; i < 3 + round; ++i) places.push_back({spread(random), spread(random)});
        for (const std::size_t most : {3U, 4U, 8U}) {
            const auto outline = walk_outline(marks_at(places), most, Metres::of(3.0));
            ASSERT_GE(outline.size(), 3U);
            EXPECT_LE(outline.size(), std::max<std::size_t>(most, 4));
            for (std::size_t i = 0; i < outline.size(); ++i) {
                const LocalVector edge = outline[(i + 1) % outline.size()] - outline[i];
                for (const LocalPoint place : places)
                    EXPECT_GT(cross(edge, place - outline[i]) / std::hypot(edge.east_m, edge.north_m), 3.0 - 1e-6);
            }
        }
    }
}

TEST(WalkOutline, of_places_on_one_line_or_none_there_is_none) {
    EXPECT_TRUE(walk_outline(Survey{}).empty());
    EXPECT_TRUE(walk_outline(marks_at({{0, 0}, {10, 0}})).empty());
    EXPECT_TRUE(walk_outline(marks_at({{0, 0}, {10, 10}, {20, 20}})).empty());
}

TEST(WalkOutline, a_round_walk_of_many_places_grows_by_less_than_a_tenth) {
    std::vector<LocalPoint> circle;
    for (int i = 0; i < 360; ++i) circle.push_back({100.0 * std::cos(i * M_PI / 180.0), 100.0 * std::sin(i * M_PI / 180.0)});
    const auto outline = walk_outline(marks_at(circle), 8, Metres::of(0.0));
    ASSERT_EQ(outline.size(), 8U);
    // the regular octagon about a circle has 8 tan(pi / 8) / pi = 1.0548 times its area
    const double times = area_m2(Polygon{Ring{outline}, {}}) / (M_PI * 100.0 * 100.0);
    EXPECT_GE(times, 1.0547);
    EXPECT_LT(times, 1.1);
}

}  // namespace
}  // namespace plugside
