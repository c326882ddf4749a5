#include "core/geometry/space_curve.h"

#include <algorithm>
#include <cassert>
#include <limits>
#include <tuple>

namespace plugside {

namespace {

constexpr double cells_a_metre = 16.0;

std::uint64_t interleaved(std::uint32_t x, std::uint32_t y) {
    const auto spread = [](std::uint64_t v) {
        v = (v | (v << 16U)) & 0x0000FFFF0000FFFFULL;
        v = (v | (v << 8U)) & 0x00FF00FF00FF00FFULL;
        v = (v | (v << 4U)) & 0x0F0F0F0F0F0F0F0FULL;
        v = (v | (v << 2U)) & 0x3333333333333333ULL;
        return (v | (v << 1U)) & 0x5555555555555555ULL;
    };
    return spread(x) | (spread(y) << 1U);
}

std::uint32_t cell_of(double metres) { return static_cast<std::uint32_t>(std::min(metres * cells_a_metre, 4294967295.0)); }

}  // namespace

std::uint64_t along_curve(double east_m, double north_m) { return interleaved(cell_of(east_m), cell_of(north_m)); }

std::vector<std::uint32_t> order_along_curve(std::span<const LocalPoint> places) {
    assert(places.size() < std::numeric_limits<std::uint32_t>::max());
    double west = std::numeric_limits<double>::infinity();
    double south = west;
    for (const LocalPoint place : places) {
        west = std::min(west, place.east_m);
        south = std::min(south, place.north_m);
    }
    struct Ranked {
        std::uint64_t cell;
        std::uint32_t index;
    };
    std::vector<Ranked> ranked(places.size());
    for (std::uint32_t i = 0; i < places.size(); ++i)
        ranked[i] = {along_curve(places[i].east_m - west, places[i].north_m - south), i};
    std::sort(ranked.begin(), ranked.end(), [&](const Ranked& a, const Ranked& b) {
        if (a.cell != b.cell) return a.cell < b.cell;
        const LocalPoint p = places[a.index];
        const LocalPoint q = places[b.index];
        return std::tuple(p.east_m, p.north_m, a.index) < std::tuple(q.east_m, q.north_m, b.index);
    });
    std::vector<std::uint32_t> order(places.size());
    for (std::size_t rank = 0; rank < ranked.size(); ++rank) order[rank] = ranked[rank].index;
    return order;
}

}  // namespace plugside
