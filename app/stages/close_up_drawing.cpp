#include <QPainter>
#include <QPainterPath>
#include <cmath>
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

void CloseUp::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const QColor ground = mixed(style().slip, style().rail, 0.85);
    painter.setPen(hasFocus() || moving_ ? QPen(style().act, 2.0) : QPen(style().hairline, 1.0));
    painter.setBrush(ground);
    painter.drawRoundedRect(QRectF(rect()).adjusted(1.0, 1.0, -1.0, -1.0), 8.0, 8.0);
    if (!scene_) return;
    QPainterPath frame;
    frame.addRoundedRect(QRectF(rect()).adjusted(2.0, 2.0, -2.0, -2.0), 7.0, 7.0);
    painter.setClipPath(frame);
    const Layout layout = lay_out();
    draw_run(painter, layout);
    draw_mounds(painter, layout);
    draw_tape(painter, layout);
    draw_rungs(painter, layout);
    draw_words(painter);
}

void CloseUp::draw_run(QPainter& painter, const Layout& layout) const {
    // where the run is believed does not move with the ladder
    const QPointF crossing =
        layout.ladder + direction(scene_->row_degrees) * (scene_->run_offset_m * layout.pixels_per_metre);
    const QPointF along = direction(scene_->run_degrees);
    const double slant = std::abs(std::sin((scene_->run_degrees - scene_->row_degrees) * std::numbers::pi / 180.0));
    const double half_width = std::max(scene_->run_band_m * slant * layout.pixels_per_metre, 2.0);
    const QPointF reach = along * (width() + height());
    QColor band = style().run;
    band.setAlphaF(0.18F);
    painter.setPen(QPen(band, 2.0 * half_width, Qt::SolidLine, Qt::FlatCap));
    painter.drawLine(crossing - reach, crossing + reach);
    painter.setPen(QPen(style().run, 2.6 * style().line_factor));
    painter.drawLine(crossing - reach, crossing + reach);
}

void CloseUp::draw_mounds(QPainter& painter, const Layout& layout) const {
    const double reach = std::clamp(fan_m * layout.pixels_per_metre, 24.0, 96.0);
    const auto draw_one = [&](const CloseUpScene::FanDrawn& fan, QPointF at, double size) {
        if (fan.turn_degrees) {
            draw_fan(painter, at, Bearing::degrees(*fan.turn_degrees), fan.freshness, size, style());
        } else {
            Mound disc;
            disc.freshness = fan.freshness;
            draw_mark(painter, disc, at, size, style());
        }
    };
    draw_one(scene_->from, layout.plug, layout.far_plug ? std::min(reach, 30.0) : reach);
    const int size = style().text_px - 1;
    const QColor halo = mixed(style().slip, style().rail, 0.85);
    const auto name = [&](QPointF at, const QString& text) {
        draw_small(painter, QRectF(at.x(), at.y() - 10.0, 120.0, 20.0), Qt::AlignLeft | Qt::AlignVCenter, text, style().ink,
                   halo, size, true);
    };
    if (layout.far_plug && scene_->to) {
        draw_one(*scene_->to, *layout.far_plug, std::min(reach, 30.0));
        name(*layout.far_plug + QPointF(36.0, 0.0), scene_->to->name);
        name(layout.plug + QPointF(36.0, 0.0), scene_->from.name);
    } else {
        name(layout.plug + QPointF(0.62 * reach, 0.35 * reach), scene_->from.name);
    }
}

void CloseUp::draw_rungs(QPainter& painter, const Layout& layout) const {
    const QPointF middle = middle_on_screen(layout);
    const QPointF row = direction(scene_->row_degrees);
    const QPointF beside(-row.y(), row.x());
    double step = 1e9;
    for (std::size_t i = 1; i < scene_->rungs_m.size(); ++i)
        step = std::min(step, std::abs(std::abs(scene_->rungs_m[i]) - std::abs(scene_->rungs_m[i - 1])) > 1e-6
                                  ? std::abs(std::abs(scene_->rungs_m[i]) - std::abs(scene_->rungs_m[i - 1]))
                                  : 1e9);
    const double step_px = std::min(step * layout.pixels_per_metre, 40.0);
    const double radius = std::clamp(0.42 * step_px, 2.5, 8.0);
    const QColor colour = dropped_ ? style().quiet_ink : style().act;
    for (std::size_t i = scene_->rungs_m.size(); i-- > 0;) {
        const QPointF at = middle + row * (scene_->rungs_m[i] * layout.pixels_per_metre);
        painter.setPen(QPen(colour, 1.6 * style().line_factor));
        painter.setBrush(i == 0 ? colour : style().slip);
        painter.drawEllipse(at, radius, radius);
        // numbers of neighbouring rungs stand on opposite sides, so that they keep apart
        const double needed_px = std::abs(row.y()) > 0.7 ? 6.0 : 7.5;
        if (step_px < needed_px && i > 4) continue;
        // two figures side by side are wider than they are high
        const double side_by_side_px = std::abs(row.x()) > 0.7 && scene_->rungs_m.size() > 9 ? 20.0 : 14.0;
        const bool far_side = step_px < side_by_side_px && std::lround(scene_->rungs_m[i] / std::max(step, 1e-6)) % 2 != 0;
        const QPointF number = at + beside * ((radius + 10.0) * (far_side ? -1.0 : 1.0));
        QFont font = painter.font();
        font.setPixelSize(11);
        font.setBold(true);
        painter.setFont(font);
        draw_haloed_text(painter, QRectF(number.x() - 12.0, number.y() - 8.0, 24.0, 16.0), QString::number(i + 1), colour,
                         mixed(style().slip, style().rail, 0.85));
    }
}

