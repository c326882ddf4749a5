#include "app/stages/digger_picture.h"

#include <QPainterPath>
#include <array>
#include <cmath>

namespace plugside {

namespace {

// Drawn in a field of 120 by 80 units, y down; ground lies at y = 60.
class Drawing {
public:
    Drawing(QPainter& painter, const MapStyle& style) : painter_(painter), style_(style) {}

    void turf() {
        painter_.setPen(Qt::NoPen);
        painter_.setBrush(mixed(style_.slip, style_.tints[3], style_.theme == Theme::light ? 0.45 : 0.25));
        painter_.drawRect(QRectF(0.0, 0.0, 120.0, 80.0));
        for (const QPointF tuft : {QPointF(10, 20), QPointF(104, 16), QPointF(16, 70), QPointF(108, 68), QPointF(60, 9),
                                   QPointF(86, 76), QPointF(36, 75)})
            grass(tuft);
    }
    void grass(QPointF at, double size = 1.0) {
        pen(mixed(style_.tints[3], style_.ink, 0.55), 1.1);
        const auto blade = [&](double foot, double tip, double high) {
            painter_.drawLine(at + QPointF(foot, 0.0) * size, at + QPointF(tip, -high) * size);
        };
        blade(-2.2, -4.6, 4.2);
        blade(-0.4, 0.6, 7.2);
        blade(2.0, 4.4, 5.0);
    }
    // Loose soil: an outline with crumbs in it.
    void soil(const QPainterPath& shape, std::initializer_list<QPointF> crumbs) {
        pen(style_.ink, 1.3);
        painter_.setBrush(style_.soil);
        painter_.drawPath(shape);
        painter_.setPen(Qt::NoPen);
        painter_.setBrush(mixed(style_.soil, style_.slip, 0.45));
        for (const QPointF crumb : crumbs) painter_.drawEllipse(crumb, 1.5, 1.2);
    }
    void plug(QPointF at, double radius) {
        pen(style_.ink, 1.5);
        painter_.setBrush(mixed(style_.soil, style_.slip, 0.72));
        painter_.drawEllipse(at, radius, 0.8 * radius);
        pen(style_.soil, 1.0);
        painter_.drawLine(at + QPointF(-0.5 * radius, -1.0), at + QPointF(0.3 * radius, -2.0));
        painter_.drawLine(at + QPointF(-0.3 * radius, 2.0), at + QPointF(0.5 * radius, 1.5));
    }
    void hole(QPointF at, double radius) {
        pen(style_.soil, 2.0);
        painter_.setBrush(style_.ink);
        painter_.drawEllipse(at, radius, 0.72 * radius);
        // light falls on the far wall of the hole
        painter_.setPen(Qt::NoPen);
        painter_.setBrush(mixed(style_.ink, style_.dry_soil, 0.55));
        painter_.drawChord(QRectF(at.x() - 0.8 * radius, at.y() - 0.56 * radius, 1.6 * radius, 1.1 * radius), 200 * 16,
                           140 * 16);
    }
    void fan() {
        QPainterPath shape(QPointF(40.0, 58.0));
        shape.cubicTo(20.0, 46.0, 24.0, 18.0, 58.0, 14.0);
        shape.cubicTo(96.0, 10.0, 112.0, 38.0, 88.0, 56.0);
        shape.cubicTo(78.0, 62.0, 76.0, 46.0, 62.0, 47.0);
        shape.cubicTo(50.0, 48.0, 50.0, 64.0, 40.0, 58.0);
        soil(shape, {{44, 34}, {56, 26}, {70, 24}, {84, 32}, {92, 44}, {64, 36}, {78, 42}, {36, 48}});
    }
    void hill(QPointF foot, double wide, double high) {
        QPainterPath shape(foot + QPointF(-0.5 * wide, 0.0));
        shape.cubicTo(foot + QPointF(-0.26 * wide, -0.2 * high), foot + QPointF(-0.2 * wide, -high),
                      foot + QPointF(0.0, -high));
        shape.cubicTo(foot + QPointF(0.2 * wide, -high), foot + QPointF(0.26 * wide, -0.2 * high),
                      foot + QPointF(0.5 * wide, 0.0));
        shape.cubicTo(foot + QPointF(0.3 * wide, 0.22 * high), foot + QPointF(-0.3 * wide, 0.22 * high),
                      foot + QPointF(-0.5 * wide, 0.0));
        soil(shape, {foot + QPointF(-0.12 * wide, -0.5 * high), foot + QPointF(0.1 * wide, -0.62 * high),
                     foot + QPointF(0.2 * wide, -0.22 * high), foot + QPointF(-0.24 * wide, -0.12 * high),
                     foot + QPointF(0.0, -0.2 * high)});
    }
    // Turf lifted along a line: both edges, and short strokes over its back.
    void ridge(const QPainterPath& way) {
        QPen broad(mixed(style_.tints[3], style_.soil, 0.35), 15.0);
        broad.setCapStyle(Qt::RoundCap);
        painter_.setPen(broad);
        painter_.setBrush(Qt::NoBrush);
        painter_.drawPath(way);
        for (double share = 0.03; share < 1.0; share += 0.085) {
            const QPointF at = way.pointAtPercent(share);
            const double angle = way.angleAtPercent(share) * 3.14159265358979 / 180.0;
            const QPointF across(std::sin(angle), std::cos(angle));
            pen(style_.ink, 1.2);
            painter_.drawLine(at - across * 7.5, at - across * 2.5);
            painter_.drawLine(at + across * 3.5, at + across * 7.5);
        }
    }
    void trail(const QPainterPath& way) {
        QPen worn(mixed(style_.slip, style_.dry_soil, 0.75), 6.0);
        worn.setCapStyle(Qt::RoundCap);
        painter_.setPen(worn);
        painter_.setBrush(Qt::NoBrush);
        painter_.drawPath(way);
        for (double share = 0.06; share < 1.0; share += 0.11) {
            const QPointF at = way.pointAtPercent(share);
            grass(at + QPointF(1.0, -4.0), 0.8);
            grass(at + QPointF(-1.0, 10.0), 0.8);
        }
    }
    void arrow(QPointF from, QPointF to) {
        pen(style_.act, 2.2);
        painter_.drawLine(from, to);
        const QPointF way = (to - from) / std::hypot((to - from).x(), (to - from).y());
        const QPointF side(-way.y(), way.x());
        painter_.drawLine(to, to - way * 6.0 + side * 3.4);
        painter_.drawLine(to, to - way * 6.0 - side * 3.4);
    }
    void pen(const QColor& colour, double width) {
        QPen made(colour, width * style_.line_factor);
        made.setCapStyle(Qt::RoundCap);
        made.setJoinStyle(Qt::RoundJoin);
        painter_.setPen(made);
    }
    [[nodiscard]] QPainter& painter() { return painter_; }
    [[nodiscard]] const MapStyle& style() const { return style_; }

private:
    QPainter& painter_;
    const MapStyle& style_;
};

QPainterPath bent(QPointF from, QPointF by, QPointF to) {
    QPainterPath way(from);
    way.quadTo(by, to);
    return way;
}

void flattened(Drawing& d) {
    QPainterPath shape(QPointF(22.0, 44.0));
    shape.cubicTo(24.0, 28.0, 50.0, 34.0, 62.0, 28.0);
    shape.cubicTo(84.0, 22.0, 106.0, 36.0, 98.0, 50.0);
    shape.cubicTo(86.0, 62.0, 60.0, 52.0, 44.0, 58.0);
    shape.cubicTo(30.0, 62.0, 18.0, 56.0, 22.0, 44.0);
    d.pen(mixed(d.style().soil, d.style().slip, 0.3), 1.2);
    d.painter().setBrush(mixed(d.style().dry_soil, d.style().slip, 0.25));
    d.painter().drawPath(shape);
    // tracks of a wheel across it
    d.pen(d.style().ink, 1.4);
    for (const double x : {46.0, 66.0})
        for (double y = 10.0; y < 74.0; y += 8.0) d.painter().drawLine(QPointF(x, y), QPointF(x + 9.0, y + 5.0));
}

void trails(Drawing& d) {
    d.trail(bent({18, 56}, {40, 20}, {62, 40}));
    d.trail(bent({62, 40}, {84, 60}, {104, 28}));
    for (const QPointF at : {QPointF(18, 56), QPointF(62, 40), QPointF(104, 28)}) d.hole(at, 5.5);
}

void string_of_hills(Drawing& d) {
    d.ridge(bent({6, 64}, {60, 46}, {116, 52}));
    for (const QPointF foot : {QPointF(22, 58), QPointF(60, 53), QPointF(98, 50)}) d.hill(foot, 34.0, 26.0);
}

}  // namespace

void draw_digger_picture(QPainter& painter, const QRectF& place, DiggerPicture picture, const MapStyle& style) {
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    QPainterPath card;
    card.addRoundedRect(place, 6.0, 6.0);
    painter.setClipPath(card, Qt::IntersectClip);
    painter.translate(place.topLeft());
    painter.scale(place.width() / 120.0, place.height() / 80.0);
    Drawing d(painter, style);
    d.turf();
    switch (picture) {
        case DiggerPicture::mound: d.hill({60, 58}, 84.0, 32.0); break;
        case DiggerPicture::no_mound: d.hole({60, 42}, 10.0); break;
        case DiggerPicture::fan_to_one_side:
            d.fan();
            d.plug({60, 58}, 8.0);
            break;
        case DiggerPicture::round_hill: d.hill({60, 60}, 76.0, 44.0); break;
        case DiggerPicture::closed_plug:
            d.fan();
            d.plug({60, 58}, 10.0);
            d.arrow({98, 72}, {73, 61});
            break;
        case DiggerPicture::open_hole:
            d.fan();
            d.hole({60, 58}, 9.0);
            break;
        case DiggerPicture::hole_in_middle:
            d.hill({60, 64}, 84.0, 46.0);
            d.hole({60, 27}, 8.5);
            d.arrow({96, 12}, {71, 24});
            break;
        case DiggerPicture::ridge: d.ridge(bent({-6, 62}, {56, 14}, {126, 46})); break;
        case DiggerPicture::string_of_hills: string_of_hills(d); break;
        case DiggerPicture::worn_trail: trails(d); break;
        case DiggerPicture::bare_entrance: {
            QPainterPath apron(QPointF(40, 44));
            apron.cubicTo(34, 74, 92, 78, 84, 42);
            apron.cubicTo(74, 30, 50, 30, 40, 44);
            painter.setPen(Qt::NoPen);
            painter.setBrush(mixed(style.dry_soil, style.slip, 0.3));
            painter.drawPath(apron);
            d.hole({61, 36}, 13.0);
            break;
        }
        case DiggerPicture::small_round_plug: d.plug({60, 42}, 14.0); break;
        case DiggerPicture::flattened: flattened(d); break;
    }
    painter.restore();
    painter.setPen(QPen(style.hairline, 1.0));
    painter.setBrush(Qt::NoBrush);
    painter.drawRoundedRect(place, 6.0, 6.0);
}

}  // namespace plugside
