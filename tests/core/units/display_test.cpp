#include "core/units/display.h"

#include <gtest/gtest.h>

namespace plugside {
namespace {

constexpr LengthUnits feet = LengthUnits::feet_and_inches;
constexpr LengthUnits metric = LengthUnits::metres;

TEST(Display, a_tape_is_read_in_inches_then_feet_and_inches) {
    EXPECT_EQ(tape_reading(Metres::from_inches(13), feet), "13 in");
    EXPECT_EQ(tape_reading(Metres::from_inches(23.4), feet), "23 in");
    EXPECT_EQ(tape_reading(Metres::from_inches(23.5), feet), "2 ft");
    EXPECT_EQ(tape_reading(Metres::from_inches(24), feet), "2 ft");
    EXPECT_EQ(tape_reading(Metres::from_inches(40), feet), "3 ft 4 in");
    EXPECT_EQ(tape_reading(Metres::from_inches(47.6), feet), "4 ft");
    EXPECT_EQ(tape_reading(Metres::of(0), feet), "0 in");
}

TEST(Display, a_tape_is_read_in_centimetres_then_metres) {
    EXPECT_EQ(tape_reading(Metres::of(0.33), metric), "33 cm");
    EXPECT_EQ(tape_reading(Metres::of(0.994), metric), "99 cm");
    EXPECT_EQ(tape_reading(Metres::of(0.996), metric), "1.00 m");
    EXPECT_EQ(tape_reading(Metres::of(1.42), metric), "1.42 m");
    EXPECT_EQ(tape_reading(Metres::of(0), metric), "0 cm");
}

TEST(Display, a_length_to_the_left_keeps_its_sign) {
    EXPECT_EQ(tape_reading(Metres::of(-0.33), metric), "-33 cm");
    EXPECT_EQ(tape_reading(Metres::from_inches(-40), feet), "-3 ft 4 in");
}

TEST(Display, ground_distances_have_a_tenth_only_when_short) {
    EXPECT_EQ(ground_distance(Metres::of(39.2), metric), "39 m");
    EXPECT_EQ(ground_distance(Metres::of(3.25), metric), "3.2 m");
    EXPECT_EQ(ground_distance(Metres::from_feet(128), feet), "128 ft");
    EXPECT_EQ(ground_distance(Metres::from_feet(2.5), feet), "2.5 ft");
}

TEST(Display, areas_are_acres_or_hectares) {
    EXPECT_EQ(ground_area(25000, metric), "2.5 ha");
    EXPECT_EQ(ground_area(25000, feet), "6.2 acres");
    EXPECT_EQ(ground_area(4046.8564224, feet), "1.0 acres");
    EXPECT_EQ(ground_area(500, metric), "0.05 ha");
    EXPECT_EQ(ground_area(2500000, metric), "250 ha");
}

TEST(Display, sixteen_points_of_the_compass_meet_half_way) {
    EXPECT_EQ(compass_point(Bearing::degrees(0)), "N");
    EXPECT_EQ(compass_point(Bearing::degrees(11.2)), "N");
    EXPECT_EQ(compass_point(Bearing::degrees(11.3)), "NNE");
    EXPECT_EQ(compass_point(Bearing::degrees(135)), "SE");
    EXPECT_EQ(compass_point(Bearing::degrees(348.7)), "NNW");
    EXPECT_EQ(compass_point(Bearing::degrees(348.8)), "N");
    EXPECT_EQ(compass_point(Bearing::degrees(359.9)), "N");
}

}  // namespace
}  // namespace plugside
