// The search behind visiting_order: a closed tour over nodes 0..n-1, shortened by local moves. Inside core only.
//
// Distance:  any symmetric function of two nodes; negative values are allowed (a forced edge).
// Neighbours: for each node the nodes that a move may join it to, nearest first; may be empty for some.
// Result:    the tour as a sequence of nodes. Deterministic.
// Cost:      a move reverses at most half of the tour; `most_moves` bounds their number.
#pragma once

#include <cstddef>
#include <functional>
#include <vector>

namespace plugside {

using NodeDistance = std::function<double(std::size_t, std::size_t)>;
using NeighbourLists = std::vector<std::vector<std::size_t>>;

[[nodiscard]] std::vector<std::size_t> shortened_round_trip(std::vector<std::size_t> tour, const NodeDistance& distance,
                                                            const NeighbourLists& neighbours, std::size_t most_moves);

}  // namespace plugside
