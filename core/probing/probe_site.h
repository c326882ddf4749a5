// Every place where a ladder is worth pushing: on the plug side of each mound with a fan, and between neighbouring mounds whose
// link probably carries a run.
//
// Everything is relative to the marks on the ground; places for the map are as exact as the receiver was.
// A person's move of a ladder (SetDecision::moved_to) is obeyed: its chance is that of the new place.
// Order: by system, then hit chance (highest first), then the marks' keys.
// Cost:  O(mounds + runs).
#pragma once

#include "core/runs/main_run.h"

namespace plugside {

// Least chance that a run joins two mounds for a ladder between them to be offered: below, more than half the holes are in vain.
inline constexpr double least_link_probability = 0.5;

[[nodiscard]] std::vector<ProbeSite> probe_sites(const Survey& survey, const SystemPosterior& posterior,
                                                 const std::vector<MainRun>& runs, const PlanOptions& options);

}  // namespace plugside
