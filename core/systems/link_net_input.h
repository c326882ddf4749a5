// What the net on links (link_net.h) is told of a survey: numbers without a unit for each mark and each candidate link, which links
// share a triangle, which cross, and which marks surround each.
//
// Unit of length: the mark's own spacing, the median of the second-neighbour distances of the mark and of the marks it has links
//                 with: what is told of one end of a field does not depend on the other.
// of_mark:  names in net_mark_names(): logs of the lengths of its eight shortest links over its spacing (log 4 where it has fewer),
//           whether a fan was read, freshness one by one, log of its spacing over 2 m.
// of_link:  names in net_link_names(): hat functions of the length; how the fans stand across it; marks between its ends; neighbour
//           ranks; how it compares with its ends' own distances; what goes on beyond; ages; time between the marks (the receiver's
//           shared error drifts within minutes, so that marks made together are placed better relative to each other: Sensors
//           2020, 20:6050) and whether one walker made both; how far the receivers' error may have put its ends wrong relative to each
//           other, where that is known.
// direction: of the link from its first mark to its second, radians clockwise from north; fan the same, 0 where none was read.
// Degenerate input: marks in one place are linked at a fiftieth of the spacing; a mark alone has spacing 2 m.
// Cost:     O(links x neighbours).
#pragma once

#include <cstdint>
#include <span>
#include <string_view>
#include <vector>

#include "core/systems/neighbour_graph.h"

namespace plugside {

inline constexpr std::size_t net_mark_inputs = 15;
inline constexpr std::size_t net_link_inputs = 31;
inline constexpr std::size_t net_window = 128;  // how far around a mark its surroundings are felt

struct LinkNetInput {
    std::size_t marks = 0;
    std::size_t links = 0;
    std::vector<std::uint32_t> first, second;  // of each link
    std::vector<float> of_mark;                // marks x net_mark_inputs
    std::vector<float> of_link;                // links x net_link_inputs
    std::vector<float> direction;              // of each link
    std::vector<float> fan;                    // of each mark
    std::vector<float> has_fan;                // 1 or 0

    struct Triangle {
        std::uint32_t link = 0, one = 0, other = 0;  // `one` and `other` join the ends of `link` through a third mark
    };
    std::vector<Triangle> triangles;                                  // ordered by link
    std::vector<std::pair<std::uint32_t, std::uint32_t>> crossings;  // ordered, each crossing from either side
    std::size_t window = 0;                  // marks in each mark's surroundings: net_window, or all where there are fewer
    std::vector<std::uint32_t> surroundings;  // marks x window: the nearest take-offs, itself among them, in the marks' order
};

[[nodiscard]] std::span<const std::string_view> net_mark_names();
[[nodiscard]] std::span<const std::string_view> net_link_names();

[[nodiscard]] LinkNetInput link_net_input(const std::vector<Mark>& marks, const std::vector<Link>& links, const LinkRows& rows);

// Pairs of links that cross strictly inside both, sorted, each from either side. Only links within one another's reach over a shared
// neighbour are compared: links that cross are. O(links x neighbours^2).
[[nodiscard]] std::vector<std::pair<std::uint32_t, std::uint32_t>> crossing_links(const std::vector<Mark>& marks,
                                                                                  const std::vector<Link>& links,
                                                                                  const LinkRows& rows);

}  // namespace plugside
