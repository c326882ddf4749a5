#include "app/canvas/standing_mark.h"

#include "app/canvas/map_layers.h"

namespace plugside {

namespace {

constexpr double ring_px = 9.0;
constexpr double dot_px = 4.0;

}  // namespace

void draw_standing(QPainter& painter, const Standing& standing, const ViewTransform& view, const MapStyle& style) {
    const QPointF at = view.to_screen(standing.at);
    const double reach = standing.radius ? view.pixels(*standing.radius) : 0.0;
    const double wide = std::max(reach, ring_px) + 4.0;
    if (!view.screen().adjusted(-wide, -wide, wide, wide).contains(at)) return;
    const bool past = standing.age == Standing::Age::past;
    painter.save();
    if (reach > ring_px && !past) {
        QColor within = style.run;
        within.setAlphaF(0.12F);
        painter.setBrush(within);
        painter.setPen(
            QPen(style.run, 1.4 * style.line_factor, standing.age == Standing::Age::now ? Qt::SolidLine : Qt::DashLine));
        painter.drawEllipse(at, reach, reach);
    }
    painter.setBrush(standing.age == Standing::Age::now ? style.slip : QColor(Qt::transparent));
    painter.setPen(QPen(style.slip, 5.5 * style.line_factor));
    painter.drawEllipse(at, ring_px, ring_px);
    painter.setPen(QPen(style.ink, 2.4 * style.line_factor, past ? Qt::DotLine : Qt::SolidLine));
    painter.drawEllipse(at, ring_px, ring_px);
    if (standing.age == Standing::Age::now) {
        painter.setPen(Qt::NoPen);
        painter.setBrush(style.ink);
        painter.drawEllipse(at, dot_px, dot_px);
    }
    if (!standing.label.isEmpty()) {
        QFont font = painter.font();
        font.setPixelSize(style.text());
        font.setBold(true);
        painter.setFont(font);
        const double width = QFontMetricsF(font).horizontalAdvance(standing.label);
        draw_haloed_text(painter,
                         QRectF(at + QPointF(ring_px + 6.0, -style.room(11.0)), QSizeF(width + 4.0, style.room(22.0))),
                         standing.label, style.ink, style.slip);
    }
    painter.restore();
}

}  // namespace plugside
