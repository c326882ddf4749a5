// What a walker wrote beside a mark, read leniently: the fan, how fresh, whose sign; and what was not understood.
//
// Fan:       "fan 135", "fan SE", "fan: south-east", "F135", "135 fan", "135 fresh", or a bearing that is the whole note;
//            degrees clockwise from north, 0..360 (360 is 0), or one of the sixteen compass points in letters or words.
//            "135M", "135 mag", "135 magnetic" is a magnetic bearing, "135T", "135 true" a true one, which is also what a
//            bearing without either is taken for.
// A bare number or compass point is a bearing only beside the word fan, beside a freshness word, or alone; never before a
//            length's unit ("fan 12 in wide") and never a count ("3 fresh mounds").
// Freshness: fresh, new, moist, damp / old, older, dry, weathered, ... / crushed, mown, flat, trampled, ...
// Kind:      mole, ground squirrel, vole, surface plug, gopher, mound; other animals are "other"; "not a mound" is "other".
// A word that "no" or "not" stands before is not read ("not fresh"), except "no fan".
// Total:     every text gives a reading; each of its words is read, a filler ("the"), or part of `rest`. Nothing throws.
// Case, punctuation between words and the language's plural are of no account; the notes are English.
// Cost:      linear in the text.
// Source:    our own grammar; what is noted: common practice of the trade.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/survey/mound.h"

namespace plugside {

struct NoteReading {
    std::optional<double> fan_degrees;           // 0 <= degrees < 360, from true north
    std::optional<double> magnetic_fan_degrees;  // 0 <= degrees < 360, from magnetic north; then fan_degrees is absent
    bool fan_word = false;                       // the bearing stood with the word "fan"
    std::optional<Freshness> freshness;
    std::optional<SignKind> kind;
    std::string rest;                   // words not understood, in their order, one space between
    std::vector<std::string> problems;  // sentences about what was understood and could not be used
};

[[nodiscard]] NoteReading read_note(std::string_view note);

// Whether a text is only a date and a time, as receivers write into a comment by themselves ("12-JUL-24 9:14:33AM").
[[nodiscard]] bool is_time_stamp(std::string_view text);

// Whether a mark's name or type is that of a thing on the way rather than of a sign ("gate", "Truck 2"), by its first word.
[[nodiscard]] bool names_a_thing(std::string_view text);

}  // namespace plugside
