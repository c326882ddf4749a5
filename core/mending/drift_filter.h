// By how much one walk's marks lie off another's, followed through the marks in the order of the clock.
//
// Model:   the offset (east, north) is a point on a grid of 0.6 m within 9 m; it wanders from mark to mark as two receivers'
// shared
//          errors do, and returns to none at all now and then (a break of the walk). At each mark it is the more likely the
//          better the mark, moved back by it, rests on marks of the other walk.
// Result:  for each mark the chance that it is each of its candidates, given all marks before and after, and the offset
// then:
//          forward and backward over the grid, exact up to its cells.
// Blocks:  of 800 marks, with 60 more to either side: what lies further off says nothing any more.
// Degenerate input: marks without candidates let the offset wander on.
// Cost:    O(marks * cells), less than 0.1 ms a mark; two threads.
#pragma once

#include <cstddef>
#include <vector>

#include "core/geometry/point.h"
#include "core/plan/progress.h"

namespace plugside {

struct RestingPlace {
    std::size_t mark = 0;  // of the other walk
    LocalVector off;       // this walk's mark less that one
    double weight = 0.0;   // likeness of the fans over the density of mounds there, m2
};

struct DriftStep {
    double seconds_since_last = 0.0;
    double sd_m = 0.6;  // of the two own parts together, in each direction
    std::vector<RestingPlace> candidates;
};

struct DriftScales {
    double shared_sd_m = 1.5;
    double memory_s = 600.0;
    double share = 0.5;  // of marks that have a counterpart
};

struct Resting {
    double chance = 0.0;  // of this candidate
    LocalVector offset;   // if it is this one
};

// One list a step, in the order of its candidates; no list when stopped.
[[nodiscard]] std::vector<std::vector<Resting>> follow_drift(const std::vector<DriftStep>& steps, const DriftScales& scales,
                                                             const Progress& progress = {});

}  // namespace plugside
