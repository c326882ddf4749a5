// A correction of how notes are read: what a walker's own words mean in one note, or in all notes of one walk.
//
// walk:  the walk's id ("walk 1"); empty for every walk.
// words: as the walker writes them, "gr"; case and accents are of no account. Empty words match nothing.
// means: in words that the notes grammar reads, "fresh"; empty when the words say nothing.
// mark:  the name of the one mark whose note it is about; empty for all of the walk.
#pragma once

#include <string>

namespace plugside {

struct NoteRule {
    std::string walk;
    std::string words;
    std::string means;
    std::string mark = {};
    friend bool operator==(const NoteRule&, const NoteRule&) = default;
};

}  // namespace plugside
