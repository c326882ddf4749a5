#include "app/sheets/mound_figure.h"

#include <QTransform>
#include <cmath>
#include <numbers>

#include "app/canvas/fan_shape.h"

namespace plugside {

QPointF on_sheet(double turn_degrees) {
    const double turn = turn_degrees * std::numbers::pi / 180.0;
    return {std::sin(turn), -std::cos(turn)};
}

void add_mound(Figure& figure, QPointF plug, std::optional<double> turn_degrees, Freshness freshness, double reach_mm) {
    const bool small = reach_mm < 5.0;
    const double rim = (freshness == Freshness::fresh ? 0.4 : 0.2) * (small ? 0.6 : 1.0);
    const Ink soil = freshness == Freshness::fresh ? (small ? Ink::dark : Ink::pale) : Ink::white;
    if (!turn_degrees) {
        Disc disc{plug, (small ? 0.3 : 0.42) * reach_mm, rim, Ink::black, soil};
        figure.add(disc);
        return;
    }
    // flattened at a size that gives pieces too short to be seen
    const double size = small ? 10.0 : 200.0;
    const QPolygonF outline = QTransform::fromScale(size, size).map(fan_shape()).toFillPolygon();
    QTransform place = QTransform::fromTranslate(plug.x(), plug.y());
    place.rotate(*turn_degrees);
    place.scale(reach_mm / size, reach_mm / size);
    Stroke fan;
    fan.closed = true;
    fan.width_mm = rim;
    fan.fill = soil;
    for (qsizetype i = 0; i + 1 < outline.size(); ++i)
        if (!small || i % 3 == 0) fan.points.push_back(place.map(outline[i]));
    figure.add(std::move(fan));
    if (!small) figure.add(Disc{plug, plug_radius_mm, 0.4, Ink::black, Ink::white});
}

}  // namespace plugside
