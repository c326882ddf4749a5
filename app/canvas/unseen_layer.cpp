#include <QPainterPath>
#include <algorithm>
#include <cmath>
#include <optional>

#include "app/canvas/map_layers.h"

namespace plugside {

namespace {

constexpr double spacing_px = 12.0;
constexpr double least_step_px = 3.0;
constexpr double least_piece_px = 7.0;

// The chance seen between the middles of cells; nothing where no cell of the field is near.
class SeenAt {
public:
    explicit SeenAt(const SeenSurface& surface) : surface_(surface) {}

    [[nodiscard]] std::optional<double> operator()(LocalPoint place) const {
        const double column = (place.east_m - surface_.south_west.east_m) / surface_.cell_m - 0.5;
        const double row = (place.north_m - surface_.south_west.north_m) / surface_.cell_m - 0.5;
        const double left = std::floor(column);
        const double low = std::floor(row);
        double sum = 0.0;
        double weight = 0.0;
        for (int right = 0; right < 2; ++right)
            for (int up = 0; up < 2; ++up) {
                const auto chance = cell(left + right, low + up);
                if (!chance) continue;
                const double share =
                    (right == 1 ? column - left : 1.0 - column + left) * (up == 1 ? row - low : 1.0 - row + low);
                sum += share * *chance;
                weight += share;
            }
        if (weight <= 1e-6) return std::nullopt;
        return sum / weight;
    }

private:
    [[nodiscard]] std::optional<double> cell(double column, double row) const {
        if (column < 0.0 || row < 0.0 || column >= static_cast<double>(surface_.columns) ||
            row >= static_cast<double>(surface_.rows))
            return std::nullopt;
        const std::size_t index = static_cast<std::size_t>(row) * surface_.columns + static_cast<std::size_t>(column);
        const double chance = static_cast<double>(surface_.chance[index]);
        if (chance < 0.0) return std::nullopt;
        return chance;
    }

    const SeenSurface& surface_;
};

// Draws the parts of a screen line where less than `below` was seen.
void draw_unseen_along(MapSheet& sheet, const SeenAt& seen, const QLineF& line, double step_px, double below) {
    const double length = line.length();
    const int steps = std::max(1, static_cast<int>(std::ceil(length / step_px)));
    const auto excess = [&](double share) -> std::optional<double> {
        const auto chance = seen(sheet.view.to_local(line.pointAt(share)));
        if (!chance) return std::nullopt;
        return *chance - below;
    };
    // a scrap of a line tells nothing and looks like a mark
    const auto draw_piece = [&](double begin, double end) {
        if ((end - begin) * length >= least_piece_px) sheet.painter.drawLine(line.pointAt(begin), line.pointAt(end));
    };
    std::optional<double> from;
    std::optional<double> last = excess(0.0);
    if (last && *last < 0.0) from = 0.0;
    double last_share = 0.0;
    for (int i = 1; i <= steps; ++i) {
        const double share = static_cast<double>(i) / steps;
        const auto here = excess(share);
        const bool inside = here && *here < 0.0;
        if (inside != from.has_value()) {
            const double cut = last && here && *last != *here
                                   ? last_share + (share - last_share) * std::clamp(*last / (*last - *here), 0.0, 1.0)
                                   : 0.5 * (last_share + share);
            if (from) draw_piece(*from, cut);
            from = inside ? std::optional(cut) : std::nullopt;
        }
        last = here;
        last_share = share;
    }
    if (from) draw_piece(*from, 1.0);
}

void draw_family(MapSheet& sheet, const SeenAt& seen, const QRectF& box, double slope, double step_px, double below) {
    const QPointF anchor = sheet.screen({0.0, 0.0});
    const double held = std::fmod(anchor.x() - slope * anchor.y(), spacing_px);
    const double left = std::min(box.left() - slope * box.top(), box.left() - slope * box.bottom());
    const double right = std::max(box.right() - slope * box.top(), box.right() - slope * box.bottom());
    for (double x = held + std::floor((left - held) / spacing_px) * spacing_px; x <= right; x += spacing_px) {
        if (sheet.stop.stop_requested()) return;
        draw_unseen_along(sheet, seen,
                          {QPointF(x + slope * box.top(), box.top()), QPointF(x + slope * box.bottom(), box.bottom())},
                          step_px, below);
    }
}

}  // namespace

void draw_unseen(MapSheet& sheet, const SeenSurface& surface) {
    if (surface.chance.empty() || surface.columns == 0 || surface.rows == 0) return;
    const LocalPoint far{surface.south_west.east_m + static_cast<double>(surface.columns) * surface.cell_m,
                         surface.south_west.north_m + static_cast<double>(surface.rows) * surface.cell_m};
    const LocalPoint near = surface.south_west;
    const QRectF box = QPolygonF({sheet.screen(near), sheet.screen({near.east_m, far.north_m}), sheet.screen(far),
                                  sheet.screen({far.east_m, near.north_m})})
                           .boundingRect();
    const QRectF seen_box = box.intersected(sheet.view.screen());
    if (seen_box.isEmpty()) return;
    sheet.painter.save();
    const MultiPolygon& boundary = sheet.field.survey.ground.boundary;
    if (!boundary.empty()) sheet.painter.setClipPath(screen_path(boundary, sheet.view), Qt::IntersectClip);
    QColor line = sheet.style.unwalked;
    line.setAlphaF(sheet.style.theme == Theme::light ? 0.8F : 0.95F);
    sheet.painter.setPen(sheet.pen(line, 1.0));
    const SeenAt seen(surface);
    const double step_px = std::max(least_step_px, 0.5 * surface.cell_m * sheet.view.pixels_per_metre());
    draw_family(sheet, seen, seen_box, 1.0, step_px, half_seen);
    draw_family(sheet, seen, seen_box, -1.0, step_px, hardly_seen);
    sheet.painter.restore();
}

void draw_unseen_swatch(QPainter& painter, const QRectF& place, bool crossed, const MapStyle& style) {
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setClipRect(place);
    painter.fillRect(place, style.field);
    QColor line = style.unwalked;
    line.setAlphaF(style.theme == Theme::light ? 0.75F : 0.95F);
    painter.setPen(QPen(line, 1.0 * style.line_factor));
    for (double x = place.left() - place.height(); x < place.right(); x += 7.0) {
        painter.drawLine(QPointF(x, place.top()), QPointF(x + place.height(), place.bottom()));
        if (crossed) painter.drawLine(QPointF(x, place.bottom()), QPointF(x + place.height(), place.top()));
    }
    painter.setPen(QPen(style.quiet_ink, 1.0));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(place.adjusted(0.5, 0.5, -0.5, -0.5));
    painter.restore();
}

}  // namespace plugside
