// The ways of tours on the map: lines on a pale ground with arrows, the number of each in discs along it, the start and the end.
#include <algorithm>
#include <array>
#include <cmath>

#include "app/canvas/map_layers.h"
#include "app/canvas/tour_ways.h"

namespace plugside {

namespace {

constexpr double between_discs_px = 240.0;
constexpr double between_arrows_px = 70.0;
constexpr double arrow_px = 5.0;

QFont disc_font(const MapStyle& style) {
    QFont font;
    font.setBold(true);
    font.setPixelSize(style.letters(11));
    return font;
}

void draw_disc(QPainter& painter, QPointF at, int number, const MapStyle& style) {
    const QFont font = disc_font(style);
    const QFontMetricsF metrics(font);
    const QString text = QString::number(number);
    const double radius = 0.5 * std::max(metrics.horizontalAdvance(text), metrics.height()) + 1.5;
    painter.setPen(QPen(style.ink, 1.2 * style.line_factor));
    painter.setBrush(style.slip);
    painter.drawEllipse(at, radius, radius);
    painter.setFont(font);
    painter.drawText(QRectF(at.x() - radius, at.y() - radius, 2.0 * radius, 2.0 * radius), Qt::AlignCenter, text);
}

void draw_arrow(QPainter& painter, QPointF at, QPointF along, const MapStyle& style) {
    const QPointF across(-along.y(), along.x());
    QPolygonF head{at + arrow_px * along, at - 0.8 * arrow_px * along + 0.8 * arrow_px * across,
                   at - 0.8 * arrow_px * along - 0.8 * arrow_px * across};
    painter.setPen(QPen(style.slip, 1.0));
    painter.setBrush(style.ink);
    painter.drawPolygon(head);
}

// One way in pixels, and the signs along it.
struct DrawnWay {
    QPainterPath path;
    std::vector<QPointF> discs;
    std::vector<std::pair<QPointF, QPointF>> arrows;
};

class WayAlong {
public:
    explicit WayAlong(const QRectF& screen) : screen_(screen.adjusted(-20.0, -20.0, 20.0, 20.0)) {}

    void go(QPointF from, QPointF to) {
        const double length = std::hypot(to.x() - from.x(), to.y() - from.y());
        if (length <= 0.0) return;
        const QPointF along = (to - from) / length;
        // far beyond the screen nothing is put, however long the way there is
        const bool seen = QRectF(from, to).normalized().adjusted(-1.0, -1.0, 1.0, 1.0).intersects(screen_);
        if (seen) {
            for (double at = next(arrow_at_, between_arrows_px); at < gone_ + length; at += between_arrows_px) {
                const QPointF place = from + along * (at - gone_);
                if (screen_.contains(place)) way.arrows.emplace_back(place, along);
                arrow_at_ = at + between_arrows_px;
            }
            for (double at = next(disc_at_, between_discs_px); at < gone_ + length; at += between_discs_px) {
                const QPointF place = from + along * (at - gone_);
                if (screen_.contains(place)) way.discs.push_back(place);
                disc_at_ = at + between_discs_px;
            }
            if (way.path.isEmpty() || way.path.currentPosition() != from) way.path.moveTo(from);
            way.path.lineTo(to);
        }
        gone_ += length;
    }

    DrawnWay way;

private:
    // The next multiple that has not been drawn yet.
    [[nodiscard]] double next(double planned, double step) const {
        return planned >= gone_ ? planned : planned + std::ceil((gone_ - planned) / step) * step;
    }

    QRectF screen_;
    double gone_ = 0.0;
    double arrow_at_ = 0.5 * between_arrows_px;
    double disc_at_ = 0.25 * between_discs_px;
};

DrawnWay drawn_way(const MapSheet& sheet, const ShownTour& tour) {
    WayAlong along(sheet.view.screen());
    for (const Polyline& stretch : tour.way)
        for (std::size_t i = 1; i < stretch.vertices.size(); ++i)
            along.go(sheet.screen(stretch.vertices[i - 1]), sheet.screen(stretch.vertices[i]));
    return std::move(along.way);
}

// A square with its foot at the place: where the tours begin; a ring about where they end.
void draw_ends(MapSheet& sheet, const TourWays& ways) {
    QPainter& painter = sheet.painter;
    if (ways.end) {
        painter.setBrush(Qt::NoBrush);
        painter.setPen(sheet.pen(sheet.style.slip, 5.0));
        painter.drawEllipse(sheet.screen(*ways.end), 10.0, 10.0);
        painter.setPen(sheet.pen(sheet.style.ink, 2.0));
        painter.drawEllipse(sheet.screen(*ways.end), 10.0, 10.0);
    }
    if (!ways.start) return;
    const QPointF at = sheet.screen(*ways.start);
    painter.setPen(sheet.pen(sheet.style.slip, 1.5));
    painter.setBrush(sheet.style.ink);
    painter.drawRect(QRectF(at.x() - 6.0, at.y() - 6.0, 12.0, 12.0));
}

}  // namespace

QPen tour_pen(int number, double width, const MapStyle& style) {
    static const std::array<QList<qreal>, 6> patterns{QList<qreal>{},
                                                      QList<qreal>{6.0, 3.0},
                                                      QList<qreal>{1.0, 2.2},
                                                      QList<qreal>{8.0, 2.5, 1.0, 2.5},
                                                      QList<qreal>{3.0, 2.0},
                                                      QList<qreal>{8.0, 2.0, 1.0, 2.0, 1.0, 2.0}};
    QPen pen(style.ink, width * style.line_factor);
    pen.setCapStyle(Qt::FlatCap);
    pen.setJoinStyle(Qt::RoundJoin);
    const auto& pattern = patterns[static_cast<std::size_t>(number - 1) % patterns.size()];
    if (!pattern.isEmpty()) pen.setDashPattern(pattern);
    return pen;
}

void draw_tour_sample(QPainter& painter, const QRectF& place, int number, const MapStyle& style) {
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(tour_pen(number, 2.0, style));
    painter.drawLine(QPointF(place.left(), place.center().y()), QPointF(place.right(), place.center().y()));
    draw_disc(painter, {place.left() + style.letters(11), place.center().y()}, number, style);
}

void draw_tours(MapSheet& sheet) {
    if (!sheet.show.tours) return;
    const TourWays& ways = *sheet.show.tours;
    QPainter& painter = sheet.painter;
    for (const bool strong : {false, true})
        for (const ShownTour& tour : ways.tours) {
            if ((!ways.picked || *ways.picked == tour.number) != strong) continue;
            if (sheet.stop.stop_requested()) return;
            const DrawnWay way = drawn_way(sheet, tour);
            painter.setBrush(Qt::NoBrush);
            painter.setPen(sheet.pen(sheet.style.slip, strong ? 5.0 : 2.5));
            painter.drawPath(way.path);
            painter.setPen(tour_pen(tour.number, strong ? 2.2 : 1.0, sheet.style));
            painter.drawPath(way.path);
            if (!strong) continue;
            for (const auto& [at, along] : way.arrows) draw_arrow(painter, at, along, sheet.style);
            for (const QPointF at : way.discs) draw_disc(painter, at, tour.number, sheet.style);
        }
    draw_ends(sheet, ways);
}

}  // namespace plugside
