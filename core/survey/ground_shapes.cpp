#include "core/survey/ground_shapes.h"

#include <cassert>

#include "core/words/words.h"

namespace plugside {

std::string to_text(GroundKind kind) {
    switch (kind) {
        case GroundKind::boundary: return Words::later("boundary");
        case GroundKind::barrier: return Words::later("barrier");
        case GroundKind::crossing: return Words::later("crossing");
        case GroundKind::gate: return Words::later("gate");
        case GroundKind::keep_clear: return Words::later("keep-clear area");
        case GroundKind::untreated: return Words::later("untreated piece");
    }
    return "boundary";
}

std::string shown(GroundKind kind) { return Words::shown(to_text(kind)); }

bool is_area(GroundKind kind) {
    return kind == GroundKind::boundary || kind == GroundKind::keep_clear || kind == GroundKind::untreated;
}

bool is_place(GroundKind kind) { return kind == GroundKind::crossing || kind == GroundKind::gate; }

std::vector<GroundShape> shapes_of(const Ground& ground) {
    std::vector<GroundShape> shapes;
    const auto add = [&](GroundKind kind, std::size_t count) {
        for (std::size_t i = 0; i < count; ++i) shapes.push_back({kind, i});
    };
    add(GroundKind::boundary, ground.boundary.parts.size());
    add(GroundKind::barrier, ground.barriers.size());
    add(GroundKind::crossing, ground.crossings.size());
    add(GroundKind::gate, ground.gates.size());
    add(GroundKind::keep_clear, ground.keep_clear.size());
    add(GroundKind::untreated, ground.untreated.parts.size());
    return shapes;
}

const Polygon& area_of(const Ground& ground, GroundShape shape) {
    switch (shape.kind) {
        case GroundKind::boundary: return ground.boundary.parts.at(shape.number);
        case GroundKind::keep_clear: return ground.keep_clear.at(shape.number).area;
        default: assert(shape.kind == GroundKind::untreated); return ground.untreated.parts.at(shape.number);
    }
}

std::size_t rings_of(const Ground& ground, GroundShape shape) {
    return is_area(shape.kind) ? 1 + area_of(ground, shape).holes.size() : 1;
}

const std::vector<LocalPoint>& corners_of(const Polygon& area, std::size_t ring) {
    return ring == 0 ? area.outer.vertices : area.holes.at(ring - 1).vertices;
}

std::vector<LocalPoint> corners_of(const Ground& ground, GroundShape shape, std::size_t ring) {
    switch (shape.kind) {
        case GroundKind::barrier: return ground.barriers.at(shape.number).line.vertices;
        case GroundKind::crossing: return {ground.crossings.at(shape.number).at};
        case GroundKind::gate: return {ground.gates.at(shape.number).at};
        default: return corners_of(area_of(ground, shape), ring);
    }
}

namespace {

// Calls with every line of the ground: shape, ring, corners, whether it is closed.
template <typename See>
void each_line(const Ground& ground, const See& see) {
    for (const GroundShape shape : shapes_of(ground))
        for (std::size_t ring = 0; ring < rings_of(ground, shape); ++ring)
            see(shape, ring, corners_of(ground, shape, ring), is_area(shape.kind));
}

LocalPoint nearest_on(LocalPoint place, LocalPoint a, LocalPoint b) {
    const LocalVector along = b - a;
    const double square = dot(along, along);
    if (square == 0.0) return a;
    const double share = dot(place - a, along) / square;
    return share <= 0.0 ? a : share >= 1.0 ? b : a + along * share;
}

}  // namespace

std::optional<CornerHit> nearest_corner(const Ground& ground, LocalPoint place, Metres reach) {
    std::optional<CornerHit> best;
    each_line(ground, [&](GroundShape shape, std::size_t ring, const std::vector<LocalPoint>& corners, bool) {
        for (std::size_t i = 0; i < corners.size(); ++i) {
            const double away = distance_m(place, corners[i]);
            if (away <= reach.value() && (!best || away < best->away_m))
                best = CornerHit{{shape, ring, i}, corners[i], away};
        }
    });
    return best;
}

std::optional<CornerHit> nearest_edge(const Ground& ground, LocalPoint place, Metres reach) {
    std::optional<CornerHit> best;
    each_line(ground, [&](GroundShape shape, std::size_t ring, const std::vector<LocalPoint>& corners, bool closed) {
        const std::size_t edges = corners.size() < 2 ? 0 : corners.size() - (closed ? 0 : 1);
        for (std::size_t i = 0; i < edges; ++i) {
            const LocalPoint at = nearest_on(place, corners[i], corners[(i + 1) % corners.size()]);
            const double away = distance_m(place, at);
            if (away <= reach.value() && (!best || away < best->away_m)) best = CornerHit{{shape, ring, i}, at, away};
        }
    });
    return best;
}

std::optional<GroundShape> shape_at(const Ground& ground, LocalPoint place, Metres reach) {
    if (const auto corner = nearest_corner(ground, place, reach)) return corner->corner.shape;
    if (const auto edge = nearest_edge(ground, place, reach)) return edge->corner.shape;
    std::optional<GroundShape> best;
    double smallest = 0.0;
    for (const GroundShape shape : shapes_of(ground)) {
        if (!is_area(shape.kind) || !contains(area_of(ground, shape), place)) continue;
        const double area = area_m2(area_of(ground, shape));
        if (best && area >= smallest) continue;
        best = shape;
        smallest = area;
    }
    return best;
}

}  // namespace plugside
