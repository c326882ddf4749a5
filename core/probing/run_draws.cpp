#include "core/probing/run_draws.h"

#include <algorithm>
#include <array>
#include <boost/math/special_functions/erf.hpp>
#include <cmath>
#include <numbers>
#include <utility>

#include "core/runs/main_run.h"
#include "core/systems/keyed_random.h"

namespace plugside {

namespace {

constexpr double radians_per_degree = std::numbers::pi / 180.0;
constexpr double right_angle = 0.5 * std::numbers::pi;
constexpr std::size_t draws = 192;

// Share of the depth's variance that the mounds of one system have in common: our assumption.
constexpr double common_depth_share = 0.85;

// Three in four stretches bend little, one in four bends a lot. Together the middle strays by bend_share of the length.
constexpr double strong_bend_share = 0.25;
constexpr double strong_bend_factor = 2.5;

// A lateral counts this much even where it stands at no likely angle to the run.
constexpr double odd_lean_weight = 0.02;

// Chance that a run passes on beyond a lateral towards a mound that it does not lead to, and how much it turns on the way.
constexpr double passes_on = 0.5;
constexpr double onward_turn_sd_degrees = 12.0;

constexpr double row_half_m = 1.0;  // of the chances kept to either side of a tape

enum Use : std::size_t {
    depth_common,
    depth_first,
    depth_second,
    slope_first,
    slope_second,
    stray_first,
    stray_second,
    read_first,
    read_second,
    tape,
    arc,
    ess,
    strength,
    lean_first,
    lean_second,
    side_first,
    side_second,
    uses
};

using DrawTable = std::array<std::array<double, draws>, uses>;

// Standard normal numbers (and even ones for strength and sides) in a Latin hypercube: every number of a use lies in a slice
// of its own, slices are dealt by keyed numbers.
DrawTable make_table() {
    DrawTable table{};
    for (std::size_t use = 0; use < uses; ++use) {
        std::array<std::pair<double, std::size_t>, draws> dealt{};
        for (std::size_t d = 0; d < draws; ++d) dealt.at(d) = {uniform_of(mixed(use + 1, d + 1)), d};
        std::sort(dealt.begin(), dealt.end());
        for (std::size_t slice = 0; slice < draws; ++slice) {
            const double even = (static_cast<double>(slice) + 0.5) / static_cast<double>(draws);
            const bool stays_even = use == strength || use == side_first || use == side_second;
            table.at(use).at(dealt.at(slice).second) =
                stays_even ? even : -std::numbers::sqrt2 * boost::math::erfc_inv(2.0 * even);
        }
    }
    return table;
}

const DrawTable& table() {
    static const DrawTable made = make_table();
    return made;
}

double lateral_of(const PlanOptions& options, double common, double own, double slope_z) {
    const double z = std::sqrt(common_depth_share) * common + std::sqrt(1.0 - common_depth_share) * own;
    const double depth = std::max(0.05, options.depth_mean.value() + options.depth_sd.value() * z);
    const double slope = std::clamp(options.slope_degrees + options.slope_sd_degrees * slope_z, 20.0, 75.0);
    return depth / std::tan(slope * radians_per_degree);
}

// Angle in (-pi, pi].
double folded(double angle) { return std::remainder(angle, 2.0 * std::numbers::pi); }

// How far the lateral's direction is from square to a run of direction `run`: -90..90 degrees in radians.
double lean_of(double lateral, double run) {
    const double turn = folded(lateral - run);
    return std::abs(turn) - right_angle;
}

double lean_weight(double lean) {
    const double z = lean / (lean_sd_degrees * radians_per_degree);
    return odd_lean_weight + std::exp(-0.5 * z * z);
}

// Bearing-like angles: clockwise from the tape, so that along = cos, across (right) = sin.
struct Place {
    double along = 0.0;
    double across = 0.0;
};

struct DrawnEnd {
    double lateral = 0.0;  // direction from plug to junction
    Place junction;        // from this end's plug
    bool fan_known = false;
};

}  // namespace

// A run from junction to junction: p(t) = from + chord t + square of the chord * h(t).
struct StretchDraws::Curve {
    Place from;
    Place chord;
    double leave = 0.0;  // slope off the chord where it leaves, and where it comes
    double arrive = 0.0;
    double weight = 0.0;
};

// The run of one end alone, straight on: across = at.across + slope (along - at.along).
struct StretchDraws::Straight {
    Place at;
    double slope = 0.0;
    double weight = 0.0;
};

StretchDraws::~StretchDraws() = default;

RunTurn run_turn_given(double observed_degrees, double observed_sd_degrees) {
    const double prior = stray_sd_degrees * stray_sd_degrees + lean_sd_degrees * lean_sd_degrees;
    const double seen = observed_sd_degrees * observed_sd_degrees;
    return {observed_degrees * prior / (prior + seen), std::sqrt(prior * seen / (prior + seen))};
}

RowChance plug_side_chance(const PlanOptions& options, const RunTurn& turn, Metres across) {
    const DrawTable& z = table();
    RowChanceMaker maker(-0.2, 1.2);
    const double prior_sd = std::hypot(stray_sd_degrees, lean_sd_degrees);
    // given the turn (stray + lean), the stray is its share of it and a rest
    const double stray_share = stray_sd_degrees * stray_sd_degrees / (prior_sd * prior_sd);
    const double stray_rest = stray_sd_degrees * lean_sd_degrees / prior_sd;
    for (std::size_t d = 0; d < draws; ++d) {
        const double length = lateral_of(options, z[depth_common][d], z[depth_first][d], z[slope_first][d]);
        const double run_degrees = turn.mean_degrees + turn.sd_degrees * z[lean_first][d];
        const double stray = (stray_share * run_degrees + stray_rest * z[stray_first][d]) * radians_per_degree;
        const double run = std::clamp(run_degrees * radians_per_degree, -1.3, 1.3);
        const double slope = std::tan(run);
        // the junction lies at length (cos, sin) of the stray; the run through it, at `run` from square, meets the line
        // there
        const double met = length * (std::cos(stray) + std::sin(stray) * slope) - across.value() * slope;
        maker.add(met, 1.0, std::min(3.0, std::sqrt(1.0 + slope * slope)));
    }
    maker.close_group(1.0);
    return maker.made();
}

StretchDraws::StretchDraws(const Stretch& stretch, const PlanOptions& options)
    : length_m_(stretch.length.value()), joined_(stretch.joined) {
    const DrawTable& z = table();
    const double usual =
        4.0 * bend_share / std::sqrt(1.0 - strong_bend_share + strong_bend_share * strong_bend_factor * strong_bend_factor);
    const double stray_sd = stray_sd_degrees * radians_per_degree;
    const double lean_sd = lean_sd_degrees * radians_per_degree;
    curves_.reserve(draws);
    for (std::size_t d = 0; d < draws; ++d) {
        const double tape_error = stretch.tape_sd_degrees * z[tape][d];
        const auto drawn_end = [&](const EndOfStretch& end, Use depth, Use slope, Use stray, Use read, Use lean, Use side) {
            DrawnEnd drawn;
            const double length = lateral_of(options, z[depth_common][d], z[depth][d], z[slope][d]);
            drawn.fan_known = end.fan_from_tape_degrees.has_value();
            if (drawn.fan_known) {
                const double fan = *end.fan_from_tape_degrees + tape_error + options.fan_sd_degrees * z[read][d];
                drawn.lateral = fan * radians_per_degree + std::numbers::pi + stray_sd * z[stray][d];
            } else {
                drawn.lateral = (z[side][d] < 0.5 ? right_angle : -right_angle) + lean_sd * z[lean][d];
            }
            drawn.junction = {length * std::cos(drawn.lateral), length * std::sin(drawn.lateral)};
            return drawn;
        };
        const DrawnEnd first =
            drawn_end(stretch.from, depth_first, slope_first, stray_first, read_first, lean_first, side_first);
        const DrawnEnd second =
            drawn_end(stretch.to, depth_second, slope_second, stray_second, read_second, lean_second, side_second);
        Curve curve;
        curve.from = first.junction;
        curve.chord = {length_m_ + second.junction.along - first.junction.along,
                       second.junction.across - first.junction.across};
        const double bend = usual * (z[strength][d] < strong_bend_share ? strong_bend_factor : 1.0);
        const double leave = bend * (z[arc][d] + 0.5 * z[ess][d]);
        const double arrive = bend * (-z[arc][d] + 0.5 * z[ess][d]);
        curve.leave = std::clamp(leave, -1.5, 1.5);
        curve.arrive = std::clamp(arrive, -1.5, 1.5);
        const double direction = std::atan2(curve.chord.across, curve.chord.along);
        curve.weight = 1.0;
        if (first.fan_known) curve.weight *= lean_weight(lean_of(first.lateral, direction + std::atan(curve.leave)));
        if (second.fan_known) curve.weight *= lean_weight(lean_of(second.lateral, direction + std::atan(curve.arrive)));
        curves_.push_back(curve);
        const auto straight_on = [&](const DrawnEnd& end, double plug_along, double towards, Use lean,
                                     std::vector<Straight>& into) {
            if (!end.fan_known) return;
            const double turn = lean_sd * z[lean][d] + onward_turn_sd_degrees * radians_per_degree * z[ess][d];
            for (const double side : {-right_angle, right_angle}) {
                const double run = folded(end.lateral + side + turn);
                if (std::cos(run) * towards < 0.2) continue;  // this arm leads elsewhere
                into.push_back({{plug_along + end.junction.along, end.junction.across}, std::tan(run), 1.0});
            }
        };
        straight_on(first, 0.0, 1.0, lean_first, from_first_);
        straight_on(second, length_m_, -1.0, lean_second, from_second_);
    }
}

RowChance StretchDraws::across_tape(Metres along) const {
    RowChanceMaker maker(-row_half_m, row_half_m);
    const double at = along.value();
    for (const Curve& curve : curves_) {
        const double length = std::hypot(curve.chord.along, curve.chord.across);
        if (curve.chord.along < 0.1 * length || length <= 0.0) {  // the junctions stand square to the tape: met nowhere
            maker.add(1e6, curve.weight, 1.0);
            continue;
        }
        const double cosine = curve.chord.along / length;
        const double sine = curve.chord.across / length;
        const auto off = [&](double t) {  // off the chord; beyond the ends straight on
            if (t < 0.0) return length * curve.leave * t;
            if (t > 1.0) return length * curve.arrive * (t - 1.0);
            return length * (curve.leave * t * (1.0 - t) * (1.0 - t) - curve.arrive * t * t * (1.0 - t));
        };
        double t = (at - curve.from.along) / curve.chord.along;
        for (int i = 0; i < 2; ++i) t = (at - curve.from.along + sine * off(t)) / curve.chord.along;
        const double across = curve.from.across + curve.chord.across * t + cosine * off(t);
        constexpr double dt = 1e-3;
        const double d_off = (off(t + dt) - off(t - dt)) / (2.0 * dt);
        const double d_along = curve.chord.along - sine * d_off;
        const double d_across = curve.chord.across + cosine * d_off;
        const double slant = std::hypot(d_along, d_across) / std::max(1e-6, std::abs(d_along));
        maker.add(across, curve.weight, std::min(3.0, slant));
    }
    maker.close_group(joined_);
    const bool near_first = at <= 0.5 * length_m_;
    const std::vector<Straight>& own = near_first ? from_first_ : from_second_;
    double weight = 0.0;
    for (const Straight& run : own) {
        maker.add(run.at.across + run.slope * (at - run.at.along), run.weight, std::min(3.0, std::hypot(1.0, run.slope)));
        weight += run.weight;
    }
    maker.close_group((1.0 - joined_) * passes_on * std::min(1.0, weight / static_cast<double>(draws)));
    return maker.made();
}

}  // namespace plugside
