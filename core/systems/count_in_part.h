// How many animals there are in any part of a field that a person draws, from draws kept with the plan: nothing is inferred
// anew.
//
// Draws:   those that tell the number of systems (system_posterior.h), kept whole: of each draw the tree of each mark.
// Animal:  in a draw, the marks of one tree. It counts by the share of its mounds whose plug lies inside the part; so the
//          numbers of parts that do not overlap add up, in every draw and on average, to that of all of them together.
//          Beside it, the number of animals with at least one mound inside: no less than the first, and not to be added
//          up, since one may reach into two parts.
// Result:  mean over the draws and the ends of the central interval; the part that holds every mark has the mean and the
//          interval of Plan::estimate. Intervals of parts do not add up.
// Marks outside: only marks count; ground without marks counts as none, walked or not.
// Bound:   at most 200 draws are kept and at most 20 million labels, but never under 20 draws: up to 100,000 marks every
//          draw that is made by default is kept, and the whole agrees with Plan::estimate exactly.
// Degenerate input: no draws, an empty part, a part without marks: zeros. A mark on the part's edge falls to one side as
//          rounding has it.
// Cost:    O(marks x vertices of the part + draws x marks); under a millisecond at 5,000 marks.
#pragma once

#include <cstddef>
#include <cstdint>
#include <span>
#include <vector>

#include "core/geometry/polygon.h"

namespace plugside {

struct DrawnSystems {
    std::vector<LocalPoint> plug;    // of each mark
    std::vector<std::size_t> mound;  // of each mark: its mound in the survey
    std::vector<std::vector<std::uint32_t>>
        tree;                // of each draw: of each mark a label of its tree, below the number of marks
    double interval = 0.90;  // level of the intervals told
};

struct CountInterval {
    double expected = 0.0;
    double low = 0.0;
    double high = 0.0;
};

struct CountInPart {
    std::size_t mounds = 0;  // marks inside
    CountInterval animals;   // each by the share of its mounds inside
    CountInterval touching;  // with at least one mound inside
};

[[nodiscard]] CountInPart count_in_part(const DrawnSystems& drawn, const MultiPolygon& part);

// How many draws of so many marks are kept whole.
[[nodiscard]] std::size_t draws_kept(std::size_t marks);

// Mean and central interval of drawn numbers: the ends are those drawn numbers that the shares (1 - level) / 2 and (1 +
// level) / 2 of the others do not exceed. No numbers: zeros. O(n log n).
[[nodiscard]] CountInterval count_interval(std::vector<double> numbers, double level);

// The value that the share `share` of the sorted numbers does not exceed. Precondition: not empty.
template <typename Number>
[[nodiscard]] Number quantile_of_sorted(std::span<const Number> sorted, double share) {
    return sorted[static_cast<std::size_t>(share * static_cast<double>(sorted.size() - 1) + 0.5)];
}

}  // namespace plugside
