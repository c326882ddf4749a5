#include "geo/read/notes_grammar.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <random>

namespace plugside {
namespace {

struct Example {
    const char* note;
    std::optional<double> fan;
    std::optional<Freshness> freshness;
    std::optional<SignKind> kind;
    const char* rest;
    std::size_t problems = 0;
};

constexpr auto none = std::nullopt;

void expect(const Example& example) {
    SCOPED_TRACE(example.note);
    const NoteReading reading = read_note(example.note);
    EXPECT_EQ(reading.fan_degrees, example.fan);
    EXPECT_EQ(reading.freshness, example.freshness);
    EXPECT_EQ(reading.kind, example.kind);
    EXPECT_EQ(reading.rest, example.rest);
    EXPECT_EQ(reading.problems.size(), example.problems);
}

TEST(NotesGrammar, reads_a_fan_in_all_its_spellings) {
    for (const Example& example : std::vector<Example>{{"fan 135", 135.0, none, none, ""},
                                                       {"Fan 135", 135.0, none, none, ""},
                                                       {"fan SE", 135.0, none, none, ""},
                                                       {"F135", 135.0, none, none, ""},
                                                       {"f 135", 135.0, none, none, ""},
                                                       {"fan:135", 135.0, none, none, ""},
                                                       {"fan=135", 135.0, none, none, ""},
                                                       {"fan135", 135.0, none, none, ""},
                                                       {"fan-135", 135.0, none, none, ""},
                                                       {"fanSE", 135.0, none, none, ""},
                                                       {"fan 135\xC2\xB0", 135.0, none, none, ""},
                                                       {"fan 135 deg", 135.0, none, none, ""},
                                                       {"fan 135 degrees", 135.0, none, none, ""},
                                                       {"fan 135T", 135.0, none, none, ""},
                                                       {"fan 135 true", 135.0, none, none, ""},
                                                       {"fan towards south-east", 135.0, none, none, ""},
                                                       {"fan points South East", 135.0, none, none, ""},
                                                       {"fan north north east", 22.5, none, none, ""},
                                                       {"fan bearing 7.5", 7.5, none, none, ""},
                                                       {"135 fan", 135.0, none, none, ""},
                                                       {"fan 360", 0.0, none, none, ""},
                                                       {"fan 0", 0.0, none, none, ""},
                                                       {"fan 007", 7.0, none, none, ""},
                                                       {"\"fan 135.\"", 135.0, none, none, ""},
                                                       {"135", 135.0, none, none, ""},
                                                       {"SE", 135.0, none, none, ""},
                                                       {" 135T ", 135.0, none, none, ""},
                                                       {"135 fresh", 135.0, Freshness::fresh, none, ""},
                                                       {"fresh 135", 135.0, Freshness::fresh, none, ""},
                                                       {"NW, old", 315.0, Freshness::older, none, ""},
                                                       {"fan fresh 135", 135.0, Freshness::fresh, none, ""}})
        expect(example);
}

TEST(NotesGrammar, knows_the_sixteen_points) {
    const char* const points[] = {"N", "NNE", "NE", "ENE", "E", "ESE", "SE", "SSE",
                                  "S", "SSW", "SW", "WSW", "W", "WNW", "NW", "NNW"};
    for (int i = 0; i < 16; ++i) {
        const NoteReading reading = read_note(std::string("fan ") + points[i]);
        EXPECT_EQ(reading.fan_degrees, 22.5 * i) << points[i];
        EXPECT_TRUE(reading.fan_word);
        EXPECT_EQ(reading.rest, "");
    }
}

TEST(NotesGrammar, takes_no_fan_from_a_magnetic_bearing_and_says_why) {
    for (const char* note : {"fan 135M", "fan 135 M", "fan 135 mag", "fan 135\xC2\xB0 magnetic", "F135M", "fan SE magnetic",
                             "135M fresh", "135 mag"}) {
        const NoteReading reading = read_note(note);
        EXPECT_FALSE(reading.fan_degrees.has_value()) << note;
        EXPECT_EQ(reading.magnetic_fan_degrees, 135.0) << note;
        EXPECT_EQ(reading.rest, "") << note;
        ASSERT_EQ(reading.problems.size(), 1U) << note;
        EXPECT_EQ(reading.problems[0],
                  "the fan bearing 135 is magnetic and the declination is not known; the mound is used without a fan");
    }
}

TEST(NotesGrammar, reads_freshness_and_kinds) {
    for (const Example& example :
         std::vector<Example>{{"fresh", none, Freshness::fresh, none, ""},
                              {"NEW, moist", none, Freshness::fresh, none, ""},
                              {"old", none, Freshness::older, none, ""},
                              {"older", none, Freshness::older, none, ""},
                              {"crushed", none, Freshness::crushed, none, ""},
                              {"driven over", none, Freshness::crushed, none, ""},
                              {"mown, no fan", none, Freshness::crushed, none, ""},
                              {"fan flat", none, Freshness::crushed, none, ""},
                              {"mole", none, none, SignKind::mole, ""},
                              {"mole hill", none, none, SignKind::mole, ""},
                              {"Molehill", none, none, SignKind::mole, ""},
                              {"mole mound", none, none, SignKind::mole, ""},
                              {"ground squirrel hole", none, none, SignKind::ground_squirrel, ""},
                              {"squirrel", none, none, SignKind::ground_squirrel, ""},
                              {"vole trails", none, none, SignKind::vole, ""},
                              {"surface plug", none, none, SignKind::surface_plug, ""},
                              {"pocket gopher", none, none, SignKind::gopher_mound, ""},
                              {"a fresh gopher mound with the fan 90", 90.0, Freshness::fresh, SignKind::gopher_mound, ""},
                              {"badger den", none, none, SignKind::other, ""},
                              {"not a mound", none, none, SignKind::other, ""},
                              {"no mound", none, none, SignKind::other, ""},
                              {"", none, none, none, ""},
                              {"  ,; ", none, none, none, ""}})
        expect(example);
}

TEST(NotesGrammar, leaves_what_it_does_not_understand_as_rest) {
    for (const Example& example :
         std::vector<Example>{{"fan 135 by the willow", 135.0, none, none, "by willow"},
                              {"fan 12 in wide", none, none, none, "fan 12 in wide"},
                              {"3 fresh mounds", none, Freshness::fresh, SignKind::gopher_mound, "3"},
                              {"fresh, N side of the ditch", none, Freshness::fresh, none, "N side ditch"},
                              {"not fresh", none, none, none, "not fresh"},
                              {"not a mole", none, none, none, "not mole"},
                              {"12", 12.0, none, none, ""},
                              {"12 paces from the post", none, none, none, "12 paces from post"},
                              {"130-140", none, none, none, "130-140"},
                              {"fan", none, none, none, "fan"},
                              {"fan unclear", none, none, none, "fan unclear"},
                              {"F", none, none, none, "F"},
                              {"135 willow", none, none, none, "135 willow"},
                              {"Zaun \xC3\xBC"
                               "ber",
                               none, none, none,
                               "Zaun \xC3\xBC"
                               "ber"},
                              {"1e400", none, none, none, "1e400"}})
        expect(example);
}

TEST(NotesGrammar, tells_what_it_could_not_use) {
    for (const Example& example :
         std::vector<Example>{{"fan 400", none, none, none, "", 1},
                              {"fan -5", none, none, none, "", 1},
                              {"400", none, none, none, "", 1},
                              {"fan 99999999999999999999999999999999999999999999999999", none, none, none, "", 1},
                              {"fan 135 fan 140", 135.0, none, none, "", 1},
                              {"fan 135 fan SE", 135.0, none, none, "", 0},
                              {"fresh, old", none, Freshness::fresh, none, "", 1},
                              {"old, flat", none, Freshness::crushed, none, "", 1},
                              {"mole and vole", none, none, SignKind::mole, "", 1},
                              {"fan 135?", 135.0, none, none, "", 1},
                              {"maybe mole", none, none, SignKind::mole, "", 1}})
        expect(example);
}

std::size_t without_spaces(const std::string& text) {
    return text.size() - static_cast<std::size_t>(std::count(text.begin(), text.end(), ' '));
}

// Whatever stands in a note, the reading is in range, and what nobody can read is in the rest.
TEST(NotesGrammar, reads_any_text_without_harm) {
    const std::vector<std::string> pieces = {"fan",    "F",        "135",  "135M", "SE",           "north",   "east",
                                             "fresh",  "old",      "flat", "mole", "mounds",       "no",      "not",
                                             "a",      "?",        "-",    "in",   "magnetic",     "surface", "plug",
                                             "\xC3",   "\xFF\xFE", "\"",   ".",    "999999999999", "willow",  "over",
                                             "fan135", "f-",       "fan-", "deg",  "\xC2\xB0"};
    std::mt19937_64 random(4711);
    for (int i = 0; i < 20000; ++i) {
        std::string note;
        const std::size_t words = random() % 9;
        for (std::size_t w = 0; w < words; ++w) note += pieces[random() % pieces.size()] + (random() % 4 != 0 ? " " : "");
        const NoteReading reading = read_note(note);
        if (reading.fan_degrees) {
            EXPECT_GE(*reading.fan_degrees, 0.0) << note;
            EXPECT_LT(*reading.fan_degrees, 360.0) << note;
        }
        EXPECT_FALSE(reading.fan_degrees && reading.magnetic_fan_degrees) << note;
        EXPECT_LE(without_spaces(reading.rest), without_spaces(note)) << note;
        if (note.find(" willow ") != std::string::npos) {
            EXPECT_NE(reading.rest.find("willow"), std::string::npos) << note;
        }
    }
}

TEST(NotesGrammar, knows_a_receivers_own_time_stamp) {
    for (const char* text : {"12-JUL-24 9:14:33AM", "2026-03-01T09:30:00Z", "01/03/2026", "1 March 2026", "9:14"})
        EXPECT_TRUE(is_time_stamp(text)) << text;
    for (const char* text : {"", "135", "130-140", "fan 135", "fresh", "March", "M031", "12-JUL-24 mole"})
        EXPECT_FALSE(is_time_stamp(text)) << text;
}

TEST(NotesGrammar, knows_things_on_the_way_by_their_first_word) {
    for (const char* text : {"gate", "Truck 2", "HOUSE", "well1", "gate, north"}) EXPECT_TRUE(names_a_thing(text)) << text;
    for (const char* text : {"", "M031", "mound by the gate", "12", "Wellington"}) EXPECT_FALSE(names_a_thing(text)) << text;
}

}  // namespace
}  // namespace plugside
