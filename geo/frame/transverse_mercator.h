// The transverse Mercator projection through PROJ, with any ellipsoid and origin. LocalFrame is one of these on WGS 84; the
// parameters are open so that published grids are computed by the very code that places a field.
//
// Angles:   degrees; longitude first. Lengths: metres.
// Range:    places within 80 degrees of longitude of the origin; farther away there is no answer.
// Accuracy: the algorithm of Poder and Engsager as PROJ has it: nanometres within 35 degrees of the central meridian
//           [memory].
// Errors:   no answer (nothing) where the projection has none; a library that cannot make the projection at all is a bug of
//           the installation and throws std::runtime_error at construction.
// Threads:  any number at once; copies are independent (each has a PROJ context of its own) and wait for nobody.
#pragma once

#include <memory>
#include <optional>

#include "geo/frame/local_frame.h"

namespace plugside {

struct TransverseMercatorParameters {
    double semi_major_m = 6378137.0;            // WGS 84
    double inverse_flattening = 298.257223563;  // WGS 84
    double origin_longitude_degrees = 0.0;
    double origin_latitude_degrees = 0.0;
    double scale = 1.0;
    double false_easting_m = 0.0;
    double false_northing_m = 0.0;
};

class TransverseMercator {
public:
    explicit TransverseMercator(const TransverseMercatorParameters& parameters);
    TransverseMercator(const TransverseMercator& other);
    TransverseMercator& operator=(const TransverseMercator& other);
    TransverseMercator(TransverseMercator&&) noexcept;
    TransverseMercator& operator=(TransverseMercator&&) noexcept;
    ~TransverseMercator();

    [[nodiscard]] const TransverseMercatorParameters& parameters() const { return parameters_; }
    [[nodiscard]] std::optional<LocalPoint> forward(GeographicPoint place) const;
    [[nodiscard]] std::optional<GeographicPoint> inverse(LocalPoint place) const;
    // True north at `place`, seen from the grid's north, degrees clockwise.
    [[nodiscard]] std::optional<double> convergence_degrees(GeographicPoint place) const;

private:
    struct Library;
    TransverseMercatorParameters parameters_;
    std::unique_ptr<Library> library_;
};

// The same longitude in [-180, 180), and the one of its turns that is nearest to `centre`.
[[nodiscard]] double normalised_longitude(double degrees);
[[nodiscard]] double unwrapped_longitude(double degrees, double centre);

}  // namespace plugside
