// The tip that arrow keys move over a map or a picture, in place of a mouse.
#pragma once

#include <QKeyEvent>
#include <QPainter>
#include <QPointF>
#include <QRectF>
#include <optional>

#include "app/canvas/palette.h"

namespace plugside {

inline constexpr double tip_px = 13.0;  // half as wide as its cross

// An arrow key as a step of one pixel on the screen; nothing for other keys.
[[nodiscard]] std::optional<QPointF> arrow_step(const QKeyEvent& event);
[[nodiscard]] QPointF within(const QRectF& room, QPointF pixel);
void draw_tip(QPainter& painter, QPointF at, const MapStyle& style);

}  // namespace plugside
