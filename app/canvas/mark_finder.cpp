#include "app/canvas/mark_finder.h"

#include <cmath>
#include <utility>

namespace plugside {

namespace {

constexpr double cell_m = 8.0;

long long cell_number(long long column, long long row) { return column * 4000037LL + row; }

long long cell_of(double metres) { return static_cast<long long>(std::floor(metres / cell_m)); }

}  // namespace

MarkFinder::MarkFinder(std::vector<LocalPoint> places) : places_(std::move(places)) {
    for (std::size_t i = 0; i < places_.size(); ++i)
        cells_[cell_number(cell_of(places_[i].east_m), cell_of(places_[i].north_m))].push_back(i);
}

std::optional<std::size_t> MarkFinder::nearest(LocalPoint to, Metres reach) const {
    std::optional<std::size_t> best;
    double least = reach.value();
    const auto consider = [&](std::size_t i) {
        const double away = distance_m(places_[i], to);
        if (away > least || (best && away == least && *best < i)) return;
        least = away;
        best = i;
    };
    const double span = std::floor(2.0 * reach.value() / cell_m) + 2.0;
    if (span * span > static_cast<double>(places_.size())) {
        for (std::size_t i = 0; i < places_.size(); ++i) consider(i);
        return best;
    }
    for (long long column = cell_of(to.east_m - reach.value()); column <= cell_of(to.east_m + reach.value()); ++column)
        for (long long row = cell_of(to.north_m - reach.value()); row <= cell_of(to.north_m + reach.value()); ++row) {
            const auto cell = cells_.find(cell_number(column, row));
            if (cell == cells_.end()) continue;
            for (const std::size_t i : cell->second) consider(i);
        }
    return best;
}

}  // namespace plugside
