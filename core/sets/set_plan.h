// The fewest places to set that reach every expected animal: some a system, on different stretches of its run.
//
// Choice:   in each system the probe site with the best chance, fresh mounds first; the next ones at least one spacing away
// and at
//           other mounds; never inside a keep-clear area. A site that a person dropped gives way to the next best; one kept
//           or moved stays as long as its marks are there.
// Order:    the first choices of all systems by chance, then the second ones ...; replacements of dropped sites come last,
// so that
//           numbers already read out in the field stay.
// Degenerate input: a system without a site (no fan, no near neighbour) gets none, with a notice.
// Source:   two to three placements a system [memory of UC IPM]; freshest mounds first is common practice.
// Cost:     O(sites x sets).
#pragma once

#include <string>
#include <vector>

#include "core/plan/make_plan.h"

namespace plugside {

struct SetChoiceResult {
    std::vector<SetPoint> sets;
    std::vector<std::string> notices;
};

// Uses plan.probes, plan.systems, plan.mounds and plan.estimate.
[[nodiscard]] SetChoiceResult choose_sets(const Survey& survey, const Plan& plan, const PlanOptions& options);

// Puts the sets into walking order (SetPoint::visit_order), from where the walk began; dropped sets come last.
void order_visits(const Survey& survey, Plan& plan);

}  // namespace plugside
