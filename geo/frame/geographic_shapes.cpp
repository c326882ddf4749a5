#include "geo/frame/geographic_shapes.h"

namespace plugside {

GeographicLine to_geographic(const LocalFrame& frame, const std::vector<LocalPoint>& line) {
    GeographicLine places;
    places.reserve(line.size());
    for (const LocalPoint vertex : line) places.push_back(frame.to_geographic(vertex));
    return places;
}

GeographicPolygon to_geographic(const LocalFrame& frame, const Polygon& polygon) {
    GeographicPolygon shape;
    shape.rings.push_back(to_geographic(frame, polygon.outer.vertices));
    for (const Ring& hole : polygon.holes) shape.rings.push_back(to_geographic(frame, hole.vertices));
    return shape;
}

std::vector<GeographicPolygon> to_geographic(const LocalFrame& frame, const MultiPolygon& polygons) {
    std::vector<GeographicPolygon> shapes;
    for (const Polygon& part : polygons.parts) shapes.push_back(to_geographic(frame, part));
    return shapes;
}

Polyline to_local(const LocalFrame& frame, const GeographicLine& line) {
    Polyline local;
    local.vertices.reserve(line.size());
    for (const GeographicPoint place : line) local.vertices.push_back(frame.to_local(place));
    return local;
}

Polygon to_local(const LocalFrame& frame, const GeographicPolygon& polygon) {
    Polygon local;
    for (std::size_t i = 0; i < polygon.rings.size(); ++i) {
        Ring ring{to_local(frame, polygon.rings[i]).vertices};
        if (i == 0)
            local.outer = std::move(ring);
        else
            local.holes.push_back(std::move(ring));
    }
    return local;
}

}  // namespace plugside
