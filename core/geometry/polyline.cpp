#include "core/geometry/polyline.h"

#include <algorithm>

namespace plugside {

Metres length(const Polyline& line) {
    double sum = 0.0;
    for (std::size_t i = 1; i < line.vertices.size(); ++i) sum += distance_m(line.vertices[i - 1], line.vertices[i]);
    return Metres::of(sum);
}

double distance_to_segment_m(LocalPoint place, LocalPoint a, LocalPoint b) {
    const LocalVector along = b - a;
    const double length_squared = dot(along, along);
    if (length_squared == 0.0) return distance_m(place, a);
    const double t = std::clamp(dot(place - a, along) / length_squared, 0.0, 1.0);
    return distance_m(place, a + along * t);
}

std::optional<Metres> distance(LocalPoint place, const Polyline& line) {
    if (line.vertices.empty()) return std::nullopt;
    double least = distance_m(place, line.vertices.front());
    for (std::size_t i = 1; i < line.vertices.size(); ++i)
        least = std::min(least, distance_to_segment_m(place, line.vertices[i - 1], line.vertices[i]));
    return Metres::of(least);
}

namespace {

bool within_box(LocalPoint a, LocalPoint b, LocalPoint p) {
    return std::min(a.east_m, b.east_m) <= p.east_m && p.east_m <= std::max(a.east_m, b.east_m) &&
           std::min(a.north_m, b.north_m) <= p.north_m && p.north_m <= std::max(a.north_m, b.north_m);
}

int side(LocalPoint a, LocalPoint b, LocalPoint p) {
    const double twice_area = cross(b - a, p - a);
    return (twice_area > 0.0) - (twice_area < 0.0);
}

}  // namespace

bool segments_meet(LocalPoint a, LocalPoint b, LocalPoint c, LocalPoint d) {
    const int c_side = side(a, b, c);
    const int d_side = side(a, b, d);
    const int a_side = side(c, d, a);
    const int b_side = side(c, d, b);
    if (c_side * d_side < 0 && a_side * b_side < 0) return true;
    return (c_side == 0 && within_box(a, b, c)) || (d_side == 0 && within_box(a, b, d)) ||
           (a_side == 0 && within_box(c, d, a)) || (b_side == 0 && within_box(c, d, b));
}

}  // namespace plugside
