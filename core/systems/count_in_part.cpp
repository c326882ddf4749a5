#include "core/systems/count_in_part.h"

#include <algorithm>
#include <numeric>

namespace plugside {

// Two hundred draws tell a chance within a few in 100; a huge field keeps fewer, for memory.
std::size_t draws_kept(std::size_t marks) {
    return std::clamp<std::size_t>(20'000'000 / std::max<std::size_t>(marks, 1), 20, 200);
}

CountInterval count_interval(std::vector<double> numbers, double level) {
    if (numbers.empty()) return {};
    std::sort(numbers.begin(), numbers.end());
    const double tail = 0.5 * (1.0 - level);
    const double sum = std::accumulate(numbers.begin(), numbers.end(), 0.0);
    return {sum / static_cast<double>(numbers.size()), quantile_of_sorted<double>(numbers, tail),
            quantile_of_sorted<double>(numbers, 1.0 - tail)};
}

CountInPart count_in_part(const DrawnSystems& drawn, const MultiPolygon& part) {
    const std::size_t n = drawn.plug.size();
    std::vector<bool> inside(n);
    CountInPart count;
    for (std::size_t i = 0; i < n; ++i) {
        inside[i] = contains(part, drawn.plug[i]);
        if (inside[i]) ++count.mounds;
    }
    if (count.mounds == 0) return count;
    std::vector<double> animals, touching;
    std::vector<std::uint32_t> all(n), within(n);
    for (const std::vector<std::uint32_t>& tree : drawn.tree) {
        std::fill(all.begin(), all.end(), 0U);
        std::fill(within.begin(), within.end(), 0U);
        for (std::size_t i = 0; i < n; ++i) {
            ++all[tree[i]];
            if (inside[i]) ++within[tree[i]];
        }
        double shares = 0.0;
        double touched = 0.0;
        for (std::size_t t = 0; t < n; ++t) {
            if (within[t] == 0) continue;
            shares += static_cast<double>(within[t]) / static_cast<double>(all[t]);
            touched += 1.0;
        }
        animals.push_back(shares);
        touching.push_back(touched);
    }
    count.animals = count_interval(std::move(animals), drawn.interval);
    count.touching = count_interval(std::move(touching), drawn.interval);
    return count;
}

}  // namespace plugside
