#include "core/units/length_text.h"

#include <gtest/gtest.h>
#include <rapidcheck.h>

#include <string>

namespace plugside {
namespace {

constexpr LengthUnits feet = LengthUnits::feet_and_inches;
constexpr LengthUnits metres = LengthUnits::metres;

double length(const char* text, LengthUnits units = metres) {
    const auto parsed = parse_length(text, units);
    EXPECT_TRUE(parsed.has_value()) << text;
    return parsed.value_or(Metres::of(-999)).value();
}

// 1 ft = 0.3048 m, 1 in = 0.0254 m exactly: NIST Special Publication 811, appendix B.8.
TEST(LengthText, feet_and_inches_are_read_as_people_write_them) {
    for (const char* text : {"1 ft 3", "1 ft 3 in", "1ft3in", "1' 3\"", "1'3\"", "15 in", "15\"", "1’ 3”", "1′3″", "15″",
                             "1 pie 3 pulgadas", "1.25 ft"})
        EXPECT_NEAR(length(text), 15 * 0.0254, 1e-12) << text;
    EXPECT_NEAR(length("40", feet), 40 * 0.3048, 1e-12);
}

TEST(LengthText, metres_are_read_with_a_point_or_a_comma) {
    for (const char* text : {"0.38 m", "0,38 m", "38 cm", "380 mm", ".38m", "0.38", "0.38 metros"})
        EXPECT_NEAR(length(text), 0.38, 1e-12) << text;
    EXPECT_NEAR(length("-2 m"), -2.0, 1e-12);
}

TEST(LengthText, what_is_no_length_gives_nothing) {
    for (const char* text : {"", "m", "1 2", "one ft", "1 ft 3 m", "1..2", "3 kg", "1 m 3", "12 in 3 ft", "#", "1 m NE"})
        EXPECT_FALSE(parse_length(text, metres)) << text;
}

TEST(LengthText, bearings_are_degrees_points_or_quadrants) {
    EXPECT_EQ(parse_bearing("45")->degrees(), 45.0);
    EXPECT_EQ(parse_bearing("360°")->degrees(), 0.0);
    EXPECT_EQ(parse_bearing("NE")->degrees(), 45.0);
    EXPECT_EQ(parse_bearing("sso")->degrees(), 202.5);
    EXPECT_EQ(parse_bearing("N45E")->degrees(), 45.0);
    EXPECT_EQ(parse_bearing("S 20 W")->degrees(), 200.0);
    EXPECT_EQ(parse_bearing("N 10 O")->degrees(), 350.0);
    for (const char* text : {"", "361", "north by mistake", "N95E", "45 45"}) EXPECT_FALSE(parse_bearing(text)) << text;
}

TEST(LengthText, a_leg_is_a_length_and_a_bearing) {
    EXPECT_NEAR(parse_leg("40 ft NE", metres)->length.value(), 12.192, 1e-12);
    EXPECT_EQ(parse_leg("40 ft NE", metres)->bearing.degrees(), 45.0);
    EXPECT_EQ(parse_leg("12.5 m 135", feet)->bearing.degrees(), 135.0);
    EXPECT_NEAR(parse_leg("12 @ 90", metres)->length.value(), 12.0, 1e-12);
    EXPECT_NEAR(parse_leg("1 ft 3 90", metres)->length.value(), 15 * 0.0254, 1e-12);
    EXPECT_NEAR(parse_leg("1 ft 90", metres)->length.value(), 0.3048, 1e-12);
    EXPECT_FALSE(parse_leg("12 m", metres));
    EXPECT_FALSE(parse_leg("NE 12 m", metres));
}

TEST(LengthText, reads_back_every_tape_reading_to_its_rounding) {
    EXPECT_TRUE(rc::check([] {
        const Metres length = Metres::of(0.001 * *rc::gen::inRange(0, 100000));
        for (const LengthUnits units : {feet, metres}) {
            const auto back = parse_length(tape_reading(length, units), units);
            RC_ASSERT(back.has_value());
            RC_ASSERT(std::abs(back->value() - length.value()) <= 0.0128);
        }
    }));
}

TEST(LengthText, any_text_is_taken_without_harm) {
    EXPECT_TRUE(rc::check([](const std::string& text) {
        (void)parse_length(text, feet);
        (void)parse_leg(text, metres);
    }));
}

}  // namespace
}  // namespace plugside
