// A ladder: which holes to push, in which order, and what that promises.
//
// A rung meets the run when it lies within half the tunnel's diameter of its centre line; the chance is that of a run square to
// the row (one that crosses at a slant is met a little earlier).
// Rungs are tried from the middle outwards, nearer first; the step is at most the tunnel's diameter, so that nothing slips
// through. Offsets and step are round to a centimetre: what a tape reads.
// Cost: O(rungs x parts).
#pragma once

#include <vector>

#include "core/probing/run_offset.h"
#include "core/units/probability.h"

namespace plugside {

struct LadderOptions {
    Metres step = Metres::of(0.05);           // at most the tunnel's diameter: 5-7.6 cm
    Metres longest_half = Metres::of(0.60);
    double enough = 0.97;                     // of the chance that can be had: longer ladders cost more than they find
};

struct LadderPromise {
    Probability hit;
    double expected_rungs = 0.0;  // until the hit, or all of them
};

// Offsets from the middle in the order to try: 0, -step, +step, -2 step, ... within half_length.
[[nodiscard]] std::vector<Metres> rungs_of(Metres half_length, Metres step);

// `middle` is the ladder's middle on the row's own scale.
[[nodiscard]] LadderPromise promise_of(const RunOffset& offset, Metres middle, const std::vector<Metres>& rungs,
                                       Metres tunnel_diameter);

struct PlacedRow {
    Metres middle;
    Metres half_length;
    Metres step;
};
// The row about the likeliest place that reaches `enough` of the chance with the fewest rungs.
[[nodiscard]] PlacedRow place_row(const RunOffset& offset, Metres tunnel_diameter, const LadderOptions& options = {});

}  // namespace plugside
