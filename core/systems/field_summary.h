// What a whole field looks like, in numbers without a unit: how mounds stand to one another and how the links score.
//
// Use:     some fields need all their links weighed up or down a little for the number of systems to come out right (long or short
//          systems, tight or loose ones). A ridge regression on these numbers foretells how much (resources/link_weights.tsv).
// Values:  one            1
//          second_first, fourth_second, eighth_second  log ratios of the medians of first, second, fourth, eighth link lengths
//          spacing_second  log of the fitted spacing over the median second length
//          best, second, third  mean best, second and third score of a mark's links; best_spread its standard deviation
//          loners         share of marks whose best score is below 0
//          fans           share of marks with a fan; fans_across: mean of that feature over the marks' best links
//          straightness   mean cosine of the turn between a mark's two best links (1 = straight on)
//          tails          log ratio of the .9 to the .5 quantile of spanning forest links
//          degree         mean over marks of the summed chances of their links, each by its own score
//          size           log of the fitted mounds per system; marks: log of their number over 200
// Degenerate input: fewer than 10 marks give zeros: nothing is foretold.
// Cost:    O(links log links).
#pragma once

#include "core/systems/link_features.h"

namespace plugside {

inline constexpr std::size_t field_summary_count = 17;
using FieldSummary = std::array<double, field_summary_count>;

[[nodiscard]] const std::array<std::string_view, field_summary_count>& field_summary_names();

[[nodiscard]] FieldSummary field_summary(const std::vector<Mark>& marks, const std::vector<Link>& links,
                                         const std::vector<LinkFeatures>& features, const std::vector<double>& scores,
                                         const SurveyScales& scales);

}  // namespace plugside
