#include "core/systems/barrier_cells.h"

#include <algorithm>
#include <cmath>

namespace plugside {

namespace {

constexpr double cell_m = 32.0;  // about the reach of a link

std::int64_t cell_of(double metres) { return static_cast<std::int64_t>(std::floor(metres / cell_m)); }

std::uint64_t key_of(std::int64_t column, std::int64_t row) {
    return (static_cast<std::uint64_t>(column) << 32U) ^ (static_cast<std::uint64_t>(row) & 0xffffffffULL);
}

// Asks `visit` about each cell that the box of the two places meets, until it says true.
template <class Visit>
bool any_cell(LocalPoint a, LocalPoint b, const Visit& visit) {
    const auto [west, east] = std::minmax(a.east_m, b.east_m);
    const auto [south, north] = std::minmax(a.north_m, b.north_m);
    for (std::int64_t column = cell_of(west); column <= cell_of(east); ++column)
        for (std::int64_t row = cell_of(south); row <= cell_of(north); ++row)
            if (visit(key_of(column, row))) return true;
    return false;
}

}  // namespace

BarrierCells::BarrierCells(std::span<const Barrier> barriers) {
    for (const Barrier& barrier : barriers) {
        const std::vector<LocalPoint>& vertices = barrier.line.vertices;
        for (std::size_t i = 1; i < vertices.size(); ++i) {
            const LocalVector whole = vertices[i] - vertices[i - 1];
            const auto parts = static_cast<std::size_t>(std::ceil(whole.length_m() / cell_m)) + 1;
            const auto at = [&](std::size_t part) {
                if (part == parts) return vertices[i];
                return vertices[i - 1] + whole * (static_cast<double>(part) / static_cast<double>(parts));
            };
            for (std::size_t part = 0; part < parts; ++part) pieces_.push_back({at(part), at(part + 1)});
        }
    }
    for (std::uint32_t i = 0; i < pieces_.size(); ++i)
        any_cell(pieces_[i].from, pieces_[i].to, [&](std::uint64_t key) {
            cells_[key].push_back(i);
            return false;
        });
}

bool BarrierCells::between(LocalPoint a, LocalPoint b) const {
    if (pieces_.empty()) return false;
    return any_cell(a, b, [&](std::uint64_t key) {
        const auto cell = cells_.find(key);
        return cell != cells_.end() && std::any_of(cell->second.begin(), cell->second.end(), [&](std::uint32_t i) {
                   return segments_meet(a, b, pieces_[i].from, pieces_[i].to);
               });
    });
}

}  // namespace plugside
