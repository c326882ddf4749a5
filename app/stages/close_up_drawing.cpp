#include "app/stages/close_up_drawing.h"

#include <QPainter>
#include <QPainterPath>
#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

#include "app/canvas/map_layers.h"
#include "app/canvas/mound_glyph.h"
#include "app/stages/close_up.h"

namespace plugside {

namespace {

constexpr double fan_m = 0.34;

QPointF direction(double turn_degrees) {
    const double turn = turn_degrees * std::numbers::pi / 180.0;
    return {std::sin(turn), -std::cos(turn)};
}

void draw_small(QPainter& painter, const QRectF& place, Qt::Alignment alignment, const QString& text, const QColor& ink,
                const QColor& halo, int pixel_size, bool bold = false) {
    QFont font = painter.font();
    font.setPixelSize(pixel_size);
    font.setBold(bold);
    painter.setFont(font);
    painter.setPen(halo);
    for (const QPointF offset : {QPointF(-1.2, 0.0), QPointF(1.2, 0.0), QPointF(0.0, -1.2), QPointF(0.0, 1.2)})
        painter.drawText(place.translated(offset), static_cast<int>(alignment), text);
    painter.setPen(ink);
    painter.drawText(place, static_cast<int>(alignment), text);
}

// The zigzag that says: shortened here.
void draw_break(QPainter& painter, QPointF at, const QColor& ink, const QColor& ground) {
    painter.setPen(QPen(ground, 7.0));
    painter.drawLine(at - QPointF(0.0, 3.0), at + QPointF(0.0, 3.0));
    painter.setPen(QPen(ink, 1.3));
    for (const double y : {-3.5, 3.5})
        painter.drawPolyline(QPolygonF({at + QPointF(-7.0, y + 2.0), at + QPointF(-2.5, y - 2.0), at + QPointF(2.5, y + 2.0),
                                        at + QPointF(7.0, y - 2.0)}));
}

void draw_dimension(QPainter& painter, QPointF a, QPointF b, const QColor& ink, double width) {
    painter.setPen(QPen(ink, width));
    painter.drawLine(a, b);
    const QPointF step = b - a;
    const double length = std::hypot(step.x(), step.y());
    if (length <= 0.0) return;
    const QPointF tick = QPointF(-step.y(), step.x()) * (5.0 / length);
    painter.drawLine(a - tick, a + tick);
    painter.drawLine(b - tick, b + tick);
}

}  // namespace

CloseUpDrawing::CloseUpDrawing(const CloseUpScene& scene, const LadderPlace& place, QSizeF size, const MapStyle& style,
                               const Look& look)
    : scene_(scene), place_(place), size_(size), style_(style), look_(look), layout_(lay_out()) {}

void CloseUpDrawing::draw(QPainter& painter) const {
    draw_run(painter);
    draw_mounds(painter);
    if (!small()) draw_tape(painter);
    draw_rungs(painter);
    if (!small()) draw_words(painter);
}

CloseUpDrawing::Layout CloseUpDrawing::lay_out() const {
    const CloseUpScene& scene = scene_;
    const double row = scene.row_degrees * std::numbers::pi / 180.0;
    const double reach = scene.half_length_m + 0.06;
    const double row_up = reach * std::abs(std::cos(row));
    const double row_aside = reach * std::abs(std::sin(row));
    Layout layout;
    const double room_w = width() - (small() ? 14.0 : 76.0);
    const double room_h = height() - (small() ? 10.0 : style_.room(34.0));
    if (!scene.to) {
        const double low = std::min(-fan_m, scene.planned.along.value() - row_up);
        const double high = std::max(0.1, scene.planned.along.value() + row_up) + 0.05;
        const double aside = std::abs(scene.planned.across.value()) + std::max(row_aside, 0.3);
        layout.pixels_per_metre = std::min(room_h / (high - low), room_w / (2.0 * aside));
        const double used = (high - low) * layout.pixels_per_metre;
        const double rim = small() ? 4.0 : 8.0;
        layout.plug = {0.5 * width() + (small() ? 0.0 : 14.0),
                       height() - rim - 0.5 * (height() - (small() ? 8.0 : 24.0) - used) + low * layout.pixels_per_metre};
        layout.ladder =
            layout.plug + QPointF(scene.planned.across.value(), -scene.planned.along.value()) * layout.pixels_per_metre;
        return layout;
    }
    layout.pixels_per_metre =
        std::min(room_w / (2.0 * std::max(row_aside, 0.2)),
                 (room_h - (small() ? 30.0 : style_.room(56.0) + 34.0)) / (2.0 * std::max(row_up, 0.2)));
    layout.plug = {0.5 * width(), height() - (small() ? 12.0 : 40.0)};
    layout.far_plug = QPointF(0.5 * width(), small() ? 12.0 : 42.0);
    const double span = layout.plug.y() - layout.far_plug->y();
    layout.shortened = span < scene.to_distance_m * layout.pixels_per_metre;
    const double share = scene.to_distance_m > 0.0 ? scene.planned.along.value() / scene.to_distance_m : 0.5;
    layout.ladder = {layout.plug.x() + scene.planned.across.value() * layout.pixels_per_metre,
                     layout.plug.y() - span * std::clamp(share, 0.3, 0.7)};
    return layout;
}

QPointF CloseUpDrawing::middle() const {
    const Metres along = place_.along - scene_.planned.along;
    const Metres across = place_.across - scene_.planned.across;
    return layout_.ladder + QPointF(across.value(), -along.value()) * layout_.pixels_per_metre;
}

bool CloseUpDrawing::on_ladder(QPointF at) const {
    constexpr double grip_px = 14.0;
    const QPointF row = direction(scene_.row_degrees);
    const QPointF off = at - middle();
    const double half = scene_.half_length_m * layout_.pixels_per_metre;
    const double along = std::clamp(QPointF::dotProduct(off, row), -half, half);
    const QPointF beside = off - row * along;
    return std::hypot(beside.x(), beside.y()) <= grip_px;
}

void CloseUpDrawing::draw_run(QPainter& painter) const {
    // where the run is believed does not move with the ladder
    const QPointF crossing =
        layout_.ladder + direction(scene_.row_degrees) * (scene_.run_offset_m * layout_.pixels_per_metre);
    const QPointF along = direction(scene_.run_degrees);
    const double slant = std::abs(std::sin((scene_.run_degrees - scene_.row_degrees) * std::numbers::pi / 180.0));
    const double half_width = std::max(scene_.run_band_m * slant * layout_.pixels_per_metre, 2.0);
    const QPointF reach = along * (width() + height());
    QColor band = style_.run;
    band.setAlphaF(0.18F);
    painter.setPen(QPen(band, 2.0 * half_width, Qt::SolidLine, Qt::FlatCap));
    painter.drawLine(crossing - reach, crossing + reach);
    painter.setPen(QPen(style_.run, 2.6 * style_.line_factor));
    painter.drawLine(crossing - reach, crossing + reach);
}

void CloseUpDrawing::draw_mounds(QPainter& painter) const {
    const double reach = std::clamp(fan_m * layout_.pixels_per_metre, small() ? 10.0 : 24.0, small() ? 18.0 : 96.0);
    const auto draw_one = [&](const CloseUpScene::FanDrawn& fan, QPointF at, double size) {
        if (fan.turn_degrees) {
            draw_fan(painter, at, Bearing::degrees(*fan.turn_degrees), fan.freshness, size, style_);
        } else {
            Mound disc;
            disc.freshness = fan.freshness;
            draw_mark(painter, disc, at, size, style_);
        }
    };
    draw_one(scene_.from, layout_.plug, layout_.far_plug ? std::min(reach, 30.0) : reach);
    const int size = style_.text(-1);
    const QColor halo = style_.drawing();
    const auto name = [&](QPointF at, const QString& text) {
        if (small()) return;
        draw_small(painter, QRectF(at.x(), at.y() - style_.room(10.0), style_.room(120.0), style_.room(20.0)),
                   Qt::AlignLeft | Qt::AlignVCenter, text, style_.ink, halo, size, true);
    };
    if (layout_.far_plug && scene_.to) {
        draw_one(*scene_.to, *layout_.far_plug, std::min(reach, 30.0));
        name(*layout_.far_plug + QPointF(36.0, 0.0), scene_.to->name);
        name(layout_.plug + QPointF(36.0, 0.0), scene_.from.name);
    } else {
        name(layout_.plug + QPointF(0.62 * reach, 0.35 * reach), scene_.from.name);
    }
}

void CloseUpDrawing::draw_rungs(QPainter& painter) const {
    const QPointF middle = this->middle();
    const QPointF row = direction(scene_.row_degrees);
    const QPointF beside(-row.y(), row.x());
    double step = 1e9;
    for (std::size_t i = 1; i < scene_.rungs_m.size(); ++i)
        step = std::min(step, std::abs(std::abs(scene_.rungs_m[i]) - std::abs(scene_.rungs_m[i - 1])) > 1e-6
                                  ? std::abs(std::abs(scene_.rungs_m[i]) - std::abs(scene_.rungs_m[i - 1]))
                                  : 1e9);
    const double step_px = std::min(step * layout_.pixels_per_metre, 40.0);
    const double radius = std::clamp(0.42 * step_px, small() ? 1.6 : 2.5, small() ? 3.0 : 8.0);
    const QColor colour = look_.dropped ? style_.quiet_ink : style_.act;
    for (std::size_t i = scene_.rungs_m.size(); i-- > 0;) {
        const QPointF at = middle + row * (scene_.rungs_m[i] * layout_.pixels_per_metre);
        painter.setPen(QPen(colour, 1.6 * style_.line_factor));
        painter.setBrush(i == 0 ? colour : style_.slip);
        painter.drawEllipse(at, radius, radius);
        if (small()) continue;
        // numbers of neighbouring rungs stand on opposite sides, so that they keep apart
        const double needed_px = style_.room(std::abs(row.y()) > 0.7 ? 6.0 : 7.5);
        if (step_px < needed_px && i > 4) continue;
        // two figures side by side are wider than they are high
        const double side_by_side_px = style_.room(std::abs(row.x()) > 0.7 && scene_.rungs_m.size() > 9 ? 20.0 : 14.0);
        const bool far_side = step_px < side_by_side_px && std::lround(scene_.rungs_m[i] / std::max(step, 1e-6)) % 2 != 0;
        const QPointF number = at + beside * ((radius + style_.room(10.0)) * (far_side ? -1.0 : 1.0));
        QFont font = painter.font();
        font.setPixelSize(style_.letters(11));
        font.setBold(true);
        painter.setFont(font);
        draw_haloed_text(
            painter,
            QRectF(number.x() - style_.room(12.0), number.y() - style_.room(8.0), style_.room(24.0), style_.room(16.0)),
            QString::number(i + 1), colour, style_.drawing());
    }
}

void CloseUpDrawing::draw_tape(QPainter& painter) const {
    const LadderPlace at = place_;
    const QPointF middle = this->middle();
    const QColor ink = style_.ink;
    const double x = layout_.far_plug ? 30.0 : std::max(std::min(layout_.plug.x(), middle.x()) - style_.room(92.0), 24.0);
    const QPointF low(x, layout_.plug.y());
    const QPointF high(x, middle.y());
    QPen faint(mixed(style_.slip, style_.ink, 0.35), 1.0);
    faint.setDashPattern({2.0, 3.0});
    painter.setPen(faint);
    painter.drawLine(layout_.plug, low);
    painter.drawLine(QPointF(middle.x(), middle.y()), high);
    painter.drawLine(layout_.plug, QPointF(layout_.plug.x(), layout_.far_plug ? layout_.far_plug->y() : middle.y()));
    draw_dimension(painter, low, high, ink, 1.4 * style_.line_factor);
    const QColor ground = style_.drawing();
    if (layout_.shortened) {
        draw_break(painter, 0.5 * (low + high), ink, ground);
        draw_break(painter, {layout_.plug.x(), 0.5 * (middle.y() + layout_.plug.y())}, style_.quiet_ink, ground);
        draw_break(painter, {layout_.plug.x(), 0.5 * (middle.y() + layout_.far_plug->y())}, style_.quiet_ink, ground);
    }
    QFont font = painter.font();
    font.setBold(true);
    font.setPixelSize(style_.text(1));
    painter.setFont(font);
    const QString reading = QString::fromStdString(tape_reading(at.along, look_.units));
    const double text_width = QFontMetricsF(font).horizontalAdvance(reading) + 6.0;
    const double text_y = layout_.shortened ? low.y() - 0.24 * (low.y() - high.y()) : 0.5 * (low.y() + high.y());
    draw_haloed_text(painter, QRectF(x + 8.0, text_y - style_.room(10.0), text_width, style_.room(20.0)), reading, ink,
                     ground);
    const double across = at.across.value();
    if (std::abs(across) < 0.5 * tape_unit(look_.units).value()) return;
    const QString side = across > 0.0 ? CloseUp::tr("%1 right") : CloseUp::tr("%1 left");
    const QString text = side.arg(QString::fromStdString(tape_reading(Metres::of(std::abs(across)), look_.units)));
    const double side_width = QFontMetricsF(font).horizontalAdvance(text) + 6.0;
    // beside a row that goes up, above a row that goes across
    const bool row_up = std::abs(direction(scene_.row_degrees).y()) > 0.7;
    const QPointF at_text = row_up ? middle + QPointF(34.0, -10.0) : middle + QPointF(56.0, 24.0);
    draw_haloed_text(painter, QRectF(at_text, QSizeF(side_width, style_.room(20.0))), text, ink, ground);
}

void CloseUpDrawing::draw_words(QPainter& painter) const {
    const int size = style_.text(-2);
    const QColor halo = style_.drawing();
    const QString stand = scene_.to ? CloseUp::tr("as you look from %1 to %2").arg(scene_.from.name, scene_.to->name)
                                    : CloseUp::tr("as you stand, the fan behind you");
    const QRectF inner = QRectF(QPointF(), size_).adjusted(10.0, 6.0, -10.0, -6.0);
    if (!look_.moving) draw_small(painter, inner, Qt::AlignLeft | Qt::AlignTop, stand, style_.quiet_ink, halo, size);
    draw_small(painter, inner, Qt::AlignRight | Qt::AlignBottom, CloseUp::tr("band: run in 9 of 10"), style_.run, halo,
               size);
    // north, as it lies for a person who looks along the axis
    const QPointF centre(width() - 6.0 - style_.room(16.0), 8.0 + style_.room(16.0));
    const QPointF north = direction(-scene_.axis_bearing_degrees);
    const QPointF aside(-north.y(), north.x());
    painter.setPen(QPen(style_.quiet_ink, 1.5));
    painter.drawLine(centre - north * 9.0, centre + north * 6.0);
    painter.drawPolyline(
        QPolygonF({centre + north * 2.0 + aside * 3.5, centre + north * 6.0, centre + north * 2.0 - aside * 3.5}));
    const QPointF letter = centre + north * (6.0 + style_.room(7.0));
    draw_small(painter,
               QRectF(letter.x() - style_.room(8.0), letter.y() - style_.room(8.0), style_.room(16.0), style_.room(16.0)),
               Qt::AlignCenter, CloseUp::tr("N"), style_.quiet_ink, halo, style_.letters(10), true);
}

}  // namespace plugside
