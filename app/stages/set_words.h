// What the slip says of a set, a place and what was decided on it.
#pragma once

#include <QString>

#include "core/plan/plan.h"
#include "core/sets/set_filter.h"
#include "core/units/display.h"

namespace plugside {

[[nodiscard]] QString letter_of(const Plan& plan, std::size_t system);
// "plug side of M012", "between M012 and M014".
[[nodiscard]] QString place_words(const ProbeSite& site);
// "animal C, plug side of M012".
[[nodiscard]] QString place_words(const Plan& plan, const ProbeSite& site);
[[nodiscard]] QString decided_words(SetChoice choice);
// "97 in 100, about 3 rungs".
[[nodiscard]] QString promise_words(const ProbeSite& site);
// What a filter asks for, as a list: "undecided, animal C".
[[nodiscard]] QString filter_words(const SetFilter& filter);
[[nodiscard]] QString animals_words(double animals);  // "12.3", "0.04"

}  // namespace plugside
