#include "core/geometry/polygon.h"

#include <cmath>
#include <limits>

#include "core/geometry/polyline.h"

namespace plugside {

namespace {

double ring_area_m2(const Ring& ring) {
    const auto& v = ring.vertices;
    if (v.size() < 3) return 0.0;
    double twice = 0.0;
    for (std::size_t i = 1; i + 1 < v.size(); ++i) twice += cross(v[i] - v[0], v[i + 1] - v[0]);
    return 0.5 * std::abs(twice);
}

bool ring_contains(const Ring& ring, LocalPoint p) {
    const auto& v = ring.vertices;
    if (v.size() < 3) return false;
    bool inside = false;
    for (std::size_t i = 0, j = v.size() - 1; i < v.size(); j = i++) {
        if ((v[i].north_m > p.north_m) == (v[j].north_m > p.north_m)) continue;
        const double t = (p.north_m - v[i].north_m) / (v[j].north_m - v[i].north_m);
        if (p.east_m < v[i].east_m + t * (v[j].east_m - v[i].east_m)) inside = !inside;
    }
    return inside;
}

double distance_to_ring_m(const Ring& ring, LocalPoint p) {
    double least = std::numeric_limits<double>::infinity();
    const auto& v = ring.vertices;
    for (std::size_t i = 0; i < v.size(); ++i)
        least = std::min(least, distance_to_segment_m(p, v[i], v[(i + 1) % v.size()]));
    return least;
}

}  // namespace

double area_m2(const Polygon& polygon) {
    double area = ring_area_m2(polygon.outer);
    for (const Ring& hole : polygon.holes) area -= ring_area_m2(hole);
    return area;
}

double area_m2(const MultiPolygon& polygons) {
    double sum = 0.0;
    for (const Polygon& part : polygons.parts) sum += area_m2(part);
    return sum;
}

bool contains(const Polygon& polygon, LocalPoint place) {
    if (!ring_contains(polygon.outer, place)) return false;
    for (const Ring& hole : polygon.holes)
        if (ring_contains(hole, place)) return false;
    return true;
}

bool contains(const MultiPolygon& polygons, LocalPoint place) {
    for (const Polygon& part : polygons.parts)
        if (contains(part, place)) return true;
    return false;
}

Metres distance(LocalPoint place, const Polygon& polygon) {
    if (contains(polygon, place)) return Metres::of(0.0);
    double least = distance_to_ring_m(polygon.outer, place);
    for (const Ring& hole : polygon.holes) least = std::min(least, distance_to_ring_m(hole, place));
    return Metres::of(least);
}

}  // namespace plugside
