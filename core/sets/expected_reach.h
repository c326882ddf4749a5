// How many animals a choice of sets is expected to reach, from the joint draws of the networks.
//
// Reached: in a draw, an animal (a tree of the drawn forest) is reached when one of the sets at its mounds meets its run;
// each does
//          with its own chance, on its own. Two sets in one animal's system count once.
// Guarantee: the gain of a set never grows as others are taken (submodular), so that taking the greatest gain first reaches
// at
//          least 1 - 1/e of what the best choice of as many sets does (Nemhauser, Wolsey & Fisher 1978 [memory]).
// Degenerate input: a posterior without draws is judged by its consensus alone.
// Cost:    O(draws) a question; O(draws x marks) memory.
#pragma once

#include <cstdint>
#include <vector>

#include "core/plan/plan.h"
#include "core/systems/system_posterior.h"

namespace plugside {

class ExpectedReach {
public:
    // `posterior` outlives it.
    explicit ExpectedReach(const SystemPosterior& posterior);

    // Animals that one more set at this mark (index into the posterior's marks), which meets the run with `chance`, is
    // expected to add.
    [[nodiscard]] double gain(std::size_t mark, double chance) const;
    void take(std::size_t mark, double chance);
    [[nodiscard]] double reached() const { return reached_; }

private:
    [[nodiscard]] const std::vector<std::vector<std::uint32_t>>& labels() const;
    const SystemPosterior* posterior_;
    std::vector<std::vector<std::uint32_t>> consensus_;  // stands in where no draw was kept
    std::vector<std::vector<float>> missed_;             // of each draw and tree: chance that no set so far reaches it
    double reached_ = 0.0;
};

}  // namespace plugside
