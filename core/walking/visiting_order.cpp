#include "core/walking/visiting_order.h"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <limits>
#include <numeric>
#include <tuple>
#include <utility>

#include "core/geometry/delaunay.h"
#include "core/geometry/near_places.h"
#include "core/walking/round_trip.h"
#include "core/walking/ways_between.h"

namespace plugside {

namespace {

constexpr std::size_t near_ones = 10;  // that a move may join a place to

NeighbourLists nearest_by_distance(std::size_t count, const NodeDistance& distance) {
    NeighbourLists lists(count);
    std::vector<std::size_t> others;
    for (std::size_t i = 0; i < count; ++i) {
        others.clear();
        for (std::size_t j = 0; j < count; ++j)
            if (j != i) others.push_back(j);
        const auto nearer = [&](std::size_t a, std::size_t b) {
            return std::pair(distance(i, a), a) < std::pair(distance(i, b), b);
        };
        const auto most = static_cast<std::ptrdiff_t>(std::min(near_ones, others.size()));
        std::partial_sort(others.begin(), others.begin() + most, others.end(), nearer);
        lists[i].assign(others.begin(), others.begin() + most);
    }
    return lists;
}

// Always on to the nearest place not yet visited, from `first`. `rough` chooses where all near ones are visited.
std::vector<std::size_t> nearest_first(std::size_t count, std::size_t first, const NodeDistance& rough,
                                       const NeighbourLists& neighbours) {
    std::vector<bool> visited(count, false);
    std::vector<std::size_t> order;
    std::vector<std::size_t> left(count);
    std::iota(left.begin(), left.end(), std::size_t{0});
    for (std::size_t here = first;;) {
        visited[here] = true;
        order.push_back(here);
        if (order.size() == count) return order;
        const auto near =
            std::find_if(neighbours[here].begin(), neighbours[here].end(), [&](std::size_t node) { return !visited[node]; });
        if (near != neighbours[here].end()) {
            here = *near;
            continue;
        }
        std::erase_if(left, [&](std::size_t node) { return visited[node]; });
        here = *std::min_element(left.begin(), left.end(), [&](std::size_t a, std::size_t b) {
            return std::pair(rough(here, a), a) < std::pair(rough(here, b), b);
        });
    }
}

// The caller's indexes from the place nearest to `centre` outwards: an order that no renumbering and no turning changes.
std::vector<std::size_t> outwards_from(LocalPoint centre, const std::vector<LocalPoint>& places) {
    std::vector<std::size_t> order(places.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
        const LocalVector u = places[a] - centre;
        const LocalVector v = places[b] - centre;
        return std::tuple(dot(u, u), u.east_m, u.north_m, a) < std::tuple(dot(v, v), v.east_m, v.north_m, b);
    });
    return order;
}

LocalPoint mean_of(const std::vector<LocalPoint>& places) {
    LocalVector sum;
    for (const LocalPoint p : places) sum = sum + (p - places.front());
    return places.front() + sum * (1.0 / static_cast<double>(places.size()));
}

// The places as nodes of a ring, from the middle outwards, the start in front and the end behind. Where the way begins or ends somewhere,
// an edge from the end to the start that no move gives up closes the ring; an end that nobody named is a node 0 m from every other.
class Nodes {
public:
    Nodes(const std::vector<LocalPoint>& places, const VisitingOptions& options)
        : outwards_(outwards_from(options.start.value_or(mean_of(places)), places)), has_start_(options.start.has_value()) {
        std::vector<LocalPoint> at;
        if (has_start_) at.push_back(*options.start);
        for (const std::size_t i : outwards_) at.push_back(places[i]);
        if (has_start_ && options.end) at.push_back(*options.end);
        last_ = at.size() - (has_start_ && options.end ? 1 : 0);
        count_ = last_ + (has_start_ ? 1 : 0);
        for (const LocalPoint p : at) reach_m_ = std::max(reach_m_, distance_m(at.front(), p));
        at_ = at;
        if (options.ways == nullptr || options.ways->open_everywhere()) return;
        ways_.emplace(*options.ways, std::move(at));
        group_ = ways_->groups();
    }

