// A note's words with their senses, before anything is made of them: phrases are joined, slips of a letter forgiven, and
// words of two meanings settled by their neighbours (the rules stand in notes_grammar.h). For the notes grammar alone.
//
// Items keep the text's order; with rules several items may share a span. Linear.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/survey/note_rule.h"
#include "geo/read/note_words.h"
#include "geo/read/note_words_table.h"

namespace plugside::note_words {

enum class Use { open, part, filler };

struct Item {
    Sense sense = Sense::plain;
    double value = 0.0;
    unsigned language = either;
    bool plural = false;
    bool is_clock = false;
    bool is_range = false;
    bool is_word = true;  // not written in digits
    std::string folded;
    std::size_t begin = 0;
    std::size_t end = 0;
    Gap gap = Gap::none;
    bool hyphen = false;
    bool slash = false;
    bool assigned = false;  // a colon or an equals sign before it
    bool known = false;     // in the vocabulary, not by likeness
    Use use = Use::open;
};

[[nodiscard]] std::vector<Item> items_of(std::string_view note, const std::vector<NoteRule>& rules);

// Numbers in words become numbers where a bearing or a length is told: "zero six zero", "ciento veinte", "two ten",
// "twenty two inches", "a foot".
void join_number_words(std::vector<Item>& items);

// No comma, stop or end of the note between item i - 1 and item i.
[[nodiscard]] bool joined(const std::vector<Item>& items, std::size_t i);

}  // namespace plugside::note_words
