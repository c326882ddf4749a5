#include "geo/read/degrees_text.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>
#include <string>

namespace plugside {
namespace {

struct Written {
    const char* text;
    double degrees;
    std::optional<Axis> axis;
};

// Flinders Peak, 37 57 03.72030 S, 144 25 29.52440 E, is the GDA technical manual's [memory]; the others are our own.
TEST(DegreesText, is_read_in_every_common_writing) {
    const double flinders = -(37.0 + 57.0 / 60.0 + 3.7203 / 3600.0);
    const double east = 144.0 + 25.0 / 60.0 + 29.5244 / 3600.0;
    for (const Written& written :
         std::initializer_list<Written>{{"38.25", 38.25, std::nullopt},
                                        {" -120.5 ", -120.5, std::nullopt},
                                        {"+7", 7.0, std::nullopt},
                                        {"-0 30", -0.5, std::nullopt},
                                        {"37 57 03.72030 S", flinders, Axis::latitude},
                                        {"37\xC2\xB0"
                                         "57'03.72030\"S",
                                         flinders, Axis::latitude},
                                        {"S37\xC2\xB0 57\xE2\x80\xB2 03.72030\xE2\x80\xB3", flinders, Axis::latitude},
                                        {"S 37:57:03.72030", flinders, Axis::latitude},
                                        {"-37d57m03.72030s", flinders, std::nullopt},
                                        {"37d57m03.72030sS", flinders, Axis::latitude},
                                        {"144 25 29.52440 E", east, Axis::longitude},
                                        {"este 144 25 29.52440", east, Axis::longitude},
                                        {"144\xC2\xBA"
                                         "25'29.52440''E",
                                         east, Axis::longitude},
                                        {"120 30 W", -120.5, Axis::longitude},
                                        {"120\xC2\xB0 30' O", -120.5, Axis::longitude},
                                        {"O 120\xC2\xB0 30'", -120.5, Axis::longitude},
                                        {"120.5 oeste", -120.5, Axis::longitude},
                                        {"38 15 N", 38.25, Axis::latitude},
                                        {"38 15 s", -38.25, Axis::latitude},
                                        {"norte 38 15.0", 38.25, Axis::latitude},
                                        {"38.25\xC2\xB0", 38.25, std::nullopt}}) {
        const auto read = parse_degrees(written.text);
        ASSERT_TRUE(read.has_value()) << written.text;
        EXPECT_NEAR(read->degrees, written.degrees, 1e-12) << written.text;
        EXPECT_EQ(read->axis, written.axis) << written.text;
    }
    EXPECT_NEAR(parse_degrees("38\xC2\xB0 15,5' N", ',')->degrees, 38.0 + 15.5 / 60.0, 1e-12);
}

TEST(DegreesText, is_not_read_where_it_cannot_be_meant_so) {
    for (const char* text :
         {"",      "-",           "N",           "38 60",      "38 15 60", "38.5 15",   "38 15.5 30", "-38 S",
          "+38 N", "N 38 S",      "38 15 30 10", "38 15 30 x", "abc",      "1e2",       "nan",        "inf",
          "0x10",  "38,25",       "3815'",       "38'",        "38:",      "38:15:",    ".",          "--38",
          "400",   "38 15\" 30'", "38..5",       "38 -15",     "M031",     "38 deg deg"})
        EXPECT_FALSE(parse_degrees(text).has_value()) << text;
    EXPECT_FALSE(parse_degrees(std::string(200, '1')).has_value());
}

TEST(DegreesText, unpacks_minutes_from_one_number) {
    EXPECT_NEAR(*unpacked_minutes(3815.5), 38.0 + 15.5 / 60.0, 1e-12);
    EXPECT_NEAR(*unpacked_minutes(-12030.25), -(120.0 + 30.25 / 60.0), 1e-12);
    EXPECT_FALSE(unpacked_minutes(3860.0).has_value());
    EXPECT_FALSE(unpacked_minutes(500000.0).has_value());
}

// Writing an angle and reading it again loses only what the writing cuts off.
RC_GTEST_PROP(DegreesText, comes_back_from_degrees_minutes_and_seconds, ()) {
    const auto micro = *rc::gen::inRange<long>(-179'999'999L, 180'000'000L);  // of a degree: .0036 seconds
    const double degrees = static_cast<double>(micro) * 1e-6;
    const bool as_letter = *rc::gen::arbitrary<bool>();
    const bool letter_first = *rc::gen::arbitrary<bool>();
    const char decimal = *rc::gen::element('.', ',');
    const long tenths = std::labs(micro) * 36;  // of a thousandth of a second
    std::string seconds = std::to_string(tenths / 10'000 % 60) + decimal;
    const std::string part = std::to_string(tenths % 10'000);
    seconds += std::string(4 - part.size(), '0') + part;
    const std::string angle =
        std::to_string(tenths / 36'000'000) + "\xC2\xB0 " + std::to_string(tenths / 600'000 % 60) + "' " + seconds + "\"";
    const std::string letter = degrees < 0.0 ? *rc::gen::element<std::string>("W", "O", "oeste") : "E";
    const std::string text = !as_letter     ? (degrees < 0.0 ? "-" : "") + angle
                             : letter_first ? letter + " " + angle
                                            : angle + " " + letter;
    const auto read = parse_degrees(text, decimal);
    RC_ASSERT(read.has_value());
    RC_ASSERT(std::abs(read->degrees - degrees) < 1e-10);
    RC_ASSERT(read->axis.has_value() == as_letter);
}

}  // namespace
}  // namespace plugside
