// The part of a system that is the reason of a caution: its corridor hatched and edged in the colour of a stop, and a broken line
// from the place that comes nearest to what it comes near to.
#include <algorithm>

#include "app/canvas/map_layers.h"
#include "core/sets/system_reach.h"

namespace plugside {

namespace {

constexpr double least_width_px = 12.0;  // so that a part is found at the scale of a whole field

QPainterPath corridor(const MapSheet& sheet, const Polyline& part, double half_width_m) {
    QPainterPath line;
    for (std::size_t i = 0; i < part.vertices.size(); ++i) {
        const QPointF at = sheet.screen(part.vertices[i]);
        if (i == 0)
            line.moveTo(at);
        else
            line.lineTo(at);
    }
    if (part.vertices.size() == 1) line.lineTo(sheet.screen(part.vertices.front()) + QPointF(0.1, 0.0));
    QPainterPathStroker stroker;
    stroker.setWidth(std::max(least_width_px, 2.0 * sheet.view.pixels(Metres::of(half_width_m))));
    stroker.setCapStyle(Qt::RoundCap);
    stroker.setJoinStyle(Qt::RoundJoin);
    return stroker.createStroke(line);
}

void draw_reason(MapSheet& sheet, const ReachReason& reason) {
    QPainter& painter = sheet.painter;
    QPainterPath area;
    area.setFillRule(Qt::WindingFill);
    for (std::size_t i = 0; i < reason.parts.size(); ++i)
        if (!reason.parts[i].vertices.empty())
            area =
                area.united(corridor(sheet, reason.parts[i], i < reason.half_width_m.size() ? reason.half_width_m[i] : 0.0));
    const MapStyle& style = sheet.style;
    painter.fillPath(area, style.stop_ground);
    painter.setBrushOrigin(sheet.screen({0.0, 0.0}));
    painter.fillPath(area, QBrush(style.stop_ink, Qt::BDiagPattern));
    painter.setBrush(Qt::NoBrush);
    painter.setPen(sheet.pen(style.stop_ink, 2.0));
    painter.drawPath(area);
    QPen way = sheet.pen(style.stop_ink, 1.8);
    way.setDashPattern({4.0, 3.0});
    painter.setPen(way);
    painter.drawLine(sheet.screen(reason.from), sheet.screen(reason.to));
    painter.setBrush(style.stop_ink);
    for (const LocalPoint end : {reason.from, reason.to}) painter.drawEllipse(sheet.screen(end), 3.0, 3.0);
}

}  // namespace

void draw_reasons(MapSheet& sheet) {
    if (!sheet.show.reasons) return;
    for (const ReachReason& reason : *sheet.show.reasons) draw_reason(sheet, reason);
}

}  // namespace plugside
