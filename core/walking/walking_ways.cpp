#include "core/walking/walking_ways.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <utility>

#include "core/systems/disjoint_sets.h"
#include "core/walking/thinned_track.h"

namespace plugside {

namespace {

using Corner = WalkingWays::Corner;

constexpr double berth = WalkingWays::corner_berth_m;
constexpr double least_turn = 1e-9;     // sine of it: less is straight on
constexpr double sharp_cosine = 0.5;    // of half a turn: sharper corners are gone around in two steps, as an end is
constexpr double touching_turn = 0.02;  // sine of it: so near to touching a corner that its berth decides

Barrier closed_line(const std::string& name, const Ring& ring) {
    Barrier line{name, {ring.vertices}};
    if (!ring.vertices.empty()) line.line.vertices.push_back(ring.vertices.front());
    return line;
}

void add_rings(const std::string& name, const Polygon& area, std::vector<Barrier>& lines) {
    lines.push_back(closed_line(name, area.outer));
    for (const Ring& hole : area.holes) lines.push_back(closed_line(name, hole));
}

bool walked_around(const KeepClearArea& area, KeepClearWalk walk) {
    if (walk == KeepClearWalk::around_all) return true;
    return walk == KeepClearWalk::around_buildings && area.kind == KeepClearKind::building;
}

std::vector<Polyline> lines_in_the_way(const Ground& ground, const WalkingWayOptions& options) {
    Ground fenced;
    fenced.barriers = ground.barriers;
    fenced.gates = ground.gates;
    if (options.stay_inside)
        for (const Polygon& part : ground.boundary.parts) add_rings("", part, fenced.barriers);
    for (const KeepClearArea& area : ground.keep_clear)
        if (walked_around(area, options.keep_clear)) add_rings(area.name, area.area, fenced.barriers);
    std::vector<Polyline> lines;
    for (Barrier& barrier : barriers_to_people(fenced)) {
        auto& vertices = barrier.line.vertices;
        vertices.erase(std::unique(vertices.begin(), vertices.end()), vertices.end());
        if (vertices.size() > 1) lines.push_back(std::move(barrier.line));
    }
    return lines;
}

LocalVector unit(LocalVector v) { return v * (1.0 / v.length_m()); }

// Two corners about a place where the wall goes `on` no further, or turns so sharply that it might as well.
void add_end(LocalPoint vertex, LocalVector on, LocalPoint before, std::vector<Corner>& corners) {
    const LocalVector right = turned_right(on);
    corners.push_back({vertex + berth * (on + right), vertex, before, before});
    corners.push_back({vertex + berth * (on - right), vertex, before, before});
}

void add_corner(LocalPoint before, LocalPoint vertex, LocalPoint after, std::vector<Corner>& corners) {
    const LocalVector in = unit(vertex - before);
    const LocalVector out = unit(after - vertex);
    const double turn = cross(in, out);  // to the left where positive
    if (std::abs(turn) < least_turn && dot(in, out) > 0.0) return;
    const double side = turn > 0.0 ? 1.0 : -1.0;  // the outer side is to the right of a turn to the left
    const LocalVector first = turned_right(in) * side;
    const LocalVector second = turned_right(out) * side;
    const double half_cosine = std::sqrt(std::max(0.0, 0.5 * (1.0 + dot(in, out))));
    if (half_cosine > sharp_cosine) {
        corners.push_back({vertex + unit(first + second) * (berth / half_cosine), vertex, before, after});
        return;
    }
    corners.push_back({vertex + berth * (first + in), vertex, before, after});
    corners.push_back({vertex + berth * (second - out), vertex, before, after});
}

std::vector<Corner> corners_of(const std::vector<Polyline>& lines) {
    std::vector<Corner> corners;
    for (const Polyline& line : lines) {
        const auto& v = line.vertices;
        const std::size_t n = v.size();
        for (std::size_t i = 1; i + 1 < n; ++i) add_corner(v[i - 1], v[i], v[i + 1], corners);
        if (n > 3 && v.front() == v.back()) {
            add_corner(v[n - 2], v[0], v[1], corners);
        } else {
            add_end(v[0], unit(v[0] - v[1]), v[1], corners);
            add_end(v[n - 1], unit(v[n - 1] - v[n - 2]), v[n - 2], corners);
        }
    }
    return corners;
}

// Whether a way that comes straight from `from` may bend around the corner: the wall lies to one side of its line.
bool may_bend(LocalPoint from, const Corner& corner) {
    const LocalVector way = corner.vertex - from;
    const double length = way.length_m();
    if (length < 10.0 * berth) return true;
    const auto side = [&](LocalPoint beside) {
        const LocalVector wall = beside - corner.vertex;
        return cross(way, wall) / (length * wall.length_m());
    };
    const double before = side(corner.before);
    const double after = side(corner.after);
    const double unsure = touching_turn + 2.0 * berth / length;
    return before * after >= 0.0 || std::min(std::abs(before), std::abs(after)) < unsure;
}

}  // namespace

WalkingWays::WalkingWays(const Ground& ground, const WalkingWayOptions& options) {
    std::vector<Polyline> lines = lines_in_the_way(ground, options);
    corners_ = corners_of(lines);
    const std::vector<Polyline> as_drawn = lines;
    constexpr double coarsest_m = 50.0;
    for (double step_m = berth; corners_.size() > options.most_corners && step_m < coarsest_m; step_m *= 2.0) {
        simplified_by_ = Metres::of(step_m);
        for (std::size_t i = 0; i < lines.size(); ++i) lines[i] = simplified(as_drawn[i], simplified_by_);
        corners_ = corners_of(lines);
    }
    std::vector<WallPiece> pieces;
    for (const Polyline& line : lines)
        for (std::size_t i = 1; i < line.vertices.size(); ++i) pieces.push_back({line.vertices[i - 1], line.vertices[i]});
    walls_ = WallCells(std::move(pieces));
    join_corners();
    number_parts();
}

void WalkingWays::join_corners() {
    steps_.resize(corners_.size());
    for (std::uint32_t i = 0; i < corners_.size(); ++i)
        for (std::uint32_t k = i + 1; k < corners_.size(); ++k) {
            const bool one_vertex = corners_[i].vertex == corners_[k].vertex;
            if (!one_vertex && !(may_bend(corners_[i].at, corners_[k]) && may_bend(corners_[k].at, corners_[i]))) continue;
            if (!straight(corners_[i].at, corners_[k].at)) continue;
            const double metres = distance_m(corners_[i].at, corners_[k].at);
            steps_[i].push_back({k, metres});
            steps_[k].push_back({i, metres});
        }
}

void WalkingWays::number_parts() {
    DisjointSets parts(corners_.size());
    for (std::uint32_t i = 0; i < corners_.size(); ++i)
        for (const Step& step : steps_[i]) parts.join(i, step.corner);
    part_ = parts.labels();
}

std::vector<WalkingWays::Step> WalkingWays::seen_from(LocalPoint place) const {
    std::vector<Step> seen;
    for (std::uint32_t i = 0; i < corners_.size(); ++i)
        if (may_bend(place, corners_[i]) && straight(place, corners_[i].at))
            seen.push_back({i, distance_m(place, corners_[i].at)});
    std::sort(seen.begin(), seen.end(),
              [](const Step& a, const Step& b) { return std::pair(a.metres, a.corner) < std::pair(b.metres, b.corner); });
    return seen;
}

}  // namespace plugside
