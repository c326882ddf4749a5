// A key to who dug: questions about what a person can see, one at a time, each answer leading to the next question or to a
// digger.
//
// Source:  what a mound looks like: UC IPM Pest Notes 7433 (gopher: fan to one side, closed plug), Driscoll & Watson
// (surface plug),
//          Dalquest 1948 (mole: round, volcano-like, a stride apart along a ridge), Montana Dept of Agriculture (ground
//          squirrel: holes stay open), extension slides (vole: open holes joined by worn trails, no mound). Each answer
//          names its own.
// Guarantee: every chain of answers ends; question 0 is the first; every question can be reached.
// picture: a word for what is drawn beside an answer; drawings are the window's.
#pragma once

#include <optional>
#include <span>
#include <string_view>

#include "core/survey/mound.h"

namespace plugside {

enum class DiggerPicture {
    mound,
    no_mound,
    fan_to_one_side,
    round_hill,
    closed_plug,
    open_hole,
    hole_in_middle,
    ridge,
    string_of_hills,
    worn_trail,
    bare_entrance,
    small_round_plug,
    flattened
};

struct DiggerAnswer {
    std::string_view words;
    DiggerPicture picture = DiggerPicture::mound;
    std::optional<std::size_t> next;  // the question to go on with
    std::optional<SignKind> digger;   // or what it was; neither: it cannot be told, have a second look in the field
    std::string_view why;             // a sentence
    std::string_view source;
};

struct DiggerQuestion {
    std::string_view words;
    std::span<const DiggerAnswer> answers;
};

[[nodiscard]] std::span<const DiggerQuestion> digger_key();

}  // namespace plugside
