// A set's name and words as every file that is handed out for the field has them.
//
// set_name:  "S07 A": the number of the visit, with two figures at least, and the system's letter.
// sets_to_visit: those that are not dropped, in walking order.
// set_words: the probe's instruction, and after it every caution that stops the set: the decision is carried out in the field.
// chance_words: "chance of a hit 93 in 100".
// Cost: linear in the text.
#pragma once

#include <string>
#include <vector>

#include "core/plan/plan.h"
#include "core/units/display.h"

namespace plugside {

[[nodiscard]] std::string set_name(const SetPoint& set, const Plan& plan);
[[nodiscard]] std::vector<const SetPoint*> sets_to_visit(const Plan& plan);
[[nodiscard]] std::string set_words(const SetPoint& set, const Survey& survey, const Plan& plan, LengthUnits units);
[[nodiscard]] std::string chance_words(const SetPoint& set, const Plan& plan);

}  // namespace plugside
