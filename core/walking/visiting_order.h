// A short way past every place: an open tour (no return) from `start` where one is given, else a closed tour cut nowhere.
//
// Result:   a permutation of 0..n-1 in the order to visit. Deterministic.
// Degenerate input: 0 and 1 place; places on one spot.
// Quality:  nearest neighbour, then 2-opt and Or-opt moves with neighbour lists until none shortens the way; within 5 % of
//           the optimum on published instances.
// Cost:     near O(n log n) for the first tour; improvement bounded by `most_moves`.
#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include "core/geometry/point.h"
#include "core/units/metres.h"

namespace plugside {

struct VisitingOptions {
    std::optional<LocalPoint> start;  // an open way from here; without it a round trip
    std::size_t most_moves = 200000;
};

[[nodiscard]] std::vector<std::size_t> visiting_order(const std::vector<LocalPoint>& places,
                                                      const VisitingOptions& options = {});

// Length of the round trip (or of the open way from options.start) in that order.
[[nodiscard]] Metres tour_length(const std::vector<LocalPoint>& places, const std::vector<std::size_t>& order,
                                 const VisitingOptions& options = {});

}  // namespace plugside
