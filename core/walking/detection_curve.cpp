#include "core/walking/detection_curve.h"

#include <algorithm>
#include <cassert>
#include <cmath>

namespace plugside {

std::string to_text(CurveShape shape) { return shape == CurveShape::half_normal ? "half-normal" : "hazard-rate"; }

double DetectionCurve::chance(double distance_m) const {
    const double x = distance_m / scale.value();
    if (shape == CurveShape::half_normal) return std::exp(-0.5 * x * x);
    if (x < 1e-3) return 1.0;
    return -std::expm1(-std::pow(x, -steepness));
}

Metres DetectionCurve::effective_half_width(Metres reach) const {
    constexpr int pieces = 2000;
    const double step = reach.value() / pieces;
    double sum = chance(0.0) + chance(reach.value());
    for (int i = 1; i < pieces; ++i) sum += (i % 2 == 1 ? 4.0 : 2.0) * chance(step * i);
    return Metres::of(sum * step / 3.0);
}

PassedPlaces::PassedPlaces(Metres reach) : reach_(reach) { assert(reach.value() > 0.0); }

void PassedPlaces::add(std::span<const double> passes_m) {
    for (const double x : passes_m) {
        assert(std::isfinite(x) && x >= 0.0);
        if (x >= reach_.value()) continue;
        step_.push_back(static_cast<std::uint16_t>(x / reach_.value() * steps));
    }
    first_.push_back(static_cast<std::uint32_t>(step_.size()));
}

namespace {

// Middles of sevenths of a normal distribution, in standard deviations: quantiles at 1/14, 3/14, ... 13/14, stretched to
// variance 1.
constexpr std::array<double, 7> sevenths{-1.6253, -0.8784, -0.4066, 0.0, 0.4066, 0.8784, 1.6253};

}  // namespace

double mean_missed(const DetectionCurve& curve, double distance_m, Metres apart) {
    if (!(apart.value() > 0.0)) return 1.0 - curve.chance(distance_m);
    double sum = 0.0;
    for (const double off : sevenths) sum += 1.0 - curve.chance(std::abs(distance_m + off * apart.value()));
    return sum / static_cast<double>(sevenths.size());
}

PassedPlaces::Chances PassedPlaces::at_steps(const DetectionCurve& curve) const {
    const double step_m = reach_.value() / steps;
    const auto beyond = static_cast<std::size_t>(std::ceil(sevenths.back() * apart_.value() / step_m));
    Chances chances;
    for (std::size_t i = 0; i < steps + beyond; ++i)
        chances.seen.push_back(curve.chance((static_cast<double>(i) + 0.5) * step_m));
    chances.missed.resize(steps);
    for (std::size_t i = 0; i < steps; ++i) {
        double sum = 0.0;
        for (const double off : sevenths) {
            const double at = std::abs(static_cast<double>(i) + 0.5 + off * apart_.value() / step_m);
            sum += 1.0 - chances.seen[std::min(chances.seen.size() - 1, static_cast<std::size_t>(at))];
        }
        chances.missed[i] = sum / static_cast<double>(sevenths.size());
    }
    return chances;
}

double PassedPlaces::sum_seen(const DetectionCurve& curve) const {
    const Chances chances = at_steps(curve);
    double sum = 0.0;
    for (std::size_t place = 0; place < size(); ++place) {
        double left = 1.0;
        for (std::size_t i = first_[place]; i < first_[place + 1]; ++i) {
            sum += left * chances.seen[step_[i]];
            left *= chances.missed[step_[i]];
        }
    }
    return sum;
}

double PassedPlaces::seen(std::size_t place, const DetectionCurve& curve) const {
    double left = 1.0;
    double sum = 0.0;
    for (std::size_t i = first_[place]; i < first_[place + 1]; ++i) {
        const double x = (static_cast<double>(step_[i]) + 0.5) / steps * reach_.value();
        sum += left * curve.chance(x);
        left *= mean_missed(curve, x, apart_);
    }
    return std::min(1.0, sum);
}

std::vector<double> PassedPlaces::seen_by_distance(const DetectionCurve& curve, std::size_t bins) const {
    const Chances chances = at_steps(curve);
    std::vector<double> shares(bins, 0.0);
    double sum = 0.0;
    for (std::size_t place = 0; place < size(); ++place) {
        double left = 1.0;
        for (std::size_t i = first_[place]; i < first_[place + 1]; ++i) {
            const double now = left * chances.seen[step_[i]];
            shares[step_[i] * bins / steps] += now;
            sum += now;
            left *= chances.missed[step_[i]];
        }
    }
    for (double& share : shares) share /= sum > 0.0 ? sum : 1.0;
    return shares;
}

DetectionCurve CurveCandidate::moved(double first, double second) const {
    // Cholesky's factor of the covariance
    const double a = std::sqrt(std::max(0.0, log_covariance[0]));
    const double b = a > 0.0 ? log_covariance[1] / a : 0.0;
    const double c = std::sqrt(std::max(0.0, log_covariance[2] - b * b));
    DetectionCurve curve_moved = curve;
    curve_moved.scale = curve.scale * std::exp(a * first);
    if (curve.shape == CurveShape::hazard_rate)
        curve_moved.steepness = std::clamp(curve.steepness * std::exp(b * first + c * second), 1.05, 30.0);
    return curve_moved;
}

}  // namespace plugside
