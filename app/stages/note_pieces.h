// A note cut into pieces for the eye: what was understood, what was left over, and what says nothing by itself; and into the
// words that a person can pick.
//
// Text: a note that is not UTF-8 throughout is shown with a sign in place of the odd bytes; places are bytes of the note.
#pragma once

#include <QColor>
#include <QString>
#include <string>
#include <vector>

#include "geo/read/notes_grammar.h"

namespace plugside {

enum class PieceSense { plain, understood, left_over };

struct NotePiece {
    TextSpan span;
    PieceSense sense = PieceSense::plain;
    QString text;
};

// All of the note, in order.
[[nodiscard]] std::vector<NotePiece> pieces_of(const std::string& note, const NoteReading& reading);

// The pieces' words: no blanks, no word that is only punctuation and was not read. Joined from one word's begin to another's
// end they are what a rule is made of.
[[nodiscard]] std::vector<NotePiece> words_of(const std::string& note, const NoteReading& reading);

// "fan 135 · fresh": what was read, in short; empty where nothing was.
[[nodiscard]] QString values_of(const NoteReading& reading);

}  // namespace plugside
