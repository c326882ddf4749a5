#include "core/walking/visiting_order.h"

#include <algorithm>
#include <cassert>
#include <limits>
#include <nanoflann.hpp>
#include <numeric>
#include <tuple>
#include <utility>

#include "core/walking/round_trip.h"

namespace plugside {

namespace {

constexpr std::size_t near_ones = 10;

struct Cloud {
    const std::vector<LocalPoint>& places;
    [[nodiscard]] std::size_t kdtree_get_point_count() const { return places.size(); }
    [[nodiscard]] double kdtree_get_pt(std::size_t i, std::size_t axis) const {
        return axis == 0 ? places[i].east_m : places[i].north_m;
    }
    template <class Box>
    bool kdtree_get_bbox(Box&) const {
        return false;
    }
};

NeighbourLists nearest_places(const std::vector<LocalPoint>& places) {
    using Tree = nanoflann::KDTreeSingleIndexAdaptor<nanoflann::L2_Simple_Adaptor<double, Cloud>, Cloud, 2, std::size_t>;
    const Cloud cloud{places};
    Tree tree(2, cloud, nanoflann::KDTreeSingleIndexAdaptorParams(10));
    tree.buildIndex();
    NeighbourLists lists(places.size());
    std::vector<std::size_t> found(near_ones + 1);
    std::vector<double> squared(near_ones + 1);
    for (std::size_t i = 0; i < places.size(); ++i) {
        const double query[2] = {places[i].east_m, places[i].north_m};
        const std::size_t count = tree.knnSearch(query, near_ones + 1, found.data(), squared.data());
        for (std::size_t k = 0; k < count; ++k)
            if (found[k] != i && lists[i].size() < near_ones) lists[i].push_back(found[k]);
    }
    return lists;
}

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

// Always on to the nearest place not yet visited, from `first`.
std::vector<std::size_t> nearest_first(std::size_t count, std::size_t first, const NodeDistance& distance,
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
            return std::pair(distance(here, a), a) < std::pair(distance(here, b), b);
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

// Round trip: begins at the outermost place and goes on to the nearer of its two neighbours.
std::vector<std::size_t> round_trip(const std::vector<LocalPoint>& sorted, std::size_t most_moves) {
    const NeighbourLists neighbours = nearest_places(sorted);
    const NodeDistance distance = [&](std::size_t a, std::size_t b) { return distance_m(sorted[a], sorted[b]); };
    const std::size_t outermost = sorted.size() - 1;
    std::vector<std::size_t> tour = shortened_round_trip(nearest_first(sorted.size(), outermost, distance, neighbours),
                                                         distance, neighbours, most_moves);
    std::rotate(tour.begin(), std::find(tour.begin(), tour.end(), outermost), tour.end());
    if (distance(outermost, tour.back()) < distance(outermost, tour[1])) std::reverse(tour.begin() + 1, tour.end());
    return tour;
}

// Open way: `sorted` holds the start in front. A last node that is no place stands 0 m from every other, and is tied to the
// start by an edge that no move gives up: the round trip through both is the open way.
std::vector<std::size_t> open_way(const std::vector<LocalPoint>& sorted, std::size_t most_moves) {
    const std::size_t no_place = sorted.size();
    NeighbourLists neighbours = nearest_places(sorted);
    neighbours.emplace_back();
    const NodeDistance straight = [&](std::size_t a, std::size_t b) { return distance_m(sorted[a], sorted[b]); };
    double reach = 1.0;
    for (const LocalPoint p : sorted) reach = std::max(reach, distance_m(sorted.front(), p));
    const NodeDistance distance = [&](std::size_t a, std::size_t b) {
        if (a == no_place || b == no_place) return a == 0 || b == 0 ? -100.0 * reach : 0.0;
        return straight(a, b);
    };
    std::vector<std::size_t> tour = nearest_first(sorted.size(), 0, straight, neighbours);
    tour.push_back(no_place);
    tour = shortened_round_trip(std::move(tour), distance, neighbours, most_moves);
    std::rotate(tour.begin(), std::find(tour.begin(), tour.end(), std::size_t{0}), tour.end());
    if (tour[1] == no_place) std::reverse(tour.begin() + 1, tour.end());
    assert(tour.back() == no_place);
    tour.pop_back();
    return tour;
}

}  // namespace

std::vector<std::size_t> visiting_order(const std::vector<LocalPoint>& places, const VisitingOptions& options) {
    if (places.empty()) return {};
    const std::vector<std::size_t> from_inside = outwards_from(options.start.value_or(mean_of(places)), places);
    std::vector<LocalPoint> sorted;
    if (options.start) sorted.push_back(*options.start);
    for (const std::size_t i : from_inside) sorted.push_back(places[i]);

    std::vector<std::size_t> order;
    if (options.start) {
        for (const std::size_t node : open_way(sorted, options.most_moves))
            if (node != 0) order.push_back(from_inside[node - 1]);
    } else if (places.size() == 1) {
        order = {0};
    } else {
        for (const std::size_t node : round_trip(sorted, options.most_moves)) order.push_back(from_inside[node]);
    }
    return order;
}

std::vector<std::size_t> visiting_order(std::size_t count, const DistanceBetween& distance, std::size_t most_moves) {
    if (count < 2) return std::vector<std::size_t>(count, 0);
    const NodeDistance metres = [&](std::size_t a, std::size_t b) { return distance(a, b).value(); };
    const NeighbourLists neighbours = nearest_by_distance(count, metres);
    std::vector<std::size_t> tour =
        shortened_round_trip(nearest_first(count, 0, metres, neighbours), metres, neighbours, most_moves);
    std::rotate(tour.begin(), std::find(tour.begin(), tour.end(), std::size_t{0}), tour.end());
    return tour;
}

Metres tour_length(const std::vector<LocalPoint>& places, const std::vector<std::size_t>& order,
                   const VisitingOptions& options) {
    if (order.empty()) return Metres::of(0.0);
    double sum = options.start ? distance_m(*options.start, places[order.front()])
                               : distance_m(places[order.back()], places[order.front()]);
    for (std::size_t i = 1; i < order.size(); ++i) sum += distance_m(places[order[i - 1]], places[order[i]]);
    return Metres::of(sum);
}

}  // namespace plugside
