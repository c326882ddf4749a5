// An outline about what was walked, to begin a boundary with: convex, of few corners, with all marks and tracks inside.
//
// beyond:  how far outside of the outermost mark or track it lies at least. 2 m, our assumption: a walker keeps about that far from an
//          edge.
// corners: at most `most_corners` (3 or more): edges are left out, those first that add least area.
// Degenerate input: fewer than three places that are not on one line give nothing.
// Cost: O(n log n) in marks and track points, and the square of the corners of their convex ring.
#pragma once

#include <cstddef>
#include <vector>

#include "core/geometry/point.h"
#include "core/survey/survey.h"

namespace plugside {

[[nodiscard]] std::vector<LocalPoint> walk_outline(const Survey& survey, std::size_t most_corners = 8,
                                                   Metres beyond = Metres::of(2.0));

}  // namespace plugside
