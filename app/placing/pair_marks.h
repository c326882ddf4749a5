// How a pair is drawn, on the picture and on the map alike: a ring with a cross in its middle and its number beside it.
//
// left_over: from where the pair was put to where the placement has it, drawn as a line; nothing without a placement.
#pragma once

#include <QPainter>
#include <optional>

#include "app/canvas/palette.h"

namespace plugside {

struct PairMark {
    QPointF at;
    std::optional<QPointF> left_over;
    int number = 0;  // 0: half a pair, without a number
    bool picked = false;
    bool worst = false;
};

inline constexpr double pair_mark_px = 8.0;  // radius

void draw_pair_mark(QPainter& painter, const PairMark& mark, const MapStyle& style);

}  // namespace plugside
