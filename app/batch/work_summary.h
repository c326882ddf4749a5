// What speaks against a plan worked as told, in words for the terminal: stops and hold-backs with their sets and why, what is not known, minds,
// the answers asked for.
#pragma once

#include <string>

#include "core/sets/caution_rules.h"

namespace plugside {

[[nodiscard]] std::string summary_of_work(const Survey& survey, const Plan& plan, const JudgedPlan& judged, UtcTime now);

// That a plan with stops is not to be handed out, and what can be done; only for a plan that has stops.
[[nodiscard]] std::string not_to_be_handed_out(const JudgedPlan& judged);

// "1 set", "16 sets".
[[nodiscard]] std::string sets_counted(std::size_t count);
// As it is named on its card: "A15-60".
[[nodiscard]] std::string code_of(const Plan& plan, const SetPoint& set);

}  // namespace plugside
