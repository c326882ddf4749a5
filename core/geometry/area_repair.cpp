#include "core/geometry/area_repair.h"

#include <algorithm>
#include <utility>

#include "core/geometry/area_operations.h"
#include "core/geometry/geos.h"
#include "core/words/words.h"

namespace plugside {

namespace {

// GEOS' reasons in words of the field.
std::string in_words(const std::string& reason) {
    if (reason.find("Self-intersection") != std::string::npos) return Words::tell("the outline crosses itself");
    if (reason.find("Hole lies outside") != std::string::npos) return Words::tell("a hole lies outside the area");
    if (reason.find("nested") != std::string::npos) return Words::tell("a hole lies in another hole");
    if (reason.find("Interior is disconnected") != std::string::npos) return Words::tell("holes cut the area apart");
    if (reason.find("Duplicate") != std::string::npos) return Words::tell("a part is there twice");
    if (reason.find("Too few") != std::string::npos)
        return Words::tell("the outline has too few corners to enclose anything");
    return Words::tell("the outline touches itself");
}

geos::Geometry outline_of(const geos::Session& session, const Polygon& area) {
    std::vector<geos::Geometry> lines;
    const auto add = [&](std::vector<LocalPoint> ring) {
        if (ring.size() < 3) return;
        ring.push_back(ring.front());
        lines.push_back(geos::from_vertices(session, ring.data(), ring.size()));
    };
    add(area.outer.vertices);
    for (const Ring& hole : area.holes) add(hole.vertices);
    return geos::collected(session, std::move(lines));
}

}  // namespace

std::optional<AreaFault> fault_of(const Polygon& area) {
    if (area.outer.vertices.size() < 3)
        return AreaFault{area.outer.vertices.empty() ? LocalPoint{} : area.outer.vertices.front(),
                         Words::tell("the outline has too few corners to enclose anything")};
    const geos::Session session;
    const geos::Geometry geometry = geos::as_drawn(session, area);
    char* reason = nullptr;
    GEOSGeometry* place = nullptr;
    const char valid = GEOSisValidDetail_r(session.context(), geometry.get(), 0, &reason, &place);
    const geos::Geometry at = session.owned(place);
    std::optional<AreaFault> fault;
    if (valid == 0) {
        fault = AreaFault{area.outer.vertices.front(), in_words(reason == nullptr ? "" : reason)};
        if (at) {
            GEOSGeomGetX_r(session.context(), at.get(), &fault->at.east_m);
            GEOSGeomGetY_r(session.context(), at.get(), &fault->at.north_m);
        }
    }
    GEOSFree_r(session.context(), reason);
    return fault;
}

MultiPolygon mended(const Polygon& area) {
    const geos::Session session;
    return geos::to_polygons(session, geos::from_polygons(session, {{area}}).get());
}

std::vector<Polygon> divided(const Polygon& area, const Polyline& line) {
    if (line.vertices.size() < 2) return {area};
    const geos::Session session;
    std::vector<geos::Geometry> lines;
    lines.push_back(outline_of(session, area));
    lines.push_back(geos::from_vertices(session, line.vertices.data(), line.vertices.size()));
    const geos::Geometry net =
        session.owned(GEOSUnaryUnion_r(session.context(), geos::collected(session, std::move(lines)).get()));
    const GEOSGeometry* nets[] = {net.get()};
    const geos::Geometry faces = session.owned(GEOSPolygonize_r(session.context(), nets, 1));
    std::vector<Polygon> parts;
    for (Polygon& face : geos::to_polygons(session, faces.get()).parts) {
        const LocalPoint inside = point_inside({{face}});
        if (contains(area, inside)) parts.push_back(std::move(face));
    }
    std::sort(parts.begin(), parts.end(), [](const Polygon& a, const Polygon& b) { return area_m2(a) > area_m2(b); });
    if (parts.size() < 2) return {area};
    return parts;
}

}  // namespace plugside
