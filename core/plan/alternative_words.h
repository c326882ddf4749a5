// Alternatives of a plan as sentences without their stop, for the window, the terminal and the layer.
//
// Words:   "C and D are one animal's in 31 of 100"; "E is two animals' in 40 of 100: M012, M013 and 2 more apart"; "M007
//          hangs together with A in 38 of 100, with B in 30".
// Precondition: the plan was made from the survey.
// Cost:    O(what is told).
#pragma once

#include <string>
#include <vector>

#include "core/plan/plan.h"

namespace plugside {

[[nodiscard]] std::string words_for(const JoinedSystems& joined, const Plan& plan);
[[nodiscard]] std::string words_for(const SplitSystem& split, const Survey& survey, const Plan& plan);
[[nodiscard]] std::string words_for(const DoubtfulMound& doubtful, const Survey& survey, const Plan& plan);

// Of systems joined and split the `most` likeliest alternatives, the likeliest first; all of them, or those that speak of
// `system`.
[[nodiscard]] std::vector<std::string> likeliest_alternatives(const Survey& survey, const Plan& plan, std::size_t most,
                                                              std::optional<std::size_t> system = {});

}  // namespace plugside
