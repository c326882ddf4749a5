#include "core/probing/run_offset.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

#include "core/runs/main_run.h"
#include "core/runs/take_off.h"

namespace plugside {

namespace {

constexpr double radians_per_degree = std::numbers::pi / 180.0;

// How far the fan as seen strays from its lateral, and the run from square to the lateral ("usually a T, rarely a Y",
// Dalquest 1948): our assumptions.
constexpr double seen_axis_sd_degrees = 12.0;
constexpr double lean_sd_degrees = 18.0;

// Three in four stretches bend little, one in four bends a lot.
constexpr double strong_bend_share = 0.25;
constexpr double strong_bend_factor = 2.5;

double normal_below(double z) { return 0.5 * std::erfc(-z / std::numbers::sqrt2); }

// Gauss-Hermite, 7 points, for a standard normal (Abramowitz & Stegun, table 25.10, scaled by sqrt 2 [memory]).
constexpr std::array<std::pair<double, double>, 7> normal_nodes{{{-3.750439717725742, 0.0005482688559722},
                                                                 {-2.366759410734541, 0.0307571239675864},
                                                                 {-1.154405394739968, 0.2401231786050126},
                                                                 {0.0, 0.4571428571428571},
                                                                 {1.154405394739968, 0.2401231786050126},
                                                                 {2.366759410734541, 0.0307571239675864},
                                                                 {3.750439717725742, 0.0005482688559722}}};

struct Moments {
    double mean = 0.0;
    double variance = 0.0;
};

// Distance of an end's junction to the right of the tape: the lateral's length times the sine of its direction.
Moments junction_beside_tape(const EndOfStretch& end, const LateralLength& lateral) {
    const double square = lateral.mean_m * lateral.mean_m + lateral.sd_m * lateral.sd_m;
    if (!end.fan_from_tape_degrees) return {0.0, 0.5 * square};
    const double angle = (*end.fan_from_tape_degrees + 180.0) * radians_per_degree;  // the lateral lies opposite the fan
    const double sd = end.direction_sd_degrees * radians_per_degree;
    const double mean = lateral.mean_m * std::sin(angle) * std::exp(-0.5 * sd * sd);
    return {mean, 0.5 * square * (1.0 - std::cos(2.0 * angle) * std::exp(-2.0 * sd * sd)) - mean * mean};
}

}  // namespace

double RunOffset::below(double offset_m) const {
    double sum = 0.0;
    for (const Part& part : parts) sum += part.weight * normal_below((offset_m - part.mean_m) / part.sd_m);
    return presence * sum;
}

double RunOffset::mean_m() const {
    double sum = 0.0;
    for (const Part& part : parts) sum += part.weight * part.mean_m;
    return sum;
}

double RunOffset::sd_m() const {
    const double mean = mean_m();
    double sum = 0.0;
    for (const Part& part : parts)
        sum += part.weight * (part.sd_m * part.sd_m + (part.mean_m - mean) * (part.mean_m - mean));
    return std::sqrt(sum);
}

RunOffset plug_side_offset(const PlanOptions& options, Metres across) {
    const LateralLength lateral = lateral_length(options);
    RunOffset offset;
    for (const auto& [stray_z, stray_weight] : normal_nodes)
        for (const auto& [lean_z, lean_weight] : normal_nodes) {
            const double stray = stray_z * seen_axis_sd_degrees * radians_per_degree;
            const double run = stray + lean_z * lean_sd_degrees * radians_per_degree;
            const double slope = std::tan(std::clamp(run, -1.3, 1.3));
            // the junction lies at l (cos, sin) of the stray; the run through it, at `run` from square, meets the line there
            const double per_lateral = std::cos(stray) + std::sin(stray) * slope;
            offset.parts.push_back({stray_weight * lean_weight, per_lateral * lateral.mean_m - across.value() * slope,
                                    std::max(0.005, std::abs(per_lateral) * lateral.sd_m)});
        }
    return offset;
}

RunOffset between_offset(const EndOfStretch& from, const EndOfStretch& to, Metres length, Metres along, double presence,
                         const PlanOptions& options) {
    const LateralLength lateral = lateral_length(options);
    const Moments at_from = junction_beside_tape(from, lateral);
    const Moments at_to = junction_beside_tape(to, lateral);
    const double t = std::clamp(along / length, 0.0, 1.0);
    const double mean = (1.0 - t) * at_from.mean + t * at_to.mean;
    const double variance = (1.0 - t) * (1.0 - t) * at_from.variance + t * t * at_to.variance;
    // mixture with the variance of one bridge of `bend_share`
    const double usual = bend_share / std::sqrt(1.0 - strong_bend_share + strong_bend_share * strong_bend_factor * strong_bend_factor);
    const double bridge = usual * length.value() * 2.0 * std::sqrt(t * (1.0 - t));
    RunOffset offset;
    offset.presence = presence;
    offset.parts.push_back({1.0 - strong_bend_share, mean, std::max(0.005, std::sqrt(variance + bridge * bridge))});
    offset.parts.push_back(
        {strong_bend_share, mean, std::max(0.005, std::sqrt(variance + std::pow(strong_bend_factor * bridge, 2.0)))});
    return offset;
}

}  // namespace plugside
