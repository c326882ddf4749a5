// What is left of a ladder once some of its holes are pushed: the rungs in the order to try, each with its chance.
//
// Before the first hole: the ladder as it was told, from the middle outwards. After it: most likely first, given that every
// hole so
//          far missed the run. A found run leaves nothing to push.
// Logged:  holes of other ladders are passed over, so are holes more than 3 cm beside the row (the ladder was moved since);
// a hole on
//          the row counts where it was pushed, on a rung or between two.
// Chances: a rung's is given that neither the logged holes nor the rungs before it met the run.
// Degenerate input: no rung left: no rungs, chance 0.
// Cost:    O(rungs squared).
#pragma once

#include <vector>

#include "core/plan/plan.h"

namespace plugside {

struct RungLeft {
    Metres offset;     // from the ladder's middle along the row
    Probability next;  // that this hole meets the run, when it is its turn
};

struct RestOfLadder {
    bool found = false;
    std::vector<RungLeft> rungs;
    Probability hit;              // that one of them meets the run
    double expected_rungs = 0.0;  // of them, until the hit or to the end
};

[[nodiscard]] RestOfLadder rest_of_ladder(const ProbeSite& site, const std::vector<ProbeResult>& logged,
                                          Metres tunnel_diameter);

}  // namespace plugside
