// Room on the screen for letters, flags and names, so that they do not cover each other.
//
// `take` gives the first of the wished places that is free of every label taken before; among free ones it prefers the place
//        that covers the fewest marks. Nothing when none is free.
// Cost:  O(wished places) on average; labels and marks lie in cells of a grid.
#pragma once

#include <QPointF>
#include <QRectF>
#include <optional>
#include <unordered_map>
#include <vector>

namespace plugside {

class LabelRoom {
public:
    // A place that should rather stay visible, such as a mound.
    void avoid(QPointF mark);
    [[nodiscard]] std::optional<QRectF> take(const std::vector<QRectF>& wished);
    // Takes a place whatever lies there.
    void hold(const QRectF& place);
    [[nodiscard]] bool free(const QRectF& place) const;

private:
    struct Cell {
        std::vector<QRectF> labels;
        std::vector<QPointF> marks;
    };
    template <typename Visit>
    void each_cell(const QRectF& place, Visit visit) const;
    [[nodiscard]] int marks_under(const QRectF& place) const;
    std::unordered_map<long long, Cell> cells_;
};

}  // namespace plugside
