// DBSCAN (Ester, Kriegel, Sander & Xu 1996) over a sorted grid: the yardstick that every inference has to beat.
#include <algorithm>
#include <cmath>
#include <cstdint>
#include <limits>
#include <unordered_map>

#include "core/simulation/plan_score.h"

namespace plugside {

namespace {

class Neighbours {
public:
    Neighbours(const std::vector<LocalPoint>& places, double radius_m) : places_(places), radius_m_(radius_m) {
        for (std::size_t i = 0; i < places.size(); ++i)
            cells_[key(column(places[i].east_m), column(places[i].north_m))].push_back(i);
    }

    // Everything within the radius of place i, itself too, ascending.
    void of(std::size_t i, std::vector<std::size_t>& found) const {
        found.clear();
        const std::int64_t c0 = column(places_[i].east_m);
        const std::int64_t r0 = column(places_[i].north_m);
        for (std::int64_t c = c0 - 1; c <= c0 + 1; ++c)
            for (std::int64_t r = r0 - 1; r <= r0 + 1; ++r) {
                const auto cell = cells_.find(key(c, r));
                if (cell == cells_.end()) continue;
                for (const std::size_t j : cell->second)
                    if (distance_m(places_[i], places_[j]) <= radius_m_) found.push_back(j);
            }
        std::sort(found.begin(), found.end());
    }

private:
    [[nodiscard]] std::int64_t column(double metres) const {
        return static_cast<std::int64_t>(std::floor(metres / radius_m_));
    }
    [[nodiscard]] static std::uint64_t key(std::int64_t c, std::int64_t r) {
        return (static_cast<std::uint64_t>(c) << 32) ^ (static_cast<std::uint64_t>(r) & 0xffffffffULL);
    }
    const std::vector<LocalPoint>& places_;
    double radius_m_;
    std::unordered_map<std::uint64_t, std::vector<std::size_t>> cells_;
};

}  // namespace

std::vector<std::size_t> density_clusters(const std::vector<LocalPoint>& places, Metres radius, int least) {
    constexpr std::size_t none = std::numeric_limits<std::size_t>::max();
    const Neighbours neighbours(places, radius.value());
    std::vector<std::size_t> cluster(places.size(), none);
    std::vector<bool> expanded(places.size(), false);
    std::vector<std::size_t> found;
    std::vector<std::size_t> open;
    std::size_t clusters = 0;
    for (std::size_t seed = 0; seed < places.size(); ++seed) {
        if (cluster[seed] != none) continue;
        neighbours.of(seed, found);
        if (found.size() < static_cast<std::size_t>(least)) continue;
        cluster[seed] = clusters;
        open.assign(1, seed);
        while (!open.empty()) {
            const std::size_t i = open.back();
            open.pop_back();
            if (expanded[i]) continue;
            expanded[i] = true;
            neighbours.of(i, found);
            if (found.size() < static_cast<std::size_t>(least)) continue;  // on the border: belongs, but leads no further
            for (const std::size_t j : found) {
                if (cluster[j] == none) cluster[j] = clusters;
                if (cluster[j] == clusters && !expanded[j]) open.push_back(j);
            }
        }
        ++clusters;
    }
    for (std::size_t& label : cluster)
        if (label == none) label = clusters++;
    return cluster;
}

}  // namespace plugside
