// A made-up field walked by lines, with seeing that falls off with distance: how many mounds a walk misses is then known.
//
// Way:      parallel lines along the longest side of the boundary, `line_gap_m` apart, back and forth, from one side
//           over `walked_share` of the field's width; the walker leaves the line a little before each mound seen,
//           stands at it, and comes back to the line as far beyond.
// Seeing:   on each leg (lines and the short ways between them), every mound not yet marked that lies beside it is
//           seen with the curve's chance at its distance square to the leg; one look a leg, as far as `most_off_m`.
// follows:  from each mound the walker also sees every mound within `follow_m` and goes from one to the next before
//           going back.
// Gaps:     each line has with `gap_chance` one stretch of `gap_m` that the walker passes without looking, with the
//           receiver shut off, for at least three minutes.
// Receiver: shared error that drifts (Ornstein-Uhlenbeck) and own jitter, as in walk_simulator.h.
// Result:   survey with one walk and the marks in the order made, truth with seen_as; the ground is kept. Fans are
//           read without error: what is tried here is seeing.
// Preconditions: the field has a boundary with an outer ring of at least three vertices (asserts).
// Cost:     O(mounds x legs).
#pragma once

#include "core/simulation/random.h"
#include "core/simulation/truth.h"
#include "core/walking/detection_curve.h"

namespace plugside {

struct LineWalk {
    DetectionCurve curve{CurveShape::half_normal, Metres::of(3.0), 0.0};
    double line_gap_m = 8.0;
    double walked_share = 1.0;
    bool follows = false;
    double follow_m = 4.0;
    double most_off_m = 10.0;  // nobody leaves the line for a mound further off
    double lead_m = 1.0;       // how far before and after a mound, along the line, the walker leaves and comes back
    double gap_chance = 0.0;
    double gap_m = 25.0;
    double pace_m_per_s = 1.0;
    double seconds_a_mark = 12.0;
    double track_every_s = 2.0;
    double shared_sd_m = 2.0;
    double shared_memory_s = 600.0;
    double own_sd_m = 0.3;
};

// Lines, curve and receiver drawn from broad ranges (our assumption): scale 1.5-4 m, lines 5-14 m apart.
[[nodiscard]] LineWalk draw_line_walk(Random& random);

[[nodiscard]] SimulatedField seen_from_line(SimulatedField field, const LineWalk& walk, Random& random);

}  // namespace plugside
