#include "app/drawing/nearby_layer.h"

#include "app/canvas/map_layers.h"

namespace plugside {

void draw_nearby(QPainter& painter, const NearbyPreview& preview, const FieldSurvey& field, const MapStyle& style,
                 const ViewTransform& view) {
    const auto& picture = preview.picture();
    if (!picture || picture->plan.revision != field.survey.revision) return;
    painter.save();
    const MapShow show;
    const std::stop_token stop;
    constexpr double beyond_px = 40.0;
    MapSheet sheet{painter, picture->field, &picture->plan, style, view, show, stop, nullptr, {}, view.ground(beyond_px)};
    for (const auto layer : {draw_systems, draw_runs, draw_marks, draw_ladders, draw_letters}) layer(sheet);
    painter.restore();
}

}  // namespace plugside
