// A budget of sets, traps or minutes, spent where it reaches most animals.
//
// Reached:  as ReachOfSets counts it, over the draws that tell the number of animals.
// Choice:   kept sets are taken first, whatever they cost; dropped ones never; then whichever undecided ones together reach most within what
//           is left. `most_possible`: no choice within the budget reaches more (proven); where `proven_best`, this one is the best there is.
// Curve:    the sets in the order in which each adds most for its cost, with what has been spent and reached up to there: what a budget of
//           any size reaches, or a little less. Kept sets come first.
// Costs:    a set is 1; in traps, one in a lateral and a pair in a run; in minutes, as minutes_at tells (holes and placing, without the
//           way). Paired traps, one facing each way: UC IPM [memory].
// Preconditions: `choices` has one for each of plan.sets; budget >= 0.
// Degenerate input: a plan without sets: nothing, reached 0, proven.
// Cost:     at most some tenths of a second for a thousand sets and 200 draws; forty sets or fewer are searched through (at most 200,000
//           steps).
#pragma once

#include <cstddef>
#include <vector>

#include "core/sets/set_choices.h"
#include "core/sets/set_worth.h"

namespace plugside {

enum class BudgetUnit { sets, traps, minutes };

[[nodiscard]] int traps_at(const ProbeSite& site);
[[nodiscard]] double cost_of(const ProbeSite& site, BudgetUnit unit, const EffortOptions& effort = {});

struct BudgetSpent {
    std::vector<std::size_t> sets;  // indexes into plan.sets: kept ones, then by what each adds for its cost
    double reached = 0.0;           // animals expected
    double cost = 0.0;              // of the unit; over the budget where the kept sets alone are
    double most_possible = 0.0;     // animals that no choice within the budget exceeds
    bool proven_best = false;
};

[[nodiscard]] BudgetSpent spend_budget(const Plan& plan, const std::vector<SetChoice>& choices, BudgetUnit unit,
                                       double budget, const EffortOptions& effort = {});

struct BudgetStep {
    std::size_t set = 0;
    double cost = 0.0;     // with this set
    double reached = 0.0;  // with this set
};

[[nodiscard]] std::vector<BudgetStep> budget_curve(const Plan& plan, const std::vector<SetChoice>& choices, BudgetUnit unit,
                                                   const EffortOptions& effort = {});

}  // namespace plugside
