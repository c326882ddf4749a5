#include "core/simulation/territories.h"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <map>
#include <numbers>
#include <optional>

namespace plugside {

namespace {

using Ring = std::vector<LocalPoint>;

struct Site {
    LocalPoint at;
    double radius_m = 1.0;
    std::size_t animal = 0;
};

// Twice the ring's signed area: negative, since rings run clockwise.
double twice_area(const Ring& ring) {
    double sum = 0.0;
    for (std::size_t i = 0; i < ring.size(); ++i)
        sum += cross(ring[i] - LocalPoint{}, ring[(i + 1) % ring.size()] - LocalPoint{});
    return sum;
}

LocalPoint centroid(const Ring& ring) {
    LocalVector sum;
    double weight = 0.0;
    for (std::size_t i = 1; i + 1 < ring.size(); ++i) {
        const LocalVector a = ring[i] - ring[0];
        const LocalVector b = ring[i + 1] - ring[0];
        sum = sum + (a + b) * (cross(a, b) / 3.0);
        weight += cross(a, b);
    }
    return weight == 0.0 ? ring.at(0) : ring[0] + sum * (1.0 / weight);
}

// What of the ring lies where dot(normal, p) <= limit.
Ring cut(const Ring& ring, LocalVector normal, double limit) {
    Ring kept;
    for (std::size_t i = 0; i < ring.size(); ++i) {
        const LocalPoint a = ring[i];
        const LocalPoint b = ring[(i + 1) % ring.size()];
        const double over_a = dot(normal, a - LocalPoint{}) - limit;
        const double over_b = dot(normal, b - LocalPoint{}) - limit;
        if (over_a <= 0.0) kept.push_back(a);
        if ((over_a < 0.0 && over_b > 0.0) || (over_a > 0.0 && over_b < 0.0))
            kept.push_back(a + (b - a) * (over_a / (over_a - over_b)));
    }
    return kept.size() >= 3 ? kept : Ring{};
}

Ring open_ring(const FieldDomain& domain) {
    Ring ring = domain.boundary().outer.vertices;
    const Ring sides = ring;
    for (std::size_t i = 0; i < sides.size(); ++i) {  // clockwise: outside lies to the left of every side
        const LocalVector side = sides[(i + 1) % sides.size()] - sides[i];
        const LocalVector outwards = turned_right(side) * (-1.0 / side.length_m());
        ring = cut(ring, outwards, dot(outwards, sides[i] - LocalPoint{}) - edge_berth_m);
    }
    return ring;
}

class SharedField {
public:
    SharedField(const FieldDomain& domain, const TerritoryOptions& options)
        : domain_(domain), options_(options), whole_(open_ring(domain)) {}

    void settle(Random& random) {
        double sum_m2 = 0.0;
        for (const double area : options_.areas_m2) sum_m2 += area;
        const double scale = std::abs(0.5 * twice_area(whole_)) / sum_m2;
        for (std::size_t i = 0; i < options_.areas_m2.size(); ++i)
            sites_.push_back({{}, std::sqrt(options_.areas_m2[i] * scale / std::numbers::pi), i});
        // the largest first, while there is room for them
        std::sort(sites_.begin(), sites_.end(), [](const Site& a, const Site& b) { return a.radius_m > b.radius_m; });
        cell_m_ = 2.0 * sites_.front().radius_m;
        std::size_t placed = 0;
        for (Site& site : sites_) {
            if (!find_place(site, random)) break;
            cells_[cell_of(site.at)].push_back(placed++);
        }
        sites_.resize(placed);
    }

    [[nodiscard]] Ring part_of(std::size_t i, double buffer_m) const {
        Ring ring = whole_;
        const Site& own = sites_[i];
        const auto [column, row] = cell_of(own.at);
        for (long c = column - 2; c <= column + 2; ++c)
            for (long r = row - 2; r <= row + 2; ++r) {
                const auto cell = cells_.find({c, r});
                if (cell == cells_.end()) continue;
                for (const std::size_t j : cell->second) {
                    if (j == i) continue;
                    const Site& other = sites_[j];
                    const double apart = distance_m(own.at, other.at);
                    if (apart == 0.0) return {};
                    const LocalVector away = (other.at - own.at) * (1.0 / apart);
                    const double to_border =
                        0.5 * (apart * apart + own.radius_m * own.radius_m - other.radius_m * other.radius_m) / apart;
                    ring = cut(ring, away, dot(away, own.at - LocalPoint{}) + to_border - 0.5 * buffer_m);
                }
            }
        return ring;
    }

    void move_to_middles() {
        std::vector<LocalPoint> middles;
        for (std::size_t i = 0; i < sites_.size(); ++i) {
            const Ring part = part_of(i, 0.0);
            middles.push_back(part.empty() ? sites_[i].at : centroid(part));
        }
        cells_.clear();
        for (std::size_t i = 0; i < sites_.size(); ++i) {
            sites_[i].at = middles[i];
            cells_[cell_of(middles[i])].push_back(i);
        }
    }

    [[nodiscard]] const std::vector<Site>& sites() const { return sites_; }

private:
    using Cell = std::pair<long, long>;
    [[nodiscard]] Cell cell_of(LocalPoint p) const {
        return {std::lround(std::floor(p.east_m / cell_m_)), std::lround(std::floor(p.north_m / cell_m_))};
    }

    [[nodiscard]] bool keeps_apart(const Site& site, double share) const {
        const auto [column, row] = cell_of(site.at);
        for (long c = column - 1; c <= column + 1; ++c)
            for (long r = row - 1; r <= row + 1; ++r) {
                const auto cell = cells_.find({c, r});
                if (cell == cells_.end()) continue;
                for (const std::size_t j : cell->second)
                    if (distance_m(site.at, sites_[j].at) < share * (site.radius_m + sites_[j].radius_m)) return false;
            }
        return true;
    }

    // Somewhere in the open, apart from those already there; where that fails, less and less apart.
    bool find_place(Site& site, Random& random) const {
        for (int attempt = 0; attempt < 60; ++attempt) {
            const auto place = domain_.open_place(random);
            if (!place) return false;
            site.at = *place;
            if (keeps_apart(site, 0.85 * std::pow(0.97, attempt))) break;
        }
        return true;
    }

    const FieldDomain& domain_;
    const TerritoryOptions& options_;
    Ring whole_;
    std::vector<Site> sites_;
    double cell_m_ = 1.0;
    std::map<Cell, std::vector<std::size_t>> cells_;
};

}  // namespace

double Territory::area_m2() const { return std::abs(0.5 * twice_area(ground.outer.vertices)); }

LocalPoint Territory::middle() const { return centroid(ground.outer.vertices); }

std::vector<Territory> share_out(const FieldDomain& domain, const TerritoryOptions& options, Random& random) {
    std::vector<Territory> territories;
    if (options.areas_m2.empty()) return territories;
    SharedField field(domain, options);
    field.settle(random);
    for (int round = 0; round < options.rounds; ++round) field.move_to_middles();
    for (std::size_t i = 0; i < field.sites().size(); ++i) {
        Territory territory;
        territory.ground.outer.vertices = field.part_of(i, options.buffer_m);
        territory.animal = field.sites()[i].animal;
        if (!territory.ground.outer.vertices.empty()) territories.push_back(std::move(territory));
    }
    return territories;
}

}  // namespace plugside
