#include "app/drawing/place_tool.h"

#include <utility>

namespace plugside {

void PlaceTool::ask_for(Set set) {
    set_ = std::move(set);
    cursor_.reset();
    Q_EMIT changed();
}

void PlaceTool::give_up() {
    if (!set_) return;
    set_ = nullptr;
    Q_EMIT changed();
}

void PlaceTool::hover(QPointF pixel, const ViewTransform&) {
    cursor_ = pixel;
    Q_EMIT hovered();
}

bool PlaceTool::click(QPointF pixel, const ViewTransform& view, Qt::KeyboardModifiers) {
    if (!set_) return false;
    const Set set = std::exchange(set_, nullptr);
    set(view.to_local(pixel));
    Q_EMIT changed();
    return true;
}

bool PlaceTool::key(const QKeyEvent& event, const ViewTransform& view) {
    if (event.key() != Qt::Key_Space && event.key() != Qt::Key_Return && event.key() != Qt::Key_Enter) return false;
    return click(view.screen().center(), view, {});
}

void PlaceTool::paint(QPainter& painter, const MapStyle& style, const ViewTransform& view) const {
    if (!set_) return;
    const QPointF at = cursor_.value_or(view.screen().center());
    painter.setBrush(Qt::NoBrush);
    for (const auto& [colour, width] : {std::pair(style.slip, 4.0), std::pair(style.act, 1.8)}) {
        painter.setPen(QPen(colour, width * style.line_factor));
        painter.drawRect(QRectF(at.x() - 7.0, at.y() - 7.0, 14.0, 14.0));
        painter.drawLine(at - QPointF(14.0, 0.0), at - QPointF(7.0, 0.0));
        painter.drawLine(at + QPointF(7.0, 0.0), at + QPointF(14.0, 0.0));
        painter.drawLine(at - QPointF(0.0, 14.0), at - QPointF(0.0, 7.0));
        painter.drawLine(at + QPointF(0.0, 7.0), at + QPointF(0.0, 14.0));
    }
}

}  // namespace plugside
