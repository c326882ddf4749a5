// The one place where core talks to GEOS: a context of its own for each piece of work, owned geometries, and values in and
// out.
//
// Inside core only: no other layer includes this header.
// Threads:  a Session belongs to one thread at a time; different sessions are independent (GEOS' re-entrant interface).
// Errors:   GEOS reports through its handler; a call that failed gives a null Geometry and `Session::last_error` says why.
// Preconditions: coordinates are finite (readers refuse others); anything else asserts.
// Degenerate input: rings of fewer than three vertices and parts without area are left out; self-crossing rings are mended.
// Cost:     conversions O(n).
#pragma once

#include <geos_c.h>

#include <memory>
#include <string>
#include <vector>

#include "core/geometry/point.h"
#include "core/geometry/polygon.h"
#include "core/geometry/polyline.h"

namespace plugside::geos {

struct DestroyGeometry {
    GEOSContextHandle_t context = nullptr;
    void operator()(GEOSGeometry* geometry) const { GEOSGeom_destroy_r(context, geometry); }
};
using Geometry = std::unique_ptr<GEOSGeometry, DestroyGeometry>;

class Session {
public:
    Session();
    ~Session();
    Session(const Session&) = delete;
    Session& operator=(const Session&) = delete;

    [[nodiscard]] GEOSContextHandle_t context() const { return context_; }
    [[nodiscard]] const std::string& last_error() const { return last_error_; }
    // Takes what a GEOS call returned (null after an error).
    [[nodiscard]] Geometry owned(GEOSGeometry* geometry) const { return {geometry, DestroyGeometry{context_}}; }

private:
    static void remember_error(const char* message, void* session);
    GEOSContextHandle_t context_ = nullptr;
    std::string last_error_;
};

// A line of two or more vertices, or a point for one; null for none.
[[nodiscard]] Geometry from_vertices(const Session& session, const LocalPoint* first, std::size_t count);

// A valid areal geometry: holes cut, crossing rings mended, overlapping parts joined. Never null for finite input.
[[nodiscard]] Geometry from_polygons(const Session& session, const MultiPolygon& polygons);

// The area as it was drawn, valid or not. Precondition: an outer ring of at least three vertices.
[[nodiscard]] Geometry as_drawn(const Session& session, const Polygon& polygon);

// One geometry of several, in their order; takes the parts over.
[[nodiscard]] Geometry collected(const Session& session, std::vector<Geometry> parts);

// The polygons of any geometry; points and lines in it are left out.
[[nodiscard]] MultiPolygon to_polygons(const Session& session, const GEOSGeometry* geometry);

}  // namespace plugside::geos
