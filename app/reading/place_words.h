// Where on the earth something lies, in words that show a wrong reference system at once.
//
// Distance: on a sphere, good to half a percent. A place more than 50 km off is said to be hardly the same field (the reach
// of
//           a field, geo/read/field_extent.h).
#pragma once

#include <QString>
#include <optional>
#include <vector>

#include "core/units/display.h"
#include "geo/frame/local_frame.h"

namespace plugside {

struct NamedPlace {
    QString name;
    GeographicPoint at;
};

[[nodiscard]] double distance_on_earth_m(GeographicPoint a, GeographicPoint b);
// The nearest of `others` and how far it is; nothing without any.
[[nodiscard]] std::optional<std::pair<NamedPlace, double>> nearest_of(const std::vector<NamedPlace>& others,
                                                                      GeographicPoint at);
[[nodiscard]] bool in_reach(double distance_m);

// "38.25120° N, 121.75100° W"
[[nodiscard]] QString degrees_words(GeographicPoint at);
// "120 ft from walk.gpx"; "3,250 miles from walk.gpx: hardly the same field"
[[nodiscard]] QString distance_words(const NamedPlace& other, double distance_m, LengthUnits units);

}  // namespace plugside
