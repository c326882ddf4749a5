// An order of places along a curve that fills the plane, so that places near one another stand near one another in memory.
//
// Curve:   Morton's (Z) over cells of 1/16 m, counted from the south-western corner of all places.
// Result:  order[r] = the place at rank r. Places in one cell stand by easting, then northing; places in one spot by index.
// Degenerate input: no place gives no order; places more than 2^32 cells (268,000 km) from the corner share the last cell.
// Preconditions: coordinates are finite; at most 2^32 - 1 places (asserts).
// Cost:    O(n log n).
// Source:  G. M. Morton 1966, A Computer Oriented Geodetic Data Base [memory].
#pragma once

#include <cstdint>
#include <span>
#include <vector>

#include "core/geometry/point.h"

namespace plugside {

// The place along the curve of what lies so far east and north of the corner, metres >= 0.
[[nodiscard]] std::uint64_t along_curve(double east_m, double north_m);

[[nodiscard]] std::vector<std::uint32_t> order_along_curve(std::span<const LocalPoint> places);

}  // namespace plugside
