// Candidate links: which pairs of marks a run might join directly.
//
// Rule:     each mark with its `nearest` nearest take-offs, in either direction, no further than `reach`; a pair that a
//           barrier separates (the straight line between the plugs meets it) is left out.
// Result:   links with first < second, sorted; every pair at most once. Lengths between take-offs, metres.
// Degenerate input: fewer than two marks have no link; marks in one place are linked at length 0.
// Cost:     O(n log n + links x barrier segments in their box).
#pragma once

#include <cstdint>
#include <vector>

#include "core/survey/ground.h"
#include "core/systems/marks.h"

namespace plugside {

inline constexpr std::uint32_t no_mark = 0xFFFFFFFFU;
inline constexpr std::uint32_t no_link = 0xFFFFFFFFU;

struct Link {
    std::uint32_t first = 0;
    std::uint32_t second = 0;
    double length_m = 0.0;
    int rank_of_second = 0;  // 1 = the nearest take-off to `first`; nearest + 1 when not among its nearest
    int rank_of_first = 0;
    friend bool operator==(const Link&, const Link&) = default;
};

struct NeighbourGraphOptions {
    int nearest = 11;                          // what the prototype of the inference used; more changes little
    Metres reach = Metres::of(25.0);           // mounds of one system clump below 20 m over weeks: Klaas et al. 2000
};

[[nodiscard]] std::vector<Link> candidate_links(const std::vector<Mark>& marks, const std::vector<Barrier>& barriers,
                                                const NeighbourGraphOptions& options = {});

// For each mark, the indexes of its links (compressed rows).
struct LinkRows {
    std::vector<std::uint32_t> start;  // size n + 1
    std::vector<std::uint32_t> link;
};
[[nodiscard]] LinkRows rows_of(std::size_t marks, const std::vector<Link>& links);

// The links of a minimum spanning forest of the graph by length (ties by index). O(m log m).
[[nodiscard]] std::vector<bool> in_minimum_spanning_forest(std::size_t marks, const std::vector<Link>& links);

// Label of the connected part each mark lies in, 0.. in order of first mark.
[[nodiscard]] std::vector<std::uint32_t> connected_parts(std::size_t marks, const std::vector<Link>& links);

}  // namespace plugside