    [[nodiscard]] std::size_t count() const { return count_; }
    [[nodiscard]] bool closed_by_edge() const { return has_start_; }
    [[nodiscard]] std::size_t last() const { return last_; }

    // As the search counts it.
    [[nodiscard]] double between(std::size_t a, std::size_t b) {
        if (has_start_ && (a == last_ || b == last_)) {
            if (a == 0 || b == 0) return -1000.0 * reach_m_;
            if (last_ == at_.size()) return 0.0;
        }
        if (!ways_) return distance_m(at_[a], at_[b]);
        const double metres = ways_->metres(a, b);
        return std::isfinite(metres) ? metres : rough(a, b);
    }
    // Straight, and far where no way leads.
    [[nodiscard]] double rough(std::size_t a, std::size_t b) const {
        const double straight = distance_m(at_[a], at_[b]);
        return group_.empty() || group_[a] == group_[b] ? straight : straight + 20.0 * reach_m_;
    }

    // Near ones by true ways: of the straight nearest and the neighbours in the plane. (Clusters are joined by the latter.)
    [[nodiscard]] NeighbourLists neighbours() {
        const std::size_t asked = ways_ ? near_ones + 4 : near_ones;
        const NearPlaces near(at_);
        NeighbourLists lists(at_.size());
        for (const auto& [a, b] : delaunay_edges(at_)) {
            lists[a].push_back(b);
            lists[b].push_back(a);
        }
        std::vector<std::pair<double, std::size_t>> by_way;
        for (std::size_t i = 0; i < at_.size(); ++i) {
            for (const auto& found : near.nearest(at_[i], asked + 1)) lists[i].push_back(found.index);
            std::sort(lists[i].begin(), lists[i].end());
            lists[i].erase(std::unique(lists[i].begin(), lists[i].end()), lists[i].end());
            by_way.clear();
            for (const std::size_t k : lists[i])
                if (k != i && (group_.empty() || group_[i] == group_[k])) by_way.emplace_back(between(i, k), k);
            std::sort(by_way.begin(), by_way.end());
            lists[i].clear();
            for (const auto& [metres, k] : by_way)
                if (lists[i].size() < near_ones) lists[i].push_back(k);
        }
        lists.resize(count_);
        return lists;
    }

    // The caller's order from a ring of nodes.
    [[nodiscard]] std::vector<std::size_t> order_of(std::vector<std::size_t> ring) {
        const std::size_t first = has_start_ ? 0 : count_ - 1;
        std::rotate(ring.begin(), std::find(ring.begin(), ring.end(), first), ring.end());
        if (has_start_ ? ring[1] == last_ : between(first, ring.back()) < between(first, ring[1]))
            std::reverse(ring.begin() + 1, ring.end());
        assert(!has_start_ || ring.back() == last_);
        std::vector<std::size_t> order;
        for (const std::size_t node : ring)
            if (!has_start_ || (node != 0 && node != last_)) order.push_back(outwards_[node - (has_start_ ? 1 : 0)]);
        return order;
    }

private:
    std::vector<std::size_t> outwards_;  // the caller's indexes
    bool has_start_;
    std::size_t last_ = 0;   // node of the end, named or not
    std::size_t count_ = 0;  // of nodes
    double reach_m_ = 1.0;
    std::vector<LocalPoint> at_;
    std::optional<WaysBetween> ways_;
    std::vector<std::uint32_t> group_;
};

RoundTripOptions search_options(const VisitingOptions& options, std::size_t places) {
    return {options.most_moves, options.shuffles.value_or(usual_shuffles(places)),
            3 * places + 100,   options.key,
            options.stop,       {}};
}

std::vector<std::size_t> order_from_start_or_round(const std::vector<LocalPoint>& places, const VisitingOptions& options) {
    Nodes nodes(places, options);
    const NodeDistance distance = [&](std::size_t a, std::size_t b) { return nodes.between(a, b); };
    const NodeDistance rough = [&](std::size_t a, std::size_t b) { return nodes.rough(a, b); };
    const NeighbourLists neighbours = nodes.neighbours();
    std::vector<std::size_t> ring;
    if (nodes.closed_by_edge()) {
        NeighbourLists before_end = neighbours;
        before_end.resize(nodes.last());
        for (auto& list : before_end) std::erase(list, nodes.last());
        ring = nearest_first(nodes.last(), 0, rough, before_end);
        ring.push_back(nodes.last());
    } else {
        ring = nearest_first(nodes.count(), nodes.count() - 1, rough, neighbours);
    }
    if (options.better) options.better(nodes.order_of(ring));
    RoundTripOptions search = search_options(options, places.size());
    if (options.better)
        search.better = [&](const std::vector<std::size_t>& shorter) { options.better(nodes.order_of(shorter)); };
    return nodes.order_of(shortened_round_trip(std::move(ring), distance, neighbours, search));
}

// The start and the end in each other's place: the same way, walked from the other side.
VisitingOptions from_the_end(const VisitingOptions& options) {
    VisitingOptions turned = options;
    std::swap(turned.start, turned.end);
    turned.better = nullptr;
    if (options.better)
        turned.better = [&options](std::vector<std::size_t> order) {
            std::reverse(order.begin(), order.end());
            options.better(order);
        };
    return turned;
}

}  // namespace

