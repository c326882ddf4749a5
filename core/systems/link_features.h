// What speaks for and against a run between two marks, as numbers without a unit, so that what was learnt on one field holds
// on another of a different scale.
//
// Names:   link_feature_names(), same order as the values; resources/link_weights.tsv gives each its weight.
// Values:  gap_*      hat functions of log2(length / spacing) at ten knots: they sum to 1
//          fans_across  sum over both ends of how far the fan's axis stands across the link (-1 along .. 1 across), times what
//                     receiver and reading error leave of that evidence: a lateral leaves the run at about a right angle
//          fans_both  product over both ends of the same; fans_far: the sum times log2(length / spacing)
//          no_fan     number of ends without a fan
//          between    marks nearer to both ends than the ends to one another (at most 3); between_close: marks in the disc on
//                     the link as diameter (at most 3)
//          ranks      log2 of the neighbour ranks, summed; local, local_squared: log of length over the ends' own second
//                     neighbour distances; spanning: 1 when in the minimum spanning forest
//          goes_on    how well a neighbour on the far side continues the link, summed over the ends; goes_on_least: the poorer
//          age_differs  1 when one end is fresh and the other older
//          crowding   log of spacing over the typical fifth neighbour distance; crowding_far: that times log2(length / spacing)
// Cost:    O(links x neighbours).
#pragma once

#include <array>
#include <string_view>

#include "core/systems/neighbour_graph.h"
#include "core/systems/survey_scales.h"

namespace plugside {

inline constexpr std::size_t gap_knots = 10;
inline constexpr std::size_t link_feature_count = gap_knots + 15;
using LinkFeatures = std::array<double, link_feature_count>;

[[nodiscard]] const std::array<std::string_view, link_feature_count>& link_feature_names();

[[nodiscard]] std::vector<LinkFeatures> link_features(const std::vector<Mark>& marks, const std::vector<Link>& links,
                                                      const SurveyScales& scales, double fan_sd_degrees);

}  // namespace plugside
