// A direction at a place in a note: degrees, compass point or clock hour, with what belongs to it. For the notes grammar
// alone.
#pragma once

#include <optional>
#include <vector>

#include "geo/read/notes_grammar_items.h"

namespace plugside::note_words {

struct Direction {
    std::optional<double> degrees;  // as written; may be out of range or infinite
    std::optional<double> hour;     // [0, 12)
    int reference = 0;              // 0 unsaid, 1 magnetic, 2 true
    bool from_word = false;         // a compass point
    bool marked = false;            // with a degree sign or a north
    bool range = false;
    std::size_t items = 0;
};

// `after_word`: behind a word for the fan or the plug, where less is needed to tell an hour, a side ("left") or a range.
[[nodiscard]] std::optional<Direction> direction_at(const std::vector<Item>& items, std::size_t i, bool after_word);

}  // namespace plugside::note_words
