#include "core/walking/ways_between.h"

#include <algorithm>
#include <bit>
#include <functional>
#include <limits>
#include <queue>
#include <utility>

#include "core/geometry/delaunay.h"
#include "core/geometry/near_places.h"
#include "core/systems/disjoint_sets.h"
#include "core/systems/keyed_random.h"

namespace plugside {

namespace {

constexpr double endless = std::numeric_limits<double>::infinity();
constexpr double on_a_wall_m = 0.5 * WalkingWays::corner_berth_m;
constexpr std::size_t most_remembered = std::size_t{1} << 21U;
constexpr std::size_t asked_about_a_side = 8;

// Metres from a corner to each, and the corner before each on the way (itself where there is none).
struct FromCorner {
    std::vector<double> metres;
    std::vector<std::uint32_t> before;
};

FromCorner ways_from(const WalkingWays& ways, std::uint32_t corner) {
    FromCorner result{std::vector<double>(ways.corners().size(), endless), {}};
    result.before.resize(result.metres.size());
    for (std::uint32_t i = 0; i < result.before.size(); ++i) result.before[i] = i;
    using Reached = std::pair<double, std::uint32_t>;
    std::priority_queue<Reached, std::vector<Reached>, std::greater<>> open;
    result.metres[corner] = 0.0;
    open.emplace(0.0, corner);
    while (!open.empty()) {
        const auto [metres, here] = open.top();
        open.pop();
        if (metres > result.metres[here]) continue;
        for (const WalkingWays::Step& step : ways.steps(here)) {
            const double there = metres + step.metres;
            if (there >= result.metres[step.corner]) continue;
            result.metres[step.corner] = there;
            result.before[step.corner] = here;
            open.emplace(there, step.corner);
        }
    }
    return result;
}

}  // namespace

WaysBetween::WaysBetween(const WalkingWays& ways, std::vector<LocalPoint> places)
    : ways_(&ways), places_(std::move(places)), seen_(places_.size()), from_corner_(ways.corners().size()) {
    if (ways.open_everywhere()) return;
    stand_beside_walls();
    memory_.resize(std::min(most_remembered, std::bit_ceil(64 * places_.size() + 64)));
}

void WaysBetween::stand_beside_walls() {
    std::optional<NearPlaces> near;
    const std::vector<LocalPoint> as_given = places_;
    for (std::size_t i = 0; i < places_.size(); ++i) {
        const auto wall = ways_->walls().nearest(as_given[i], on_a_wall_m);
        const double length = wall ? distance_m(wall->from, wall->to) : 0.0;
        if (length == 0.0) continue;
        const LocalVector off = turned_right(wall->to - wall->from) * (WalkingWays::corner_berth_m / length);
        if (!near) near.emplace(as_given);
        int right = 0;
        for (const auto& other : near->nearest(as_given[i], asked_about_a_side + 1)) {
            if (other.index == i) continue;
            const LocalPoint there = as_given[other.index];
            right += static_cast<int>(ways_->straight(as_given[i] + off, there)) -
                     static_cast<int>(ways_->straight(as_given[i] - off, there));
        }
        places_[i] = right >= 0 ? as_given[i] + off : as_given[i] - off;
    }
}

const std::vector<WalkingWays::Step>& WaysBetween::seen(std::size_t place) {
    if (!seen_[place]) seen_[place] = ways_->seen_from(places_[place]);
    return *seen_[place];
}

const std::vector<double>& WaysBetween::from_corner(std::uint32_t corner) {
    if (from_corner_[corner].empty()) from_corner_[corner] = ways_from(*ways_, corner).metres;
    return from_corner_[corner];
}

std::optional<WaysBetween::Bend> WaysBetween::best_bend(std::size_t a, std::size_t b) {
    std::optional<Bend> best;
    const LocalPoint to = places_[b];
    for (const Step& first : seen(a)) {
        if (best && first.metres + distance_m(ways_->corners()[first.corner].at, to) >= best->metres) continue;
        const std::vector<double>& onwards = from_corner(first.corner);
        for (const Step& last : seen(b)) {
            if (best && first.metres + last.metres >= best->metres) break;
            const double metres = first.metres + onwards[last.corner] + last.metres;
            if (metres < (best ? best->metres : endless)) best = Bend{metres, first.corner, last.corner};
        }
    }
    return best;
}

double WaysBetween::around(std::size_t a, std::size_t b) {
    const std::uint64_t pair = (static_cast<std::uint64_t>(a) << 32U) | b;
    Remembered& slot = memory_[mixed(pair) & (memory_.size() - 1)];
    if (slot.pair == pair) return slot.metres;
    double metres = distance_m(places_[a], places_[b]);
    if (!ways_->straight(places_[a], places_[b])) {
        const std::optional<Bend> bend = best_bend(a, b);
        metres = bend ? bend->metres : endless;
    }
    slot = {pair, metres};
    return metres;
}

double WaysBetween::metres(std::size_t a, std::size_t b) {
    if (ways_->open_everywhere()) return distance_m(places_[a], places_[b]);
    if (a == b) return 0.0;
    return around(std::min(a, b), std::max(a, b));
}

std::optional<Polyline> WaysBetween::way(std::size_t a, std::size_t b) {
    Polyline way{{places_[a]}};
    if (!ways_->straight(places_[a], places_[b])) {
        const std::optional<Bend> bend = best_bend(a, b);
        if (!bend) return std::nullopt;
        const FromCorner from = ways_from(*ways_, bend->last);
        for (std::uint32_t corner = bend->first;; corner = from.before[corner]) {
            way.vertices.push_back(ways_->corners()[corner].at);
            if (corner == bend->last) break;
        }
    }
    way.vertices.push_back(places_[b]);
    return way;
}

// Neighbours that see one another are joined first, so that only one place of what hangs together so has to look for corners.
std::vector<std::uint32_t> WaysBetween::groups() {
    const std::size_t n = places_.size();
    DisjointSets joined(n + ways_->corners().size());
    for (const auto& [a, b] : delaunay_edges(places_))
        if (ways_->straight(places_[a], places_[b]))
            joined.join(static_cast<std::uint32_t>(a), static_cast<std::uint32_t>(b));
    std::vector<std::uint32_t> speakers;
    for (std::uint32_t i = 0; i < n; ++i)
        if (joined.representative(i) == i) speakers.push_back(i);
    for (std::uint32_t i = 0; i < ways_->corners().size(); ++i)
        for (const Step& step : ways_->steps(i))
            joined.join(static_cast<std::uint32_t>(n) + i, static_cast<std::uint32_t>(n) + step.corner);
    std::vector<std::uint32_t> blind;
    for (const std::uint32_t i : speakers) {
        for (const Step& step : seen(i)) joined.join(i, static_cast<std::uint32_t>(n) + step.corner);
        if (seen(i).empty()) blind.push_back(i);
    }
    for (const std::uint32_t i : blind)
        for (const std::uint32_t k : speakers)
            if (i != k && ways_->straight(places_[i], places_[k])) joined.join(i, k);
    std::vector<std::uint32_t> labels = joined.labels();
    labels.resize(n);
    return labels;
}

std::optional<Polyline> walking_way(const WalkingWays& ways, LocalPoint from, LocalPoint to) {
    return WaysBetween(ways, {from, to}).way(0, 1);
}

}  // namespace plugside
