// The vocabulary of notes, English and Spanish together: which words and phrases mean what. For the notes grammar alone.
//
// A phrase is one to four folded words (note_words.h); the longest that fits is taken. Plurals in -s and -es are found by
// themselves. A word of five letters or more that is not known, and differs in one letter (one too many, one missing, one
// other, two exchanged) from exactly one meaning's word with the same first letter, is taken for it; so is one that lacks
// vowels of such a word ("frsh"), and one that sounds like a Spanish word ("biejo"). Ordinary words that would be mistaken
// so are in the table as known and plain. Of words of four letters, and of the word fan, only doubled letters and exchanged
// neighbours are forgiven ("fann", "easst").
#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace plugside::note_words {

enum class Sense {
    plain,  // known, and means nothing here
    number,
    fan,
    fan_letter,
    soil,      // "dirt": a fan when a direction follows
    throwing,  // "thrown"
    facing,    // "points"
    bearing_word,
    away,  // "away from"
    plug,
    toward,
    side,
    of,
    at,
    at_hour,  // "a las"
    clock,
    half_past,  // value: hours added
    relative,   // value: hour of the clock
    compass,    // value: degrees
    between,
    by,
    reference,  // value: 1 magnetic, 2 true
    reference_letter,
    degree,
    unit,  // value: metres; 0 for one of no certain length
    letter_in,
    fresh,
    older,
    crushed,
    overgrowth,  // "covered in", of growth
    growth,      // "weeds"
    when,        // value: 0 of late, 1 long ago
    ago,
    age,      // value: days
    crusher,  // what drives over mounds
    passing,  // "went", of a crusher
    over,
    tracks,
    animal,  // value: SignKind
    mound,
    surface_plug,
    surface,  // "at the surface", of a plug
    digging,
    sighted,
    group,
    more,
    times,
    negation,
    none,
    visible,
    gone,
    probe,
    tunnel,
    hit,  // value: 1 when it says so by itself
    miss,
    depth,
    distance,
    mention,  // value: MentionCategory
    doubt,
    preposition,  // says nothing unless what follows it is not understood
    filler,
    article,
};

enum Language : unsigned { english = 1, spanish = 2, either = 3 };

struct Meaning {
    Sense sense = Sense::plain;
    double value = 0.0;
    unsigned language = either;
    bool plural = false;
};

// `phrase`: folded words with one space between.
[[nodiscard]] std::optional<Meaning> meaning_of(std::string_view phrase);
// A word that is not known, by its likeness to one that is.
[[nodiscard]] std::optional<Meaning> likely_meaning_of(std::string_view word);

// A word that is not known where a direction is waited for: the compass point, written out, that differs in one letter.
[[nodiscard]] std::optional<Meaning> likely_point(std::string_view word);

// Whether letters glued behind a number are a word of their own that one counts or measures by ("8in", "2mnds", "3perros").
[[nodiscard]] bool may_be_counted(std::string_view letters);

[[nodiscard]] bool is_thing(std::string_view folded_word);  // "gate", "truck", ...
[[nodiscard]] bool is_month(std::string_view folded_word);

}  // namespace plugside::note_words
