#include "core/walking/work_day_cost.h"

#include <algorithm>
#include <limits>

namespace plugside {

namespace {

constexpr double as_good_as_none_m = 1e7;

}  // namespace

WorkDayCost::WorkDayCost(const std::vector<LocalPoint>& places, const std::vector<double>& minutes_at,
                         const WorkOptions& options)
    : options_(options), minutes_at_(minutes_at), open_(Ground{}) {
    std::vector<LocalPoint> nodes = places;
    const auto node_of = [&](const std::optional<LocalPoint>& at) {
        if (!at) return Node{};
        nodes.push_back(*at);
        return Node{nodes.size() - 1};
    };
    const Node common = node_of(options.start);
    for (std::size_t person = 0; person < options.people; ++person) {
        const bool wished = person < options.wished_start.size() && options.wished_start[person];
        start_.push_back(wished ? node_of(options.wished_start[person]) : common);
    }
    end_ = node_of(options.end);
    vehicle_ = options.vehicle ? node_of(options.vehicle) : common;
    ways_.emplace(options.ways != nullptr ? *options.ways : open_, std::move(nodes));
}

std::optional<LocalPoint> WorkDayCost::start_of(std::size_t person) const {
    const bool wished = person < options_.wished_start.size() && options_.wished_start[person];
    return wished ? options_.wished_start[person] : options_.start;
}

double WorkDayCost::metres(std::size_t a, std::size_t b) { return std::min(ways_->metres(a, b), as_good_as_none_m); }

std::size_t WorkDayCost::load_at(std::size_t place) const {
    return options_.load_at.empty() ? 1 : options_.load_at[place];
}

double WorkDayCost::between(Node a, Node b) { return a && b ? metres(*a, *b) : 0.0; }

// best[j]: the least way past the first j places with a load used up just there; the last stretch goes on to the end.
double WorkDayCost::way_with_loads(const std::vector<std::size_t>& places, Node start, Node vehicle,
                                   std::vector<std::size_t>& loads_before) {
    const std::size_t n = places.size();
    if (!options_.carry) {
        double way = between(start, places[0]) + between(places.back(), end_);
        for (std::size_t i = 1; i < n; ++i) way += metres(places[i - 1], places[i]);
        return way;
    }
    std::vector<double> best(n + 1, std::numeric_limits<double>::infinity());
    std::vector<std::size_t> begin_of_load(n + 1, 0);
    best[0] = 0.0;
    for (std::size_t i = 0; i < n; ++i) {
        double way =
            best[i] + (i == 0 ? between(start, places[0]) : between(places[i - 1], vehicle) + between(vehicle, places[i]));
        std::size_t load = 0;
        for (std::size_t j = i + 1; j <= n; ++j) {
            load += load_at(places[j - 1]);
            if (load > *options_.carry && j > i + 1) break;
            if (j > i + 1) way += metres(places[j - 2], places[j - 1]);
            if (way >= best[j]) continue;
            best[j] = way;
            begin_of_load[j] = i;
        }
    }
    for (std::size_t i = begin_of_load[n]; i > 0; i = begin_of_load[i]) loads_before.push_back(i);
    std::reverse(loads_before.begin(), loads_before.end());
    return best[n] + between(places.back(), end_);
}

WorkDayCost::Cost WorkDayCost::of(const std::vector<std::size_t>& places, std::size_t person) {
    Cost cost;
    if (places.empty()) return cost;
    const Node vehicle = vehicle_ ? vehicle_ : Node{places.front()};
    cost.metres = way_with_loads(places, start_[person], vehicle, cost.loads_before);
    cost.minutes = cost.metres / options_.pace_m_per_s / 60.0 +
                   options_.minutes_to_load * static_cast<double>(cost.loads_before.size());
    for (const std::size_t place : places) cost.minutes += minutes_at_[place];
    return cost;
}

}  // namespace plugside
