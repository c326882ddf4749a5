// The shapes of a ground one by one, so that a hand can take hold of any of their corners.
//
// GroundShape: which list of the ground; `number` its place in it (the part, of boundary and untreated pieces). A boundary that falls
//              into parts is as many shapes.
// Line:        the outline of a shape as corners in order: ring 0 is the outer one, 1.. the holes; a barrier has one line, open; a gap
//              has one corner.
// closed:      whether the last corner goes on to the first.
// Preconditions of everything that takes a shape, ring or corner: that it is there; anything else asserts.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "core/survey/ground.h"

namespace plugside {

enum class GroundKind { boundary, barrier, crossing, gate, keep_clear, untreated };

struct GroundShape {
    GroundKind kind = GroundKind::boundary;
    std::size_t number = 0;
    friend auto operator<=>(const GroundShape&, const GroundShape&) = default;
};

struct GroundCorner {
    GroundShape shape;
    std::size_t ring = 0;
    std::size_t corner = 0;
    friend auto operator<=>(const GroundCorner&, const GroundCorner&) = default;
};

// "boundary", "barrier", "crossing", "gate", "keep-clear area", "untreated piece".
[[nodiscard]] std::string to_text(GroundKind kind);
[[nodiscard]] std::string shown(GroundKind kind);  // the same in the language at hand
[[nodiscard]] bool is_area(GroundKind kind);       // boundary, keep-clear, untreated
[[nodiscard]] bool is_place(GroundKind kind);      // crossing, gate

// Every shape there is, by kind and number.
[[nodiscard]] std::vector<GroundShape> shapes_of(const Ground& ground);
[[nodiscard]] std::size_t rings_of(const Ground& ground, GroundShape shape);
[[nodiscard]] const std::vector<LocalPoint>& corners_of(const Polygon& area, std::size_t ring);
// The corners of a line of the shape; of a gap its place.
[[nodiscard]] std::vector<LocalPoint> corners_of(const Ground& ground, GroundShape shape, std::size_t ring = 0);
// The area of a boundary part, keep-clear area or untreated piece.
[[nodiscard]] const Polygon& area_of(const Ground& ground, GroundShape shape);

// What lies under a hand. `nearest_corner` and `nearest_edge`: within `reach`; of equally near ones the first in the order of
// shapes_of. The edge is that from `corner` to the next; `at` the place on it. O(corners).
struct CornerHit {
    GroundCorner corner;
    LocalPoint at;
    double away_m = 0.0;
};
[[nodiscard]] std::optional<CornerHit> nearest_corner(const Ground& ground, LocalPoint place, Metres reach);
[[nodiscard]] std::optional<CornerHit> nearest_edge(const Ground& ground, LocalPoint place, Metres reach);
// The shape that a place picks: a corner or edge within reach, else the smallest area about it.
[[nodiscard]] std::optional<GroundShape> shape_at(const Ground& ground, LocalPoint place, Metres reach);

}  // namespace plugside
