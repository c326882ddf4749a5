// The vocabulary itself, in four lists; the first listed sense of a phrase holds, the lists in this order. For
// note_words_table.cpp alone.
#pragma once

#include <span>

#include "geo/read/note_words_table.h"

namespace plugside::note_words {

struct Entry {
    Sense sense;
    double value;
    unsigned language;
    const char* phrases;  // separated by |; @ stands for o, a, os, as
};

[[nodiscard]] std::span<const Entry> words_of_fans_and_states();
// Further words of the same families, as they are spoken.
[[nodiscard]] std::span<const Entry> words_as_spoken();
// Who was about.
[[nodiscard]] std::span<const Entry> words_of_beings();
// Diggers, counts, denials, the probe, who was about, and what says nothing.
[[nodiscard]] std::span<const Entry> words_of_findings();

}  // namespace plugside::note_words
