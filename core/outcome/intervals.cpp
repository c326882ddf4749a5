#include "core/outcome/intervals.h"

#include <algorithm>
#include <boost/math/distributions/beta.hpp>
#include <boost/math/distributions/chi_squared.hpp>
#include <boost/math/distributions/normal.hpp>
#include <cassert>
#include <cmath>

namespace plugside {

namespace {

void assert_share([[maybe_unused]] Share share, [[maybe_unused]] double level) {
    assert(share.trials >= 1 && share.successes >= 0 && share.successes <= share.trials);
    assert(level > 0.0 && level < 1.0);
}

}  // namespace

Interval wilson_interval(Share share, double level) {
    assert_share(share, level);
    const double n = static_cast<double>(share.trials);
    const double p = share.value();
    const double z = boost::math::quantile(boost::math::normal(), 0.5 + 0.5 * level);
    const double middle = p + z * z / (2.0 * n);
    const double half = z * std::sqrt(p * (1.0 - p) / n + z * z / (4.0 * n * n));
    const double scale = 1.0 + z * z / n;
    // at none and at all of the trials the end is 0 or 1 but for rounding
    return {share.successes == 0 ? 0.0 : std::max(0.0, (middle - half) / scale),
            share.successes == share.trials ? 1.0 : std::min(1.0, (middle + half) / scale)};
}

Interval clopper_pearson_interval(Share share, double level) {
    assert_share(share, level);
    using Beta = boost::math::beta_distribution<double>;
    const double tail = 0.5 * (1.0 - level);
    const double hits = static_cast<double>(share.successes);
    const double misses = static_cast<double>(share.trials - share.successes);
    Interval interval{0.0, 1.0};
    if (share.successes > 0) interval.low = boost::math::quantile(Beta(hits, misses + 1.0), tail);
    if (share.successes < share.trials)
        interval.high = boost::math::quantile(boost::math::complement(Beta(hits + 1.0, misses), tail));
    return interval;
}

Interval newcombe_difference_interval(Share a, Share b, double level) {
    const Interval of_a = wilson_interval(a, level);
    const Interval of_b = wilson_interval(b, level);
    const double difference = a.value() - b.value();
    return {difference - std::hypot(a.value() - of_a.low, of_b.high - b.value()),
            difference + std::hypot(of_a.high - a.value(), b.value() - of_b.low)};
}

Interval garwood_interval(long count, double level) {
    assert(count >= 0 && level > 0.0 && level < 1.0);
    using ChiSquared = boost::math::chi_squared_distribution<double>;
    const double tail = 0.5 * (1.0 - level);
    const double twice = 2.0 * static_cast<double>(count);
    return {count == 0 ? 0.0 : 0.5 * boost::math::quantile(ChiSquared(twice), tail),
            0.5 * boost::math::quantile(boost::math::complement(ChiSquared(twice + 2.0), tail))};
}

}  // namespace plugside
