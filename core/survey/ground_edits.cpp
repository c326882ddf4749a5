#include "core/survey/ground_edits.h"

#include <algorithm>
#include <cassert>
#include <utility>

#include "core/geometry/area_operations.h"
#include "core/geometry/area_repair.h"
#include "core/words/words.h"

namespace plugside {

namespace {

constexpr double same_place_m = 0.01;

tl::unexpected<std::string> no(std::string sentence) { return tl::unexpected<std::string>(std::move(sentence)); }

Polygon& area_in(Ground& ground, GroundShape shape) {
    switch (shape.kind) {
        case GroundKind::boundary: return ground.boundary.parts.at(shape.number);
        case GroundKind::keep_clear: return ground.keep_clear.at(shape.number).area;
        default: return ground.untreated.parts.at(shape.number);
    }
}

std::vector<LocalPoint>& ring_in(Ground& ground, GroundShape shape, std::size_t ring) {
    if (shape.kind == GroundKind::barrier) return ground.barriers.at(shape.number).line.vertices;
    Polygon& area = area_in(ground, shape);
    return ring == 0 ? area.outer.vertices : area.holes.at(ring - 1).vertices;
}

std::vector<Gap>& gaps_in(Ground& ground, GroundKind kind) {
    return kind == GroundKind::crossing ? ground.crossings : ground.gates;
}

void add_area(Ground& ground, GroundKind kind, Polygon area) {
    if (kind == GroundKind::keep_clear)
        ground.keep_clear.push_back({"", "", KeepClearKind::other, std::move(area)});
    else
        (kind == GroundKind::boundary ? ground.boundary : ground.untreated).parts.push_back(std::move(area));
}

std::vector<LocalPoint> without_repeats(std::vector<LocalPoint> corners, bool closed) {
    corners.erase(std::unique(corners.begin(), corners.end()), corners.end());
    if (closed && corners.size() > 1 && corners.front() == corners.back()) corners.pop_back();
    return corners;
}

// Puts areas in the place of one: the first stays where it was, the others come behind it.
void put_areas(Ground& ground, GroundShape shape, std::vector<Polygon> areas) {
    const auto at = static_cast<std::ptrdiff_t>(shape.number);
    if (shape.kind == GroundKind::keep_clear) {
        const KeepClearArea words = ground.keep_clear.at(shape.number);
        ground.keep_clear.erase(ground.keep_clear.begin() + at);
        for (std::size_t i = 0; i < areas.size(); ++i)
            ground.keep_clear.insert(ground.keep_clear.begin() + at + static_cast<std::ptrdiff_t>(i),
                                     {words.name, words.reason, words.kind, std::move(areas[i])});
        return;
    }
    auto& parts = (shape.kind == GroundKind::boundary ? ground.boundary : ground.untreated).parts;
    parts.erase(parts.begin() + at);
    parts.insert(parts.begin() + at, std::make_move_iterator(areas.begin()), std::make_move_iterator(areas.end()));
}

Polyline joined_lines(const Polyline& first, const Polyline& second, bool& touch) {
    const auto near = [](LocalPoint a, LocalPoint b) { return distance_m(a, b) <= same_place_m; };
    std::vector<LocalPoint> a = first.vertices;
    std::vector<LocalPoint> b = second.vertices;
    touch = true;
    if (near(a.back(), b.back()))
        std::reverse(b.begin(), b.end());
    else if (near(a.front(), b.front()))
        std::reverse(a.begin(), a.end());
    else if (near(a.front(), b.back())) {
        std::reverse(a.begin(), a.end());
        std::reverse(b.begin(), b.end());
    } else if (!near(a.back(), b.front())) {
        touch = false;
    }
    a.insert(a.end(), b.begin() + 1, b.end());
    return {std::move(a)};
}

}  // namespace

EditedGround with_shape(const Ground& ground, GroundKind kind, const std::vector<LocalPoint>& drawn) {
    Ground after = ground;
    const std::vector<LocalPoint> corners = without_repeats(drawn, is_area(kind));
    if (corners.empty()) return no(Words::tell("Nothing was drawn."));
    if (is_place(kind)) {
        gaps_in(after, kind).push_back({"", corners.front(), Metres::of(1.0)});
    } else if (kind == GroundKind::barrier) {
        if (corners.size() < 2) return no(Words::tell("A barrier wants two corners or more; one was drawn."));
        after.barriers.push_back({"", {corners}});
    } else {
        if (corners.size() < 3)
            return no(corners.size() == 1 ? Words::tell("An area wants three corners or more; one was drawn.")
                                          : Words::tell("An area wants three corners or more; two were drawn."));
        add_area(after, kind, {Ring{corners}, {}});
    }
    return after;
}

EditedGround without_shape(const Ground& ground, GroundShape shape) {
    Ground after = ground;
    const auto at = static_cast<std::ptrdiff_t>(shape.number);
    switch (shape.kind) {
        case GroundKind::barrier: after.barriers.erase(after.barriers.begin() + at); break;
        case GroundKind::crossing: after.crossings.erase(after.crossings.begin() + at); break;
        case GroundKind::gate: after.gates.erase(after.gates.begin() + at); break;
        default: put_areas(after, shape, {});
    }
    return after;
}

EditedGround corner_moved(const Ground& ground, GroundCorner corner, LocalPoint to) {
    Ground after = ground;
    if (is_place(corner.shape.kind))
        gaps_in(after, corner.shape.kind).at(corner.shape.number).at = to;
    else
        ring_in(after, corner.shape, corner.ring).at(corner.corner) = to;
    return after;
}

EditedGround corner_added(const Ground& ground, GroundCorner behind, LocalPoint at) {
    if (is_place(behind.shape.kind))
        return no(Words::tell("A {1} is one place and has no corners.", {shown(behind.shape.kind)}));
    Ground after = ground;
    auto& corners = ring_in(after, behind.shape, behind.ring);
    assert(behind.corner < corners.size());
    corners.insert(corners.begin() + static_cast<std::ptrdiff_t>(behind.corner) + 1, at);
    return after;
}

EditedGround corner_removed(const Ground& ground, GroundCorner corner) {
    if (is_place(corner.shape.kind)) return without_shape(ground, corner.shape);
    Ground after = ground;
    auto& corners = ring_in(after, corner.shape, corner.ring);
    const std::size_t least = is_area(corner.shape.kind) ? 3 : 2;
    if (corners.size() <= least && corner.ring > 0) {  // a hole goes with its last corners
        auto& holes = area_in(after, corner.shape).holes;
        holes.erase(holes.begin() + static_cast<std::ptrdiff_t>(corner.ring) - 1);
        return after;
    }
    if (corners.size() <= least)
        return no(Words::tell("This {1} has only {2} corners left: remove it whole instead.",
                              {shown(corner.shape.kind), std::to_string(corners.size())}));
    corners.erase(corners.begin() + static_cast<std::ptrdiff_t>(corner.corner));
    return after;
}

EditedGround shape_shifted(const Ground& ground, GroundShape shape, LocalVector by) {
    Ground after = ground;
    if (is_place(shape.kind)) {
        Gap& gap = gaps_in(after, shape.kind).at(shape.number);
        gap.at = gap.at + by;
        return after;
    }
    for (std::size_t ring = 0; ring < rings_of(ground, shape); ++ring)
        for (LocalPoint& corner : ring_in(after, shape, ring)) corner = corner + by;
    return after;
}

EditedGround split_along(const Ground& ground, GroundShape shape, const std::vector<LocalPoint>& line) {
    if (is_place(shape.kind)) return no(Words::tell("A {1} is one place and cannot be split.", {shown(shape.kind)}));
    Ground after = ground;
    if (is_area(shape.kind)) {
        std::vector<Polygon> parts = divided(area_of(ground, shape), {line});
        if (parts.size() < 2)
            return no(Words::tell("The line does not cross the {1} from edge to edge.", {shown(shape.kind)}));
        put_areas(after, shape, std::move(parts));
        return after;
    }
    if (line.empty()) return no(Words::tell("Nothing was drawn."));
    // at the place of the barrier nearest to where the line was begun, or where it first meets the barrier
    const auto hit = nearest_edge({{}, {ground.barriers.at(shape.number)}, {}, {}, {}, {}}, line.front(), Metres::of(1e9));
    if (!hit) return no(Words::tell("The barrier has no length to be split."));
    Barrier& first = after.barriers[shape.number];
    Barrier second{first.name, {}};
    const auto cut = static_cast<std::ptrdiff_t>(hit->corner.corner) + 1;
    second.line.vertices.assign(first.line.vertices.begin() + cut, first.line.vertices.end());
    second.line.vertices.insert(second.line.vertices.begin(), hit->at);
    first.line.vertices.resize(static_cast<std::size_t>(cut));
    first.line.vertices.push_back(hit->at);
    if (length(first.line).value() < same_place_m || length(second.line).value() < same_place_m)
        return no(Words::tell("The barrier ends there: there is nothing to split off."));
    after.barriers.insert(after.barriers.begin() + static_cast<std::ptrdiff_t>(shape.number) + 1, std::move(second));
    return after;
}

EditedGround joined(const Ground& ground, GroundShape first, GroundShape second) {
    if (first == second || first.kind != second.kind || is_place(first.kind))
        return no(first == second
                      ? Words::tell("Two areas, or two barriers, can be joined; this is a {1} and the same again.",
                                    {shown(first.kind)})
                      : Words::tell("Two areas, or two barriers, can be joined; this is a {1} and a {2}.",
                                    {shown(first.kind), shown(second.kind)}));
    Ground after = ground;
    if (first.kind == GroundKind::barrier) {
        bool touch = false;
        Polyline whole = joined_lines(ground.barriers.at(first.number).line, ground.barriers.at(second.number).line, touch);
        if (!touch) return no(Words::tell("The two barriers do not end at one place: move an end to the other's first."));
        after.barriers[first.number].line = {without_repeats(std::move(whole.vertices), false)};
    } else {
        MultiPolygon whole = union_of(MultiPolygon{{area_of(ground, first)}}, MultiPolygon{{area_of(ground, second)}});
        if (whole.parts.size() != 1) return no(Words::tell("The two areas do not touch along an edge."));
        area_in(after, first) = std::move(whole.parts.front());
    }
    return without_shape(after, second);
}

EditedGround with_hole(const Ground& ground, GroundShape shape, const std::vector<LocalPoint>& drawn) {
    const std::vector<LocalPoint> corners = without_repeats(drawn, true);
    if (!is_area(shape.kind)) return no(Words::tell("Only an area can have a hole."));
    if (corners.size() < 3) return no(Words::tell("A hole wants three corners or more."));
    MultiPolygon left = difference({{area_of(ground, shape)}}, {{Polygon{Ring{corners}, {}}}});
    if (left.empty()) return no(Words::tell("The hole takes the whole area away."));
    if (area_m2(left) > area_m2(area_of(ground, shape)) - 1e-9) return no(Words::tell("The hole lies outside the area."));
    Ground after = ground;
    put_areas(after, shape, std::move(left.parts));
    return after;
}

EditedGround with_band(const Ground& ground, GroundKind kind, const std::vector<LocalPoint>& line, Metres width) {
    if (!is_area(kind)) return no(Words::tell("A band about a line is an area: boundary, keep-clear or untreated."));
    if (width.value() <= 0.0 || line.size() < 2)
        return no(Words::tell("A band wants a line of two corners or more and a width above 0."));
    Ground after = ground;
    for (Polygon& part : buffered({{line}}, width * 0.5).parts) add_area(after, kind, std::move(part));
    return after;
}

ShapeWords words_of(const Ground& ground, GroundShape shape) {
    ShapeWords words;
    switch (shape.kind) {
        case GroundKind::barrier: words.name = ground.barriers.at(shape.number).name; break;
        case GroundKind::crossing:
        case GroundKind::gate: {
            const Gap& gap = (shape.kind == GroundKind::crossing ? ground.crossings : ground.gates).at(shape.number);
            words.name = gap.name;
            words.width = gap.width;
            break;
        }
        case GroundKind::keep_clear: {
            const KeepClearArea& area = ground.keep_clear.at(shape.number);
            words = {area.name, area.reason, area.kind, {}};
            break;
        }
        default: break;
    }
    return words;
}

EditedGround with_words(const Ground& ground, GroundShape shape, const ShapeWords& words) {
    Ground after = ground;
    switch (shape.kind) {
        case GroundKind::barrier: after.barriers.at(shape.number).name = words.name; break;
        case GroundKind::crossing:
        case GroundKind::gate:
            if (words.width.value() <= 0.0) return no(Words::tell("A gap wants a width above 0."));
            gaps_in(after, shape.kind).at(shape.number).name = words.name;
            gaps_in(after, shape.kind).at(shape.number).width = words.width;
            break;
        case GroundKind::keep_clear: {
            KeepClearArea& area = after.keep_clear.at(shape.number);
            area.name = words.name;
            area.reason = words.reason;
            area.kind = words.kind;
            break;
        }
        default: return no(Words::tell("A {1} has no name of its own.", {shown(shape.kind)}));
    }
    return after;
}

std::vector<ShapeFault> faults_of(const Ground& ground) {
    std::vector<ShapeFault> faults;
    for (const GroundShape shape : shapes_of(ground)) {
        if (!is_area(shape.kind)) continue;
        if (const auto fault = fault_of(area_of(ground, shape)))

            faults.push_back({shape, fault->at, Words::tell("In this {1} {2}.", {shown(shape.kind), fault->what})});
    }
    return faults;
}

EditedGround mended(const Ground& ground, GroundShape shape) {
    if (!is_area(shape.kind)) return no(Words::tell("Only an area can be mended."));
    MultiPolygon areas = mended(area_of(ground, shape));
    if (areas.empty()) return no(Words::tell("The outline encloses nothing: remove it, or draw it anew."));
    Ground after = ground;
    put_areas(after, shape, std::move(areas.parts));
    return after;
}

}  // namespace plugside
