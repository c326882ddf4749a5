// What single mounds and their neighbours say of the run between them: for a mark with a fan, the line between two marks on
// either side of it that its fan stands across.
//
// Triple:  a mark i with a fan between two others j, k: the angle at i is at least 130 degrees, the line j-k within 40
// degrees of a
//          right angle to the fan (both by `TripleRule`); of all such pairs among the seven nearest the shortest way over i.
// offset_m: by how much plug i lies off the line through the plugs j and k, positive on the side its fan points to.
// fan_off: the same of the unit steps along the fans, 0 .. 2: with laterals of length l on the plug's side, offset_m = l *
// fan_off
//          plus the error of the places and the run's own bend.
// part_i, part_j, part_k: what each fan adds to fan_off: their sum is fan_off; 0 where a neighbour has no fan.
// across_degrees: the turn from the nearer of the two right angles to the line, to the fan, -90 .. 90.
// place_sd_m: of the offset, from the error of the three places.
// Degenerate input: fewer than three marks give nothing.
// Cost:    O(n log n).
#pragma once

#include "core/mending/walk_marks.h"

namespace plugside {

struct Triple {
    std::size_t mark = 0, one = 0, other = 0;  // into WalkMarks::marks
    double offset_m = 0.0;
    double part_mark = 0.0, part_one = 0.0, part_other = 0.0;
    double place_sd_m = 0.0;
    double length_m = 0.0;  // from one to other
    double across_degrees = 0.0;
    [[nodiscard]] double fan_off() const { return part_mark + part_one + part_other; }
};

struct TripleRule {
    double least_angle_degrees = 130.0;
    double most_off_across_degrees = 40.0;
};

[[nodiscard]] std::vector<Triple> triples_of(const Survey& survey, const WalkMarks& walk, const TripleRule& rule = {});

}  // namespace plugside
