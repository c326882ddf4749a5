// Mounds that were marked on an earlier walk already, and again on a later one.
//
// Method:  two walks' receivers were out by different amounts, and both drift; but marks made soon after one another are shifted
//          alike. So a stretch of the later walk's marks (about two dozen in the order of the clock) is laid over the earlier marks
//          as a whole: the step that brings most of them to rest on earlier ones, with fans agreeing, is the shift there. Then each
//          mark is matched to the earlier mark it rests on.
// Chance:  of a match: agreement after the shift against the density of other mounds and against having no match at all, with the
//          share of mounds marked again fitted to the later walk itself. A stretch whose shift is not better founded than chance
//          gives no matches.
// Result:  pairs (later, earlier), each mark in one pair at most; the likeliest first.
// Limits:  stretches in which few mounds were marked again are not found.
// Degenerate input: a single visit gives nothing.
// Cost:    O(n log n).
#pragma once

#include "core/mending/walk_marks.h"
#include "core/plan/progress.h"

namespace plugside {

struct EarlierWalkOptions {
    double least_chance = 0.5;
    double fan_sd_degrees = 15.0;
    double drift_left_m = 0.4;       // that one shift for a stretch leaves in each direction: our assumption
    double farthest_shift_m = 9.0;   // three standard deviations of two receivers' shared parts: our assumption
};

struct MarkedBefore {
    std::size_t later = 0;    // into WalkMarks::marks
    std::size_t earlier = 0;
    double chance = 0.0;
    LocalVector shift;        // by how much the later walk's marks lie off the earlier ones hereabouts
};

[[nodiscard]] std::vector<MarkedBefore> marked_before(const Survey& survey, const WalkMarks& walk,
                                                      const EarlierWalkOptions& options = {}, const Progress& progress = {});

}  // namespace plugside
