// The fewest places to set that reach every expected animal, by the joint draws of the networks.
//
// Choice:   always the site that adds most expected animals, fresh mounds counting for more; in each system at least one
// spacing
//           apart and at other mounds; never inside a keep-clear area. Each system gets PlanOptions::sets_per_system; more
//           only while one more is expected to add PlanOptions::least_gain_of_extra_set animals (a system that may be two).
//           A budget (PlanOptions::most_sets) is spent on whatever adds most, wherever that is.
//           A site that a person dropped gives way to the next best; one kept or moved stays as long as its marks are there.
// Order:    by what a set adds to those before it, so that the first n are the n to take when there is time for no more; a
//           person's own places and replacements of dropped sites come last, so that numbers already read out in the field
//           stay.
// Degenerate input: a system without a site (no fan, no near neighbour) gets none, with a notice.
// Source:   two to three placements a system [memory of UC IPM]; freshest mounds first is common practice.
// Cost:     near-linear: O(sites x draws), a few questions more for each set.
#pragma once

#include <string>
#include <vector>

#include "core/plan/make_plan.h"
#include "core/systems/system_posterior.h"

namespace plugside {

struct SetChoiceResult {
    std::vector<SetPoint> sets;
    std::vector<double> expected_reached;  // by the first 1, 2, ... sets; a dropped one adds nothing
    std::size_t proposed = 0;  // the first so many of `sets` are what would be proposed had nobody decided
    std::vector<std::string> notices;
};

// Uses plan.probes, plan.systems and plan.estimate; `posterior` is what they were made from.
[[nodiscard]] SetChoiceResult choose_sets(const Survey& survey, const Plan& plan, const SystemPosterior& posterior,
                                          const PlanOptions& options);

}  // namespace plugside
