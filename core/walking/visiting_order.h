// A short way past every place: an open tour (no return) from `start` where one is given, else a closed tour cut nowhere.
//
// Result:   a permutation of 0..n-1 in the order to visit. Deterministic; the order in which the places are given, where the
// field
//           lies and how it is turned do not matter beyond rounding and ties. A round trip begins at the outermost place.
// Degenerate input: 0 and 1 place; places on one spot.
// Quality:  nearest neighbour, then 2-opt and Or-opt moves with neighbour lists until none shortens the way, then small
// shuffles that
//           are kept when they help; within 5 % of the optimum on published instances, usually within 3 %.
// Cost:     O(n log n) for neighbour lists on average (O(n^2) for distances given by a function) and about 60,000 moves a
// second;
//           bounded by `most_moves`.
// Source:   Johnson & McGeoch 1997, The traveling salesman problem: a case study in local optimization [memory].
#pragma once

#include <cstddef>
#include <functional>
#include <optional>
#include <vector>

#include "core/geometry/point.h"
#include "core/units/metres.h"

namespace plugside {

struct VisitingOptions {
    std::optional<LocalPoint> start;  // an open way from here; without it a round trip
    std::size_t most_moves = 200000;  // each shortens the way or is part of a shuffle; our choice: some seconds at most
};

// Distance between two places by their indexes, >= 0, the same both ways: where the way is not a straight line.
using DistanceBetween = std::function<Metres(std::size_t, std::size_t)>;

[[nodiscard]] std::vector<std::size_t> visiting_order(const std::vector<LocalPoint>& places,
                                                      const VisitingOptions& options = {});

// The same for distances of another kind; always a round trip, beginning at place 0.
[[nodiscard]] std::vector<std::size_t> visiting_order(std::size_t count, const DistanceBetween& distance,
                                                      std::size_t most_moves = 200000);

// Length of the round trip (or of the open way from options.start) in that order.
[[nodiscard]] Metres tour_length(const std::vector<LocalPoint>& places, const std::vector<std::size_t>& order,
                                 const VisitingOptions& options = {});

}  // namespace plugside
