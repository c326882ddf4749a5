#include "core/probing/run_directions.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

namespace plugside {

namespace {

constexpr double degrees_per_radian = 180.0 / std::numbers::pi;

// How far a run's direction under a mound strays from the line through its neighbours: our assumption.
constexpr double bending_sd_degrees = 20.0;

// The sum of unit vectors at twice the directions seen: axes, not arrows.
struct AxisSum {
    double east = 0.0;
    double north = 0.0;
    double reach_m = 0.0;
    double count = 0.0;
    void add(LocalVector way, double length_m, double weight) {
        const double square = way.east_m * way.east_m + way.north_m * way.north_m;
        if (square <= 0.0) return;
        east += weight * 2.0 * way.east_m * way.north_m / square;
        north += weight * (way.north_m * way.north_m - way.east_m * way.east_m) / square;
        reach_m += weight * length_m;
        count += weight;
    }
};

constexpr std::size_t most_neighbours = 16;  // more than any likely run has at one mound
struct Neighbours {
    std::array<std::uint32_t, most_neighbours> mark{};
    std::size_t count = 0;
};

void add_direction(const std::vector<Mark>& marks, std::size_t here, const Neighbours& next, AxisSum& sum) {
    const auto way_to = [&](std::size_t i) { return marks[next.mark.at(i)].take_off - marks[here].take_off; };
    double straightest = 0.0;  // of the cosine between two ways: pairs that go on through the mound have less than this
    std::optional<LocalVector> through;
    double reach_m = 0.0;
    for (std::size_t i = 0; i < next.count; ++i)
        for (std::size_t j = i + 1; j < next.count; ++j) {
            const LocalVector a = way_to(i);
            const LocalVector b = way_to(j);
            const double lengths = a.length_m() * b.length_m();
            if (lengths <= 0.0 || dot(a, b) / lengths >= straightest) continue;
            straightest = dot(a, b) / lengths;
            through = a * (1.0 / a.length_m()) - b * (1.0 / b.length_m());
            reach_m = a.length_m() + b.length_m();
        }
    if (through) sum.add(*through, reach_m, 1.0);
    if (through) return;
    for (std::size_t i = 0; i < next.count; ++i)
        sum.add(way_to(i), way_to(i).length_m(), 1.0 / static_cast<double>(next.count));
}

RunTurn turn_of(const Mark& mark, const AxisSum& sum, const PlanOptions& options) {
    if (sum.count == 0.0 || !mark.fan) return {};
    const double resultant = std::hypot(sum.east, sum.north) / sum.count;
    if (resultant < 1e-6) return {};
    const double spread = 0.5 * std::sqrt(-2.0 * std::log(std::min(1.0, resultant))) * degrees_per_radian;
    const double reach_m = std::max(0.1, sum.reach_m / sum.count);
    const double by_receiver = std::atan2(std::numbers::sqrt2 * mark.position_sd_m, reach_m) * degrees_per_radian;
    const Bearing run = Bearing::degrees(0.5 * std::atan2(sum.east, sum.north) * degrees_per_radian);
    const double turn = std::remainder(turn_degrees(mark.fan->reversed().turned(90.0), run), 180.0);
    return run_turn_given(
        turn, std::hypot(std::hypot(spread, bending_sd_degrees), std::hypot(by_receiver, options.fan_sd_degrees)));
}

}  // namespace

std::vector<RunTurn> run_turns(const SystemPosterior& posterior, const PlanOptions& options) {
    std::vector<AxisSum> sums(posterior.marks.size());
    std::vector<Neighbours> neighbours(posterior.marks.size());
    for (const auto& links : posterior.drawn_links) {
        for (Neighbours& next : neighbours) next.count = 0;
        const auto join = [&](std::uint32_t a, std::uint32_t b) {
            Neighbours& next = neighbours[a];
            if (next.count < most_neighbours) next.mark.at(next.count++) = b;
        };
        for (const std::uint32_t e : links) {
            join(posterior.links[e].first, posterior.links[e].second);
            join(posterior.links[e].second, posterior.links[e].first);
        }
        for (std::size_t i = 0; i < posterior.marks.size(); ++i)
            if (posterior.marks[i].fan) add_direction(posterior.marks, i, neighbours[i], sums[i]);
    }
    std::vector<RunTurn> turns;
    turns.reserve(posterior.marks.size());
    for (std::size_t i = 0; i < posterior.marks.size(); ++i) turns.push_back(turn_of(posterior.marks[i], sums[i], options));
    return turns;
}

}  // namespace plugside
