// Everything of a plan but what was walked: from the systems to runs, ladders, sets, the way past them and the cautions.
//
// Thoroughness::first_look: rough outlines, ladders between mounds only where they are wanting, a rough way;
// Plan::first_look is set. posterior: its draws for the number of animals go over into the plan (Plan::drawn). Returns
// nothing only when stopped. Cost: near-linear in marks.
#pragma once

#include <optional>

#include "core/plan/make_plan.h"
#include "core/plan/plan.h"
#include "core/plan/progress.h"
#include "core/plan/system_letters.h"
#include "core/systems/link_weights.h"
#include "core/systems/system_posterior.h"

namespace plugside {

[[nodiscard]] std::optional<Plan> laid_out(const Survey& survey, SystemPosterior& posterior, const PlanOptions& options,
                                           const LinkWeights& weights, Thoroughness thoroughness,
                                           const SystemLetters& letters, const Progress& progress);

}  // namespace plugside
