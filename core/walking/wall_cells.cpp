#include "core/walking/wall_cells.h"

#include <algorithm>
#include <cmath>

#include "core/geometry/polyline.h"

namespace plugside {

namespace {

constexpr double cells_a_side = 128.0;
constexpr double rounding_share = 1e-6;  // of a cell: lines are laid this much too broad, so that rounding hides no piece

}  // namespace

template <class Visit>
bool WallCells::along(LocalPoint a, LocalPoint b, double margin_m, const Visit& visit) const {
    if (a.north_m > b.north_m) std::swap(a, b);
    const double margin = margin_m + rounding_share * cell_m_;
    const auto row_of = [&](double north_m) { return std::floor((north_m - corner_.north_m) / cell_m_); };
    const double first = std::max(0.0, row_of(a.north_m - margin));
    const double last = std::min(static_cast<double>(rows_) - 1.0, row_of(b.north_m + margin));
    const double rise = b.north_m - a.north_m;
    const double slope = rise > 0.0 ? (b.east_m - a.east_m) / rise : 0.0;
    for (double row = first; row <= last; ++row) {
        const double south = corner_.north_m + row * cell_m_ - margin;
        const double north = south + cell_m_ + 2.0 * margin;
        double west = a.east_m;
        double east = b.east_m;
        if (rise > 0.0) {
            west = a.east_m + slope * (std::clamp(south, a.north_m, b.north_m) - a.north_m);
            east = a.east_m + slope * (std::clamp(north, a.north_m, b.north_m) - a.north_m);
        }
        if (west > east) std::swap(west, east);
        const double begin = std::max(0.0, std::floor((west - margin - corner_.east_m) / cell_m_));
        const double end =
            std::min(static_cast<double>(columns_) - 1.0, std::floor((east + margin - corner_.east_m) / cell_m_));
        for (double column = begin; column <= end; ++column)
            if (visit(static_cast<std::size_t>(row) * columns_ + static_cast<std::size_t>(column))) return true;
    }
    return false;
}

WallCells::WallCells(std::vector<WallPiece> pieces) : pieces_(std::move(pieces)) {
    if (pieces_.empty()) return;
    LocalPoint low = pieces_.front().from;
    LocalPoint high = low;
    for (const WallPiece& piece : pieces_)
        for (const LocalPoint p : {piece.from, piece.to}) {
            low = {std::min(low.east_m, p.east_m), std::min(low.north_m, p.north_m)};
            high = {std::max(high.east_m, p.east_m), std::max(high.north_m, p.north_m)};
        }
    corner_ = low;
    const LocalVector extent = high - low;
    cell_m_ = std::max({extent.east_m, extent.north_m, 1.0}) / cells_a_side;
    columns_ = static_cast<std::size_t>(extent.east_m / cell_m_) + 1;
    rows_ = static_cast<std::size_t>(extent.north_m / cell_m_) + 1;
    begins_.assign(columns_ * rows_ + 1, 0);
    for (const WallPiece& piece : pieces_)
        along(piece.from, piece.to, 0.0, [&](std::size_t cell) { return ++begins_[cell + 1], false; });
    for (std::size_t cell = 0; cell + 1 < begins_.size(); ++cell) begins_[cell + 1] += begins_[cell];
    held_.resize(begins_.back());
    std::vector<std::uint32_t> filled(begins_.begin(), begins_.end() - 1);
    for (std::uint32_t i = 0; i < pieces_.size(); ++i)
        along(pieces_[i].from, pieces_[i].to, 0.0, [&](std::size_t cell) { return held_[filled[cell]++] = i, false; });
}

bool WallCells::between(LocalPoint a, LocalPoint b) const {
    if (pieces_.empty()) return false;
    return along(a, b, 0.0, [&](std::size_t cell) {
        for (std::uint32_t k = begins_[cell]; k < begins_[cell + 1]; ++k)
            if (segments_meet(a, b, pieces_[held_[k]].from, pieces_[held_[k]].to)) return true;
        return false;
    });
}

std::optional<WallPiece> WallCells::nearest(LocalPoint place, double reach_m) const {
    std::optional<std::uint32_t> best;
    double least = reach_m;
    if (pieces_.empty()) return std::nullopt;
    along(place, place, reach_m, [&](std::size_t cell) {
        for (std::uint32_t k = begins_[cell]; k < begins_[cell + 1]; ++k) {
            const double distance = distance_to_segment_m(place, pieces_[held_[k]].from, pieces_[held_[k]].to);
            if (distance > least || (best && distance == least && held_[k] >= *best)) continue;
            least = distance;
            best = held_[k];
        }
        return false;
    });
    if (!best) return std::nullopt;
    return pieces_[*best];
}

}  // namespace plugside
