// Shapes in longitude and latitude, and their way to the field's plane and back.
//
// GeographicPolygon: the outer ring first, then the holes; first vertex not repeated at the end of a ring.
// Cost: linear in vertices.
#pragma once

#include <vector>

#include "core/geometry/polygon.h"
#include "core/geometry/polyline.h"
#include "geo/frame/local_frame.h"

namespace plugside {

using GeographicLine = std::vector<GeographicPoint>;

struct GeographicPolygon {
    std::vector<GeographicLine> rings;
    friend bool operator==(const GeographicPolygon&, const GeographicPolygon&) = default;
};

[[nodiscard]] GeographicLine to_geographic(const LocalFrame& frame, const std::vector<LocalPoint>& line);
[[nodiscard]] GeographicPolygon to_geographic(const LocalFrame& frame, const Polygon& polygon);
[[nodiscard]] std::vector<GeographicPolygon> to_geographic(const LocalFrame& frame, const MultiPolygon& polygons);

[[nodiscard]] Polyline to_local(const LocalFrame& frame, const GeographicLine& line);
[[nodiscard]] Polygon to_local(const LocalFrame& frame, const GeographicPolygon& polygon);

}  // namespace plugside
