#include "core/mending/drift_filter.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

#include "core/systems/two_threads.h"

namespace plugside {

namespace {

constexpr double cell_m = 0.6;
constexpr int half = 15;
constexpr std::size_t side = 2 * half + 1;
constexpr std::size_t cells = side * side;
constexpr std::size_t block = 800, margin = 60;

using Grid = std::array<double, cells>;
using Line = std::array<double, side>;

double place_m(std::size_t step) { return cell_m * (static_cast<double>(step) - half); }

void scale_to_one(Grid& grid) {
    double sum = 0.0;
    for (const double value : grid) sum += value;
    for (double& value : grid) value /= sum;
}

Grid prior_of(const DriftScales& scales) {
    const double sd = std::max(scales.shared_sd_m * std::numbers::sqrt2, cell_m);
    Grid prior{};
    for (std::size_t n = 0; n < side; ++n)
        for (std::size_t e = 0; e < side; ++e) {
            const double off = std::hypot(place_m(e), place_m(n)) / sd;
            prior.at(n * side + e) = std::exp(-0.5 * off * off) + 0.001;  // now and then a receiver is out by more
        }
    scale_to_one(prior);
    return prior;
}

// How the offset wanders between two marks.
class Wander {
public:
    Wander(const DriftScales& scales, double seconds) {
        const double kept = std::exp(-std::max(seconds, 0.0) / std::max(scales.memory_s, 1.0));
        // both receivers drift: this one since its last mark, the other one between its own marks here, made about as
        // quickly
        const double variance = 4.0 * scales.shared_sd_m * scales.shared_sd_m * (1.0 - kept) / (cell_m * cell_m);
        anew_ = 0.01 + 0.99 * (1.0 - std::pow(kept, 0.2));
        if (variance < 0.5) {
            taps_ = {0.5 * variance, 1.0 - variance, 0.5 * variance};
            return;
        }
        const int reach = std::min(static_cast<int>(std::ceil(2.5 * std::sqrt(variance))), half);
        double sum = 0.0;
        for (int k = -reach; k <= reach; ++k) {
            taps_.push_back(std::exp(-0.5 * k * k / variance));
            sum += taps_.back();
        }
        for (double& tap : taps_) tap /= sum;
    }

