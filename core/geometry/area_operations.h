// Areas from lines and from other areas.
//
// Units:      metres, square metres.
// Preconditions: coordinates are finite; anything else asserts. A radius is > 0: others give no area.
// Degenerate input: no lines, no parts and parts without area give the empty area; a line of one vertex gives a disc;
//             rings that cross themselves are mended first.
// Accuracy:   round parts are drawn with 16 straight pieces a quarter, inscribed: a disc has .9984 of its area.
// Guarantee:  results are valid: rings do not cross, parts do not overlap.
// Cost:       about O(n log n). Long lines are buffered in chunks of 50 vertices that are then joined: one buffer of a
//             20,000-vertex walk that crosses itself takes a minute, chunks about a second.
// Errors:     none for finite input.
#pragma once

#include <optional>
#include <stop_token>
#include <vector>

#include "core/geometry/polygon.h"
#include "core/geometry/polyline.h"
#include "core/units/metres.h"

namespace plugside {

// Everything within `radius` of one of the lines.
[[nodiscard]] MultiPolygon buffered(const std::vector<Polyline>& lines, Metres radius);

// The same; nothing when `stop` was asked for. It is asked between chunks.
[[nodiscard]] std::optional<MultiPolygon> buffered(const std::vector<Polyline>& lines, Metres radius,
                                                   const std::stop_token& stop);

// The same for a few short lines at once, rounder only where the eye needs it (6 pieces a quarter): for outlines to look at.
// Cost grows with the square of crossings, so keep to some hundred vertices; long walks go through `buffered`.
[[nodiscard]] MultiPolygon outline_about(const std::vector<Polyline>& lines, Metres radius);

[[nodiscard]] MultiPolygon intersection(const MultiPolygon& a, const MultiPolygon& b);
// `a` less `b`.
[[nodiscard]] MultiPolygon difference(const MultiPolygon& a, const MultiPolygon& b);
[[nodiscard]] MultiPolygon union_of(const MultiPolygon& a, const MultiPolygon& b);
[[nodiscard]] MultiPolygon union_of(const std::vector<MultiPolygon>& areas);

// A place well inside the area, for a label. Precondition: the area is not empty (asserts); an area without extent gives one
// of its vertices.
[[nodiscard]] LocalPoint point_inside(const MultiPolygon& area);

}  // namespace plugside
