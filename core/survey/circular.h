// Means of bearings and of axes.
//
// Meaning:    the mean direction is that of the sum of unit steps; resultant_length, 0..1, is the length of their mean: 1
// when all agree.
//             For axes (a line without an arrow: a run, the long side of a mound) the angles are doubled, averaged, and
//             halved; the mean is then 0..180 and resultant_length is that of the doubled angles.
// Degenerate input: no bearing, or bearings that cancel to less than rounding (resultant under 1e-12), have no mean
// direction. Guarantee:  turning all bearings turns the mean alike; their order does not matter beyond rounding. Cost: O(n).
// Source:     Fisher 1993, Statistical Analysis of Circular Data, sections 2.3 and 2.4 [memory].
#pragma once

#include <optional>
#include <vector>

#include "core/units/bearing.h"

namespace plugside {

struct MeanBearing {
    std::optional<Bearing> direction;
    double resultant_length = 0.0;
};

[[nodiscard]] MeanBearing mean_bearing(const std::vector<Bearing>& bearings);
[[nodiscard]] MeanBearing mean_axis(const std::vector<Bearing>& axes);

}  // namespace plugside
