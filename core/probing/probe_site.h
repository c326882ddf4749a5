// Every place where a ladder is worth pushing: on the plug side of each mound with a fan, and between neighbouring mounds
// that a run joins with at least PlanOptions::least_run_probability.
//
// Plug side: the row lies along the axis opposite the fan; how far out the run is comes from drawn laterals and from what
// the drawn
//          networks tell of the run's direction there.
// Between: of rows at several places along the tape, taped from either plug, the one with the greatest worth (see ladder.h):
// mostly
//          near a plug whose fan shows on which side its junction lies, since a run is pinned there and strays farther on.
// Across:  a between place whose near plug shows no fan, or half way along a long gap, is a wide row
// (ProbeSite::across_gap). Offered: between mounds where the row finds the run with PlanOptions::least_between_hit in at
// most most_between_rungs holes, or a
//          person decided on it; where a system has fewer places than it is to get sets, its best others as well.
// Everything is relative to the marks on the ground; places for the map are as exact as the receiver was.
// A person's move of a ladder (SetDecision::moved_to) is obeyed: its chance is that of the new place.
// Order: by system, then hit chance as proposed (highest first), then the marks' keys.
// Cost:  O(mounds + runs), some 0.1 ms each; two threads.
#pragma once

#include <optional>
#include <vector>

#include "core/runs/main_run.h"

namespace plugside {

// For which places ladders are made. All by default.
// between_where_wanting: between mounds only in systems with fewer plug sides than they are to get sets, and where a person
// decided. marks: plug sides of these of the posterior's marks alone.
struct ProbeScope {
    bool between_where_wanting = false;
    std::optional<std::vector<std::size_t>> marks;
};

[[nodiscard]] std::vector<ProbeSite> probe_sites(const Survey& survey, const SystemPosterior& posterior,
                                                 const std::vector<MainRun>& runs, const PlanOptions& options,
                                                 const ProbeScope& scope = {});

}  // namespace plugside
