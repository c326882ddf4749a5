#include "app/batch/call.h"

#include <gtest/gtest.h>

namespace plugside {
namespace {

VerbRule rule() {
    return {"plan", "WALK", 1, 2, "Plans.", {{"out", "FILE", "writes"}, {"summary", "", "says"}}, "A remark."};
}

TEST(Call, OptionsStandAnywhereWithOrWithoutAnEqualsSign) {
    const auto call = parse_call(rule(), {"a.gpx", "--out=x=y.gpkg", "b.gpx", "--summary"});
    ASSERT_TRUE(call);
    EXPECT_EQ(call->places, (std::vector<std::string>{"a.gpx", "b.gpx"}));
    EXPECT_EQ(call->value("out"), "x=y.gpkg");
    EXPECT_TRUE(call->has("summary"));
    EXPECT_FALSE(call->value("ground"));
}

TEST(Call, AnOptionThatMayBeRepeatedGivesAllItsValuesInOrder) {
    VerbRule verb = rule();
    verb.options.push_back({"export", "FILE", "writes", true});
    const auto call = parse_call(verb, {"a", "--export", "x.kml", "--export=y.csv"});
    ASSERT_TRUE(call);
    EXPECT_EQ(call->values("export"), (std::vector<std::string>{"x.kml", "y.csv"}));
    EXPECT_TRUE(call->values("out").empty());
}

TEST(Call, AfterTwoDashesEverythingIsAPlace) {
    const auto call = parse_call(rule(), {"--summary", "--", "--out", "-x"});
    ASSERT_TRUE(call);
    EXPECT_EQ(call->places, (std::vector<std::string>{"--out", "-x"}));
    EXPECT_FALSE(call->has("out"));
}

TEST(Call, WhatIsWrongIsNamed) {
    const auto error_of = [](const std::vector<std::string>& words) {
        const auto call = parse_call(rule(), words);
        return call ? std::string("accepted") : call.error().sentence;
    };
    EXPECT_NE(error_of({}).find("WALK"), std::string::npos);
    EXPECT_NE(error_of({"a", "b", "c"}).find("\"c\""), std::string::npos);
    EXPECT_NE(error_of({"a", "--depth", "3"}).find("--depth"), std::string::npos);
    EXPECT_NE(error_of({"a", "--out"}).find("needs a value"), std::string::npos);
    EXPECT_NE(error_of({"a", "--out="}).find("needs a value"), std::string::npos);
    EXPECT_NE(error_of({"a", "--summary=yes"}).find("takes no value"), std::string::npos);
    EXPECT_NE(error_of({"a", "--summary", "--summary"}).find("twice"), std::string::npos);
    EXPECT_NE(error_of({"a", "-v"}).find("-v"), std::string::npos);
}

TEST(Call, NumbersAreWholeAndWithinTheirRange) {
    EXPECT_EQ(*whole_number("seed", "18446744073709551615", 0, 18446744073709551615U), 18446744073709551615U);
    for (const char* text : {"", "-1", "+3", "3.0", "0x10", " 4", "18446744073709551616", "9", "nine"})
        EXPECT_FALSE(whole_number("seed", text, 0, 8)) << text;
}

TEST(Call, TheHelpTellsOfEveryOption) {
    const std::string help = help_of(rule());
    for (const char* word : {"plugside-batch plan WALK...", "--out FILE", "--summary", "--help", "A remark."})
        EXPECT_NE(help.find(word), std::string::npos) << word;
}

}  // namespace
}  // namespace plugside
