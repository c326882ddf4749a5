// A ladder laid elsewhere by a person: its chance and its rungs at every place that the hand takes it to.
//
// Guarantee: `at` is what the next plan says of the site once the move is decided: the same row, rungs and chance. Length and step of
//            the ladder stay, hit_as_proposed and middle_as_proposed too. The basis comes from the plan that proposed the site.
// Preconditions: `site` is of a plan (its `basis` is filled); options as that plan's.
// Degenerate input: a place that no drawn run comes near has chance 0 and expects all its rungs.
// Cost:      to make, the draws of one stretch, half a millisecond; `at` some tenths of a millisecond.
#pragma once

#include <memory>

#include "core/plan/make_plan.h"
#include "core/plan/plan.h"
#include "core/probing/run_draws.h"

namespace plugside {

class LadderByHand {
public:
    explicit LadderByHand(const ProbeSite& site, const PlanOptions& options = {});
    [[nodiscard]] ProbeSite at(const LadderPlace& place) const;

private:
    ProbeSite site_;
    LocalPoint plug_;  // where its axis begins
    PlanOptions options_;
    std::unique_ptr<const StretchDraws> draws_;  // between two mounds
};

// Fills what follows from the ladder's place: rungs, chance, places on the map. `row_middle`: of the ladder, on the row's scale.
void complete_site(ProbeSite& site, LocalPoint plug, const RowChance& row, Metres row_middle, const PlanOptions& options);

// The row across the tape `along` it from the plug that the site is taped from.
[[nodiscard]] RowChance row_on_tape(const StretchDraws& draws, const Stretch& stretch, bool from_second, Metres along);

// Where the ladder's middle lies as seen from that plug.
[[nodiscard]] LocalPoint ladder_middle(const ProbeSite& site, LocalPoint plug);

}  // namespace plugside
