// Marks outside the field's boundary, and whether the receiver's error may have put them there.
//
// out_m, edge: how far outside and the nearest place of the boundary; absent beyond `reach_m`.
// inside_chance: that the mound stands inside after all: the tail of the receiver's whole error beyond out_m, against a
// share of
//          marks that are made outside (one in six of those at the edge: our assumption). 0 beyond the reach.
// Degenerate input: no boundary, no mark outside.
// Cost:    O((marks + vertices) * edges in a band), near-linear for boundaries of ordinary shape.
#pragma once

#include <optional>

#include "core/mending/walk_marks.h"

namespace plugside {

struct OutsideMark {
    std::size_t mark = 0;  // into WalkMarks::marks
    std::optional<double> out_m;
    std::optional<LocalPoint> edge;
    double inside_chance = 0.0;
};

[[nodiscard]] std::vector<OutsideMark> outside_field(const Survey& survey, const WalkMarks& walk, double reach_m = 12.0);

}  // namespace plugside
