// The earth's magnetic field by the World Magnetic Model 2025: how far magnetic north lies from true north, at a place and
// time.
//
// Declination: degrees, east of true north positive, (-180, 180]; true bearing = magnetic bearing + declination.
// Inclination: degrees below the horizon, [-90, 90]. Components in nanotesla: north, east, down.
// Place:       WGS 84; height above the ellipsoid in metres, -10,000 to 600,000. At the very poles "north" is the direction
//              along the given longitude's meridian, so that the declination there depends on the longitude named.
// Time:        2025.0 to 2030.0 in decimal years; anything else is a Refusal with a sentence, never a guess.
// Accuracy:    the sum itself within .005 degree of published values; the model within about half a degree on land [memory:
//              NOAA's error model], more near the magnetic poles and beside iron, which no model knows.
// Errors:      a Refusal for a year, height, latitude or longitude out of range, or a number that is not finite.
// Cost:        90 terms, a few microseconds. Thread safe.
// Source:      coefficients by NOAA and BGS, resources/magnetic_model_2025.tsv; formulas: spherical harmonics with Schmidt
//              semi-normalised functions, Chapman & Bartels 1940 [memory].
#pragma once

#include <tl/expected.hpp>

#include "core/survey/mound.h"
#include "core/survey/refusal.h"
#include "core/units/bearing.h"
#include "core/units/metres.h"
#include "geo/frame/local_frame.h"

namespace plugside {

struct MagneticField {
    double declination_degrees = 0.0;
    double inclination_degrees = 0.0;
    double north_nt = 0.0;
    double east_nt = 0.0;
    double down_nt = 0.0;
};

[[nodiscard]] tl::expected<MagneticField, Refusal> magnetic_field(GeographicPoint place, double decimal_year,
                                                                  Metres height = Metres::of(0.0));

// The share of the year gone by that day and second, after the year: 2025.5 at noon of the 2nd of July.
[[nodiscard]] double decimal_year(UtcTime time);

[[nodiscard]] tl::expected<double, Refusal> declination_degrees(GeographicPoint place, UtcTime time);

// The named edges between magnetic and true.
[[nodiscard]] Bearing true_from_magnetic(Bearing magnetic, double declination_degrees);
[[nodiscard]] Bearing magnetic_from_true(Bearing true_bearing, double declination_degrees);

}  // namespace plugside
