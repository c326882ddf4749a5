// Letters that stay with the systems they named, from one plan of a survey to the next.
//
// letter_of:    A, B, ... Z, AA, AB, ... of 0, 1, 2, ...
// letters_of:   which mound had which letter, by the mounds' names; a name that several mounds bear, or none, tells nothing.
// keep_letters: gives each system a letter. A system that holds at least half of the mounds an earlier letter stood for (of
// those
//               that are in some system now) may have it; the pair that shares the most mounds is served first, of equal
//               ones the smaller systems, then the earlier letter. Every other system gets, in its order, the first letter
//               that neither the earlier plan nor this one uses: a letter never goes over to another animal at once.
// counterpart:  the system of a later plan that holds most mounds of an earlier plan's system (of equal ones the first);
// nothing where
//               none of them is in a system, or the plans are of different marks.
// Guarantee:    no two systems get the same letter; a system whose mounds are those of an earlier one keeps its letter.
// Without
//               earlier letters it is A, B, C, ... in the systems' order.
// Degenerate input: no system; no earlier letter; mounds without names: letters in order.
// Cost:         O(mounds log mounds).
#pragma once

#include <map>
#include <optional>
#include <string>
#include <vector>

#include "core/plan/plan.h"

namespace plugside {

using SystemLetters = std::map<std::string, std::string>;  // name of a mound -> letter of its system

[[nodiscard]] std::string letter_of(std::size_t number);
[[nodiscard]] SystemLetters letters_of(const Survey& survey, const Plan& plan);
void keep_letters(const SystemLetters& earlier, const Survey& survey, std::vector<BurrowSystem>& systems);
[[nodiscard]] std::optional<std::size_t> counterpart(const Plan& earlier, std::size_t system, const Plan& later);

}  // namespace plugside
