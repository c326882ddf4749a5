#include "core/units/bearing.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>
#include <random>

namespace plugside {
namespace {

TEST(Bearing, any_number_of_degrees_folds_into_one_turn) {
    struct Row {
        double given;
        double folded;
    };
    for (const Row row : {Row{0, 0}, Row{359.5, 359.5}, Row{360, 0}, Row{-0.0, 0}, Row{-90, 270}, Row{725, 5}, Row{-360, 0},
                          Row{-1e-300, 0}, Row{1e6, 280}}) {
        EXPECT_DOUBLE_EQ(Bearing::degrees(row.given).degrees(), row.folded) << row.given;
        EXPECT_FALSE(std::signbit(Bearing::degrees(row.given).degrees())) << row.given;
    }
}

TEST(Bearing, the_smallest_step_west_of_north_stays_below_a_whole_turn) {
    for (double degrees = -1.0; degrees < -1e-320; degrees /= 10.0) {
        EXPECT_GE(Bearing::degrees(degrees).degrees(), 0.0);
        EXPECT_LT(Bearing::degrees(degrees).degrees(), 360.0);
    }
}

TEST(Bearing, runs_clockwise_from_north) {
    EXPECT_DOUBLE_EQ(Bearing::along({0, 5})->degrees(), 0.0);
    EXPECT_DOUBLE_EQ(Bearing::along({5, 0})->degrees(), 90.0);
    EXPECT_DOUBLE_EQ(Bearing::along({0, -5})->degrees(), 180.0);
    EXPECT_DOUBLE_EQ(Bearing::along({-5, 0})->degrees(), 270.0);
    EXPECT_DOUBLE_EQ(Bearing::along({3, 3})->degrees(), 45.0);
}

TEST(Bearing, a_step_of_no_length_has_none) {
    EXPECT_FALSE(Bearing::along({0, 0}));
    EXPECT_FALSE(Bearing::along({-0.0, 0.0}));
    EXPECT_TRUE(Bearing::along({std::numeric_limits<double>::denorm_min(), 0}));
}

TEST(Bearing, the_unit_step_leads_where_the_bearing_points) {
    std::mt19937_64 random(360);
    std::uniform_real_distribution<double> any(0.0, 360.0);
    for (int i = 0; i < 1000; ++i) {
        const Bearing bearing = Bearing::degrees(any(random));
        EXPECT_NEAR(bearing.unit().length_m(), 1.0, 1e-15);
        EXPECT_NEAR(turn_degrees(*Bearing::along(bearing.unit()), bearing), 0.0, 1e-12);
    }
}

TEST(Bearing, to_the_right_of_a_bearing_is_a_quarter_clockwise) {
    const Bearing bearing = Bearing::degrees(30);
    EXPECT_NEAR(Bearing::along(turned_right(bearing.unit()))->degrees(), 120.0, 1e-12);
}

TEST(Bearing, a_turn_takes_the_short_way_and_half_a_turn_is_positive) {
    struct Row {
        double from;
        double to;
        double turn;
    };
    for (const Row row : {Row{350, 10, 20}, Row{10, 350, -20}, Row{0, 180, 180}, Row{180, 0, 180}, Row{90, 270, 180},
                          Row{270, 90, 180}, Row{5, 5, 0}, Row{0, 181, -179}})
        EXPECT_DOUBLE_EQ(turn_degrees(Bearing::degrees(row.from), Bearing::degrees(row.to)), row.turn)
            << row.from << " to " << row.to;
}

TEST(Bearing, turning_by_the_turn_between_two_leads_from_one_to_the_other) {
    std::mt19937_64 random(361);
    std::uniform_real_distribution<double> any(0.0, 360.0);
    for (int i = 0; i < 1000; ++i) {
        const Bearing a = Bearing::degrees(any(random));
        const Bearing b = Bearing::degrees(any(random));
        EXPECT_NEAR(turn_degrees(a.turned(turn_degrees(a, b)), b), 0.0, 1e-10);
        EXPECT_NEAR(turn_degrees(a.reversed().reversed(), a), 0.0, 1e-10);
    }
}

TEST(Bearing, axes_have_no_arrow) {
    struct Row {
        double a;
        double b;
        double angle;
    };
    for (const Row row :
         {Row{0, 180, 0}, Row{10, 350, 20}, Row{10, 170, 20}, Row{0, 90, 90}, Row{0, 270, 90}, Row{45, 200, 25}}) {
        EXPECT_NEAR(angle_between_axes_degrees(Bearing::degrees(row.a), Bearing::degrees(row.b)), row.angle, 1e-12);
        EXPECT_NEAR(angle_between_axes_degrees(Bearing::degrees(row.b), Bearing::degrees(row.a).reversed()), row.angle,
                    1e-12);
    }
}

}  // namespace
}  // namespace plugside
