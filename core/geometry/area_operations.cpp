#include "core/geometry/area_operations.h"

#include <algorithm>
#include <cassert>
#include <span>
#include <utility>

#include "core/geometry/geos.h"

namespace plugside {

namespace {

constexpr std::size_t chunk_vertices = 50;
constexpr std::size_t joined_at_once = 8;
constexpr int quarter_pieces = 16;

using geos::Geometry;
using geos::Session;

// Neighbouring chunks share a vertex, so that nothing is missing between them.
std::vector<std::span<const LocalPoint>> chunks_of(const std::vector<Polyline>& lines) {
    std::vector<std::span<const LocalPoint>> chunks;
    for (const Polyline& line : lines) {
        const std::span<const LocalPoint> all(line.vertices);
        if (all.size() == 1) chunks.push_back(all);
        for (std::size_t from = 0; from + 1 < all.size(); from += chunk_vertices - 1)
            chunks.push_back(all.subspan(from, std::min(chunk_vertices, all.size() - from)));
    }
    return chunks;
}

bool is_one_place(std::span<const LocalPoint> chunk) {
    return std::all_of(chunk.begin(), chunk.end(), [&](LocalPoint p) { return p == chunk.front(); });
}

Geometry buffer_of(const Session& session, std::span<const LocalPoint> chunk, Metres radius) {
    const Geometry line = geos::from_vertices(session, chunk.data(), is_one_place(chunk) ? 1 : chunk.size());
    return session.owned(GEOSBuffer_r(session.context(), line.get(), radius.value(), quarter_pieces));
}

Geometry joined(const Session& session, std::vector<Geometry> parts) {
    const Geometry all = geos::collected(session, std::move(parts));
    return session.owned(GEOSUnaryUnion_r(session.context(), all.get()));
}

// Joins neighbours first, a few at a time, so that a stop is seen soon.
std::optional<Geometry> joined_in_steps(const Session& session, std::vector<Geometry> parts, const std::stop_token& stop) {
    while (parts.size() > 1) {
        std::vector<Geometry> fewer;
        for (std::size_t from = 0; from < parts.size(); from += joined_at_once) {
            if (stop.stop_requested()) return std::nullopt;
            std::vector<Geometry> group;
            for (std::size_t i = from; i < std::min(from + joined_at_once, parts.size()); ++i)
                group.push_back(std::move(parts[i]));
            fewer.push_back(joined(session, std::move(group)));
        }
        parts = std::move(fewer);
    }
    if (stop.stop_requested()) return std::nullopt;
    return parts.empty() ? session.owned(nullptr) : std::move(parts.front());
}

using Overlay = GEOSGeometry* (*)(GEOSContextHandle_t, const GEOSGeometry*, const GEOSGeometry*);

MultiPolygon overlaid(Overlay overlay, const MultiPolygon& a, const MultiPolygon& b) {
    const Session session;
    const Geometry first = geos::from_polygons(session, a);
    const Geometry second = geos::from_polygons(session, b);
    const Geometry result = session.owned(overlay(session.context(), first.get(), second.get()));
    assert(result);
    return geos::to_polygons(session, result.get());
}

}  // namespace

std::optional<MultiPolygon> buffered(const std::vector<Polyline>& lines, Metres radius, const std::stop_token& stop) {
    if (!(radius > Metres::of(0.0))) return MultiPolygon{};
    const Session session;
    std::vector<Geometry> parts;
    for (const std::span<const LocalPoint> chunk : chunks_of(lines)) {
        if (stop.stop_requested()) return std::nullopt;
        parts.push_back(buffer_of(session, chunk, radius));
    }
    const std::optional<Geometry> all = joined_in_steps(session, std::move(parts), stop);
    if (!all) return std::nullopt;
    return geos::to_polygons(session, all->get());
}

MultiPolygon buffered(const std::vector<Polyline>& lines, Metres radius) {
    return buffered(lines, radius, std::stop_token{}).value_or(MultiPolygon{});
}

MultiPolygon outline_about(const std::vector<Polyline>& lines, Metres radius) {
    constexpr int outline_pieces = 6;
    if (!(radius > Metres::of(0.0))) return {};
    const Session session;
    std::vector<Geometry> parts;
    for (const Polyline& line : lines) {
        if (line.vertices.empty()) continue;
        const std::size_t used = is_one_place(line.vertices) ? 1 : line.vertices.size();
        parts.push_back(geos::from_vertices(session, line.vertices.data(), used));
    }
    if (parts.empty()) return {};
    const Geometry all = geos::collected(session, std::move(parts));
    const Geometry area = session.owned(GEOSBuffer_r(session.context(), all.get(), radius.value(), outline_pieces));
    return geos::to_polygons(session, area.get());
}

MultiPolygon intersection(const MultiPolygon& a, const MultiPolygon& b) { return overlaid(&GEOSIntersection_r, a, b); }
MultiPolygon difference(const MultiPolygon& a, const MultiPolygon& b) { return overlaid(&GEOSDifference_r, a, b); }
MultiPolygon union_of(const MultiPolygon& a, const MultiPolygon& b) { return overlaid(&GEOSUnion_r, a, b); }

MultiPolygon union_of(const std::vector<MultiPolygon>& areas) {
    MultiPolygon all;
    for (const MultiPolygon& area : areas) all.parts.insert(all.parts.end(), area.parts.begin(), area.parts.end());
    const Session session;
    const Geometry joined_area = geos::from_polygons(session, all);
    return geos::to_polygons(session, joined_area.get());
}

LocalPoint point_inside(const MultiPolygon& area) {
    assert(!area.empty());
    const Session session;
    const Geometry shape = geos::from_polygons(session, area);
    const Geometry place = session.owned(GEOSPointOnSurface_r(session.context(), shape.get()));
    LocalPoint inside;
    if (place && GEOSGeomGetX_r(session.context(), place.get(), &inside.east_m) == 1 &&
        GEOSGeomGetY_r(session.context(), place.get(), &inside.north_m) == 1)
        return inside;
    for (const Polygon& part : area.parts)
        if (!part.outer.vertices.empty()) return part.outer.vertices.front();
    return {};
}

}  // namespace plugside
