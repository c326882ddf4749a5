// A plan in a few lines for a terminal: how many animals, on how much ground, what to carry, what to mind.
//
// The number of animals is an interval and is always told with the area walked, because it depends on it.
#pragma once

#include <string>

#include "core/plan/plan.h"
#include "core/units/display.h"
#include "geo/read/field_survey.h"

namespace plugside {

// `with_cautions`: those of the map and those that hold at every set; left out where the plan is judged as it is to be worked
// (work_summary.h).
[[nodiscard]] std::string summary_of(const FieldSurvey& field, const Plan& plan, LengthUnits units, bool each_system,
                                     bool with_cautions);

}  // namespace plugside