void CloseUp::draw_tape(QPainter& painter, const Layout& layout) const {
    const LadderPlace at = place();
    const QPointF middle = middle_on_screen(layout);
    const QColor ink = style().ink;
    const double x = layout.far_plug ? 30.0 : std::max(std::min(layout.plug.x(), middle.x()) - 92.0, 24.0);
    const QPointF low(x, layout.plug.y());
    const QPointF high(x, middle.y());
    QPen faint(mixed(style().slip, style().ink, 0.35), 1.0);
    faint.setDashPattern({2.0, 3.0});
    painter.setPen(faint);
    painter.drawLine(layout.plug, low);
    painter.drawLine(QPointF(middle.x(), middle.y()), high);
    painter.drawLine(layout.plug, QPointF(layout.plug.x(), layout.far_plug ? layout.far_plug->y() : middle.y()));
    draw_dimension(painter, low, high, ink, 1.4 * style().line_factor);
    const QColor ground = mixed(style().slip, style().rail, 0.85);
    if (layout.shortened) {
        draw_break(painter, 0.5 * (low + high), ink, ground);
        draw_break(painter, {layout.plug.x(), 0.5 * (middle.y() + layout.plug.y())}, style().quiet_ink, ground);
        draw_break(painter, {layout.plug.x(), 0.5 * (middle.y() + layout.far_plug->y())}, style().quiet_ink, ground);
    }
    QFont font = painter.font();
    font.setBold(true);
    font.setPixelSize(style().text_px + 1);
    painter.setFont(font);
    const QString reading = QString::fromStdString(tape_reading(at.along, choices_.units()));
    const double text_width = QFontMetricsF(font).horizontalAdvance(reading) + 6.0;
    const double text_y = layout.shortened ? low.y() - 0.24 * (low.y() - high.y()) : 0.5 * (low.y() + high.y());
    draw_haloed_text(painter, QRectF(x + 8.0, text_y - 10.0, text_width, 20.0), reading, ink, ground);
    const double across = at.across.value();
    if (std::abs(across) < 0.5 * tape_unit(choices_.units()).value()) return;
    const QString side = across > 0.0 ? tr("%1 right") : tr("%1 left");
    const QString text = side.arg(QString::fromStdString(tape_reading(Metres::of(std::abs(across)), choices_.units())));
    const double side_width = QFontMetricsF(font).horizontalAdvance(text) + 6.0;
    // beside a row that goes up, above a row that goes across
    const bool row_up = std::abs(direction(scene_->row_degrees).y()) > 0.7;
    const QPointF at_text = row_up ? middle + QPointF(34.0, -10.0) : middle + QPointF(56.0, 24.0);
    draw_haloed_text(painter, QRectF(at_text, QSizeF(side_width, 20.0)), text, ink, ground);
}

void CloseUp::draw_words(QPainter& painter) const {
    const int size = style().text_px - 2;
    const QColor halo = mixed(style().slip, style().rail, 0.85);
    const QString stand = scene_->to ? tr("as you look from %1 to %2").arg(scene_->from.name, scene_->to->name)
                                     : tr("as you stand, the fan behind you");
    const QRectF inner = QRectF(rect()).adjusted(10.0, 6.0, -10.0, -6.0);
    if (moving_) {
        const Metres along = moving_->along - scene_->planned.along;
        const Metres across = moving_->across - scene_->planned.across;
        const auto tape = [this](Metres length) { return QString::fromStdString(tape_reading(length, choices_.units())); };
        draw_small(painter, inner, Qt::AlignLeft | Qt::AlignTop,
                   tr("moved %1 along, %2 to the right").arg(tape(along), tape(across)), style().act, halo, style().text_px,
                   true);
    } else {
        draw_small(painter, inner, Qt::AlignLeft | Qt::AlignTop, stand, style().quiet_ink, halo, size);
    }
    draw_small(painter, inner, Qt::AlignRight | Qt::AlignBottom, tr("band: run in 9 of 10"), style().run, halo, size);
    // north, as it lies for a person who looks along the axis
    const QPointF centre(width() - 22.0, 24.0);
    const QPointF north = direction(-scene_->axis_bearing_degrees);
    const QPointF aside(-north.y(), north.x());
    painter.setPen(QPen(style().quiet_ink, 1.5));
    painter.drawLine(centre - north * 9.0, centre + north * 6.0);
    painter.drawPolyline(
        QPolygonF({centre + north * 2.0 + aside * 3.5, centre + north * 6.0, centre + north * 2.0 - aside * 3.5}));
    const QPointF letter = centre + north * 13.0;
    draw_small(painter, QRectF(letter.x() - 8.0, letter.y() - 8.0, 16.0, 16.0), Qt::AlignCenter, tr("N"), style().quiet_ink,
               halo, 10, true);
}

}  // namespace plugside
