#include "geo/read/notes_grammar.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
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

TEST(NotesGrammar, keeps_a_magnetic_bearing_apart_from_a_true_one) {
    for (const char* note : {"fan 135M", "fan 135 M", "fan 135 mag", "fan 135\xC2\xB0 magnetic", "F135M", "fan SE magnetic",
                             "135M fresh", "135 mag", "fan 135, magnetic", "abanico 135 magn\xC3\xA9tico"}) {
        const NoteReading reading = read_note(note);
        EXPECT_FALSE(reading.fan_degrees.has_value()) << note;
        EXPECT_EQ(reading.magnetic_fan_degrees, 135.0) << note;
        EXPECT_TRUE(reading.says_north) << note;
        EXPECT_EQ(reading.rest, "") << note;
        EXPECT_TRUE(reading.problems.empty()) << note;
    }
    EXPECT_TRUE(read_note("fan 135T").says_north);
    EXPECT_FALSE(read_note("fan 135").says_north);
}

TEST(NotesGrammar, knows_the_thirty_two_points_in_letters_and_words) {
    const char* const letters[] = {"N",    "NbE", "NNE",  "NEbN", "NE",  "NEbE", "ENE", "EbN",  "E",    "EbS", "ESE",
                                   "SEbE", "SE",  "SEbS", "SSE",  "SbE", "S",    "SbW", "SSW",  "SWbS", "SW",  "SWbW",
                                   "WSW",  "WbS", "W",    "WbN",  "WNW", "NWbW", "NW",  "NWbN", "NNW",  "NbW"};
    const char* const words[] = {"north",      "north by east",      "north-northeast",  "northeast by north",
                                 "northeast",  "northeast by east",  "east northeast",   "east by north",
                                 "east",       "east by south",      "east-southeast",   "southeast by east",
                                 "south east", "southeast by south", "south south east", "south by east",
                                 "south",      "south by west",      "southsouthwest",   "southwest by south",
                                 "southwest",  "southwest by west",  "west southwest",   "west by south",
                                 "west",       "west by north",      "westnorthwest",    "northwest by west",
                                 "northwest",  "northwest by north", "north northwest",  "north by west"};
    for (int i = 0; i < 32; ++i) {
        EXPECT_EQ(read_note(std::string("fan ") + letters[i]).fan_degrees, 11.25 * i) << letters[i];
        EXPECT_EQ(read_note(std::string("fan ") + words[i]).fan_degrees, 11.25 * i) << words[i];
        EXPECT_EQ(read_note(std::string("plug ") + words[i]).fan_degrees, std::fmod(11.25 * i + 180.0, 360.0)) << words[i];
    }
}

TEST(NotesGrammar, knows_the_spanish_points_in_letters_and_words) {
    const char* const letters[] = {"N", "NNE", "NE", "ENE", "E", "ESE", "SE", "SSE",
                                   "S", "SSO", "SO", "OSO", "O", "ONO", "NO", "NNO"};
    const char* const words[] = {"norte",   "nornoreste",     "noreste",  "estenoreste",  "este",     "este sureste",
                                 "sudeste", "sursureste",     "sur",      "sur suroeste", "sudoeste", "oestesuroeste",
                                 "oeste",   "oeste noroeste", "noroeste", "nornoroeste"};
    for (int i = 0; i < 16; ++i) {
        EXPECT_EQ(read_note(std::string("abanico ") + letters[i]).fan_degrees, 22.5 * i) << letters[i];
        EXPECT_EQ(read_note(std::string("abanico al ") + words[i]).fan_degrees, 22.5 * i) << words[i];
        EXPECT_EQ(read_note(std::string("tap\xC3\xB3n al ") + letters[i]).fan_degrees, std::fmod(22.5 * i + 180.0, 360.0))
            << letters[i];
    }
}

TEST(NotesGrammar, turns_the_clock_into_a_bearing_by_the_walking_direction) {
    EXPECT_EQ(fan_from_clock(3.0, Bearing::degrees(45.0)).degrees(), 135.0);
    EXPECT_EQ(fan_from_clock(0.0, Bearing::degrees(300.0)).degrees(), 300.0);
    EXPECT_EQ(fan_from_clock(10.5, Bearing::degrees(90.0)).degrees(), 45.0);
}

TEST(NotesGrammar, says_where_in_the_note_each_part_was_read) {
    const std::string note =
        "Fresco, 3 mont\xC3\xAD"
        "culos; abanico al SE";
    const NoteReading reading = read_note(note);
    ASSERT_EQ(reading.parts.size(), 4U);
    const char* const texts[] = {"Fresco", "3",
                                 "mont\xC3\xAD"
                                 "culos",
                                 "abanico al SE"};
    const char* const values[] = {"fresh", "3 mounds", "gopher mound", "fan 135"};
    for (std::size_t i = 0; i < 4; ++i) {
        const TextSpan span = reading.parts[i].span;
        EXPECT_EQ(note.substr(span.begin, span.end - span.begin), texts[i]);
        EXPECT_EQ(reading.parts[i].value, values[i]);
    }
}

TEST(NotesGrammar, rereads_a_note_with_a_walks_own_rules) {
    const std::vector<NoteRule> rules = {{"walk 1", "gr", "fresh"}, {"walk 1", "GR 2", "old"},
                                         {"walk 2", "gr", "mole"},  {"", "patio", "fan 90, crushed"},
                                         {"walk 1", "zz", ""},      {"walk 1", "fresh", "old"}};
    EXPECT_EQ(reread_note("fan 10 gr", "walk 1", rules).freshness, Freshness::fresh);  // no rule on what a rule put in
    EXPECT_EQ(reread_note("fan 10 gr 2", "walk 1", rules).freshness, Freshness::older);
    EXPECT_EQ(reread_note("gr", "walk 2", rules).kind, SignKind::mole);
    EXPECT_EQ(reread_note("great", "walk 1", rules).rest, "great");
    EXPECT_EQ(reread_note("zz, fan 20", "walk 1", rules).rest, "");
    const NoteReading two = reread_note("Patio zz", "walk 9", rules);
    EXPECT_EQ(two.fan_degrees, 90.0);
    EXPECT_EQ(two.freshness, Freshness::crushed);
    EXPECT_EQ(two.rest, "zz");
    ASSERT_EQ(two.parts.size(), 2U);
    EXPECT_EQ(two.parts[0].span, (TextSpan{0, 5}));
    EXPECT_EQ(two.parts[1].span, (TextSpan{0, 5}));
    EXPECT_EQ(reread_note("fan 10", "walk 1", {{"", "", "mole"}}).kind, std::nullopt);
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
                              {"3 fresh mounds", none, Freshness::fresh, SignKind::gopher_mound, ""},
                              {"fresh, N side of the ditch", none, Freshness::fresh, none, "N side ditch"},
                              {"not fresh", none, Freshness::older, none, ""},
                              {"not old", none, none, none, "not old"},
                              {"not a mole", none, none, none, "not mole"},
                              {"12", 12.0, none, none, ""},
                              {"12 paces from the post", none, none, none, "12 paces from post"},
                              {"130-140", none, none, none, "130-140"},
                              {"fan", none, none, none, "fan"},
                              {"fan unclear", none, none, none, ""},
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
