// Lengths as a person tapes, paces or reads them, in the units they chose.
//
// Tape:     up to a few metres: whole inches under 2 ft ("13 in"), feet and inches above ("3 ft 4 in"); centimetres under
//           1 m ("33 cm"), metres to the centimetre above ("1.42 m").
// Distance: "128 ft", "39 m"; miles and kilometres are not used on a field.
// Area:     acres or hectares with two significant digits after the first ("6.2 acres", "2.5 ha").
// Negative lengths keep their sign. Rounding: to nearest, halves away from zero.
#pragma once

#include <string>

#include "core/units/bearing.h"
#include "core/units/metres.h"

namespace plugside {

enum class LengthUnits { feet_and_inches, metres };

[[nodiscard]] std::string tape_reading(Metres length, LengthUnits units);
[[nodiscard]] std::string ground_distance(Metres length, LengthUnits units);
[[nodiscard]] std::string ground_area(double area_m2, LengthUnits units);

// "NNE": the nearest of the sixteen compass points.
[[nodiscard]] std::string compass_point(Bearing bearing);

}  // namespace plugside
