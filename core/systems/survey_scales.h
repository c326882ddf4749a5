// The survey's own scales, fitted to it: how far apart neighbouring mounds of one system lie, and how many a system has.
//
// Model:  marks are a branching process on the plane: systems start at random with intensity lambda, each mound has mu
//         others beside it on average, at a distance whose density is a gamma about the spacing (nine gaps in ten) or twice
//         the spacing (a mound not seen), blurred by the receiver. The sum over all forests is a determinant, so the
//         likelihood of (spacing, mounds per system) is exact; it is multiplied by priors and maximised.
// Priors: log-normal about 2.2 m (factor 1.8) and about 12 mounds a system (factor 2): our assumption, no published figure.
// Use:    `spacing` is the unit in which link features are measured. The branching process itself takes fields apart (its
//         systems are too small), so its second parameter is not used for the partition.
// Degenerate input: fewer than 3 marks, or marks all in one place, give the priors' middles.
// Cost:   some 40 sparse factorisations; over 3,000 marks the 3,000 about one of them speak for all.
// Invariance: the result does not change when the field is moved, turned or renumbered.
#pragma once

#include <algorithm>
#include <cmath>

#include "core/plan/progress.h"
#include "core/systems/neighbour_graph.h"

namespace plugside {

struct SurveyScales {
    double spacing_m = 2.2;
    double mounds_per_system = 12.0;

    // For what is told apart by it: to the quarter metre, so that a mound nudged at one end of a field seldom changes what
    // is told of the other.
    [[nodiscard]] double rounded_spacing_m() const { return std::max(0.25, std::round(4.0 * spacing_m) / 4.0); }
};

[[nodiscard]] SurveyScales fit_scales(const std::vector<Mark>& marks, const std::vector<Link>& links,
                                      const Progress& progress = {});

}  // namespace plugside
