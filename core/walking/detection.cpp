#include "core/walking/detection.h"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <numbers>

namespace plugside {

namespace {

// Mean of |x|^power; the distances are checked on the way.
double mean_power(const std::vector<Metres>& distances, double power) {
    double sum = 0.0;
    for (const Metres x : distances) {
        assert(std::isfinite(x.value()) && x.value() >= 0.0);
        sum += std::pow(x.value(), power);
    }
    return sum / static_cast<double>(distances.size());
}

std::optional<DensityEstimate> with_width(std::size_t detections, double width_m, Metres line_length) {
    if (!(width_m > 0.0)) return std::nullopt;
    return density_from_curve(detections, 1.0 / width_m, line_length);
}

}  // namespace

DensityEstimate density_from_curve(std::size_t detections, double f0_per_metre, Metres line_length) {
    assert(line_length.value() > 0.0 && f0_per_metre > 0.0);
    return {static_cast<double>(detections) * f0_per_metre / (2.0 * line_length.value()), detections,
            Metres::of(1.0 / f0_per_metre), detections < enough_detections};
}

std::optional<DensityEstimate> half_normal_density(const std::vector<Metres>& distances, Metres line_length) {
    if (distances.empty()) return DensityEstimate{};
    return with_width(distances.size(), std::sqrt(0.5 * std::numbers::pi * mean_power(distances, 2.0)), line_length);
}

std::optional<DensityEstimate> negative_exponential_density(const std::vector<Metres>& distances, Metres line_length) {
    if (distances.empty()) return DensityEstimate{};
    return with_width(distances.size(), mean_power(distances, 1.0), line_length);
}

DensityEstimate strip_density(const std::vector<Metres>& distances, Metres line_length, Metres half_width) {
    assert(half_width.value() > 0.0);
    const auto seen = static_cast<std::size_t>(
        std::count_if(distances.begin(), distances.end(), [&](Metres x) { return x <= half_width; }));
    if (seen == 0) return DensityEstimate{};
    return density_from_curve(seen, 1.0 / half_width.value(), line_length);
}

}  // namespace plugside
