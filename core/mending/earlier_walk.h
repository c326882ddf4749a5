// Mounds that were marked on an earlier walk already, and again on a later one.
//
// Method:  two walks' receivers were out by different amounts, and both drift; but marks made soon after one another are
// shifted
//          alike. So the later walk's marks are laid over the earlier ones in the order of the clock, with an offset that
//          may wander (drift_filter.h): where many of them, fans agreeing, come to rest on earlier marks, the offset is
//          known and each mark is matched to the one it rests on.
// Chance:  of a match: given all marks before and after, against the density of other mounds and against having none, with
// the share
//          of mounds marked again fitted to the later walk itself.
// Result:  pairs (later, earlier), each later mark in one pair at most, each earlier one in one a visit; the likeliest
// first. Limits:  where few mounds were marked again, or the receiver drifts by the mounds' spacing from mark to mark,
// little is matched. Degenerate input: a single visit gives nothing. Cost:    O(n log n), about 0.1 ms a later mark.
#pragma once

#include "core/mending/walk_marks.h"
#include "core/plan/progress.h"

namespace plugside {

struct EarlierWalkOptions {
    double least_chance = 0.5;
    double fan_sd_degrees = 15.0;
};

struct MarkedBefore {
    std::size_t later = 0;  // into WalkMarks::marks
    std::size_t earlier = 0;
    double chance = 0.0;
    LocalVector shift;  // by how much the later walk's marks lie off the earlier ones hereabouts
};

[[nodiscard]] std::vector<MarkedBefore> marked_before(const Survey& survey, const WalkMarks& walk,
                                                      const EarlierWalkOptions& options = {}, const Progress& progress = {});

}  // namespace plugside
