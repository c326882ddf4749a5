#include "core/survey/refusal.h"

#include <gtest/gtest.h>
#include <rapidcheck.h>

#include <string>

namespace plugside {
namespace {

TEST(Refusal, the_sentence_names_file_place_found_and_expected) {
    const Refusal refusal{Refusal::Code::out_of_range, "walk.gpx", "line 12", "lat=\"abc\"",
                          "a number of degrees from -90 to 90"};
    EXPECT_EQ(sentence(refusal), "walk.gpx, line 12: found lat=\"abc\", expected a number of degrees from -90 to 90.");
}

TEST(Refusal, what_is_not_known_is_left_out_of_the_sentence) {
    EXPECT_EQ(sentence({Refusal::Code::missing_file, "walk.gpx", "", "", "a file"}),
              "walk.gpx: found nothing, expected a file.");
    EXPECT_EQ(sentence({Refusal::Code::malformed, "", "line 3", "\"x\"", ""}), "line 3: found \"x\".");
    EXPECT_EQ(sentence({Refusal::Code::stopped, "", "", "", ""}), "found nothing.");
}

TEST(Refusal, found_text_is_quoted_and_its_control_characters_shown_as_dots) {
    EXPECT_EQ(quoted_for_display("abc"), "\"abc\"");
    EXPECT_EQ(quoted_for_display(""), "\"\"");
    EXPECT_EQ(quoted_for_display(std::string("a\n\x1b[31m\x7f\0b", 10)), "\"a..[31m..b\"");
}

TEST(Refusal, long_text_is_cut_between_characters) {
    EXPECT_EQ(quoted_for_display(std::string(60, 'a')), "\"" + std::string(60, 'a') + "\"");
    EXPECT_EQ(quoted_for_display(std::string(61, 'a')), "\"" + std::string(60, 'a') + "...\"");
    EXPECT_EQ(quoted_for_display("aa\u00e9", 3), "\"aa...\"");
    EXPECT_EQ(quoted_for_display("a\u00e9b", 3), "\"a\u00e9...\"");
}

// A hostile file may hold any bytes: what is shown stays short, on one line, and breaks no terminal.
TEST(Refusal, any_bytes_are_shown_short_and_without_control_characters) {
    const bool holds = rc::check("quoted text is short and printable", [](const std::string& bytes) {
        const std::string shown = quoted_for_display(bytes, 20);
        RC_ASSERT(shown.size() <= 25U);
        RC_ASSERT(shown.front() == '"' && shown.back() == '"');
        for (const char c : shown) RC_ASSERT(static_cast<unsigned char>(c) >= 0x20 && c != 0x7F);
    });
    EXPECT_TRUE(holds);
}

}  // namespace
}  // namespace plugside
