// An area drawn by hand: what is wrong with it, what it becomes when mended, and how a line divides it.
//
// fault_of:  the first fault of the outline, with a place on it: it crosses or touches itself, a hole lies outside, holes overlap;
//            fewer than three corners. Nothing for a valid area.
// mended:    valid areas that cover what lies inside by the even-odd rule (GEOS MakeValid).
// divided:   the parts that a line cuts the area into, largest first; one part, the area itself, when the line does not cross it from
//            edge to edge. The parts' areas add up to the whole (within rounding).
// Preconditions: coordinates are finite. Cost: O(n log n).
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/geometry/polygon.h"
#include "core/geometry/polyline.h"

namespace plugside {

struct AreaFault {
    LocalPoint at;
    std::string what;  // "the outline crosses itself"
};

[[nodiscard]] std::optional<AreaFault> fault_of(const Polygon& area);
[[nodiscard]] MultiPolygon mended(const Polygon& area);
[[nodiscard]] std::vector<Polygon> divided(const Polygon& area, const Polyline& line);

}  // namespace plugside
