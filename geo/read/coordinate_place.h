// Two numbers as a place on the earth: strictly in range, or the two exchanged where only so they can be one.
//
// exchanged: the latitude lies beyond 90 degrees and the longitude within them: whoever wrote it took one for the other. The
//            readers say so with each such mark, and coordinate_faults.h puts it before a person.
#pragma once

#include <cmath>
#include <optional>

#include "geo/frame/local_frame.h"

namespace plugside {

struct PlaceOnEarth {
    GeographicPoint at;
    bool exchanged = false;
};

// 180 degrees east is taken as 180 west. Nothing where neither way lies on the earth, or a number is not finite.
[[nodiscard]] inline std::optional<PlaceOnEarth> place_on_earth(double longitude, double latitude) {
    const auto in_range = [](double lon, double lat) { return std::abs(lon) <= 180.0 && std::abs(lat) <= 90.0; };
    const auto turned = [](double lon) { return lon == 180.0 ? -180.0 : lon; };
    if (in_range(longitude, latitude)) return PlaceOnEarth{{turned(longitude), latitude}, false};
    if (in_range(latitude, longitude)) return PlaceOnEarth{{turned(latitude), longitude}, true};
    return std::nullopt;
}

}  // namespace plugside
