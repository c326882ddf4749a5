#include "core/words/words.h"

#include <gtest/gtest.h>

#include <map>
#include <string>

#include "core/mending/sentences.h"
#include "core/sets/cautions.h"
#include "core/survey/refusal.h"
#include "core/survey/survey.h"
#include "core/units/display.h"

namespace plugside {
namespace {

std::string backwards_of_order(const char* english) {
    static const std::map<std::string, std::string> texts{{"{1} and {2}", "{2} y {1}"},
                                                          {"{1} and {2} more", "{1} y {2} más"},
                                                          {"the same mound as {1}", "el mismo que {1}"},
                                                          {"outside the field boundary", "fuera del límite"},
                                                          {"found {1}, expected {2}.", "se esperaba {2} y había {1}."},
                                                          {"a folder", "una carpeta"}};
    const auto found = texts.find(english);
    return found == texts.end() ? english : found->second;
}

constexpr Tongue other_tongue{backwards_of_order, [] { return ','; }, [] { return "es"; },
                              [](Tongue::Moment) { return std::string("ahora"); }};

class InAnotherTongue : public testing::Test {
protected:
    InAnotherTongue() { speak_with(&other_tongue); }
    ~InAnotherTongue() override { speak_with(nullptr); }
};

TEST(Words, without_a_tongue_texts_are_english) {
    EXPECT_EQ(Words::tell("{1} lies {2} from {3}.", {"M1", "2 m", "M2"}), "M1 lies 2 m from M2.");
    EXPECT_EQ(Words::shown("a folder"), "a folder");
    EXPECT_EQ(Words::decimal("0.4"), "0.4");
    EXPECT_EQ(Words::language(), "en");
    EXPECT_EQ(Words::moment(Tongue::Moment{}), "1970-01-01 00:00:00 UTC");
}

TEST(Words, values_are_put_in_as_they_are_and_a_place_without_one_stays) {
    EXPECT_EQ(filled("{1}{2}{1}", {"{2}", "b"}), "{2}b{2}");
    EXPECT_EQ(filled("{3} {x} {", {"a"}), "{3} {x} {");
    EXPECT_EQ(filled("", {"a"}), "");
}

TEST_F(InAnotherTongue, places_may_stand_in_another_order) {
    EXPECT_EQ(both_of("M1", "M2"), "M2 y M1");
    EXPECT_EQ(listed({"a", "b", "c", "d"}, 3), "a, b y 2 más");
    EXPECT_EQ(sentence({Refusal::Code::not_a_file, "x", "", "a folder", "a file"}),
              "x: se esperaba a file y había una carpeta.");
}

TEST_F(InAnotherTongue, decimals_and_moments_are_as_it_writes_them) {
    EXPECT_EQ(ground_distance(Metres::of(1.25), LengthUnits::metres), "1,2 m");
    EXPECT_EQ(in_metres(0.4), "0,4 m");
    EXPECT_EQ(time_of_day(UtcTime{}), "ahora");
}

TEST_F(InAnotherTongue, what_files_keep_stays_english_and_is_shown_in_the_language_at_hand) {
    Survey survey;
    survey.ground.boundary = {{Polygon{{{{0.0, 0.0}, {10.0, 0.0}, {10.0, 10.0}, {0.0, 10.0}}}, {}}}};
    Mound mound;
    mound.plug = {100.0, 100.0};
    EXPECT_EQ(why_not_used(survey, mound), outside_the_field);
    EXPECT_STREQ(outside_the_field, "outside the field boundary");
    EXPECT_EQ(reason_shown(*why_not_used(survey, mound)), "fuera del límite");
    EXPECT_EQ(reason_shown(same_mound_as("M007")), "el mismo que M007");
    EXPECT_EQ(reason_shown("my own reason"), "my own reason");
}

TEST_F(InAnotherTongue, cautions_are_those_of_its_table) {
    ASSERT_EQ(all_cautions("en").size(), all_cautions("es").size());
    for (std::size_t i = 0; i < all_cautions("en").size(); ++i) {
        EXPECT_EQ(all_cautions("en")[i].id, all_cautions("es")[i].id);
        EXPECT_EQ(all_cautions("en")[i].weight, all_cautions("es")[i].weight);
        EXPECT_NE(all_cautions("en")[i].sentence, all_cautions("es")[i].sentence);
    }
    EXPECT_EQ(find_caution("building")->sentence, all_cautions("es").front().sentence);
}

}  // namespace
}  // namespace plugside
