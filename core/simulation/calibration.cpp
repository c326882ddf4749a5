#include "core/simulation/calibration.h"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <numbers>

namespace plugside {

namespace {

void sort_by_chance(std::vector<Claim>& claims) {
    assert(std::all_of(claims.begin(), claims.end(), [](const Claim& c) { return c.chance >= 0.0 && c.chance <= 1.0; }));
    // what came true second, so that sums do not depend on the order that claims came in
    std::sort(claims.begin(), claims.end(), [](const Claim& a, const Claim& b) {
        return a.chance != b.chance ? a.chance < b.chance : a.came_true < b.came_true;
    });
}

// The ends of the bins in claims sorted by chance, ascending, each once, the last one their number.
std::vector<std::size_t> cuts_of(const std::vector<Claim>& sorted, std::size_t bins) {
    std::vector<std::size_t> cuts;
    if (sorted.empty()) return cuts;
    const std::size_t last = sorted.size() - 1;
    for (std::size_t k = 1; k < bins; ++k) {
        const double place = static_cast<double>(k) / static_cast<double>(bins) * static_cast<double>(last);
        const auto below = static_cast<std::size_t>(place);
        const double low = sorted[below].chance;
        const double high = sorted[std::min(below + 1, last)].chance;
        const double cut = low + (place - static_cast<double>(below)) * (high - low);
        const auto end = std::upper_bound(sorted.begin(), sorted.end(), cut,
                                          [](double value, const Claim& claim) { return value < claim.chance; });
        const auto count = static_cast<std::size_t>(end - sorted.begin());
        if (count > (cuts.empty() ? 0 : cuts.back())) cuts.push_back(count);
    }
    if (cuts.empty() || cuts.back() < sorted.size()) cuts.push_back(sorted.size());
    return cuts;
}

ReliabilityBin bin_of(const std::vector<Claim>& sorted, std::size_t from, std::size_t to) {
    ReliabilityBin bin;
    bin.least = sorted[from].chance;
    bin.greatest = sorted[to - 1].chance;
    for (std::size_t i = from; i < to; ++i) {
        bin.mean_chance += sorted[i].chance;
        bin.came_true.successes += sorted[i].came_true ? 1 : 0;
    }
    bin.came_true.trials = static_cast<long>(to - from);
    bin.mean_chance /= static_cast<double>(to - from);
    bin.band = wilson_interval(bin.came_true);
    return bin;
}

// Mean -log of a chance f when a share o comes true; 0 log 0 is 0.
double cross_entropy(double o, double f) {
    double sum = 0.0;
    if (o > 0.0) sum -= o * std::log(f);
    if (o < 1.0) sum -= (1.0 - o) * std::log1p(-f);
    return sum;
}

// One score of single claims and of a bin's mean chance, and what a share that came true costs at best. Both scores are
// linear in what came true, so that a bin's score of its mean chance follows from its share.
struct ScoreRule {
    double (*of)(double share_true, double chance);
    [[nodiscard]] double at_best(double share_true) const { return of(share_true, share_true); }
};

double brier(double o, double f) { return o * (1.0 - f) * (1.0 - f) + (1.0 - o) * f * f; }

// `within` is summed from differences of claim and bin, not taken as what is left over.
ScoreParts parts_of(const std::vector<Claim>& sorted, const std::vector<ReliabilityBin>& bins, double share_true,
                    ScoreRule rule) {
    ScoreParts parts;
    std::size_t i = 0;
    for (const ReliabilityBin& bin : bins) {
        const double o = bin.came_true.value();
        const auto count = static_cast<double>(bin.came_true.trials);
        double mean_chance = 0.0;
        for (std::size_t k = i; k < i + static_cast<std::size_t>(bin.came_true.trials); ++k) mean_chance += sorted[k].chance;
        mean_chance /= count;
        parts.reliability += count * (rule.of(o, mean_chance) - rule.at_best(o));
        parts.resolution += count * (rule.of(o, share_true) - rule.at_best(o));
        for (const std::size_t end = i + static_cast<std::size_t>(bin.came_true.trials); i < end; ++i) {
            const double came_true = sorted[i].came_true ? 1.0 : 0.0;
            const double own = rule.of(came_true, sorted[i].chance);
            parts.score += own;
            parts.within += own - rule.of(came_true, mean_chance);
        }
    }
    const auto all = static_cast<double>(sorted.size());
    parts.score /= all;
    parts.reliability /= all;
    parts.resolution /= all;
    parts.within /= all;
    parts.uncertainty = rule.at_best(share_true);
    return parts;
}

}  // namespace

std::vector<ReliabilityBin> equal_count_bins(std::vector<Claim> claims, std::size_t bins) {
    sort_by_chance(claims);
    std::vector<ReliabilityBin> result;
    std::size_t from = 0;
    for (const std::size_t to : cuts_of(claims, bins)) {
        result.push_back(bin_of(claims, from, to));
        from = to;
    }
    return result;
}

Calibration calibration_of(std::vector<Claim> claims, const CalibrationOptions& options) {
    Calibration calibration;
    if (claims.empty()) return calibration;
    sort_by_chance(claims);
    calibration.claims = claims.size();
    calibration.bins = equal_count_bins(claims, options.bins);
    const auto all = static_cast<double>(claims.size());
    for (const ReliabilityBin& bin : calibration.bins) {
        const auto count = static_cast<double>(bin.came_true.trials);
        calibration.mean_chance += count * bin.mean_chance / all;
        calibration.share_true += static_cast<double>(bin.came_true.successes) / all;
        calibration.expected_error += count / all * std::abs(bin.mean_chance - bin.came_true.value());
        const double spread = bin.mean_chance * (1.0 - bin.mean_chance);
        calibration.error_of_perfect_claims += count / all * std::sqrt(2.0 * spread / (std::numbers::pi * count));
    }
    calibration.brier = parts_of(claims, calibration.bins, calibration.share_true, {brier});
    for (Claim& claim : claims) claim.chance = std::clamp(claim.chance, options.least_chance, 1.0 - options.least_chance);
    calibration.log = parts_of(claims, calibration.bins, calibration.share_true, {cross_entropy});
    return calibration;
}

}  // namespace plugside
