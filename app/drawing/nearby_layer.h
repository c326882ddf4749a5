// A first look at the marks about an edit in hand, drawn over the map: systems, runs, marks, ladders, letters, as the map draws them.
// Nothing is drawn of a look at another survey than the one that is open (revisions are compared).
#pragma once

#include "app/canvas/palette.h"
#include "app/canvas/view_transform.h"
#include "app/planning/nearby_preview.h"

namespace plugside {

void draw_nearby(QPainter& painter, const NearbyPreview& preview, const FieldSurvey& field, const MapStyle& style,
                 const ViewTransform& view);

}  // namespace plugside
