// Which kinds of made-up field the learnt weights were learnt on, so that kinds tuned to and kinds tested on are told apart.
//
// Source of it: the head of the weights' own file, whose comment lists them after "kinds:" up to a full stop.
// Degenerate input: a text without such a list gives nothing: then no kind may be called left out.
// Errors: a word in the list that is no kind is passed over; a file may be older than a kind's name.
// Cost:   O(text).
#pragma once

#include <optional>
#include <string_view>
#include <vector>

#include "core/simulation/burrow_simulator.h"

namespace plugside {

[[nodiscard]] std::optional<std::vector<FieldKind>> kinds_learnt_on(std::string_view weights_file);

// Of the weights built into the program.
[[nodiscard]] const std::optional<std::vector<FieldKind>>& kinds_learnt_on();

}  // namespace plugside
