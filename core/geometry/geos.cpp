#include "core/geometry/geos.h"

#include <cassert>
#include <cmath>
#include <utility>

namespace plugside::geos {

namespace {

using Sequence = GEOSCoordSequence*;

// A sequence of the vertices; `closed` repeats the first at the end.
Sequence sequence_of(const Session& session, const LocalPoint* first, std::size_t count, bool closed) {
    std::vector<double> numbers;
    numbers.reserve(2 * (count + 1));
    for (std::size_t i = 0; i < count; ++i) {
        assert(std::isfinite(first[i].east_m) && std::isfinite(first[i].north_m));
        numbers.insert(numbers.end(), {first[i].east_m, first[i].north_m});
    }
    if (closed) numbers.insert(numbers.end(), {first[0].east_m, first[0].north_m});
    return GEOSCoordSeq_copyFromBuffer_r(session.context(), numbers.data(), static_cast<unsigned>(numbers.size() / 2), 0, 0);
}

GEOSGeometry* ring_of(const Session& session, const Ring& ring) {
    return GEOSGeom_createLinearRing_r(session.context(),
                                       sequence_of(session, ring.vertices.data(), ring.vertices.size(), true));
}

GEOSGeometry* polygon_of(const Session& session, const Polygon& polygon) {
    std::vector<GEOSGeometry*> holes;
    for (const Ring& hole : polygon.holes)
        if (hole.vertices.size() >= 3) holes.push_back(ring_of(session, hole));
    return GEOSGeom_createPolygon_r(session.context(), ring_of(session, polygon.outer), holes.data(),
                                    static_cast<unsigned>(holes.size()));
}

Ring to_ring(const Session& session, const GEOSGeometry* ring) {
    const GEOSContextHandle_t context = session.context();
    const GEOSCoordSequence* sequence = GEOSGeom_getCoordSeq_r(context, ring);
    unsigned size = 0;
    if (sequence == nullptr || GEOSCoordSeq_getSize_r(context, sequence, &size) == 0 || size < 4) return {};
    Ring result;
    result.vertices.resize(size - 1);
    for (unsigned i = 0; i + 1 < size; ++i)
        GEOSCoordSeq_getXY_r(context, sequence, i, &result.vertices[i].east_m, &result.vertices[i].north_m);
    return result;
}

void append_polygons(const Session& session, const GEOSGeometry* geometry, MultiPolygon& into) {
    const GEOSContextHandle_t context = session.context();
    if (geometry == nullptr || GEOSisEmpty_r(context, geometry) != 0) return;
    const int type = GEOSGeomTypeId_r(context, geometry);
    if (type == GEOS_POLYGON) {
        Polygon polygon{to_ring(session, GEOSGetExteriorRing_r(context, geometry)), {}};
        const int holes = GEOSGetNumInteriorRings_r(context, geometry);
        for (int i = 0; i < holes; ++i)
            polygon.holes.push_back(to_ring(session, GEOSGetInteriorRingN_r(context, geometry, i)));
        into.parts.push_back(std::move(polygon));
    } else if (type == GEOS_MULTIPOLYGON || type == GEOS_GEOMETRYCOLLECTION) {
        const int parts = GEOSGetNumGeometries_r(context, geometry);
        for (int i = 0; i < parts; ++i) append_polygons(session, GEOSGetGeometryN_r(context, geometry, i), into);
    }
}

}  // namespace

Session::Session() : context_(GEOS_init_r()) { GEOSContext_setErrorMessageHandler_r(context_, &remember_error, this); }

Session::~Session() { GEOS_finish_r(context_); }

void Session::remember_error(const char* message, void* session) {
    static_cast<Session*>(session)->last_error_ = message == nullptr ? "" : message;
}

Geometry from_vertices(const Session& session, const LocalPoint* first, std::size_t count) {
    if (count == 0) return session.owned(nullptr);
    const Sequence sequence = sequence_of(session, first, count, false);
    return session.owned(count == 1 ? GEOSGeom_createPoint_r(session.context(), sequence)
                                    : GEOSGeom_createLineString_r(session.context(), sequence));
}

Geometry from_polygons(const Session& session, const MultiPolygon& polygons) {
    std::vector<Geometry> parts;
    for (const Polygon& polygon : polygons.parts) {
        if (polygon.outer.vertices.size() < 3) continue;
        Geometry part = session.owned(polygon_of(session, polygon));
        // A ring drawn by hand may cross itself; the overlay operations ask for valid areas.
        if (part && GEOSisValid_r(session.context(), part.get()) != 1)
            part = session.owned(GEOSMakeValid_r(session.context(), part.get()));
        if (part) parts.push_back(std::move(part));
    }
    if (parts.size() == 1) return std::move(parts.front());
    const Geometry all = collected(session, std::move(parts));
    return session.owned(GEOSUnaryUnion_r(session.context(), all.get()));
}

Geometry as_drawn(const Session& session, const Polygon& polygon) { return session.owned(polygon_of(session, polygon)); }

Geometry collected(const Session& session, std::vector<Geometry> parts) {
    std::vector<GEOSGeometry*> released;
    released.reserve(parts.size());
    for (Geometry& part : parts)
        if (part) released.push_back(part.release());
    return session.owned(GEOSGeom_createCollection_r(session.context(), GEOS_GEOMETRYCOLLECTION, released.data(),
                                                     static_cast<unsigned>(released.size())));
}

MultiPolygon to_polygons(const Session& session, const GEOSGeometry* geometry) {
    MultiPolygon result;
    append_polygons(session, geometry, result);
    return result;
}

}  // namespace plugside::geos
