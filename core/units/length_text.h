// Lengths and bearings as a person types them, English and Spanish words, whatever units are shown.
//
// parse_length: "1 ft 3", "1 ft 3 in", "1' 3\"" (also with curved quotes or primes), "15 in", "12.5 ft", "0.38 m", "38 cm", "380 mm", "1,5 m", "3 pies 2 pulgadas"; a bare number is
//               metres or feet, as the units shown. A decimal comma is a point. Negative where a minus stands before.
// parse_bearing: "45", "45°", "NE", "NNE", "N45E", "noreste" is not: points are letters (O is west in Spanish, as W); degrees clockwise
//               from true north, 0..360.
// parse_leg:    a length and a bearing, in this order: "40 ft NE", "12.5 m 135", "12 @ 90".
// Degenerate input: anything else gives nothing. Cost: linear in the text.
#pragma once

#include <optional>
#include <string_view>

#include "core/geometry/point.h"
#include "core/units/bearing.h"
#include "core/units/display.h"
#include "core/units/metres.h"

namespace plugside {

[[nodiscard]] std::optional<Metres> parse_length(std::string_view text, LengthUnits units);
[[nodiscard]] std::optional<Bearing> parse_bearing(std::string_view text);

struct Leg {
    Metres length;
    Bearing bearing;
};
[[nodiscard]] std::optional<Leg> parse_leg(std::string_view text, LengthUnits units);

}  // namespace plugside
