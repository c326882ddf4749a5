// The main runs of each system: lines through the take-offs of its consensus tree, with their uncertainty.
//
// Tree:     of the links between marks of one system, the spanning tree of greatest link probability; a system whose marks are
//           not joined by candidate links stays in pieces.
// Line:     from take-off to take-off; where a mark has two links that go on through it, the line bends there smoothly
//           (a cubic with a shared tangent), else it is straight. Vertices about 0.25 m apart.
// sd_m:     across the line, at each vertex: pinned near take-offs by their own spread, wider between, like a bridge whose
//           middle has standard deviation `bend_share` of the link's length (our assumption, checked against simulated truth).
// Chance:   run_presence of the link's share of draws.
// Order:    by system, then by from_mound, to_mound.
// Cost:     O(links log links).
#pragma once

#include "core/systems/system_posterior.h"

namespace plugside {

// Standard deviation of a run's middle off the chord between two take-offs, as a share of the chord.
inline constexpr double bend_share = 0.09;

[[nodiscard]] std::vector<MainRun> main_runs(const SystemPosterior& posterior, const LinkWeights& weights,
                                             const PlanOptions& options);

}  // namespace plugside
