// An open line through two or more places.
//
// Degenerate input: no or one vertex has length 0; equal neighbours are allowed and count 0.
#pragma once

#include <optional>
#include <vector>

#include "core/geometry/point.h"
#include "core/units/metres.h"

namespace plugside {

struct Polyline {
    std::vector<LocalPoint> vertices;
    friend bool operator==(const Polyline&, const Polyline&) = default;
};

// O(n).
[[nodiscard]] Metres length(const Polyline& line);

// The least distance from a place to the line; nothing if the line has no vertex. O(n).
[[nodiscard]] std::optional<Metres> distance(LocalPoint place, const Polyline& line);

// Least distance from a place to the segment a-b, metres. O(1). a == b is that point.
[[nodiscard]] double distance_to_segment_m(LocalPoint place, LocalPoint a, LocalPoint b);

// Whether the closed segments a-b and c-d share a place (touching counts). O(1).
[[nodiscard]] bool segments_meet(LocalPoint a, LocalPoint b, LocalPoint c, LocalPoint d);

}  // namespace plugside
