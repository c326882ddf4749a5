// The tables of notes with what is to be read from each: every part, every sentence, every word that is left over.
#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdio>
#include <fstream>
#include <sstream>

#include "geo/read/notes_grammar.h"

namespace plugside {
namespace {

struct Row {
    std::string note;
    std::vector<std::string> parts;  // sorted
    std::string rest;
};

Row row_of(const std::string& line) {
    Row row;
    const auto tab = line.find('\t');
    EXPECT_NE(tab, std::string::npos) << line;
    row.note = line.substr(0, tab);
    std::string wanted = " " + line.substr(tab + 1);
    if (const auto rest = wanted.find(" r="); rest != std::string::npos) {
        row.rest = wanted.substr(rest + 3);
        wanted.resize(rest);
    }
    std::istringstream words(wanted);
    for (std::string word; words >> word;) row.parts.push_back(word);
    std::sort(row.parts.begin(), row.parts.end());
    return row;
}

std::vector<Row> rows_of(const std::string& language) {
    std::ifstream file(std::string(PLUGSIDE_SOURCE_DIR) + "/tests/geo/read/notes_" + language + ".tsv");
    std::vector<Row> rows;
    for (std::string line; std::getline(file, line);)
        if (!line.empty() && line.front() != '#') rows.push_back(row_of(line));
    return rows;
}

std::string number(double value) {
    std::array<char, 32> text{};
    std::snprintf(text.data(), text.size(), "%g", value);
    return text.data();
}

// In the unit that the row uses.
std::string length(const char* name, Metres value, const Row& row) {
    const std::string start = std::string(name) + "=";
    const bool inches = std::any_of(row.parts.begin(), row.parts.end(), [&](const std::string& part) {
        return part.starts_with(start) && part.ends_with("in");
    });
    return start + (inches ? number(value.inches()) + "in" : number(value.value() * 100.0) + "cm");
}

std::string kind_word(SignKind kind) {
    switch (kind) {
        case SignKind::gopher_mound: return "gopher";
        case SignKind::surface_plug: return "plug";
        case SignKind::ground_squirrel: return "squirrel";
        default: return to_text(kind);
    }
}

std::string mentions(const std::vector<NoteMention>& list) {
    std::string text = "m=";
    for (const NoteMention& mention : list) {
        std::string words = mention.words;
        std::replace(words.begin(), words.end(), ' ', '_');
        text.append(text.size() > 2 ? ";" : "").append(to_text(mention.category)).append(":").append(words);
    }
    return text;
}

std::vector<std::string> parts_of(const NoteReading& reading, const Row& row) {
    std::vector<std::string> parts;
    if (reading.fan_degrees) parts.push_back("f=" + number(*reading.fan_degrees) + (reading.says_north ? "T" : ""));
    if (reading.magnetic_fan_degrees) parts.push_back("f=" + number(*reading.magnetic_fan_degrees) + "M");
    if (reading.from_plug) parts.emplace_back("plug");
    if (reading.clock_hour) parts.push_back("h=" + number(*reading.clock_hour));
    if (reading.no_fan) parts.emplace_back("nofan");
    if (reading.freshness) parts.push_back("a=" + to_text(*reading.freshness));
    if (reading.kind) parts.push_back("k=" + kind_word(*reading.kind));
    if (reading.count) parts.push_back("n=" + std::to_string(*reading.count));
    if (reading.probe) {
        parts.push_back("p=" + to_text(reading.probe->result));
        if (reading.probe->depth) parts.push_back(length("d", *reading.probe->depth, row));
        if (reading.probe->distance) parts.push_back(length("s", *reading.probe->distance, row));
    }
    if (!reading.mentions.empty()) parts.push_back(mentions(reading.mentions));
    if (!reading.problems.empty()) parts.push_back("!" + std::to_string(reading.problems.size()));
    std::sort(parts.begin(), parts.end());
    return parts;
}

void expect_all_parts(const std::string& language, std::size_t at_least) {
    const auto rows = rows_of(language);
    EXPECT_GE(rows.size(), at_least);
    for (const Row& row : rows) {
        SCOPED_TRACE(row.note);
        const NoteReading reading = read_note(row.note);
        EXPECT_EQ(parts_of(reading, row), row.parts);
        EXPECT_EQ(reading.rest, row.rest);
    }
}

TEST(NotesTables, every_part_of_the_english_notes_is_read) { expect_all_parts("english", 480); }

TEST(NotesTables, every_part_of_the_spanish_notes_is_read) { expect_all_parts("spanish", 300); }

TEST(NotesTables, every_part_of_the_notes_is_read_that_were_written_without_knowing_the_grammar) {
    expect_all_parts("blind", 299);
}

TEST(NotesTables, nothing_is_read_from_notes_of_things_weather_names_and_the_crop) {
    std::ifstream file(std::string(PLUGSIDE_SOURCE_DIR) + "/tests/geo/read/notes_of_nothing.tsv");
    std::size_t notes = 0;
    for (std::string line; std::getline(file, line);) {
        if (line.empty() || line.front() == '#') continue;
        ++notes;
        const NoteReading reading = read_note(line);
        EXPECT_TRUE(parts_of(reading, Row{line, {}, {}}).empty()) << line;
        EXPECT_TRUE(reading.parts.empty()) << line;
    }
    EXPECT_GE(notes, 90U);
}

void raise(std::string& text, const std::string& low, const std::string& high) {
    for (std::size_t at = text.find(low); at != std::string::npos; at = text.find(low, at + high.size()))
        text.replace(at, low.size(), high);
}

std::string upper_case(std::string text) {
    for (char& c : text)
        if (c >= 'a' && c <= 'z') c = static_cast<char>(c - 'a' + 'A');
    const std::array<std::array<const char*, 2>, 7> accented{
        {{"á", "Á"}, {"é", "É"}, {"í", "Í"}, {"ó", "Ó"}, {"ú", "Ú"}, {"ñ", "Ñ"}, {"ü", "Ü"}}};
    for (const auto& [low, high] : accented) raise(text, low, high);
    return text;
}

std::string without_accents(std::string text) {
    const std::array<std::array<const char*, 2>, 7> accented{
        {{"á", "a"}, {"é", "e"}, {"í", "i"}, {"ó", "o"}, {"ú", "u"}, {"ñ", "n"}, {"ü", "u"}}};
    for (const auto& [letter, bare] : accented) raise(text, letter, bare);
    return text;
}

std::string with_combining_accents(std::string text) {
    const std::array<std::array<const char*, 2>, 6> accented{{{"á", "a\xCC\x81"},
                                                              {"é", "e\xCC\x81"},
                                                              {"í", "i\xCC\x81"},
                                                              {"ó", "o\xCC\x81"},
                                                              {"ú", "u\xCC\x81"},
                                                              {"ñ", "n\xCC\x83"}}};
    for (const auto& [letter, parts] : accented) raise(text, letter, parts);
    return text;
}

std::string in_latin_1(const std::string& text) {
    std::string bytes;
    for (std::size_t i = 0; i < text.size(); ++i) {
        const auto byte = static_cast<unsigned char>(text[i]);
        if ((byte == 0xC2 || byte == 0xC3) && i + 1 < text.size()) {
            const auto next = static_cast<unsigned char>(text[++i]);
            bytes += static_cast<char>(((byte & 0x03U) << 6U) | (next & 0x3FU));
        } else {
            bytes += text[i];
        }
    }
    return bytes;
}

void expect_same_reading(const NoteReading& a, const NoteReading& b) {
    EXPECT_EQ(a.fan_degrees, b.fan_degrees);
    EXPECT_EQ(a.magnetic_fan_degrees, b.magnetic_fan_degrees);
    EXPECT_EQ(a.clock_hour, b.clock_hour);
    EXPECT_EQ(a.no_fan, b.no_fan);
    EXPECT_EQ(a.freshness, b.freshness);
    EXPECT_EQ(a.kind, b.kind);
    EXPECT_EQ(a.count, b.count);
    ASSERT_EQ(a.parts.size(), b.parts.size());
    for (std::size_t i = 0; i < a.parts.size(); ++i) {
        EXPECT_EQ(a.parts[i].kind, b.parts[i].kind);
        if (a.parts[i].kind != NotePartKind::mention) {
            EXPECT_EQ(a.parts[i].value, b.parts[i].value);
        }
    }
    EXPECT_EQ(a.rest_spans.size(), b.rest_spans.size());
    EXPECT_EQ(a.problems, b.problems);
}

TEST(NotesTables, are_read_alike_in_capitals_without_accents_and_in_every_encoding_of_them) {
    for (const char* language : {"english", "spanish", "blind"})
        for (const Row& row : rows_of(language)) {
            SCOPED_TRACE(row.note);
            const NoteReading reading = read_note(row.note);
            expect_same_reading(read_note(upper_case(row.note)), reading);
            expect_same_reading(read_note(without_accents(row.note)), reading);
            expect_same_reading(read_note(with_combining_accents(row.note)), reading);
            if (row.note.find('\xCC') == std::string::npos) expect_same_reading(read_note(in_latin_1(row.note)), reading);
        }
}

// Every letter and digit of the note lies in exactly one part, filler or rest.
void expect_all_covered(const std::string& note, const NoteReading& reading) {
    std::vector<int> times(note.size(), 0);
    std::vector<TextSpan> spans = reading.fillers;
    spans.insert(spans.end(), reading.rest_spans.begin(), reading.rest_spans.end());
    std::size_t last = 0;
    for (const NotePart& part : reading.parts) {
        EXPECT_GE(part.span.begin, last) << note;
        last = part.span.end;
        spans.push_back(part.span);
    }
    for (const TextSpan span : spans) {
        ASSERT_LT(span.begin, span.end) << note;
        ASSERT_LE(span.end, note.size()) << note;
        for (std::size_t i = span.begin; i < span.end; ++i) ++times[i];
    }
    for (std::size_t i = 0; i < note.size(); ++i) {
        EXPECT_LE(times[i], 1) << note << " at " << i;
        const char c = note[i];
        const bool word = (c >= '0' && c <= '9') || (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
        if (word) {
            EXPECT_EQ(times[i], 1) << note << " at " << i;
        }
    }
}

TEST(NotesTables, have_each_word_in_one_part_or_filler_or_the_rest) {
    for (const char* language : {"english", "spanish", "blind"})
        for (const Row& row : rows_of(language)) expect_all_covered(row.note, read_note(row.note));
}

TEST(NotesTables, can_be_joined_at_random_without_harm) {
    std::vector<std::string> words;
    for (const char* language : {"english", "spanish", "blind"})
        for (const Row& row : rows_of(language)) {
            std::istringstream cut(row.note);
            for (std::string word; cut >> word;) words.push_back(word);
        }
    std::uint32_t state = 20250101;
    const auto random = [&] { return state = state * 1664525U + 1013904223U, state >> 8U; };
    for (int n = 0; n < 20000; ++n) {
        std::string note;
        for (std::uint32_t k = random() % 10U; k > 0; --k)
            note += words[random() % words.size()] + (random() % 5U == 0 ? "" : " ");
        const NoteReading reading = read_note(note);
        expect_all_covered(note, reading);
        EXPECT_LE(
            reading.fan_degrees.has_value() + reading.magnetic_fan_degrees.has_value() + reading.clock_hour.has_value(), 1)
            << note;
        for (const auto& degrees : {reading.fan_degrees, reading.magnetic_fan_degrees}) {
            EXPECT_TRUE(!degrees || (*degrees >= 0.0 && *degrees < 360.0)) << note;
        }
        EXPECT_TRUE(!reading.clock_hour || (*reading.clock_hour >= 0.0 && *reading.clock_hour < 12.0)) << note;
        EXPECT_TRUE(!reading.count || (*reading.count >= 1 && *reading.count < 1000)) << note;
        if (testing::Test::HasFailure()) return;
    }
}

}  // namespace
}  // namespace plugside
