// What the drawn networks tell of the run's direction under each mound: through the straightest pair of neighbours that a
// run joins to it, or, where it does not go on through the mound, along each of them, over all draws.
//
// Result: of each mark with a fan, the turn of the run from square to the axis opposite the fan, and how sure it is, with
// the
//         errors of receiver and eye and the run's own bending.
// Degenerate input: a mark that no draw joins to another, or without draws, has the turn of any lateral.
// Cost:   O(draws x links of a mark squared).
#pragma once

#include <vector>

#include "core/probing/run_draws.h"
#include "core/systems/system_posterior.h"

namespace plugside {

[[nodiscard]] std::vector<RunTurn> run_turns(const SystemPosterior& posterior, const PlanOptions& options);

}  // namespace plugside
