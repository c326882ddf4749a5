#include <QCoreApplication>
#include <algorithm>
#include <cmath>
#include <utility>

#include "app/canvas/map_layers.h"
#include "core/survey/ground_shapes.h"

namespace plugside {

namespace {

// The part of a-b inside `box`; nothing when it passes by. Liang and Barsky's clipping.
std::optional<QLineF> clipped(const QLineF& line, const QRectF& box) {
    double from = 0.0;
    double to = 1.0;
    const auto narrow = [&](double step, double room) {
        if (step == 0.0) return room >= 0.0;
        const double at = room / step;
        if (step < 0.0)
            from = std::max(from, at);
        else
            to = std::min(to, at);
        return from <= to;
    };
    if (!narrow(-line.dx(), line.x1() - box.left()) || !narrow(line.dx(), box.right() - line.x1()) ||
        !narrow(-line.dy(), line.y1() - box.top()) || !narrow(line.dy(), box.bottom() - line.y1()))
        return std::nullopt;
    return QLineF(line.pointAt(from), line.pointAt(to));
}

enum class Hatch { single, crossed };

// Slanting lines inside `area`, held to the ground so that they do not swim while the map is moved.
void draw_hatch(MapSheet& sheet, const QPainterPath& area, Hatch hatch, double spacing_px, const QPen& pen) {
    const QRectF box = area.boundingRect().intersected(sheet.view.screen());
    if (box.isEmpty()) return;
    QPainter& painter = sheet.painter;
    painter.save();
    painter.setClipPath(area, Qt::IntersectClip);
    painter.setPen(pen);
    const QPointF anchor = sheet.screen({0.0, 0.0});
    const auto lines = [&](double slope) {
        const double held = std::fmod(anchor.x() - slope * anchor.y(), spacing_px);
        const double left = std::min(box.left() - slope * box.top(), box.left() - slope * box.bottom());
        const double right = std::max(box.right() - slope * box.top(), box.right() - slope * box.bottom());
        for (double x = held + std::floor((left - held) / spacing_px) * spacing_px; x <= right; x += spacing_px)
            painter.drawLine(QPointF(x + slope * box.top(), box.top()), QPointF(x + slope * box.bottom(), box.bottom()));
    };
    lines(1.0);
    if (hatch == Hatch::crossed) lines(-1.0);
    painter.restore();
}

void draw_name(MapSheet& sheet, const QString& name, QPointF at, const QColor& ink) {
    if (!sheet.show.names || name.isEmpty()) return;
    QFont font = sheet.painter.font();
    font.setItalic(true);
    font.setPixelSize(sheet.style.text(-1));
    sheet.painter.setFont(font);
    const QSizeF size = QFontMetricsF(font).size(Qt::TextSingleLine, name) + QSizeF(8.0, 2.0);
    std::vector<QRectF> wished;
    for (const QPointF offset : {QPointF(0.0, -14.0), QPointF(0.0, 14.0), QPointF(70.0, -14.0), QPointF(-70.0, -14.0)}) {
        QRectF place(at + offset - QPointF(0.5 * size.width(), 0.5 * size.height()), size);
        const QRectF inside = sheet.view.screen().adjusted(4.0, 4.0, -4.0, -4.0);
        place.moveLeft(std::clamp(place.left(), inside.left(), std::max(inside.left(), inside.right() - size.width())));
        wished.push_back(place);
    }
    if (const auto place = sheet.room.take(wished)) draw_haloed_text(sheet.painter, *place, name, ink, sheet.style.field);
}

void draw_keep_clear(MapSheet& sheet) {
    for (const KeepClearArea& area : sheet.field.survey.ground.keep_clear) {
        const QPainterPath path = screen_path(area.area, sheet.view);
        if (!path.boundingRect().intersects(sheet.view.screen())) continue;
        sheet.painter.fillPath(path, sheet.style.kept_clear());
        QColor line = sheet.style.keep_clear;
        line.setAlphaF(0.55F);
        draw_hatch(sheet, path, Hatch::single, 9.0, sheet.pen(line, 1.0));
        sheet.painter.setPen(sheet.pen(sheet.style.keep_clear, 1.4));
        sheet.painter.setBrush(Qt::NoBrush);
        sheet.painter.drawPath(path);
        const QRectF seen = path.boundingRect().intersected(sheet.view.screen());
        draw_name(sheet, QString::fromStdString(area.name), {seen.center().x(), seen.top()}, sheet.style.keep_clear);
    }
}

void draw_ticked(MapSheet& sheet, const QLineF& part, double& travelled) {
    constexpr double tick_spacing_px = 11.0;
    const double half_tick = 3.8 * sheet.style.line_factor;
    const double length = part.length();
    if (length <= 0.0) return;
    const QPointF along(part.dx() / length, part.dy() / length);
    const QPointF across(-along.y() * half_tick, along.x() * half_tick);
    for (double at = tick_spacing_px - std::fmod(travelled, tick_spacing_px); at < length; at += tick_spacing_px)
        sheet.painter.drawLine(part.p1() + along * at - across, part.p1() + along * at + across);
    travelled += length;
}

// Left alone, to compare with: thinly dotted, so that it is not taken for a keep-clear area.
void draw_untreated(MapSheet& sheet) {
    const QPainterPath path = screen_path(sheet.field.survey.ground.untreated, sheet.view);
    if (path.isEmpty() || !path.boundingRect().intersects(sheet.view.screen())) return;
    QPen pen = sheet.pen(sheet.style.quiet_ink, 1.6);
    pen.setDashPattern({1.0, 2.5});
    pen.setCapStyle(Qt::RoundCap);
    sheet.painter.setPen(pen);
    sheet.painter.setBrush(Qt::NoBrush);
    sheet.painter.drawPath(path);
    for (const Polygon& part : sheet.field.survey.ground.untreated.parts) {
        const QRectF seen = screen_path(part, sheet.view).boundingRect().intersected(sheet.view.screen());
        if (!seen.isEmpty())
            draw_name(sheet, QCoreApplication::translate("plugside::MapView", "untreated"), {seen.center().x(), seen.top()},
                      sheet.style.quiet_ink);
    }
}

// The way across a gap: along the nearest edge's right angle; north where there is none.
QPointF across_gap(const MapSheet& sheet, const Gap& gap) {
    const Ground& ground = sheet.field.survey.ground;
    const auto edge = nearest_edge(ground, gap.at, gap.width);
    if (!edge) return {0.0, -1.0};
    const auto corners = corners_of(ground, edge->corner.shape, edge->corner.ring);
    const QLineF along(sheet.screen(corners[edge->corner.corner]),
                       sheet.screen(corners[(edge->corner.corner + 1) % corners.size()]));
    if (along.length() <= 0.0) return {0.0, -1.0};
    return {-along.dy() / along.length(), along.dx() / along.length()};
}

// A crossing: a gap with a post on either side. A gate: a gap with an arrow through it.
void draw_gaps(MapSheet& sheet) {
    const auto draw = [&](const Gap& gap, bool gate) {
        if (!sheet.sees(gap.at)) return;
        const QPointF at = sheet.screen(gap.at);
        const QPointF across = across_gap(sheet, gap);
        const QPointF along(across.y(), -across.x());
        const double half = std::max(5.0, 0.5 * sheet.view.pixels(gap.width));
        sheet.painter.setPen(sheet.pen(sheet.style.field, 5.0));
        sheet.painter.drawLine(at - along * half, at + along * half);
        sheet.painter.setPen(sheet.pen(sheet.style.barrier, 1.6));
        sheet.painter.setBrush(sheet.style.barrier);
        if (gate) {
            const QPointF tip = at + across * 9.0;
            sheet.painter.drawLine(at - across * 9.0, tip);
            sheet.painter.drawLine(tip, tip - across * 5.0 + along * 4.0);
            sheet.painter.drawLine(tip, tip - across * 5.0 - along * 4.0);
        } else {
            for (const double side : {-1.0, 1.0}) sheet.painter.drawEllipse(at + along * (side * half), 2.6, 2.6);
        }
        draw_name(sheet, QString::fromStdString(gap.name), at + QPointF(0.0, -8.0), sheet.style.barrier);
    };
    for (const Gap& crossing : sheet.field.survey.ground.crossings) draw(crossing, false);
    for (const Gap& gate : sheet.field.survey.ground.gates) draw(gate, true);
}

void draw_barriers(MapSheet& sheet) {
    const QRectF around = sheet.view.screen().adjusted(-20.0, -20.0, 20.0, 20.0);
    for (const Barrier& barrier : sheet.field.survey.ground.barriers) {
        double travelled = 0.0;
        std::vector<QLineF> seen;
        const auto& vertices = barrier.line.vertices;
        for (std::size_t i = 1; i < vertices.size(); ++i) {
            const QLineF whole(sheet.screen(vertices[i - 1]), sheet.screen(vertices[i]));
            if (const auto part = clipped(whole, around)) seen.push_back(*part);
        }
        if (seen.empty()) continue;
        for (const QLineF& part : seen) {
            sheet.painter.setPen(sheet.pen(sheet.style.barrier, 3.0));
            sheet.painter.drawLine(part);
            sheet.painter.setPen(sheet.pen(sheet.style.barrier, 1.2));
            draw_ticked(sheet, part, travelled);
        }
        const QLineF longest = *std::max_element(seen.begin(), seen.end(),
                                                 [](const QLineF& a, const QLineF& b) { return a.length() < b.length(); });
        const QString name = QString::fromStdString(barrier.name);
        draw_name(sheet, name, longest.center(), sheet.style.barrier);
    }
}

void draw_track(MapSheet& sheet) {
    QColor colour = sheet.style.quiet_ink;
    colour.setAlphaF(0.55F);
    QPen pen = sheet.pen(colour, 0.9);
    pen.setDashPattern({1.0, 3.0});
    pen.setCapStyle(Qt::RoundCap);
    sheet.painter.setPen(pen);
    const QRectF around = sheet.view.screen().adjusted(-20.0, -20.0, 20.0, 20.0);
    constexpr double least_step_px = 3.0;
    for (const Walk& walk : sheet.field.survey.walks)
        for (const TrackSegment& segment : walk.segments) {
            if (segment.empty() || sheet.stop.stop_requested()) continue;
            QPointF last = sheet.screen(segment.front().at);
            for (std::size_t i = 1; i < segment.size(); ++i) {
                const QPointF next = sheet.screen(segment[i].at);
                if (i + 1 < segment.size() && (next - last).manhattanLength() < least_step_px) continue;
                if (const auto part = clipped({last, next}, around)) sheet.painter.drawLine(*part);
                last = next;
            }
        }
}

}  // namespace

QPainterPath screen_path(const Polygon& area, const ViewTransform& view) {
    QPainterPath path;
    path.setFillRule(Qt::OddEvenFill);
    const auto add = [&](const Ring& ring) {
        if (ring.vertices.size() < 3) return;
        path.moveTo(view.to_screen(ring.vertices.front()));
        for (std::size_t i = 1; i < ring.vertices.size(); ++i) path.lineTo(view.to_screen(ring.vertices[i]));
        path.closeSubpath();
    };
    add(area.outer);
    for (const Ring& hole : area.holes) add(hole);
    return path;
}

QPainterPath screen_path(const MultiPolygon& areas, const ViewTransform& view) {
    QPainterPath path;
    path.setFillRule(Qt::OddEvenFill);
    for (const Polygon& part : areas.parts) path.addPath(screen_path(part, view));
    return path;
}

void draw_haloed_text(QPainter& painter, const QRectF& place, const QString& text, const QColor& ink, const QColor& halo) {
    QColor soft = halo;
    soft.setAlphaF(0.85F);
    painter.setPen(soft);
    for (const QPointF offset : {QPointF(-1.2, 0.0), QPointF(1.2, 0.0), QPointF(0.0, -1.2), QPointF(0.0, 1.2)})
        painter.drawText(place.translated(offset), Qt::AlignCenter, text);
    painter.setPen(ink);
    painter.drawText(place, Qt::AlignCenter, text);
}

void draw_ground(MapSheet& sheet) {
    const QPainterPath field = screen_path(sheet.field.survey.ground.boundary, sheet.view);
    if (sheet.field.survey.ground.boundary.empty())
        sheet.painter.fillRect(sheet.view.screen(), sheet.style.field);
    else
        sheet.painter.fillPath(field, sheet.style.field);
    draw_imagery(sheet);
    if (sheet.show.unwalked && sheet.show.seen) {
        draw_unseen(sheet, *sheet.show.seen);
    } else if (sheet.plan && sheet.show.unwalked) {
        const QPainterPath unwalked = screen_path(sheet.plan->unwalked, sheet.view);
        QColor ground = sheet.style.unwalked;
        ground.setAlphaF(0.10F);
        sheet.painter.fillPath(unwalked, ground);
        QColor line = sheet.style.unwalked;
        line.setAlphaF(0.34F);
        draw_hatch(sheet, unwalked, Hatch::crossed, 10.0, sheet.pen(line, 0.8));
    }
    if (sheet.show.track) draw_track(sheet);
    sheet.painter.setBrush(Qt::NoBrush);
    sheet.painter.setPen(sheet.pen(sheet.style.quiet_ink, 1.6));
    sheet.painter.drawPath(field);
    draw_keep_clear(sheet);
    draw_untreated(sheet);
    draw_barriers(sheet);
    draw_gaps(sheet);
}

}  // namespace plugside
