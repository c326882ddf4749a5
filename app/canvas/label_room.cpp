#include "app/canvas/label_room.h"

#include <cmath>

namespace plugside {

namespace {

constexpr double cell_px = 48.0;

long long cell_number(long column, long row) { return static_cast<long long>(column) * 1000003LL + row; }

long cell_of(double pixel) { return static_cast<long>(std::floor(pixel / cell_px)); }

}  // namespace

template <typename Visit>
void LabelRoom::each_cell(const QRectF& place, Visit visit) const {
    for (long column = cell_of(place.left()); column <= cell_of(place.right()); ++column)
        for (long row = cell_of(place.top()); row <= cell_of(place.bottom()); ++row) {
            const auto found = cells_.find(cell_number(column, row));
            if (found != cells_.end()) visit(found->second);
        }
}

void LabelRoom::avoid(QPointF mark) { cells_[cell_number(cell_of(mark.x()), cell_of(mark.y()))].marks.push_back(mark); }

void LabelRoom::hold(const QRectF& place) {
    for (long column = cell_of(place.left()); column <= cell_of(place.right()); ++column)
        for (long row = cell_of(place.top()); row <= cell_of(place.bottom()); ++row)
            cells_[cell_number(column, row)].labels.push_back(place);
}

bool LabelRoom::free(const QRectF& place) const {
    bool clear = true;
    each_cell(place, [&](const Cell& cell) {
        for (const QRectF& label : cell.labels) clear = clear && !label.intersects(place);
    });
    return clear;
}

int LabelRoom::marks_under(const QRectF& place) const {
    int count = 0;
    each_cell(place, [&](const Cell& cell) {
        for (const QPointF& mark : cell.marks) count += place.contains(mark) ? 1 : 0;
    });
    return count;
}

std::optional<QRectF> LabelRoom::take(const std::vector<QRectF>& wished) {
    std::optional<QRectF> best;
    int fewest = 0;
    for (const QRectF& place : wished) {
        if (!free(place)) continue;
        const int covered = marks_under(place);
        if (best && covered >= fewest) continue;
        best = place;
        fewest = covered;
        if (covered == 0) break;
    }
    if (best) hold(*best);
    return best;
}

}  // namespace plugside
