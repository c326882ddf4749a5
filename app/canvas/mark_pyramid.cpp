#include "app/canvas/mark_pyramid.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace plugside {

namespace {

constexpr double finest_m = 2.0;
constexpr std::int64_t middle_index = 1 << 30;  // cells are counted from far south-west, so that halving rounds one way
constexpr std::size_t few_cells = 64;

std::uint64_t index_of(double metres, double cell_m) {
    const double cell = std::clamp(std::floor(metres / cell_m), -2e6, 2e6);
    return static_cast<std::uint64_t>(static_cast<std::int64_t>(cell) + middle_index);
}

// The same place in cells twice as wide, level by level: the offset halves with the cells.
std::uint64_t index_at(double metres, std::size_t level) { return index_of(metres, finest_m) >> level; }

constexpr std::uint64_t key_of(std::uint64_t row, std::uint64_t column) { return row << 32U | column; }
constexpr std::uint64_t row_of(std::uint64_t key) { return key >> 32U; }
constexpr std::uint64_t column_of(std::uint64_t key) { return key & 0xffffffffU; }

using Cells = std::vector<MarkPyramid::Cell>;

// Neighbouring cells of one key become one; of equal weights the first mark is foremost.
void merge_equal(Cells& cells, const std::vector<std::uint8_t>& weights) {
    std::size_t kept = 0;
    for (std::size_t i = 0; i < cells.size(); ++i) {
        if (kept == 0 || cells[kept - 1].key != cells[i].key) {
            cells[kept++] = cells[i];
            continue;
        }
        MarkPyramid::Cell& into = cells[kept - 1];
        into.count += cells[i].count;
        const int lead = weights[cells[i].foremost] - weights[into.foremost];
        if (lead > 0 || (lead == 0 && cells[i].foremost < into.foremost)) into.foremost = cells[i].foremost;
    }
    cells.resize(kept);
}

// Two rows of cells become one: each is in order already.
Cells coarser(const Cells& fine, const std::vector<std::uint8_t>& weights) {
    Cells cells = fine;
    const auto by_key = [](const MarkPyramid::Cell& a, const MarkPyramid::Cell& b) { return a.key < b.key; };
    const auto first_of_row = [&](Cells::iterator from, std::uint64_t row) {
        return std::find_if(from, cells.end(), [&](const MarkPyramid::Cell& cell) { return row_of(cell.key) >= row; });
    };
    for (auto from = cells.begin(); from != cells.end();) {
        const std::uint64_t row = row_of(from->key) & ~std::uint64_t{1};
        const auto upper = first_of_row(from, row + 1);
        const auto end = first_of_row(upper, row + 2);
        for (auto cell = from; cell != end; ++cell) cell->key = key_of(row >> 1U, column_of(cell->key) >> 1U);
        std::inplace_merge(from, upper, end, by_key);
        from = end;
    }
    merge_equal(cells, weights);
    return cells;
}

}  // namespace

int MarkPyramid::weight(const Mound& mound) {
    if (!is_gopher_sign(mound.kind)) return 0;
    switch (mound.freshness) {
        case Freshness::crushed: return 1;
        case Freshness::older: return 2;
        case Freshness::unknown: return 3;
        case Freshness::fresh: return 4;
    }
    return 0;
}

LocalPoint MarkPyramid::Cell::middle(double side_m) const {
    const auto metres = [&](std::uint64_t index) {
        return (static_cast<double>(index) + 0.5) * side_m - static_cast<double>(middle_index) * finest_m;
    };
    return {metres(column_of(key)), metres(row_of(key))};
}

MarkPyramid::MarkPyramid(const std::vector<Mound>& mounds, bool other_diggers) {
    std::vector<std::uint8_t> weights(mounds.size());
    std::vector<std::pair<std::uint64_t, std::uint32_t>> keyed;
    keyed.reserve(mounds.size());
    places_.reserve(mounds.size());
    for (std::size_t i = 0; i < mounds.size(); ++i) {
        weights[i] = static_cast<std::uint8_t>(weight(mounds[i]));
        places_.push_back(mounds[i].plug);
        if (!other_diggers && !is_gopher_sign(mounds[i].kind)) continue;
        keyed.emplace_back(key_of(index_of(mounds[i].plug.north_m, finest_m), index_of(mounds[i].plug.east_m, finest_m)),
                           static_cast<std::uint32_t>(i));
    }
    std::sort(keyed.begin(), keyed.end());
    Cells finest;
    order_.reserve(keyed.size());
    for (const auto& [key, mark] : keyed) {
        if (finest.empty() || finest.back().key != key) begin_.push_back(static_cast<std::uint32_t>(order_.size()));
        order_.push_back(mark);
        finest.push_back({key, mark, 1});
        if (finest.size() > 1 && finest[finest.size() - 2].key == key) {
            Cell& into = finest[finest.size() - 2];
            ++into.count;
            if (weights[mark] > weights[into.foremost]) into.foremost = mark;
            finest.pop_back();
        }
    }
    begin_.push_back(static_cast<std::uint32_t>(order_.size()));
    levels_.push_back(std::move(finest));
    while (levels_.back().size() > few_cells) levels_.push_back(coarser(levels_.back(), weights));
}

