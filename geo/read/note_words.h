// The words of the note grammar, as tables, and the cutting of a note into words. For geo/read/notes_grammar.cpp alone.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/survey/mound.h"

namespace plugside::note_words {

struct Word {
    std::string written;  // as it stands in the note
    std::string lower;    // in lower case, hyphens kept
};

[[nodiscard]] std::vector<Word> words_of(std::string_view note);

enum class Reference { unsaid, true_north, magnetic };

struct Angle {
    double degrees = 0.0;  // may be out of range, or infinite for a number that nothing can hold
    Reference reference = Reference::unsaid;
};

// "135", "135.5", "-5", "135°", "135deg", "135M", "135°T"; nothing for anything else.
[[nodiscard]] std::optional<Angle> angle_in(std::string_view lower_word);
// "se", "s-e", "southeast", "south-east": degrees; nothing for anything else.
[[nodiscard]] std::optional<double> compass_point_in(std::string_view lower_word);
[[nodiscard]] std::optional<Reference> reference_in(std::string_view lower_word);
[[nodiscard]] std::optional<Freshness> freshness_in(std::string_view lower_word);
[[nodiscard]] std::optional<SignKind> animal_in(std::string_view lower_word);

[[nodiscard]] bool is_length_unit(std::string_view lower_word);
[[nodiscard]] bool is_filler(std::string_view lower_word);      // "the", "and", ...
[[nodiscard]] bool is_fan_filler(std::string_view lower_word);  // between "fan" and its bearing: "towards", "points", ...
[[nodiscard]] bool is_negation(std::string_view lower_word);
[[nodiscard]] bool is_doubt(std::string_view lower_word);    // "?", "maybe", ...
[[nodiscard]] bool is_digging(std::string_view lower_word);  // what follows an animal's name: "hole", "hill", ...
[[nodiscard]] bool is_thing(std::string_view lower_word);    // "gate", "truck", ...
[[nodiscard]] bool is_month(std::string_view lower_word);

}  // namespace plugside::note_words
