// How many animals the sets that were kept reach, from the draws kept with a plan: nothing is inferred anew.
//
// Draws:    those that tell the number of animals (Plan::drawn), so that animals reached are so many *of* the plan's expected number.
//           Without draws (a coarse plan) the plan's own systems stand for the one draw there is.
// Reached:  in a draw, an animal is reached when one of the sets taken at its mounds meets its run; each does with its own chance, on its
//           own. Two sets in one animal's system count once.
// Interval: of the number reached, over the draws and over what each set meets: the exact distribution (a Poisson binomial in every draw),
//           at the level of the plan's own interval.
// Degenerate input: nothing taken: zeros.
// Cost:     to make O(sets x draws + marks); `gain` and `take` O(draws); `reached` O(1); `interval` O(draws x animals x the spread of their
//           number).
#pragma once

#include <cstdint>
#include <vector>

#include "core/plan/plan.h"

namespace plugside {

class ReachOfSets {
public:
    explicit ReachOfSets(const Plan& plan);

    // Animals that this set (index into plan.sets), which meets the run with `chance`, is expected to add to what is taken.
    [[nodiscard]] double gain(std::size_t set, double chance) const;
    void take(std::size_t set, double chance);
    [[nodiscard]] double reached() const { return reached_; }
    [[nodiscard]] CountInterval interval() const;

    [[nodiscard]] std::size_t draws() const { return draws_; }
    // The animal at which a set stands in a draw: a number that no other draw's animal has.
    [[nodiscard]] std::uint32_t animal(std::size_t set, std::size_t draw) const { return slot_[set * draws_ + draw]; }

private:
    std::size_t draws_ = 0;
    double level_ = 0.90;
    std::vector<std::uint32_t> slot_;  // of each set and draw, the animal: an index into missed_
    std::vector<std::size_t> begins_;  // of each draw its first animal in missed_, and the end
    std::vector<double> missed_;       // of each draw's animals that any set may reach: chance that none taken does
    double reached_ = 0.0;
};

}  // namespace plugside
