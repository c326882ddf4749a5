// Lists of names and of places in one text cell of a layer, as JSON (RFC 8259): ["M014","M012"]; [[-120.5,38.25],[...]].
//
// Names:  any bytes come back as they were; control characters are written as \u00XX.
// Places: longitude and latitude in degrees, written so that the same doubles come back.
// Read strictly: nothing for anything else, also for a place that is not finite or not on the earth; blanks between the parts
//         are taken, as another program may have written the list anew. Escapes of JSON are understood.
// Cost:   linear.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "geo/frame/local_frame.h"

namespace plugside {

[[nodiscard]] std::string json_of(const std::vector<std::string>& names);
[[nodiscard]] std::string json_of(const std::vector<GeographicPoint>& places);

[[nodiscard]] std::optional<std::vector<std::string>> names_in_json(std::string_view text);
[[nodiscard]] std::optional<std::vector<GeographicPoint>> places_in_json(std::string_view text);

}  // namespace plugside
