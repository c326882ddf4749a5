// The ways of tours as the map draws them: each with its number and a pattern of its own line, so that none needs a colour of its own.
//
// number:  as listed, from 1; it stands in a disc along the way and at its start.
// picked:  drawn strong, with arrows; the others thin. Nothing picked: all strong.
#pragma once

#include <QPainter>
#include <QPen>
#include <optional>
#include <vector>

#include "app/canvas/palette.h"
#include "core/geometry/polyline.h"

namespace plugside {

struct ShownTour {
    int number = 1;
    std::vector<Polyline> way;
};

struct TourWays {
    std::vector<ShownTour> tours;
    std::optional<int> picked;  // a number
    std::optional<LocalPoint> start;
    std::optional<LocalPoint> end;
};

// The line of a tour's way: six patterns in turn.
[[nodiscard]] QPen tour_pen(int number, double width, const MapStyle& style);
// A short piece of that line with the tour's number, for a list.
void draw_tour_sample(QPainter& painter, const QRectF& place, int number, const MapStyle& style);

}  // namespace plugside
