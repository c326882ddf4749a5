#include "app/canvas/map_furniture.h"

#include <QCoreApplication>
#include <QPainterPath>
#include <cmath>

#include "app/words/language.h"

namespace plugside {

namespace {

QString words(const char* text) { return QCoreApplication::translate("Map", text); }

void draw_plate(QPainter& painter, const QRectF& place, const MapStyle& style, double radius) {
    // nothing of the field shows through: what is written there stands on one colour
    painter.setPen(QPen(style.hairline, 1.0));
    painter.setBrush(style.paper);
    painter.drawRoundedRect(place, radius, radius);
}

QRectF arrow_place(const ViewTransform& view, const MapStyle& style) {
    const QSizeF plate(style.room(60.0), style.room(70.0));
    return {QPointF(view.size().width() - 12.0 - plate.width(), view.size().height() - 10.0 - plate.height()), plate};
}

}  // namespace

ScaleStep scale_step(const ViewTransform& view, double longest_px, LengthUnits units) {
    const Metres room = view.ground_length(longest_px);
    const bool metric = units == LengthUnits::metres;
    const bool small = metric ? room.value() < 1.0 : room.feet() < 1.0;
    const double available = metric ? (small ? room.value() * 100.0 : room.value()) : (small ? room.inches() : room.feet());
    const double power = std::pow(10.0, std::floor(std::log10(std::max(available, 1e-6))));
    double amount = power;
    for (const double factor : {2.0, 5.0})
        if (factor * power <= available) amount = factor * power;
    const QString unit = metric ? (small ? words(QT_TRANSLATE_NOOP("Map", "cm")) : words(QT_TRANSLATE_NOOP("Map", "m")))
                                : (small ? words(QT_TRANSLATE_NOOP("Map", "in")) : words(QT_TRANSLATE_NOOP("Map", "ft")));
    const auto number = [](double value) { return in_their_digits(QString::number(value, 'g', 6)); };
    const Metres length = metric ? Metres::of(small ? amount / 100.0 : amount)
                                 : (small ? Metres::from_inches(amount) : Metres::from_feet(amount));
    const bool whole_half = std::fmod(amount, 2.0) == 0.0;
    return {length, number(amount) + " " + unit, whole_half ? number(0.5 * amount) : QString()};
}

void draw_scale_bar(QPainter& painter, const ViewTransform& view, const MapStyle& style, LengthUnits units) {
    const ScaleStep step = scale_step(view, std::min(style.room(170.0), 0.42 * view.size().width()), units);
    const double length = view.pixels(step.length);
    QFont font = painter.font();
    font.setPixelSize(style.text(-1));
    font.setItalic(false);
    font.setBold(false);
    painter.setFont(font);
    const QFontMetricsF metrics(font);
    const double label_width = metrics.horizontalAdvance(step.label);
    const double high = 26.0 + metrics.height();
    const QRectF plate(12.0, view.size().height() - 10.0 - high, length + label_width + 26.0, high);
    draw_plate(painter, plate, style, 6.0);
    const double y = plate.bottom() - 11.0;
    const double x = plate.left() + 14.0;
    painter.setPen(QPen(style.ink, 1.6 * style.line_factor));
    painter.drawLine(QPointF(x, y), QPointF(x + length, y));
    for (const double share : {0.0, 0.5, 1.0})
        painter.drawLine(QPointF(x + share * length, y - (share == 0.5 ? 4.0 : 7.0)), QPointF(x + share * length, y));
    const double top = y - 9.0 - metrics.height();
    painter.drawText(QRectF(x - style.room(20.0), top, style.room(40.0), metrics.height()), Qt::AlignCenter,
                     QStringLiteral("0"));
    if (length > style.room(90.0))
        painter.drawText(QRectF(x + 0.5 * length - style.room(30.0), top, style.room(60.0), metrics.height()),
                         Qt::AlignCenter, step.half_label);
    const double end = std::max(x + length - 0.5 * metrics.horizontalAdvance(step.label.section(' ', 0, 0)), x + 14.0);
    painter.drawText(QRectF(end, top, label_width + 4.0, metrics.height()), Qt::AlignLeft | Qt::AlignVCenter, step.label);
}

std::vector<QRectF> furniture_places(const ViewTransform& view, const MapStyle& style) {
    const QSizeF size = view.size();
    const double bar_high = style.room(18.0) + 24.0;
    return {QRectF(12.0, size.height() - 10.0 - bar_high, style.room(220.0), bar_high), arrow_place(view, style)};
}

void draw_north_arrow(QPainter& painter, const ViewTransform& view, const MapStyle& style) {
    const QRectF plate = arrow_place(view, style);
    const QPointF centre(plate.center().x(), plate.top() + style.room(34.0));
    draw_plate(painter, plate, style, 12.0);
    painter.setPen(QPen(style.ink, 1.8 * style.line_factor, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    painter.setBrush(Qt::NoBrush);
    painter.save();
    painter.translate(centre);
    painter.scale(style.text_share, style.text_share);
    painter.rotate(ViewTransform::painter_rotation_degrees(view.on_screen(Bearing::degrees(0.0))));
    painter.drawLine(QPointF(0.0, 12.0), QPointF(0.0, -14.0));
    painter.drawPolyline(QPolygonF({QPointF(-6.0, -7.0), QPointF(0.0, -15.0), QPointF(6.0, -7.0)}));
    painter.restore();
    QFont font = painter.font();
    font.setBold(true);
    font.setPixelSize(style.letters(11));
    painter.setFont(font);
    const bool upright = view.up_degrees() == 0.0;  // else the arrow's head goes round where the letter stands
    if (upright)
        painter.drawText(QRectF(plate.left(), plate.top() + 1.0, plate.width(), style.room(16.0)), Qt::AlignCenter,
                         words(QT_TRANSLATE_NOOP("Map", "N")));
    font.setBold(false);
    painter.setFont(font);
    painter.drawText(QRectF(plate.left(), centre.y() + style.room(15.0), plate.width(), style.room(18.0)), Qt::AlignCenter,
                     words(QT_TRANSLATE_NOOP("Map", "%1° true")).arg(std::lround(view.up_degrees()) % 360));
}

}  // namespace plugside
