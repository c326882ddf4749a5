#include "core/survey/walk_outline.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <optional>

#include "core/geometry/convex_hull.h"

namespace plugside {

namespace {

constexpr double least_turn = 1e-9;  // of two edges that count as parallel, as the sine of the angle between them

// A line with the ring on its left.
struct Edge {
    LocalPoint from;
    LocalVector along;  // of length one
};

std::optional<LocalPoint> meeting(const Edge& before, const Edge& after) {
    const double turn = cross(before.along, after.along);
    if (turn < least_turn) return std::nullopt;
    return before.from + before.along * (cross(after.from - before.from, after.along) / turn);
}

double triangle_m2(LocalPoint a, LocalPoint b, LocalPoint c) { return 0.5 * std::abs(cross(b - a, c - a)); }

std::vector<Edge> edges_beyond(const std::vector<LocalPoint>& ring, double beyond_m) {
    std::vector<Edge> edges;
    for (std::size_t i = 0; i < ring.size(); ++i) {
        const LocalVector leg = ring[(i + 1) % ring.size()] - ring[i];
        const double size = std::hypot(leg.east_m, leg.north_m);
        if (size <= 0.0) continue;
        const LocalVector along = leg * (1.0 / size);
        const LocalVector right{along.north_m, -along.east_m};
        edges.push_back({ring[i] + right * beyond_m, along});
    }
    return edges;
}

// The edge whose neighbours go on until they meet with the least area added; nothing where none do.
std::optional<std::size_t> least_needed(const std::vector<Edge>& edges) {
    std::optional<std::size_t> best;
    double least = std::numeric_limits<double>::infinity();
    const std::size_t count = edges.size();
    for (std::size_t i = 0; i < count; ++i) {
        const Edge& before = edges[(i + count - 1) % count];
        const Edge& after = edges[(i + 1) % count];
        const auto apex = meeting(before, after);
        const auto first = meeting(before, edges[i]);
        const auto second = meeting(edges[i], after);
        if (!apex || !first || !second) continue;
        const double added = triangle_m2(*first, *apex, *second);
        if (added >= least) continue;
        least = added;
        best = i;
    }
    return best;
}

}  // namespace

std::vector<LocalPoint> walk_outline(const Survey& survey, std::size_t most_corners, Metres beyond) {
    std::vector<LocalPoint> places;
    for (const Mound& mound : survey.mounds)
        if (!mound.set_aside_because) places.push_back(mound.plug);
    for (const Walk& walk : survey.walks)
        for (const TrackSegment& segment : walk.segments)
            for (const auto& point : segment) places.push_back(point.at);
    std::vector<LocalPoint> ring = convex_hull(std::move(places));
    if (ring.size() < 3) return {};
    double twice_area = 0.0;
    for (std::size_t i = 0; i < ring.size(); ++i)
        twice_area += cross(ring[i] - ring[0], ring[(i + 1) % ring.size()] - ring[0]);
    if (twice_area < 0.0) std::reverse(ring.begin(), ring.end());
    std::vector<Edge> edges = edges_beyond(ring, beyond.value());
    while (edges.size() > std::max<std::size_t>(most_corners, 3)) {
        const auto out = least_needed(edges);
        if (!out) break;
        edges.erase(edges.begin() + static_cast<std::ptrdiff_t>(*out));
    }
    std::vector<LocalPoint> outline;
    for (std::size_t i = 0; i < edges.size(); ++i)
        if (const auto corner = meeting(edges[(i + edges.size() - 1) % edges.size()], edges[i])) outline.push_back(*corner);
    return outline.size() < 3 ? std::vector<LocalPoint>{} : outline;
}

}  // namespace plugside
