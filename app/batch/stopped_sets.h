// The sets of a plan that meet a stop dropped, as a person drops them in the Sets step: what was decided of them goes into the survey, and the
// plan is made anew.
//
// Stand-ins: a dropped site gives way to the next best of its system (core/sets/set_plan.h). What stands in is judged like any other and dropped
//          when it meets a stop, too; so to the end, which is a plan without stops, if without sets.
// A stop that depends on the whole plan (more than the label gives for the field) is met by all sets, and they are all dropped.
// Told:    a sentence for each set that the first plan had, with what stops it, and one for all that stood in.
// Stop:    nothing comes back. Cost: that of a plan for each time that something stood in.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/plan/plan.h"
#include "core/plan/progress.h"
#include "core/sets/caution_rules.h"
#include "core/survey/survey.h"

namespace plugside {

struct WithoutStops {
    Survey survey;  // with the decisions
    Plan plan;
    JudgedPlan judged;
    std::vector<std::string> told;
};

[[nodiscard]] std::optional<WithoutStops> without_stopped_sets(const Survey& survey, const Plan& plan,
                                                               const JudgedPlan& judged, UtcTime now,
                                                               const Progress& progress);

}  // namespace plugside
