// A line or ring that is there already and is followed: where a hand is on it, and what lies between two such places.
//
// closed:  the last vertex goes on to the first, which is not repeated.
// nearest_on: the place of the line that is nearest; of equally near ones the first along it. Nothing for a line without vertices;
//          one vertex is that place.
// between: from the first place to the second along the line, both included, and every vertex between them; vertices on a spot with
//          the one before are left out. On a ring the shorter way round, or the longer one where `other_way`; of equally long ones the
//          way of its vertices.
// Guarantee: between(a, b) is between(b, a) backwards on an open line.
// Cost:    O(vertices).
#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include "core/geometry/point.h"

namespace plugside {

struct TracedLine {
    std::vector<LocalPoint> vertices;
    bool closed = false;
    friend bool operator==(const TracedLine&, const TracedLine&) = default;
};

struct PlaceOnLine {
    std::size_t edge = 0;  // from this vertex to the next
    double share = 0.0;    // of the edge, 0..1
    LocalPoint at;
    double away_m = 0.0;
};

[[nodiscard]] std::optional<PlaceOnLine> nearest_on(const TracedLine& line, LocalPoint place);

[[nodiscard]] std::vector<LocalPoint> between(const TracedLine& line, const PlaceOnLine& from, const PlaceOnLine& to,
                                              bool other_way = false);

}  // namespace plugside
