#include "app/canvas/map_painter.h"

#include <algorithm>

#include "app/canvas/map_furniture.h"
#include "app/canvas/map_layers.h"

namespace plugside {

namespace {

constexpr double beyond_px = 60.0;  // a fan or a flag whose foot is out of sight still reaches in

}  // namespace

bool MapSheet::sees(LocalPoint place) const {
    const LocalPoint low = visible.low();
    const LocalPoint high = visible.high();
    return place.east_m >= low.east_m && place.east_m <= high.east_m && place.north_m >= low.north_m &&
           place.north_m <= high.north_m;
}

void paint_map(QPainter& painter, const FieldSurvey& field, const Plan* plan, const MapStyle& style,
               const ViewTransform& view, const MapShow& show, const std::stop_token& stop, std::vector<FlagPlace>* flags) {
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setClipRect(view.screen());
    painter.fillRect(view.screen(), style.paper);
    // a plan of another survey has nothing to say about this one
    const Plan* fitting_plan = plan && plan->mounds.size() == field.survey.mounds.size() ? plan : nullptr;
    MapSheet sheet{painter, field, fitting_plan, style, view, show, stop, flags, {}, view.ground(beyond_px)};
    for (const QRectF& place : show.covered) sheet.room.hold(place);
    using Layer = void (*)(MapSheet&);
    struct Laid {
        Layer draw;
        bool of_the_plan;
    };
    for (const Laid layer :
         {Laid{draw_ground, false}, Laid{draw_systems, true}, Laid{draw_runs, true}, Laid{draw_reasons, true}, Laid{draw_tours, true},
          Laid{draw_marks, false},
          Laid{draw_ladders, true}, Laid{draw_letters, true}, Laid{draw_sets, true}}) {
        if (stop.stop_requested()) break;
        if (layer.of_the_plan && !fitting_plan) continue;
        painter.save();
        if (layer.of_the_plan) painter.setOpacity(show.plan_opacity);
        layer.draw(sheet);
        painter.restore();
    }
    painter.restore();
}

GroundBox ground_box(const FieldSurvey& field) {
    GroundBox box;
    for (const Mound& mound : field.survey.mounds) box.add(mound.plug);
    for (const Polygon& part : field.survey.ground.boundary.parts)
        for (const LocalPoint vertex : part.outer.vertices) box.add(vertex);
    for (const KeepClearArea& area : field.survey.ground.keep_clear)
        for (const LocalPoint vertex : area.area.outer.vertices) box.add(vertex);
    if (!box.empty()) return box;
    for (const Walk& walk : field.survey.walks)
        for (const TrackSegment& segment : walk.segments)
            for (const TrackPoint& point : segment) box.add(point.at);
    return box;
}

QImage map_picture(const FieldSurvey& field, const Plan* plan, QSize size, const MapStyle& style, bool metric) {
    QImage image(size, QImage::Format_RGB32);
    const ViewTransform view = ViewTransform::fitting(ground_box(field), QSizeF(size), 48.0);
    QPainter painter(&image);
    MapShow show;
    show.covered = furniture_places(view, style);
    paint_map(painter, field, plan, style, view, show);
    painter.setRenderHint(QPainter::Antialiasing);
    draw_scale_bar(painter, view, style, metric ? LengthUnits::metres : LengthUnits::feet_and_inches);
    draw_north_arrow(painter, view, style);
    return image;
}

}  // namespace plugside
