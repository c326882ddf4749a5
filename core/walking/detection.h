// How many signs there are, from those that a walker saw and how far beside the line they lay.
//
// Units:      distances are perpendicular from the line walked, metres, >= 0; line length in metres; density per square
// metre. Meaning:    f0 is the density of detection distances at the line, 1/m; effective_half_width = 1 / f0 for distances
// to either side;
//             density = n f0 / (2 L).
// half-normal:          detection falls as exp(-pi x^2 / (4 w^2)): w^2 = pi/2 * mean of x^2 (maximum likelihood), f0 = 1/w.
// negative exponential: detection falls as exp(-x/w): w = mean of x.
// strip:      every sign within half_width of the line is taken as seen, the others are not counted.
// Preconditions: line length > 0, distances finite and >= 0, half_width > 0; anything else asserts.
// Degenerate input: no distances give density 0 and no width; all distances 0 give nothing (the curve has no width).
// Trust:      on fewer than `enough_detections` the curve is poorly known: `few` says so (Burnham et al. 1980, second-hand).
// Cost:       O(n).
// Source:     Thompson, Sampling, as worked in Penn State STAT 506 lessons 13.2 and 13.4.
#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include "core/units/metres.h"

namespace plugside {

inline constexpr std::size_t enough_detections = 40;

struct DensityEstimate {
    double per_square_metre = 0.0;
    std::size_t detections = 0;                  // that the estimate used
    std::optional<Metres> effective_half_width;  // nothing without a detection
    bool few = true;                             // fewer than enough_detections
    [[nodiscard]] double per_hectare() const { return per_square_metre * 10000.0; }
};

[[nodiscard]] std::optional<DensityEstimate> half_normal_density(const std::vector<Metres>& distances, Metres line_length);
[[nodiscard]] std::optional<DensityEstimate> negative_exponential_density(const std::vector<Metres>& distances,
                                                                          Metres line_length);
[[nodiscard]] DensityEstimate strip_density(const std::vector<Metres>& distances, Metres line_length, Metres half_width);

// The estimate for a detection curve that was fitted elsewhere, given its f0 in 1/m.
[[nodiscard]] DensityEstimate density_from_curve(std::size_t detections, double f0_per_metre, Metres line_length);

}  // namespace plugside
