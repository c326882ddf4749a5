// A plan for surveys too large for the whole posterior, and a first look at large ones: the coarse form, and it says so.
//
// Has:      one partition (coarse_systems.h) with letters and rough outlines, a crude interval of the number of animals,
// plug-side
//           ladders by what one mark tells of its run, sets by a plain rule, cautions, a walking order of the roughest kind.
// Has not:  runs, ladders between mounds, alternatives, what a person said of the systems (a notice says so where something
// was). Ladders:  at the two or three mounds of each system that the rule prefers: with a fan, freshest first, apart from
// each other, and at
//           those that a person decided on.
// Chances:  `belongs` and `single` are what they are worth on average over simulated fields of every kind, the same for all
// systems of
//           more than one mound: they tell no system from another.
// Guarantee: deterministic; independent of the numbering of marks.
// Errors:   returns nothing when stopped. Degenerate input: as make_plan.
// Cost:     near-linear; about a kilobyte a mark at its most.
#pragma once

#include <optional>

#include "core/plan/plan_with_posterior.h"
#include "core/plan/system_letters.h"

namespace plugside {

[[nodiscard]] std::optional<PlanWithPosterior> make_coarse_plan(const Survey& survey, const PlanOptions& options,
                                                                const Progress& progress = {},
                                                                const SystemLetters& letters = {});

}  // namespace plugside
