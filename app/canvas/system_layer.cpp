#include <algorithm>
#include <cmath>

#include "app/canvas/map_layers.h"
#include "app/canvas/system_tints.h"

namespace plugside {

namespace {

constexpr double likely = 0.8;
constexpr double worth_drawing = 0.5;
constexpr double half_width_of_90_percent = 1.645;  // standard normal quantile of .95

bool meets_view(const MapSheet& sheet, const Polyline& line) {
    GroundBox box;
    for (const LocalPoint vertex : line.vertices) box.add(vertex);
    return box.grown(Metres::of(3.0)).meets(sheet.visible);
}

// The band about a run: its two edges, joined.
QPainterPath band_of(const MapSheet& sheet, const MainRun& run) {
    const auto& vertices = run.line.vertices;
    QPolygonF left;
    QPolygonF right;
    for (std::size_t i = 0; i < vertices.size(); ++i) {
        const LocalVector along = vertices[std::min(i + 1, vertices.size() - 1)] - vertices[i == 0 ? 0 : i - 1];
        const double length = along.length_m();
        if (length <= 0.0 || i >= run.sd_m.size()) continue;
        const LocalVector across = turned_right(along) * (half_width_of_90_percent * run.sd_m[i] / length);
        right.append(sheet.screen(vertices[i] + across));
        left.append(sheet.screen(vertices[i] - across));
    }
    std::reverse(left.begin(), left.end());
    QPainterPath path;
    path.setFillRule(Qt::WindingFill);
    path.addPolygon(right + left);
    path.closeSubpath();
    return path;
}

bool is_drawn(const MapSheet& sheet, const MainRun& run) {
    return run.line.vertices.size() >= 2 && (run.probability.value() >= worth_drawing || sheet.show.unlikely_runs) &&
           meets_view(sheet, run.line);
}

void draw_bands(MapSheet& sheet) {
    std::vector<QPainterPath> bands(sheet.plan->systems.size());
    for (const MainRun& run : sheet.plan->runs) {
        if (run.system >= bands.size() || run.probability.value() < worth_drawing || !is_drawn(sheet, run)) continue;
        bands[run.system].setFillRule(Qt::WindingFill);
        bands[run.system].addPath(band_of(sheet, run));
    }
    QColor band = sheet.style.run;
    band.setAlphaF(static_cast<float>(sheet.style.band_share()));
    for (const QPainterPath& path : bands)
        if (!path.isEmpty()) sheet.painter.fillPath(path, band);
}

QPen run_pen(const MapSheet& sheet, const MainRun& run) {
    QPen pen = sheet.pen(sheet.style.run, run.probability.value() >= worth_drawing ? 2.2 : 1.1);
    pen.setJoinStyle(Qt::RoundJoin);
    if (run.probability.value() < worth_drawing) {
        pen.setDashPattern({1.0, 3.0});
    } else if (run.probability.value() < likely) {
        pen.setCapStyle(Qt::FlatCap);
        pen.setDashPattern({3.2, 2.4});
    } else {
        pen.setCapStyle(Qt::RoundCap);
    }
    return pen;
}

}  // namespace

void draw_systems(MapSheet& sheet) {
    if (!sheet.show.systems) return;
    const std::vector<std::size_t> tints = system_tints(*sheet.plan);
    for (std::size_t i = 0; i < sheet.plan->systems.size(); ++i) {
        const QPainterPath outline = screen_path(sheet.plan->systems[i].outline, sheet.view);
        if (!outline.boundingRect().intersects(sheet.view.screen()) || sheet.stop.stop_requested()) continue;
        QColor tint = sheet.style.tints.at(tints[i]);
        QColor fill = tint;
        fill.setAlphaF(static_cast<float>(sheet.style.tint_share));
        sheet.painter.fillPath(outline, fill);
        QPen edge = sheet.pen(sheet.style.tint_edge(tints[i]), 1.2);
        edge.setDashPattern({1.0, 2.4});
        edge.setCapStyle(Qt::RoundCap);
        sheet.painter.setPen(edge);
        sheet.painter.setBrush(Qt::NoBrush);
        sheet.painter.drawPath(outline);
    }
}

void draw_runs(MapSheet& sheet) {
    if (!sheet.show.runs) return;
    draw_bands(sheet);
    sheet.painter.setBrush(Qt::NoBrush);
    for (const MainRun& run : sheet.plan->runs) {
        if (!is_drawn(sheet, run)) continue;
        if (sheet.stop.stop_requested()) return;
        QPolygonF line;
        for (const LocalPoint vertex : run.line.vertices) line.append(sheet.screen(vertex));
        sheet.painter.setPen(run_pen(sheet, run));
        sheet.painter.drawPolyline(line);
    }
}

void draw_letters(MapSheet& sheet) {
    if (!sheet.show.systems || !sheet.show.names) return;
    QFont font = sheet.painter.font();
    font.setBold(true);
    font.setPixelSize(sheet.style.text(3));
    sheet.painter.setFont(font);
    const QFontMetricsF metrics(font);
    const QRectF inside = sheet.view.screen().adjusted(3.0, 3.0, -3.0, -3.0);
    for (const BurrowSystem& system : sheet.plan->systems) {
        const QRectF outline = screen_path(system.outline, sheet.view).boundingRect();
        if (!outline.intersects(sheet.view.screen())) continue;
        const QString letter = QString::fromStdString(system.letter);
        const QSizeF size(metrics.horizontalAdvance(letter) + 8.0, metrics.height());
        const QPointF label = sheet.screen(system.label_at);
        std::vector<QRectF> wished;
        const auto wish = [&](double x, double y) {
            const QRectF place(QPointF(x - 0.5 * size.width(), y - 0.5 * size.height()), size);
            if (inside.contains(place)) wished.push_back(place);
        };
        const double up = outline.top() - 0.5 * size.height() - 1.0;
        wish(label.x(), label.y());
        wish(label.x(), up);
        wish(outline.left() - 2.0, outline.top() + 4.0);
        wish(outline.right() + 2.0, outline.top() + 4.0);
        wish(label.x(), outline.bottom() + 0.5 * size.height() + 1.0);
        wish(outline.left() - 0.5 * size.width() - 1.0, label.y());
        wish(outline.right() + 0.5 * size.width() + 1.0, label.y());
        // a system that fills the view still needs its letter
        const QRectF seen = outline.intersected(inside);
        wish(seen.center().x(), seen.center().y());
        wish(seen.left() + 14.0, seen.top() + 14.0);
        if (const auto place = sheet.room.take(wished))
            draw_haloed_text(sheet.painter, *place, letter, sheet.style.ink, sheet.style.field);
    }
}

}  // namespace plugside
