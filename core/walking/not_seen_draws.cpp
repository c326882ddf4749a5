#include "core/walking/not_seen_draws.h"

#include <algorithm>
#include <boost/math/distributions/gamma.hpp>
#include <boost/math/distributions/normal.hpp>
#include <cassert>
#include <cmath>
#include <numeric>

#include "core/systems/keyed_random.h"

namespace plugside {

namespace {

// The numbers of one draw, each by its use.
class DrawNumbers {
public:
    explicit DrawNumbers(int draw) : key_(mixed(static_cast<std::uint64_t>(draw) + 0x5EE4)) {}
    [[nodiscard]] double uniform() { return std::clamp(uniform_of(mixed(key_, ++use_)), 1e-12, 1.0 - 1e-12); }
    [[nodiscard]] double normal() { return boost::math::quantile(boost::math::normal(), uniform()); }
    [[nodiscard]] double gamma(double shape) {
        return shape > 0.0 ? boost::math::quantile(boost::math::gamma_distribution<>(shape, 1.0), uniform()) : 0.0;
    }
    [[nodiscard]] double poisson(double mean) {
        if (!(mean > 0.0)) return 0.0;
        if (mean > 200.0) return std::max(0.0, std::round(mean + std::sqrt(mean) * normal()));
        double left = uniform();
        double chance = std::exp(-mean);
        double count = 0.0;
        while (left > chance && count < 2000.0) {
            left -= chance;
            count += 1.0;
            chance *= mean / count;
        }
        return count;
    }

private:
    std::uint64_t key_;
    std::uint64_t use_ = 0;
};

DetectionCurve drawn_curve(const DetectionFit& detection, double spread_factor, DrawNumbers& numbers) {
    double left = numbers.uniform();
    const double spread = detection.fitted ? detection.wider * spread_factor : 1.0;
    const double first = spread * numbers.normal();
    const double second = spread * numbers.normal();
    for (const CurveCandidate& candidate : detection.candidates) {
        left -= candidate.weight;
        if (left <= 0.0) return candidate.moved(first, second);
    }
    return detection.candidates.back().moved(first, second);
}

// A number of systems with about the interval told: log-normal.
double drawn_systems(const Amount& systems, DrawNumbers& numbers) {
    constexpr double z90 = 1.645;
    const double low = std::max(0.5, systems.low);
    const double high = std::max(low, systems.high);
    const double log_sd = std::log(high / low) / (2.0 * z90);
    return std::max(0.5, systems.expected) * std::exp(log_sd * numbers.normal());
}

double mounds_of(double systems, const std::vector<double>& sizes, double mean_size, DrawNumbers& numbers) {
    const double found_mean =
        std::accumulate(sizes.begin(), sizes.end(), 0.0) / static_cast<double>(std::max<std::size_t>(1, sizes.size()));
    double sum = 0.0;
    for (double i = 0.0; i < systems; i += 1.0) {
        const auto which = static_cast<std::size_t>(numbers.uniform() * static_cast<double>(sizes.size()));
        sum += sizes.empty() ? mean_size : sizes[which] / found_mean * mean_size;
    }
    return sum;
}

Amount amount_of(std::vector<double> drawn, double interval) {
    std::sort(drawn.begin(), drawn.end());
    const auto at = [&](double share) {
        return drawn[std::min(drawn.size() - 1, static_cast<std::size_t>(share * static_cast<double>(drawn.size())))];
    };
    const double tail = 0.5 * (1.0 - interval);
    // the middle: the mean of draws with a long tail says little
    return {at(0.5), at(tail), at(1.0 - tail)};
}

}  // namespace

NotSeenDraws draw_not_seen(const DetectionFit& detection, const PassedPlaces& walked, const SeenSoFar& seen,
                           const NotSeenOptions& options) {
    assert(options.draws > 0 && walked.size() > 0);
    std::vector<double> missed;
    std::vector<double> unwalked;
    std::vector<double> animals;
    std::vector<double> in_all;
    // a curve so narrow that nearly nothing was seen is an accident of the draw: no walk finds its mounds that way
    constexpr double least_share = 0.1;
    const auto places = static_cast<double>(walked.size());
    const double least_chance = std::clamp(least_share * walked.sum_seen(detection.curve) / places, 1e-6, 1.0);
    for (int draw = 0; draw < options.draws; ++draw) {
        DrawNumbers numbers(draw);
        const double drawn = walked.sum_seen(drawn_curve(detection, options.spread_factor, numbers)) / places;
        const double chance = std::clamp(drawn, least_chance, 1.0);
        // given the marks, those missed follow a negative binomial: a Poisson number about a rate drawn from a gamma
        const double rate = numbers.gamma(seen.marks_walked + 0.5) / chance;
        missed.push_back(numbers.poisson(rate * (1.0 - chance)));
        const double on_walked = seen.marks_walked + missed.back();
        const double systems = drawn_systems(seen.systems, numbers);
        const double systems_rate = numbers.gamma(systems) / static_cast<double>(walked.size());
        const double systems_there =
            seen.systems.expected > 0.0 ? numbers.poisson(systems_rate * seen.unwalked_places) : 0.0;
        const double there = mounds_of(systems_there, seen.system_sizes, on_walked / systems, numbers);
        unwalked.push_back(std::round(there * (1.0 - seen.unwalked_seen_chance)));
        animals.push_back(systems_there);
        in_all.push_back(on_walked + unwalked.back() + seen.marks_unwalked);
    }
    const double mean_animals = std::accumulate(animals.begin(), animals.end(), 0.0) / static_cast<double>(animals.size());
    Amount systems_unwalked = amount_of(std::move(animals), options.interval);
    systems_unwalked.expected = mean_animals;  // few whole numbers: their middle would mostly be 0
    return {amount_of(std::move(missed), options.interval), amount_of(std::move(unwalked), options.interval),
            systems_unwalked, amount_of(std::move(in_all), options.interval)};
}

}  // namespace plugside
