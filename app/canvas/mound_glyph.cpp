#include "app/canvas/mound_glyph.h"

#include <QCoreApplication>
#include <QPainterPath>
#include <algorithm>

#include "app/canvas/fan_shape.h"
#include "app/canvas/view_transform.h"

namespace plugside {

namespace {

QString words(const char* text) { return QCoreApplication::translate("Mound", text); }

}  // namespace

const QPainterPath& fan_shape() {
    static const QPainterPath shape = [] {
        QPainterPath path(QPointF(-0.13, 0.02));
        path.cubicTo(-0.30, -0.16, -0.62, -0.36, -0.60, -0.66);
        path.cubicTo(-0.58, -0.92, -0.30, -1.00, -0.10, -0.93);
        path.cubicTo(0.06, -1.03, 0.46, -1.00, 0.57, -0.72);
        path.cubicTo(0.66, -0.44, 0.34, -0.18, 0.13, 0.02);
        path.closeSubpath();
        return path;
    }();
    return shape;
}

namespace {

void draw_disc(QPainter& painter, QPointF at, Freshness freshness, double reach_px, const MapStyle& style) {
    const QColor soil = soil_colour(freshness, style);
    QPen rim(style.soil, 1.0 * style.line_factor);
    if (freshness == Freshness::crushed) rim.setDashPattern({2.0, 1.6});
    painter.setPen(rim);
    painter.setBrush(soil);
    painter.drawEllipse(at, 0.42 * reach_px, 0.42 * reach_px);
}

void draw_initial(QPainter& painter, SignKind kind, QPointF at, double reach_px, const MapStyle& style) {
    const double radius = std::max(0.58 * reach_px, style.room(6.5));
    painter.setPen(QPen(style.quiet_ink, 1.1 * style.line_factor));
    painter.setBrush(style.paper);
    painter.drawEllipse(at, radius, radius);
    QFont font = painter.font();
    font.setBold(true);
    font.setPixelSize(std::max(static_cast<int>(radius * 1.25), 8));
    painter.setFont(font);
    painter.setPen(style.ink);
    painter.drawText(QRectF(at.x() - radius, at.y() - radius, 2.0 * radius, 2.0 * radius), Qt::AlignCenter,
                     digger_initial(kind));
}

}  // namespace

double mound_reach_px(double pixels_per_metre) {
    // a mound is 30-46 cm wide and its fan about as long (extension accounts)
    constexpr double fan_length_m = 0.45;
    const double least = std::clamp(4.0 + 1.0 * pixels_per_metre, 4.0, 13.0);
    return std::clamp(fan_length_m * pixels_per_metre, least, 90.0);
}

QColor soil_colour(Freshness freshness, const MapStyle& style) {
    switch (freshness) {
        case Freshness::fresh: return style.soil;
        case Freshness::older: return style.dry_soil;
        case Freshness::crushed: return mixed(style.field, style.dry_soil, 0.55);
        case Freshness::unknown: return style.unread_soil;
    }
    return style.unread_soil;
}

void draw_fan(QPainter& painter, QPointF plug, Bearing fan, Freshness freshness, double reach_px, const MapStyle& style) {
    const QTransform before = painter.transform();
    painter.translate(plug);
    painter.rotate(ViewTransform::painter_rotation_degrees(fan));
    painter.scale(reach_px, reach_px);
    QPen rim(freshness == Freshness::fresh ? mixed(style.soil, style.paper, 0.12) : style.soil,
             0.8 * style.line_factor / reach_px);
    if (freshness == Freshness::crushed) rim.setDashPattern({2.0, 1.6});
    painter.setPen(rim);
    painter.setBrush(soil_colour(freshness, style));
    painter.drawPath(fan_shape());
    painter.setPen(QPen(style.soil, 1.1 * style.line_factor / reach_px));
    painter.setBrush(style.slip);
    painter.drawEllipse(QPointF(0.0, 0.0), 0.17, 0.17);
    painter.setTransform(before);
}

void draw_mark(QPainter& painter, const Mound& mound, QPointF at, double reach_px, const MapStyle& style) {
    if (!is_gopher_sign(mound.kind)) {
        draw_initial(painter, mound.kind, at, reach_px, style);
    } else if (mound.fan && mound.freshness != Freshness::crushed) {
        draw_fan(painter, at, *mound.fan, mound.freshness, reach_px, style);
    } else {
        draw_disc(painter, at, mound.freshness, reach_px, style);
    }
}

QString digger_initial(SignKind kind) {
    switch (kind) {
        case SignKind::mole: return words(QT_TRANSLATE_NOOP("Mound", "M"));
        case SignKind::ground_squirrel: return words(QT_TRANSLATE_NOOP("Mound", "S"));
        case SignKind::vole: return words(QT_TRANSLATE_NOOP("Mound", "V"));
        case SignKind::gopher_mound:
        case SignKind::surface_plug:
        case SignKind::other: break;
    }
    return QStringLiteral("?");
}

QString freshness_word(Freshness freshness) {
    switch (freshness) {
        case Freshness::fresh: return words(QT_TRANSLATE_NOOP("Mound", "fresh"));
        case Freshness::older: return words(QT_TRANSLATE_NOOP("Mound", "older"));
        case Freshness::crushed: return words(QT_TRANSLATE_NOOP("Mound", "crushed"));
        case Freshness::unknown: break;
    }
    return words(QT_TRANSLATE_NOOP("Mound", "age not noted"));
}

QString kind_word(SignKind kind) {
    switch (kind) {
        case SignKind::gopher_mound: return words(QT_TRANSLATE_NOOP("Mound", "gopher mound"));
        case SignKind::surface_plug: return words(QT_TRANSLATE_NOOP("Mound", "surface plug"));
        case SignKind::mole: return words(QT_TRANSLATE_NOOP("Mound", "a mole's sign"));
        case SignKind::ground_squirrel: return words(QT_TRANSLATE_NOOP("Mound", "a ground squirrel's sign"));
        case SignKind::vole: return words(QT_TRANSLATE_NOOP("Mound", "a vole's sign"));
        case SignKind::other: break;
    }
    return words(QT_TRANSLATE_NOOP("Mound", "another sign"));
}

}  // namespace plugside
