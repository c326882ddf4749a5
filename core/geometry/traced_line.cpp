#include "core/geometry/traced_line.h"

#include <algorithm>

namespace plugside {

namespace {

std::size_t edges_of(const TracedLine& line) {
    if (line.vertices.size() < 2) return 0;
    return line.closed ? line.vertices.size() : line.vertices.size() - 1;
}

PlaceOnLine nearest_on_edge(const TracedLine& line, std::size_t edge, LocalPoint place) {
    const LocalPoint a = line.vertices[edge];
    const LocalVector along = line.vertices[(edge + 1) % line.vertices.size()] - a;
    const double squared = dot(along, along);
    const double share = squared > 0.0 ? std::clamp(dot(place - a, along) / squared, 0.0, 1.0) : 0.0;
    const LocalPoint at = a + along * share;
    return {edge, share, at, distance_m(at, place)};
}

bool before(const PlaceOnLine& a, const PlaceOnLine& b) { return a.edge != b.edge ? a.edge < b.edge : a.share < b.share; }

// In the order of the vertices; over a ring's seam where the second place comes first.
std::vector<LocalPoint> forwards(const TracedLine& line, const PlaceOnLine& from, const PlaceOnLine& to) {
    const std::size_t count = line.vertices.size();
    std::vector<LocalPoint> way{from.at};
    const auto add = [&way](LocalPoint place) {
        if (!(way.back() == place)) way.push_back(place);
    };
    const std::size_t steps = before(to, from) ? count - from.edge + to.edge : to.edge - from.edge;
    for (std::size_t step = 1; step <= steps; ++step) add(line.vertices[(from.edge + step) % count]);
    add(to.at);
    return way;
}

double length_m(const std::vector<LocalPoint>& way) {
    double sum = 0.0;
    for (std::size_t i = 1; i < way.size(); ++i) sum += distance_m(way[i - 1], way[i]);
    return sum;
}

std::vector<LocalPoint> reversed(std::vector<LocalPoint> way) {
    std::reverse(way.begin(), way.end());
    return way;
}

}  // namespace

std::optional<PlaceOnLine> nearest_on(const TracedLine& line, LocalPoint place) {
    if (line.vertices.empty()) return std::nullopt;
    if (edges_of(line) == 0) return PlaceOnLine{0, 0.0, line.vertices[0], distance_m(line.vertices[0], place)};
    std::optional<PlaceOnLine> nearest;
    for (std::size_t edge = 0; edge < edges_of(line); ++edge) {
        const PlaceOnLine here = nearest_on_edge(line, edge, place);
        if (!nearest || here.away_m < nearest->away_m) nearest = here;
    }
    return nearest;
}

std::vector<LocalPoint> between(const TracedLine& line, const PlaceOnLine& from, const PlaceOnLine& to, bool other_way) {
    if (!line.closed) return before(to, from) ? reversed(forwards(line, to, from)) : forwards(line, from, to);
    auto one = forwards(line, from, to);
    auto other = reversed(forwards(line, to, from));
    const bool first_is_short = length_m(one) <= length_m(other);
    return first_is_short != other_way ? one : other;
}

}  // namespace plugside
