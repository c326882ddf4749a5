// The plane that a field lies on: a transverse Mercator projection of its own, centred on the field, on WGS 84.
//
// Convention:  longitude and latitude in degrees, longitude first, WGS 84 (EPSG:4326 in longitude-latitude order).
//              Local places in metres east and north of the centre.
// Accuracy:    scale is 1 at the centre's meridian and off by less than 1e-6 across 10 km (x^2 / 2R^2 = 3e-7 at 5 km);
//              there and back within 1e-11 degrees. A field on a zone edge or across the 180th meridian is no special case.
// Bearings:    the plane's north is true north on the centre's meridian; `convergence_degrees` tells the difference
//              elsewhere (under 0.1 degree within 5 km up to latitude 60). `true_bearing` and `plane_bearing` are the named
//              edge.
// Range:       places within 80 degrees of longitude of the centre (readers refuse a file that reaches further than a
//              field).
// Errors:      a latitude outside -90..90, a longitude outside -180..180 or a number that is not finite asserts; readers
//              refuse them before. At the poles themselves PROJ has no frame: the centre is held within 89.9 degrees.
// Threads:     any number at once: a field is shared by the window and the work beside it.
#pragma once

#include <memory>
#include <vector>

#include "core/geometry/point.h"
#include "core/units/bearing.h"

namespace plugside {

struct GeographicPoint {
    double longitude_degrees = 0.0;
    double latitude_degrees = 0.0;
    friend bool operator==(GeographicPoint, GeographicPoint) = default;
};

class LocalFrame {
public:
    [[nodiscard]] static LocalFrame centred_on(GeographicPoint centre);
    // The frame of a set of places: centred on the middle of their box, across the 180th meridian the short way round.
    [[nodiscard]] static LocalFrame around(const std::vector<GeographicPoint>& places);

    LocalFrame();  // centred on longitude 0, latitude 0
    LocalFrame(const LocalFrame&);
    LocalFrame(LocalFrame&&) noexcept;
    LocalFrame& operator=(const LocalFrame&);
    LocalFrame& operator=(LocalFrame&&) noexcept;
    ~LocalFrame();

    [[nodiscard]] GeographicPoint centre() const;
    [[nodiscard]] LocalPoint to_local(GeographicPoint place) const;
    [[nodiscard]] GeographicPoint to_geographic(LocalPoint place) const;
    // True north at `place`, seen from the plane's north, degrees clockwise.
    [[nodiscard]] double convergence_degrees(LocalPoint place) const;
    [[nodiscard]] Bearing plane_bearing(Bearing true_bearing, LocalPoint place) const;
    [[nodiscard]] Bearing true_bearing(Bearing plane_bearing, LocalPoint place) const;

private:
    struct Projection;
    std::unique_ptr<Projection> projection_;
};

}  // namespace plugside
