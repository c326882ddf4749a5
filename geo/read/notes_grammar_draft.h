// A note on its way from words to a reading: each step takes the words it understands and writes down what they say. The
// steps are in notes_grammar_fan.cpp, _probe.cpp, _signs.cpp and _state.cpp; notes_grammar.cpp runs them in order. For the notes grammar
// alone.
#pragma once

#include <initializer_list>
#include <string>
#include <string_view>
#include <vector>

#include "geo/read/notes_grammar.h"
#include "geo/read/notes_grammar_bearings.h"
#include "geo/read/notes_grammar_items.h"

namespace plugside::note_words {

struct Draft {
    std::string_view note;
    std::vector<Item> items;
    NoteReading reading;
    std::vector<bool> freshness;  // items read as freshness
    std::vector<bool> sign;       // items read as a sign
    std::optional<std::size_t> lone_fan;
    bool plural = false;
    bool denied_kind = false;  // "not a gopher": any other sign that is named goes before

    [[nodiscard]] std::size_t size() const { return items.size(); }
    [[nodiscard]] bool open(std::size_t i) const { return i < items.size() && items[i].use == Use::open; }
    [[nodiscard]] bool is(std::size_t i, std::initializer_list<Sense> senses) const;
    [[nodiscard]] bool open_as(std::size_t i, std::initializer_list<Sense> senses) const { return open(i) && is(i, senses); }
    // Open, of one of the senses, and no comma before it.
    [[nodiscard]] bool linked_as(std::size_t i, std::initializer_list<Sense> senses) const {
        return open_as(i, senses) && joined(items, i);
    }
    // A comma, a stop or an end stands before item i.
    [[nodiscard]] bool starts_clause(std::size_t i) const { return i == 0 || i >= items.size() || !joined(items, i); }
    [[nodiscard]] std::string text(std::size_t from, std::size_t to) const;
    // The word that denies item i: "not", also with "a", "very", ... between.
    [[nodiscard]] std::optional<std::size_t> denial_of(std::size_t i) const;
    [[nodiscard]] bool says_fan() const { return reading.fan_degrees || reading.magnetic_fan_degrees || reading.clock_hour; }

    // Items [from, to) are read as this.
    void take(std::size_t from, std::size_t to, NotePartKind kind, std::string value);
    void skip(std::size_t i) { items[i].use = Use::filler; }
};

void read_probe(Draft& draft);
void read_no_fan(Draft& draft);
void read_fans(Draft& draft);
void read_bare_bearing(Draft& draft);
void read_mentions(Draft& draft);
void read_counts(Draft& draft);
void read_signs(Draft& draft);
void read_freshness(Draft& draft);

[[nodiscard]] std::string shown(double value);  // "135", "7.5"

}  // namespace plugside::note_words
