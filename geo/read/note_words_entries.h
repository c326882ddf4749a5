// The vocabulary itself, in two lists; the first listed sense of a phrase holds, the list of fans and states before that of
// findings. For note_words_table.cpp alone.
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
// Diggers, counts, denials, the probe, who was about, and what says nothing.
[[nodiscard]] std::span<const Entry> words_of_findings();

}  // namespace plugside::note_words
