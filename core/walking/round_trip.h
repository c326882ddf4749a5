// The search behind visiting_order: a closed tour over nodes 0..n-1, shortened by local moves. Inside core only.
//
// Distance:  any symmetric function of two nodes, finite; negative values are allowed (a forced edge).
// Neighbours: for each node the nodes that a move may join it to, nearest first; may be empty for some.
// Method:    chains of exchanges after Lin & Kernighan (breadth 3, 2, then the best; six deep: deeper and broader ones were slower for the same length), and pieces of up to three nodes moved elsewhere, from
//            every node whose surroundings changed; then small shuffles (two neighbouring pieces change places: a double bridge) that are
//            kept when what follows makes the tour shorter. The tour is an array; an exchange turns its shorter side.
// Result:    the tour as a sequence of nodes, never longer than the one given. Deterministic: shuffles are keyed by `key` and their number.
// Stop:      asked before each shuffle and each node: the tour so far is the result.
// Better:    called with the tour after the first shortening, and then while shuffling, some fifty times at most, when it got shorter.
// Cost:      an exchange turns at most half of the tour; `most_moves` bounds the exchanges kept or tried.
// Source:    Lin & Kernighan 1973; Johnson & McGeoch 1997; Martin, Otto & Felten 1991 (the double bridge) [memory].
#pragma once

#include <cstddef>
#include <cstdint>
#include <functional>
#include <stop_token>
#include <vector>

namespace plugside {

using NodeDistance = std::function<double(std::size_t, std::size_t)>;
using NeighbourLists = std::vector<std::vector<std::size_t>>;

struct RoundTripOptions {
    std::size_t most_moves = 0;
    std::size_t shuffles = 0;
    std::size_t most_idle = SIZE_MAX;  // shuffles one after another that help nothing, before it ends
    std::uint64_t key = 0;
    std::stop_token stop;
    std::function<void(const std::vector<std::size_t>&)> better;
};

[[nodiscard]] std::vector<std::size_t> shortened_round_trip(std::vector<std::size_t> tour, const NodeDistance& distance,
                                                            const NeighbourLists& neighbours,
                                                            const RoundTripOptions& options);

}  // namespace plugside
