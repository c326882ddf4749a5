// Which undecided set to decide on next: the one that is expected to reach most further animals for each minute of work.
//
// Gain:    animals that the set is expected to reach beyond those that the kept ones reach already. Undecided sets before it do not count
//          against it: they may yet be dropped. So the first set of every animal comes before the second of any that has one kept.
// Minutes: holes expected in its ladder, and the time to place the set. The way there is walked for all of them together and is not
//          charged to any.
// Order:   worth falling; equal worth (to a billionth) by number. A decision moves only sets that may reach the same animal; dropping moves
//          none.
// Cost:    O(sets x draws + sets log sets).
#pragma once

#include <vector>

#include "core/sets/reach_of_sets.h"
#include "core/sets/set_choices.h"

namespace plugside {

struct EffortOptions {
    double minutes_a_hole = 0.5;    // push, feel, step on: our assumption; no published figure is known to us
    double minutes_to_place = 6.0;  // open the run, place, cover, flag, write down: our assumption, as above
};

[[nodiscard]] double minutes_at(const ProbeSite& site, const EffortOptions& options = {});

struct SetWorth {
    std::size_t set = 0;  // index into plan.sets
    double gain = 0.0;    // animals
    double minutes = 0.0;
    [[nodiscard]] double animals_a_minute() const { return minutes > 0.0 ? gain / minutes : 0.0; }
};

// Of the set at hand, whether it is decided or not.
[[nodiscard]] SetWorth worth_of(const Plan& plan, std::size_t set, const ReachOfSets& kept,
                                const EffortOptions& options = {});

// The undecided sets, the worthiest first. `choices`: of each of plan.sets; `kept`: of this plan, with the kept sets taken.
[[nodiscard]] std::vector<SetWorth> undecided_by_worth(const Plan& plan, const std::vector<SetChoice>& choices,
                                                       const ReachOfSets& kept, const EffortOptions& options = {});

// What the kept sets reach; with `and_undecided` those not yet decided on as well.
[[nodiscard]] ReachOfSets reach_of_chosen(const Plan& plan, const std::vector<SetChoice>& choices,
                                          bool and_undecided = false);
void take_undecided(const Plan& plan, const std::vector<SetChoice>& choices, ReachOfSets& reach);

}  // namespace plugside
