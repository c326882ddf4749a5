// A short way past every place: from a start to an end where they are given, else a round trip.
//
// Ways:     straight lines, or true ways on foot around walls and through gates (VisitingOptions::ways).
// Result:   a permutation of 0..n-1 in the order to visit. Deterministic; the order in which the places are given, where the field lies and
//           how it is turned do not matter beyond rounding and ties. A round trip begins at the outermost place.
// Cut off:  places that no way joins are visited in one stretch for each group of them, and count as if one could fly between the groups;
//           cut_off_places names them.
// Degenerate input: 0 and 1 place; places on one spot; a start or an end that is itself a place, or on a wall.
// Quality:  round_trip.h; mean over 20 keys within 1 % of the published optima of 16 to 120 places (tests), never longer than always on to
//           the nearest. Random places in the plane: some 4 % above the optimum with the default effort at 5,000.
// While it works: `better` is told the first order (always on to the nearest) and shorter ones as they are found; after `stop` the best so
//           far is the result.
// Cost:     O(n log n) for neighbour lists on average (O(n^2) for distances given by a function); `most_moves` and `shuffles` bound the
//           rest.
// Source:   Johnson & McGeoch 1997, The traveling salesman problem: a case study in local optimization [memory].
#pragma once

#include <cstddef>
#include <cstdint>
#include <functional>
#include <optional>
#include <stop_token>
#include <vector>

#include "core/geometry/point.h"
#include "core/units/metres.h"

namespace plugside {

class WalkingWays;

struct VisitingOptions {
    std::optional<LocalPoint> start;    // without it and without an end: a round trip
    std::optional<LocalPoint> end;      // the start again for a way back to it; without it the way ends at the last place
    const WalkingWays* ways = nullptr;  // outlives the call; nothing: straight lines
    std::size_t most_moves =
        5'000'000;  // exchanges kept or tried; 0: always on to the nearest. Our choice: some seconds at most
    std::optional<std::size_t> shuffles;  // nothing: usual_shuffles
    std::uint64_t key = 0;                // of the shuffles: another gives another way of much the same length
    std::stop_token stop;
    std::function<void(const std::vector<std::size_t>& order)> better;  // on the working thread
};

// Ten a place, at least 500 and at most 40,000; it ends before where three a place and a hundred more helped nothing. Our choice.
[[nodiscard]] std::size_t usual_shuffles(std::size_t places);

// Distance between two places by their indexes, >= 0, the same both ways: where the way is not a straight line.
using DistanceBetween = std::function<Metres(std::size_t, std::size_t)>;

[[nodiscard]] std::vector<std::size_t> visiting_order(const std::vector<LocalPoint>& places,
                                                      const VisitingOptions& options = {});

// The same for distances of another kind; always a round trip, beginning at place 0. Uses moves, shuffles, key and stop of the options.
[[nodiscard]] std::vector<std::size_t> visiting_order(std::size_t count, const DistanceBetween& distance,
                                                      const VisitingOptions& options = {});

// Length of the way in that order, with what leads from the start and to the end; stretches between places that no way joins are left out.
[[nodiscard]] Metres tour_length(const std::vector<LocalPoint>& places, const std::vector<std::size_t>& order,
                                 const VisitingOptions& options = {});

// The places that cannot be reached from the start (or the end, if only that is given); without either, those that do not hang together
// with most others. Ascending.
[[nodiscard]] std::vector<std::size_t> cut_off_places(const std::vector<LocalPoint>& places, const VisitingOptions& options);

}  // namespace plugside