    void move(Grid& grid, const Grid& prior) const {
        double sum = 0.0;
        for (const double value : grid) sum += value;
        for (std::size_t n = 0; n < side; ++n) blur(grid, n * side, 1);
        for (std::size_t e = 0; e < side; ++e) blur(grid, e, side);
        for (std::size_t c = 0; c < cells; ++c) grid[c] = (1.0 - anew_) * grid[c] + anew_ * sum * prior[c];
    }
    // The same step backward: what a grid of likelihoods after the step says of places before it.
    void move_back(Grid& grid, const Grid& prior) const {
        double mean = 0.0;
        for (std::size_t c = 0; c < cells; ++c) mean += prior[c] * grid[c];
        for (std::size_t n = 0; n < side; ++n) blur(grid, n * side, 1);
        for (std::size_t e = 0; e < side; ++e) blur(grid, e, side);
        for (double& value : grid) value = (1.0 - anew_) * value + anew_ * mean;
    }

private:
    void blur(Grid& grid, std::size_t start, std::size_t stride) const {
        Line line{};
        for (std::size_t k = 0; k < side; ++k) line[k] = grid[start + k * stride];
        const int reach = static_cast<int>(taps_.size() / 2);
        for (int k = 0; k < static_cast<int>(side); ++k) {
            double sum = 0.0;
            for (int t = std::max(-reach, -k); t <= std::min(reach, static_cast<int>(side) - 1 - k); ++t)
                sum += taps_[static_cast<std::size_t>(t + reach)] * line[static_cast<std::size_t>(k + t)];
            grid[start + static_cast<std::size_t>(k) * stride] = sum;
        }
    }
    double anew_ = 0.0;
    std::vector<double> taps_;
};

// One candidate's likelihood over the grid, a product of two lines.
struct Bump {
    Line east{}, north{};
    std::size_t from_e = 0, to_e = 0, from_n = 0, to_n = 0;
    Bump(const RestingPlace& place, double sd_m, double share) {
        const double sd = std::sqrt(sd_m * sd_m + cell_m * cell_m / 12.0);
        const auto fill = [&](double off_m, Line& line, std::size_t& from, std::size_t& to) {
            const double first = std::ceil((off_m - 3.5 * sd) / cell_m), last = std::floor((off_m + 3.5 * sd) / cell_m);
            from = static_cast<std::size_t>(std::clamp(first, -1.0 * half, half + 1.0) + half);
            to = static_cast<std::size_t>(std::clamp(last, -1.0 - half, 1.0 * half) + half + 1.0);
            for (std::size_t k = from; k < to; ++k) {
                const double off = (place_m(k) - off_m) / sd;
                line[k] = std::exp(-0.5 * off * off) / (sd * std::sqrt(2.0 * std::numbers::pi));
            }
        };
        fill(place.off.east_m, east, from_e, to_e);
        fill(place.off.north_m, north, from_n, to_n);
        for (double& value : north) value *= place.weight * share;
    }
    template <class Visit>
    void visit(const Visit& take) const {
        for (std::size_t n = from_n; n < to_n; ++n)
            for (std::size_t e = from_e; e < to_e; ++e) take(n * side + e, north[n] * east[e]);
    }
};

Grid emission_of(const DriftStep& step, const DriftScales& scales) {
    Grid emission;
    emission.fill(1.0 - scales.share);
    for (const RestingPlace& place : step.candidates)
        Bump(place, step.sd_m, scales.share).visit([&](std::size_t cell, double value) { emission[cell] += value; });
    return emission;
}

// The chances of one step's candidates from what all other marks (`others`) say of the offset.
std::vector<Resting> rest(const DriftStep& step, const DriftScales& scales, const Grid& others) {
    double unmatched = 0.0;
    for (const double value : others) unmatched += value * (1.0 - scales.share);
    double total = unmatched;
    std::vector<Resting> result;
    for (const RestingPlace& place : step.candidates) {
        Resting resting;
        Bump(place, step.sd_m, scales.share).visit([&](std::size_t cell, double value) {
            const double here = others[cell] * value;
            resting.chance += here;
            resting.offset = resting.offset + LocalVector{place_m(cell % side), place_m(cell / side)} * here;
        });
        if (resting.chance > 0.0) resting.offset = resting.offset * (1.0 / resting.chance);
        total += resting.chance;
        result.push_back(resting);
    }
    for (Resting& resting : result) resting.chance /= total;
    return result;
}

void follow_block(const std::vector<DriftStep>& steps, const DriftScales& scales, const Grid& prior, std::size_t begin,
                  std::size_t end, std::vector<std::vector<Resting>>& result) {
    const std::size_t from = begin > margin ? begin - margin : 0, to = std::min(end + margin, steps.size());
    std::vector<Grid> before;  // what the marks before say, at each step
    Grid grid = prior;
    for (std::size_t k = from; k < to; ++k) {
        if (k > from) Wander(scales, steps[k].seconds_since_last).move(grid, prior);
        before.push_back(grid);
        const Grid emission = emission_of(steps[k], scales);
        for (std::size_t c = 0; c < cells; ++c) grid[c] *= emission[c];
        scale_to_one(grid);
    }
    grid.fill(1.0);  // what the marks after say
    for (std::size_t k = to; k-- > from;) {
        if (k >= begin && k < end) {
            Grid others = before[k - from];
            for (std::size_t c = 0; c < cells; ++c) others[c] *= grid[c];
            result[k] = rest(steps[k], scales, others);
        }
        const Grid emission = emission_of(steps[k], scales);
        for (std::size_t c = 0; c < cells; ++c) grid[c] *= emission[c];
        Wander(scales, steps[k].seconds_since_last).move_back(grid, prior);
        scale_to_one(grid);
    }
}

}  // namespace

std::vector<std::vector<Resting>> follow_drift(const std::vector<DriftStep>& steps, const DriftScales& scales,
                                               const Progress& progress) {
    std::vector<std::vector<Resting>> result(steps.size());
    const Grid prior = prior_of(scales);
    const bool all = on_two_threads((steps.size() + block - 1) / block, progress,
                                    [&](std::size_t first, std::size_t last) {
                                        for (std::size_t b = first; b < last; ++b)
                                            follow_block(steps, scales, prior, b * block,
                                                         std::min((b + 1) * block, steps.size()), result);
                                    },
                                    1);
    if (!all) return {};
    return result;
}

}  // namespace plugside
