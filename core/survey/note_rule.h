// A correction made a rule: what a walker's own word means in the notes of one walk.
//
// walk:  the walk's id ("walk 1"); empty for every walk.
// words: as the walker writes them, "gr"; case and accents are of no account. Empty words match nothing.
// means: in words that the notes grammar reads, "fresh"; empty when the words say nothing.
#pragma once

#include <string>

namespace plugside {

struct NoteRule {
    std::string walk;
    std::string words;
    std::string means;
    friend bool operator==(const NoteRule&, const NoteRule&) = default;
};

}  // namespace plugside
