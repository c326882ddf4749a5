// Every place where a ladder is worth pushing: on the plug side of each mound with a fan, and between neighbouring mounds that a run
// joins with at least PlanOptions::least_run_probability.
//
// Everything is relative to the marks on the ground; places for the map are as exact as the receiver was.
// A person's move of a ladder (SetDecision::moved_to) is obeyed: its chance is that of the new place.
// Order: by system, then hit chance as proposed (highest first), then the marks' keys.
// Cost:  O(mounds + runs).
#pragma once

#include "core/runs/main_run.h"

namespace plugside {

[[nodiscard]] std::vector<ProbeSite> probe_sites(const Survey& survey, const SystemPosterior& posterior,
                                                 const std::vector<MainRun>& runs, const PlanOptions& options);

}  // namespace plugside
