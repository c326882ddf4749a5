// What stands on the map and is not ground: scale bar, north arrow.
#pragma once

#include <QPainter>
#include <vector>

#include "app/canvas/palette.h"
#include "app/canvas/view_transform.h"
#include "core/units/display.h"

namespace plugside {

// A round length that is at most `longest_px` long on the screen: 1, 2 or 5 times a power of ten, of feet (inches under a
// foot) or metres.
struct ScaleStep {
    Metres length;
    QString label;       // "60 ft"
    QString half_label;  // "30"; empty where half of it is no whole number
};
[[nodiscard]] ScaleStep scale_step(const ViewTransform& view, double longest_px, LengthUnits units);

void draw_scale_bar(QPainter& painter, const ViewTransform& view, const MapStyle& style, LengthUnits units);

// Where scale bar and north arrow stand at most.
[[nodiscard]] std::vector<QRectF> furniture_places(const ViewTransform& view, const MapStyle& style);

// Where true north is on the screen, and under it the bearing that is up.
void draw_north_arrow(QPainter& painter, const ViewTransform& view, const MapStyle& style);

}  // namespace plugside
