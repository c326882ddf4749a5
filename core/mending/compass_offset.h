// One walker's fans turned alike: a compass beside iron, a declination not taken into account, a habit of the eye.
//
// Method:  fans stand across the runs, whichever side they are on. Each fan is held against the lines from its mark's
// take-off to
//          those of its neighbours; near ones count more, and so do those marked soon before or after, whose line is less
//          out. The turn is sought that brings most fans to stand across such a line: the most likely one of a mixture of
//          lines that are runs and lines that are not.
// turn_degrees: by which the fans as read lie clockwise of where they should; sd_degrees by leaving out one tenth of the
// walk's
//          fans after the other (jackknife). Of walks of more than 3,000 marks every second, third ... is asked.
// Limits:  without runs no direction: the estimate of 60 fans is good to some 5 degrees at best even where the runs are
// known,
//          because laterals lean and fans are read by eye (15-25 degrees together).
// Degenerate input: a walk with fewer than `least_fans` fans that have a neighbour gives nothing.
// Cost:    O(n log n) with about 500 evaluations a fan.
#pragma once

#include <optional>

#include "core/mending/walk_marks.h"
#include "core/plan/progress.h"

namespace plugside {

struct CompassOptions {
    std::size_t least_fans = 40;
    double least_turn_degrees = 5.0;  // less is not worth a mend
    double least_sds = 3.5;           // stands out by so many standard deviations
    double lateral_m = 0.28;          // plug to run: 15-38 cm, UC IPM 7433 and bait labels
};

struct CompassOffset {
    std::size_t walk = 0;
    std::size_t fans = 0;
    double turn_degrees = 0.0;
    double sd_degrees = 0.0;
};

// Of every walk with fans enough, whether it stands out or not.
[[nodiscard]] std::vector<CompassOffset> compass_offsets(const Survey& survey, const WalkMarks& walk,
                                                         const CompassOptions& options = {}, const Progress& progress = {});

[[nodiscard]] bool stands_out(const CompassOffset& offset, const CompassOptions& options = {});

}  // namespace plugside
