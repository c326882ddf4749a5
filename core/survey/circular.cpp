#include "core/survey/circular.h"

namespace plugside {

namespace {

MeanBearing mean_of_multiples(const std::vector<Bearing>& bearings, double factor) {
    if (bearings.empty()) return {};
    LocalVector sum;
    for (const Bearing bearing : bearings) sum = sum + Bearing::degrees(factor * bearing.degrees()).unit();
    const LocalVector mean = sum * (1.0 / static_cast<double>(bearings.size()));
    const double length = mean.length_m();
    if (length < 1e-12) return {std::nullopt, 0.0};
    return {Bearing::degrees(Bearing::along(mean)->degrees() / factor), length < 1.0 ? length : 1.0};
}

}  // namespace

MeanBearing mean_bearing(const std::vector<Bearing>& bearings) { return mean_of_multiples(bearings, 1.0); }
MeanBearing mean_axis(const std::vector<Bearing>& axes) { return mean_of_multiples(axes, 2.0); }

}  // namespace plugside
