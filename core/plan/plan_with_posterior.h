// A plan together with the posterior that it was made from: what is told to a person, and all that stood behind it.
//
// For judging chances: make_plan is this with the learnt weights, the posterior dropped. Guarantees and cost as make_plan.
// The posterior of the coarse form holds marks, systems and a crude interval, nothing drawn.
// Returns nothing only when stopped.
#pragma once

#include <optional>

#include "core/plan/make_plan.h"
#include "core/systems/system_posterior.h"

namespace plugside {

struct PlanWithPosterior {
    Plan plan;
    SystemPosterior posterior;
};

[[nodiscard]] std::optional<PlanWithPosterior> make_plan_with_posterior(const Survey& survey, const PlanOptions& options,
                                                                        const LinkWeights& weights,
                                                                        const Progress& progress = {},
                                                                        const PlanWishes& wishes = {});

}  // namespace plugside
