// Parts of a plan that follow from the systems, however these were found.
//
// mounds_in_plan:  one for each mound of the survey; of the posterior, marks, system and belongs are read.
// systems_in_plan: in the posterior's order, without letters; of the posterior, marks, system, systems and single are read.
// Outline: a metre about runs and plugs (exact), or the convex ring about the mounds, a metre wider (rough): a thousand
// times quicker,
//          and shown only until there is a better one, or where there is no run to follow.
// Cost:    O(mounds log mounds); an exact outline about a millisecond a system. Two threads.
#pragma once

#include <vector>

#include "core/plan/make_plan.h"
#include "core/systems/system_posterior.h"

namespace plugside {

enum class OutlineForm { exact, rough };

[[nodiscard]] std::vector<MoundInPlan> mounds_in_plan(const Survey& survey, const SystemPosterior& posterior,
                                                      const PlanOptions& options);
[[nodiscard]] std::vector<BurrowSystem> systems_in_plan(const Survey& survey, const SystemPosterior& posterior,
                                                        const std::vector<MainRun>& runs, OutlineForm form,
                                                        const Progress& progress);

}  // namespace plugside
