// What was decided on each set of a plan, all at once.
//
// choices_of: of each of plan.sets, in their order: the survey's decision where there is one, else a proposal; the survey may be newer
//             than the plan. O((sets + decisions) log decisions).
// decide_all: as many calls of `decide` with the last word on each site, but the revision rises once. Same cost.
#pragma once

#include <vector>

#include "core/plan/plan.h"

namespace plugside {

[[nodiscard]] std::vector<SetChoice> choices_of(const Survey& survey, const Plan& plan);

void decide_all(Survey& survey, const std::vector<SetDecision>& decisions);

[[nodiscard]] constexpr bool stands(SetChoice choice) { return choice == SetChoice::kept || choice == SetChoice::moved; }

}  // namespace plugside