std::size_t usual_shuffles(std::size_t places) { return std::clamp<std::size_t>(10 * places, 500, 40000); }

std::vector<std::size_t> visiting_order(const std::vector<LocalPoint>& places, const VisitingOptions& options) {
    if (places.empty()) return {};
    if (places.size() == 1) return {0};
    if (options.start || !options.end) return order_from_start_or_round(places, options);
    std::vector<std::size_t> order = order_from_start_or_round(places, from_the_end(options));
    std::reverse(order.begin(), order.end());
    return order;
}

std::vector<std::size_t> visiting_order(std::size_t count, const DistanceBetween& distance, const VisitingOptions& options) {
    if (count < 2) return std::vector<std::size_t>(count, 0);
    const NodeDistance metres = [&](std::size_t a, std::size_t b) { return distance(a, b).value(); };
    const NeighbourLists neighbours = nearest_by_distance(count, metres);
    std::vector<std::size_t> tour = shortened_round_trip(nearest_first(count, 0, metres, neighbours), metres, neighbours,
                                                         search_options(options, count));
    std::rotate(tour.begin(), std::find(tour.begin(), tour.end(), std::size_t{0}), tour.end());
    return tour;
}

Metres tour_length(const std::vector<LocalPoint>& places, const std::vector<std::size_t>& order,
                   const VisitingOptions& options) {
    if (order.empty()) return Metres::of(0.0);
    std::vector<LocalPoint> stops;
    if (options.start) stops.push_back(*options.start);
    for (const std::size_t i : order) stops.push_back(places[i]);
    if (options.end) stops.push_back(*options.end);
    if (!options.start && !options.end) stops.push_back(places[order.front()]);
    const WalkingWays open{Ground{}};
    WaysBetween ways(options.ways != nullptr ? *options.ways : open, std::move(stops));
    double sum = 0.0;
    for (std::size_t i = 1; i < ways.count(); ++i) {
        const double metres = ways.metres(i - 1, i);
        if (std::isfinite(metres)) sum += metres;
    }
    return Metres::of(sum);
}

std::vector<std::size_t> cut_off_places(const std::vector<LocalPoint>& places, const VisitingOptions& options) {
    std::vector<std::size_t> cut_off;
    if (options.ways == nullptr || options.ways->open_everywhere()) return cut_off;
    std::vector<LocalPoint> at = places;
    const std::optional<LocalPoint> from = options.start ? options.start : options.end;
    if (from) at.push_back(*from);
    const std::vector<std::uint32_t> group = WaysBetween(*options.ways, at).groups();
    std::uint32_t own = 0;
    if (from) {
        own = group.back();
    } else {
        std::vector<std::size_t> size(places.size() + 1, 0);
        for (const std::uint32_t g : group) ++size[g];
        own = static_cast<std::uint32_t>(std::max_element(size.begin(), size.end()) - size.begin());
    }
    for (std::size_t i = 0; i < places.size(); ++i)
        if (group[i] != own) cut_off.push_back(i);
    return cut_off;
}

}  // namespace plugside
