// The way from one place to another inside an area with holes: straight where that stays inside, else along the
// edge it meets, the shorter way round.
//
// Preconditions: both places lie inside or on the edge.
// Degenerate input: an edge that ends nowhere on the way is crossed straight (rounding).
// Result:    the places between, without the two ends.
// Cost:      O(vertices x edges met).
#pragma once

#include <vector>

#include "core/geometry/polygon.h"

namespace plugside {

[[nodiscard]] std::vector<LocalPoint> way_inside(const Polygon& area, LocalPoint from, LocalPoint to);

}  // namespace plugside
