// The named edge from a magnetic bearing in a note to a true one, by the declination at the mark's place and time.
//
// Without a time the middle of the magnetic model's years is taken (mid 2027; our assumption: the declination changes by 5
// to 15 minutes a year, trade facts, section 6), and the sentence says so. A time outside the model's years gives no
// bearing, and a sentence that says why.
#pragma once

#include <optional>
#include <string>

#include "core/survey/mound.h"
#include "geo/frame/local_frame.h"

namespace plugside {

inline constexpr double year_without_time = 2027.5;

struct TrueFan {
    std::optional<double> degrees;  // 0 <= degrees < 360
    std::string sentence;           // what was done, or why not
};

// `magnetic_degrees`: clockwise from magnetic north.
[[nodiscard]] TrueFan true_fan_from_magnetic(double magnetic_degrees, GeographicPoint at, std::optional<UtcTime> time);

// "12.8 degrees east".
[[nodiscard]] std::string spoken_declination(double declination_degrees);

}  // namespace plugside
