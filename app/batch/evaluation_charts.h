// The diagrams of an evaluation's report, each an SVG element with labelled axes and counts.
//
// Reliability: a dot a bin (10 of equal count) at mean chance told and share that came true, with the Wilson band of 95 in
// 100;
//              the diagonal is what was promised. Bars at the foot: how many claims each bin holds, over the largest.
// Reach:       share of animals reached by so many sets an animal, in the plan's own order of rank.
// Degenerate input: a group without claims or fields gives a frame that says so.
#pragma once

#include <string>
#include <vector>

#include "app/batch/evaluation_groups.h"

namespace plugside {

[[nodiscard]] std::string reliability_chart(const Calibration& calibration, const std::string& of, double size);
[[nodiscard]] std::string reach_chart(const EvaluationGroup& group, double size);
// A row a kind: a dot a field, its mean upright; the yardstick's hollow.
[[nodiscard]] std::string index_chart(const std::vector<EvaluationGroup>& groups);
// A row a kind: expected over true number of systems, a dot a field.
[[nodiscard]] std::string count_chart(const std::vector<EvaluationGroup>& groups);
// The interval told for the number of systems, an upright a field in order of the true number, which is the hollow dot.
[[nodiscard]] std::string interval_chart(const EvaluationGroup& all);

}  // namespace plugside
