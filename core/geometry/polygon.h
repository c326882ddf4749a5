// An area with holes, and areas of several parts.
//
// Ring:     vertices in order, first not repeated at the end; orientation is not required.
// Degenerate input: a ring of fewer than three vertices encloses nothing (area 0, contains nothing).
// Boundary: a place on the edge counts as inside or outside as rounding has it; nothing here decides on an edge.
#pragma once

#include <vector>

#include "core/geometry/point.h"
#include "core/units/metres.h"

namespace plugside {

struct Ring {
    std::vector<LocalPoint> vertices;
    friend bool operator==(const Ring&, const Ring&) = default;
};

struct Polygon {
    Ring outer;
    std::vector<Ring> holes;
    friend bool operator==(const Polygon&, const Polygon&) = default;
};

struct MultiPolygon {
    std::vector<Polygon> parts;
    [[nodiscard]] bool empty() const { return parts.empty(); }
    friend bool operator==(const MultiPolygon&, const MultiPolygon&) = default;
};

// Area of the outer ring less the holes, m2, never negative for a valid polygon. O(n).
[[nodiscard]] double area_m2(const Polygon& polygon);
[[nodiscard]] double area_m2(const MultiPolygon& polygons);

// Even-odd rule. O(n).
[[nodiscard]] bool contains(const Polygon& polygon, LocalPoint place);
[[nodiscard]] bool contains(const MultiPolygon& polygons, LocalPoint place);

// Least distance from a place to the area: 0 inside. An area without vertices is infinitely far. O(n).
[[nodiscard]] Metres distance(LocalPoint place, const Polygon& polygon);

}  // namespace plugside
