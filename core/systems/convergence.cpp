#include "core/systems/convergence.h"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <cstddef>
#include <limits>

namespace plugside {

namespace {

struct Spread {
    ChainDraws halves;  // about their own means
    double within = 0.0;
    double total = 0.0;  // the variance that the law itself must have: within and between halves
};

Spread spread_of(const ChainDraws& chains) {
    Spread spread;
    const std::size_t half = chains.empty() ? 0 : chains.front().size() / 2;
    if (half < 2) return spread;
    std::vector<double> means;
    for (const auto& chain : chains) {
        assert(chain.size() == chains.front().size());
        const auto middle = chain.begin() + static_cast<std::ptrdiff_t>(half);
        spread.halves.emplace_back(chain.begin(), middle);
        spread.halves.emplace_back(chain.end() - static_cast<std::ptrdiff_t>(half), chain.end());
    }
    const auto n = static_cast<double>(half);
    double mean_of_all = 0.0;
    for (auto& draws : spread.halves) {
        double mean = 0.0, squares = 0.0;
        for (const double x : draws) mean += x / n;
        for (double& x : draws) {
            x -= mean;
            squares += x * x;
        }
        spread.within += squares / (n - 1.0) / static_cast<double>(spread.halves.size());
        means.push_back(mean);
        mean_of_all += mean / static_cast<double>(spread.halves.size());
    }
    double between = 0.0;
    for (const double mean : means) between += (mean - mean_of_all) * (mean - mean_of_all);
    spread.total = spread.within * (n - 1.0) / n + between / static_cast<double>(means.size() - 1);
    return spread;
}

// Below this share of the values' own size a variance is rounding.
bool negligible(double variance, const ChainDraws& chains) {
    double most = 0.0;
    for (const auto& chain : chains)
        for (const double x : chain) most = std::max(most, std::abs(x));
    return variance <= 1e-24 * most * most;
}

double autocovariance(const ChainDraws& halves, std::size_t lag) {
    double sum = 0.0;
    for (const auto& draws : halves)
        for (std::size_t t = lag; t < draws.size(); ++t) sum += draws[t] * draws[t - lag];
    return sum / static_cast<double>(halves.size() * halves.front().size());
}

}  // namespace

double split_r_hat(const ChainDraws& chains) {
    const Spread spread = spread_of(chains);
    if (spread.halves.empty() || negligible(spread.total, chains)) return 1.0;
    if (negligible(spread.within, chains)) return std::numeric_limits<double>::infinity();
    return std::sqrt(spread.total / spread.within);
}

double effective_sample_size(const ChainDraws& chains) {
    const Spread spread = spread_of(chains);
    if (spread.halves.empty()) return 0.0;
    const std::size_t length = spread.halves.front().size();
    const double draws = static_cast<double>(spread.halves.size() * length);
    if (negligible(spread.total, chains)) return draws;
    if (negligible(spread.within, chains)) return static_cast<double>(chains.size());
    const double bias = static_cast<double>(length) / static_cast<double>(length - 1);
    const auto correlation = [&](std::size_t lag) {
        return 1.0 - (spread.within - bias * autocovariance(spread.halves, lag)) / spread.total;
    };
    double sum = 0.0;
    double last = std::numeric_limits<double>::infinity();
    for (std::size_t lag = 0; lag + 1 < length; lag += 2) {
        const double pair = (lag == 0 ? 1.0 : correlation(lag)) + correlation(lag + 1);
        if (pair <= 0.0) break;
        last = std::min(last, pair);
        sum += last;
    }
    const double time = std::max(2.0 * sum - 1.0, 1.0 / std::log10(std::max(draws, 10.0)));
    return draws / time;
}

}  // namespace plugside