double MarkPyramid::cell_m(std::size_t level) { return std::ldexp(finest_m, static_cast<int>(level)); }

std::size_t MarkPyramid::level_of(double least_cell_m) const {
    std::size_t level = 0;
    while (level + 1 < levels_.size() && cell_m(level) < least_cell_m) ++level;
    return level;
}

template <typename Visit>
void MarkPyramid::each_cell(std::size_t level, const GroundBox& box, Visit visit) const {
    if (level >= levels_.size() || box.empty()) return;
    const Cells& cells = levels_[level];
    const std::uint64_t west = index_at(box.low().east_m, level), east = index_at(box.high().east_m, level);
    const std::uint64_t north = index_at(box.high().north_m, level);
    const auto at_or_after = [](const Cell& cell, std::uint64_t key) { return cell.key < key; };
    auto cell = cells.begin();
    for (std::uint64_t row = index_at(box.low().north_m, level); row <= north; ++row) {
        cell = std::lower_bound(cell, cells.end(), key_of(row, west), at_or_after);
        if (cell == cells.end()) return;
        row = std::max(row, row_of(cell->key));  // rows without a cell are passed over
        if (row > north) return;
        for (; cell != cells.end() && row_of(cell->key) == row && column_of(cell->key) <= east; ++cell)
            if (column_of(cell->key) >= west && !visit(static_cast<std::size_t>(cell - cells.begin()))) return;
    }
}

std::vector<MarkPyramid::Cell> MarkPyramid::cells(std::size_t level, const GroundBox& box) const {
    std::vector<Cell> seen;
    each_cell(level, box, [&](std::size_t i) {
        seen.push_back(levels_[level][i]);
        return true;
    });
    return seen;
}

std::optional<std::vector<std::uint32_t>> MarkPyramid::within(const GroundBox& box, std::size_t most) const {
    std::vector<std::uint32_t> marks;
    const LocalPoint low = box.low(), high = box.high();
    each_cell(0, box, [&](std::size_t i) {
        for (std::uint32_t k = begin_[i]; k < begin_[i + 1]; ++k) {
            const LocalPoint at = places_[order_[k]];
            if (at.east_m >= low.east_m && at.east_m <= high.east_m && at.north_m >= low.north_m && at.north_m <= high.north_m)
                marks.push_back(order_[k]);
        }
        return marks.size() <= most;
    });
    if (marks.size() > most) return std::nullopt;
    return marks;
}

template <typename Counts>
std::optional<std::size_t> MarkPyramid::nearest_of(LocalPoint to, Metres reach, Counts counts) const {
    std::optional<std::size_t> best;
    double least = reach.value();
    // boxes about the place, each twice as wide as the one before, until one holds the nearest for certain
    for (double half = std::min(finest_m, reach.value());; half = std::min(2.0 * half, reach.value())) {
        GroundBox box;
        box.add({to.east_m - half, to.north_m - half});
        box.add({to.east_m + half, to.north_m + half});
        each_cell(0, box, [&](std::size_t i) {
            for (std::uint32_t k = begin_[i]; k < begin_[i + 1]; ++k) {
                const double away = distance_m(places_[order_[k]], to);
                if (away > least || (best && away == least && *best <= order_[k]) || !counts(places_[order_[k]])) continue;
                least = away;
                best = order_[k];
            }
            return true;
        });
        if (half >= reach.value() || (best && least <= half)) return best;
    }
}

std::optional<std::size_t> MarkPyramid::nearest(LocalPoint to, Metres reach) const {
    return nearest_of(to, reach, [](LocalPoint) { return true; });
}

std::optional<std::size_t> MarkPyramid::nearest_towards(LocalPoint from, LocalVector ahead, Metres reach) const {
    return nearest_of(from, reach, [&](LocalPoint place) {
        const LocalVector way = place - from;
        const double forward = dot(way, ahead);
        return forward > 0.0 && std::abs(cross(way, ahead)) <= forward;
    });
}

}  // namespace plugside
