#include "core/survey/circular.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>
#include <random>

namespace plugside {
namespace {

std::vector<Bearing> bearings(std::initializer_list<double> degrees) {
    std::vector<Bearing> result;
    for (const double d : degrees) result.push_back(Bearing::degrees(d));
    return result;
}

TEST(Circular, no_bearing_has_no_mean) {
    EXPECT_FALSE(mean_bearing({}).direction);
    EXPECT_FALSE(mean_axis({}).direction);
    EXPECT_EQ(mean_bearing({}).resultant_length, 0.0);
}

TEST(Circular, bearings_that_cancel_have_no_mean) {
    EXPECT_FALSE(mean_bearing(bearings({10, 190})).direction);
    EXPECT_FALSE(mean_bearing(bearings({0, 120, 240})).direction);
    EXPECT_FALSE(mean_axis(bearings({0, 90})).direction);
}

TEST(Circular, the_mean_of_bearings_on_both_sides_of_north_is_north) {
    const MeanBearing mean = mean_bearing(bearings({350, 10}));
    EXPECT_NEAR(std::abs(turn_degrees(*mean.direction, Bearing::degrees(0))), 0.0, 1e-12);
    EXPECT_NEAR(mean.resultant_length, std::cos(10.0 * std::numbers::pi / 180.0), 1e-12);
}

TEST(Circular, an_axis_read_from_its_other_end_is_the_same_axis) {
    const MeanBearing mean = mean_axis(bearings({20, 200, 24, 204}));
    EXPECT_NEAR(mean.direction->degrees(), 22.0, 1e-12);
    EXPECT_NEAR(mean.resultant_length, std::cos(4.0 * std::numbers::pi / 180.0), 1e-12);
    EXPECT_NEAR(angle_between_axes_degrees(*mean_axis(bearings({175, 5})).direction, Bearing::degrees(0)), 0.0, 1e-12);
}

TEST(Circular, one_bearing_is_its_own_mean) {
    EXPECT_NEAR(mean_bearing(bearings({123.25})).direction->degrees(), 123.25, 1e-12);
    EXPECT_NEAR(mean_bearing(bearings({123.25})).resultant_length, 1.0, 1e-15);
    EXPECT_NEAR(mean_axis(bearings({303.25})).direction->degrees(), 123.25, 1e-12);
}

TEST(Circular, turning_every_bearing_turns_the_mean_alike) {
    std::mt19937_64 random(8);
    std::uniform_real_distribution<double> any(0.0, 360.0);
    for (int round = 0; round < 200; ++round) {
        std::vector<Bearing> before;
        std::vector<Bearing> after;
        const double turn = any(random);
        for (int i = 0; i < 9; ++i) {
            before.push_back(Bearing::degrees(any(random)));
            after.push_back(before.back().turned(turn));
        }
        const MeanBearing a = mean_bearing(before);
        const MeanBearing b = mean_bearing(after);
        EXPECT_NEAR(turn_degrees(a.direction->turned(turn), *b.direction), 0.0, 1e-9) << "round " << round;
        EXPECT_NEAR(a.resultant_length, b.resultant_length, 1e-12);
    }
}

}  // namespace
}  // namespace plugside
