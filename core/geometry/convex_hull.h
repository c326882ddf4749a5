// The smallest convex ring about places.
//
// Result:  counter-clockwise, begins at the westernmost (of equal ones the southernmost) place, no corner on a straight
// line. Degenerate input: no place: no corner; places on one spot: that spot; on one line: its two ends. Cost:    O(n log
// n).
#pragma once

#include <vector>

#include "core/geometry/point.h"

namespace plugside {

[[nodiscard]] std::vector<LocalPoint> convex_hull(std::vector<LocalPoint> places);

}  // namespace plugside
