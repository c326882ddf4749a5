#include "core/simulation/dug_ground.h"

#include <algorithm>
#include <cmath>

namespace plugside {

namespace {

// Runs are remembered at every third vertex: 0.3 m is fine enough for gaps of a metre and more.
constexpr std::size_t remembered_every = 3;

}  // namespace

DugGround::DugGround(double cell_m) : cell_m_(cell_m) {}

std::int64_t DugGround::column_of(double metres) const { return static_cast<std::int64_t>(std::floor(metres / cell_m_)); }

std::uint64_t DugGround::key(std::int64_t column, std::int64_t row) const {
    return (static_cast<std::uint64_t>(column) << 32) ^ (static_cast<std::uint64_t>(row) & 0xffffffffULL);
}

void DugGround::add(LocalPoint place, std::uint32_t system) {
    cells_[key(column_of(place.east_m), column_of(place.north_m))].push_back({place, system});
}

void DugGround::add(const GrownSystem& grown, std::uint32_t system) {
    for (const Polyline& run : grown.runs) {
        for (std::size_t i = 0; i < run.vertices.size(); i += remembered_every) add(run.vertices[i], system);
        add(run.vertices.back(), system);
    }
}

bool DugGround::clear_of_others(LocalPoint place, std::uint32_t system, double gap_m) const {
    const std::int64_t column = column_of(place.east_m);
    const std::int64_t row = column_of(place.north_m);
    for (std::int64_t c = column - 1; c <= column + 1; ++c)
        for (std::int64_t r = row - 1; r <= row + 1; ++r) {
            const auto cell = cells_.find(key(c, r));
            if (cell == cells_.end()) continue;
            for (const DugPoint& point : cell->second)
                if (point.system != system && distance_m(point.at, place) < gap_m) return false;
        }
    return true;
}

SystemDigging::SystemDigging(const FieldDomain& domain, const DugGround& others, std::uint32_t system, double gap_m,
                             double own_gap_m)
    : domain_(domain), others_(others), system_(system), gap_m_(gap_m), own_gap_m_(own_gap_m) {}

void SystemDigging::start_run(LocalPoint place) { grown_.runs.push_back({{place}}); }

bool SystemDigging::free_at(LocalPoint place) const {
    if (!domain_.open(place) || !others_.clear_of_others(place, system_, gap_m_)) return false;
    const Polyline& newest = grown_.runs.back();
    // near its start a branch is near the run that it leaves, and every tip is near the stretch just behind it
    const bool past_fork = distance_m(place, newest.vertices.front()) > 1.3 * own_gap_m_;
    const auto behind = static_cast<std::size_t>(2.0 * own_gap_m_ / dig_step_m);
    for (const Polyline& run : grown_.runs) {
        const bool is_newest = &run == &newest;
        if (!is_newest && !past_fork) continue;
        const std::size_t count = run.vertices.size();
        const std::size_t end = is_newest ? (count > behind ? count - behind : 0) : count;
        for (std::size_t i = 0; i < end; i += remembered_every)
            if (distance_m(run.vertices[i], place) < own_gap_m_) return false;
    }
    return true;
}

bool SystemDigging::free_towards(LocalPoint target) const {
    const LocalVector step = target - tip();
    const int parts = std::max(1, static_cast<int>(std::ceil(step.length_m() / (5.0 * dig_step_m))));
    for (int i = 1; i <= parts; ++i)
        if (!free_at(tip() + step * (static_cast<double>(i) / parts))) return false;
    return true;
}

void SystemDigging::dig_to(LocalPoint target) {
    const LocalPoint from = tip();
    const LocalVector step = target - from;
    const int parts = std::max(1, static_cast<int>(std::ceil(step.length_m() / dig_step_m - 1e-9)));
    for (int i = 1; i <= parts; ++i) grown_.runs.back().vertices.push_back(from + step * (static_cast<double>(i) / parts));
    grown_.length_m += step.length_m();
}

void SystemDigging::end_run(double least_m) {
    const double dug = length(grown_.runs.back()).value();
    if (dug >= least_m) return;
    grown_.length_m -= dug;
    grown_.runs.pop_back();
}

}  // namespace plugside
