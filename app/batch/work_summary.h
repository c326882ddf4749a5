// What speaks against a plan worked as told, in words for the terminal: stops and hold-backs with their sets and why, what is not known, minds,
// the answers asked for.
#pragma once

#include <string>

#include "core/sets/caution_rules.h"

namespace plugside {

[[nodiscard]] std::string summary_of_work(const Survey& survey, const Plan& plan, const JudgedPlan& judged, UtcTime now);

// "3 of the 20 sets meet a stop"; only for a plan that has stops.
[[nodiscard]] std::string stops_counted(const JudgedPlan& judged);

}  // namespace plugside
