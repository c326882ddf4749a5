#include "app/canvas/tip.h"

#include <algorithm>
#include <utility>

namespace plugside {

std::optional<QPointF> arrow_step(const QKeyEvent& event) {
    switch (event.key()) {
        case Qt::Key_Left: return QPointF(-1.0, 0.0);
        case Qt::Key_Right: return QPointF(1.0, 0.0);
        case Qt::Key_Up: return QPointF(0.0, -1.0);
        case Qt::Key_Down: return QPointF(0.0, 1.0);
        default: return std::nullopt;
    }
}

QPointF within(const QRectF& room, QPointF pixel) {
    return {std::clamp(pixel.x(), room.left(), room.right()), std::clamp(pixel.y(), room.top(), room.bottom())};
}

void draw_tip(QPainter& painter, QPointF at, const MapStyle& style) {
    painter.setRenderHint(QPainter::Antialiasing);
    for (const auto& [colour, width] : {std::pair{style.slip, 4.0}, std::pair{style.ink, 1.4}}) {
        painter.setPen(QPen(colour, width * style.line_factor));
        painter.drawLine(at - QPointF(tip_px, 0.0), at + QPointF(tip_px, 0.0));
        painter.drawLine(at - QPointF(0.0, tip_px), at + QPointF(0.0, tip_px));
    }
}

}  // namespace plugside
