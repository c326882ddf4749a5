// Fans read from the wrong end.
//
// The run lies on the plug's side, one lateral (15-38 cm) from the plug opposite the fan: UC IPM 7433 and bait labels. A fan
// read from the wrong end puts the take-off as far out on the other side. A whole walk: for each fan, how well its take-off
// lies in line with neighbouring ones that both fans stand across, against the same
//          with all the walk's fans turned round. `agreement` is the sum of the log ratios over the root of the sum of their
//          squares. Walks of an ordinary receiver read rightly (simulated): mean 1.3, sd 1.5 at 45 fans; 3.3 and 2.4 at 240;
//          read from the wrong end: the same below nought.
// A single fan: how far plug and neighbours' plugs lie off one line (local_runs.h), with the fan as read and turned round,
//          summed over all triples that it is part of. How straight runs are hereabouts, and how often a triple is no run,
//          is fitted to the walk itself, so that where nothing can be told nothing is said.
// Limits:  turning a fan moves its take-off by two laterals, about 0.56 m. Even where the run's own line is known, four of
//          five can be found at one in fifty false only if plug and run are placed within 0.15 m of each other (in simulated
//          fields); from marks alone it takes runs straight to 0.1 m between neighbours as well. With an ordinary receiver
//          single fans cannot be told, and hardly any is named.
// Degenerate input: fewer than `least_fans` fans in a walk: no verdict on the walk. No triples: no single fan.
// Cost:    O(n log n).
#pragma once

#include "core/mending/local_runs.h"
#include "core/plan/progress.h"

namespace plugside {

struct ReversedOptions {
    std::size_t least_fans = 40;
    double most_agreement = -3.0;  // of a walk that is proposed to be turned round: chosen on simulated walks
    double least_chance = 0.5;     // of a single fan
    double usual_share = 0.03;     // of fans read from the wrong end: our assumption
    double lateral_m = 0.28;
};

struct WrongEndWalk {
    std::size_t walk = 0;
    std::size_t fans = 0;
    double agreement = 0.0;
};
struct ReversedFan {
    std::size_t mark = 0;  // into WalkMarks::marks
    double chance = 0.0;
    double out_m = 0.0;  // how far the take-off lies off its neighbours' line as read
    double out_turned_m = 0.0;
    std::size_t one = 0, other = 0;  // the neighbours
};

// Every walk with fans enough.
[[nodiscard]] std::vector<WrongEndWalk> fan_agreement(const Survey& survey, const WalkMarks& walk,
                                                      const ReversedOptions& options = {}, const Progress& progress = {});
[[nodiscard]] std::vector<ReversedFan> reversed_fans(const Survey& survey, const WalkMarks& walk,
                                                     const ReversedOptions& options = {}, const Progress& progress = {});

}  // namespace plugside
