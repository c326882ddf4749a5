// A line with fewer vertices that has nearly the same ground within reach.
//
// simplified: every vertex left out lies within `tolerance` of the line kept, so no place's distance from the line
//            changes by more than that. Ends stay. Douglas and Peucker's way, in stretches of 1,000 vertices.
// Degenerate input: fewer than three vertices stay as they are.
// Cost:      O(n log n).
// Source:    Douglas & Peucker 1973 [memory].
#pragma once

#include "core/geometry/polyline.h"

namespace plugside {

[[nodiscard]] Polyline simplified(const Polyline& line, Metres tolerance);

}  // namespace plugside
