// The nearest of each of many places, in flat rows: what the coarse form is built on.
//
// Row:      of place i the entries [i * row, i * row + count[i]), nearest first, i itself left out, none beyond the reach.
//           Places that are equally far stand by their index.
// Preconditions: the places stand along a space-filling curve (order_along_curve); any order is right, but four times slower.
// Degenerate input: no place or one: empty rows. Of more than `row` places in one spot each has some of the others.
// Deterministic whatever the threads: each row depends on the places alone.
// Errors:   returns nothing when stopped; asked every few thousand rows, not while the tree is built (a tenth of a second
//           for 1e6 places).
// Cost:     O(n log n) time on two threads; 8 * row bytes a place.
#pragma once

#include <cstdint>
#include <optional>
#include <span>
#include <vector>

#include "core/geometry/point.h"
#include "core/plan/progress.h"
#include "core/survey/ground.h"
#include "core/units/metres.h"

namespace plugside {

struct CoarseNeighbours {
    std::size_t row = 0;                // entries a place
    std::vector<std::uint32_t> index;   // size places * row
    std::vector<float> distance_m;      // of the same entries
    std::vector<std::uint8_t> count;    // of each place: entries in use
};

// Precondition: 1 <= nearest <= 64 (asserts).
[[nodiscard]] std::optional<CoarseNeighbours> coarse_neighbours(std::span<const LocalPoint> places, std::size_t nearest,
                                                                Metres reach, const Progress& progress = {});

// Takes out of each row the places that a barrier parts from it: what lies across is no neighbour. O(1) an entry where barriers
// are not all in one place. Returns whether it was done: not when stopped.
[[nodiscard]] bool drop_across(std::span<const Barrier> barriers, std::span<const LocalPoint> places, CoarseNeighbours& rows,
                               const Progress& progress = {});

}  // namespace plugside
