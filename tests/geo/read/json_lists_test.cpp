#include "geo/read/json_lists.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace plugside {
namespace {

RC_GTEST_PROP(JsonLists, any_names_come_back_as_they_were, (const std::vector<std::string>& names)) {
    RC_ASSERT(names_in_json(json_of(names)) == names);
}

RC_GTEST_PROP(JsonLists, places_come_back_to_the_last_bit, (const std::vector<std::pair<int, int>>& numbers)) {
    std::vector<GeographicPoint> places;
    for (const auto& [a, b] : numbers)
        places.push_back({static_cast<double>(a) / 11930465.0, static_cast<double>(b) / 23860930.0});
    RC_ASSERT(places_in_json(json_of(places)) == places);
}

// RFC 8259, section 7: escapes, among them a character beyond the basic plane as a pair (its example is the G clef, U+1D11E).
TEST(JsonLists, escapes_of_other_programs_are_understood) {
    const auto names = names_in_json(R"( [ "a\/b\t" , "\u00E9\uD834\uDD1E\u0041" ] )");
    ASSERT_TRUE(names.has_value());
    EXPECT_EQ(*names, (std::vector<std::string>{"a/b\t",
                                                "\xC3\xA9\xF0\x9D\x84\x9E"
                                                "A"}));
    EXPECT_EQ(names_in_json("[]"), std::vector<std::string>{});
}

TEST(JsonLists, anything_else_is_nothing) {
    for (const char* text : {"", "[", "]", "[\"a\"", "[\"a\",]", "[\"a\" \"b\"]", "[\"a\"] x", "[\"\\x\"]", "[\"\\ud834\"]",
                             "[\"\\udd1e\"]", "[\"\\u12\"]", "[\"a\nb\"]", "[1]", "\"a\"", "[[\"a\"]]", "null"})
        EXPECT_EQ(names_in_json(text), std::nullopt) << text;
    for (const char* text : {"", "[", "[[1,2]", "[[1]]", "[[1,2,3]]", "[[1,91]]", "[[181,0]]", "[[nan,0]]", "[[1e999,0]]",
                             "[[,]]", "[1,2]", "[[\"1\",2]]", "[[0x1,2]]"})
        EXPECT_EQ(places_in_json(text), std::nullopt) << text;
}

}  // namespace
}  // namespace plugside
