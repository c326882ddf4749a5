#include "core/units/metres.h"

#include <gtest/gtest.h>

#include "core/units/probability.h"

namespace plugside {
namespace {

// 1 ft = .3048 m, 1 in = .0254 m: international yard and pound agreement of 1959 [memory]. 100 ft = 30.48 m stands so in a
// federal label.
TEST(Metres, feet_and_inches_are_the_international_ones) {
    EXPECT_DOUBLE_EQ(Metres::from_feet(100).value(), 30.48);
    EXPECT_DOUBLE_EQ(Metres::from_inches(12).value(), Metres::from_feet(1).value());
    EXPECT_DOUBLE_EQ(Metres::of(30.48).feet(), 100.0);
    EXPECT_DOUBLE_EQ(Metres::of(0.3048).inches(), 12.0);
}

// Depths of 6-12 in are 15-30 cm in UC IPM Pest Notes 7433.
TEST(Metres, six_to_twelve_inches_are_fifteen_to_thirty_centimetres) {
    EXPECT_NEAR(Metres::from_inches(6).value(), 0.15, 0.005);
    EXPECT_NEAR(Metres::from_inches(12).value(), 0.30, 0.005);
}

TEST(Metres, arithmetic_is_that_of_numbers) {
    EXPECT_EQ(Metres::of(2) + Metres::of(3), Metres::of(5));
    EXPECT_EQ(Metres::of(2) - Metres::of(3), -Metres::of(1));
    EXPECT_EQ(2.0 * Metres::of(3), Metres::of(3) * 2.0);
    EXPECT_EQ(Metres::of(3) / 2.0, Metres::of(1.5));
    EXPECT_DOUBLE_EQ(Metres::of(3) / Metres::of(1.5), 2.0);
    EXPECT_LT(Metres::of(1), Metres::of(2));
}

TEST(Probability, rounding_residue_is_clamped) {
    EXPECT_EQ(Probability::of(1.0 + 1e-9).value(), 1.0);
    EXPECT_EQ(Probability::of(-1e-9).value(), 0.0);
    EXPECT_EQ(Probability::of(0.25).value(), 0.25);
}

TEST(Probability, never_says_certain_or_impossible_unless_it_is) {
    EXPECT_EQ(Probability::of(0.999).in_100(), 99);
    EXPECT_EQ(Probability::of(1.0).in_100(), 100);
    EXPECT_EQ(Probability::of(0.001).in_100(), 1);
    EXPECT_EQ(Probability::of(0.0).in_100(), 0);
    EXPECT_EQ(Probability::of(0.905).in_100(), 91);
    EXPECT_EQ(Probability::of(0.5).in_100(), 50);
}

}  // namespace
}  // namespace plugside
