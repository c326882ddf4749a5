// What a link's neighbours say about it, once each link has a first score: who competes for its ends, who continues it, who
// bridges it.
//
// Scores:  log weights against starting a new system, as link_weights gives them.
// Values (each from both ends, so that a link's direction does not matter):
//   rivals, rivals_most   log of 1 + the summed weights of the other links at an end: sum over the ends, and the larger
//   firsts, seconds, later  number of ends at which this link scores first, second, fourth or later
//   lead, lead_least      score less the second best other score at the end (held within 4): sum, and the lesser
//   straight_on, straight_least  expected straightness of the other links at an end, weighted by their chance: sum, and least
//   beside                expected chance of other links that leave an end in nearly the same direction: sum
//   degree                expected number of links at the ends (each link's chance by its own score)
//   bridge, bridge_lead   best weaker score of two links that join the ends through a third mark; and how far that exceeds this one
//   side_change           whether both fans, read across the link, lie on one side (-1) or either side (1), times their evidence
// Cost:    O(links x neighbours).
#pragma once

#include <array>
#include <string_view>
#include <vector>

#include "core/systems/neighbour_graph.h"

namespace plugside {

inline constexpr std::size_t link_context_count = 14;
using LinkContext = std::array<double, link_context_count>;

[[nodiscard]] const std::array<std::string_view, link_context_count>& link_context_names();

[[nodiscard]] std::vector<LinkContext> link_context(const std::vector<Mark>& marks, const std::vector<Link>& links,
                                                    const LinkRows& rows, const std::vector<double>& scores);

}  // namespace plugside
