// Which places are neighbours: the edges of the Delaunay triangulation.
//
// Result:     pairs of indexes (smaller first), ascending, each once.
// Preconditions: coordinates are finite; anything else asserts.
// Degenerate input: none or one place: no edge. Places on one spot are linked in a chain by their order, and the first of
//             them stands for all. Places on one line are linked along it. Four or more on one circle: one of the possible
//             triangulations.
// Guarantee:  the graph is connected; away from ties it holds the minimum spanning tree and the Gabriel graph.
// Cost:       O(n log n), at most 3n edges.
// Accuracy:   decided exactly on a lattice of 2^30 steps across the field's longer side (a micrometre for a kilometre):
// places nearer
//             than a step count as one spot, less bent than a step as one line.
// Errors:     none.
#pragma once

#include <array>
#include <cstddef>
#include <vector>

#include "core/geometry/point.h"

namespace plugside {

[[nodiscard]] std::vector<std::array<std::size_t, 2>> delaunay_edges(const std::vector<LocalPoint>& places);

}  // namespace plugside
