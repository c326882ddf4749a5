#include "geo/read/true_fan.h"

#include <array>
#include <cmath>
#include <cstdio>

#include "core/words/words.h"
#include "geo/frame/declination.h"

namespace plugside {

std::string spoken_declination(double declination) {
    std::array<char, 48> text{};
    std::snprintf(text.data(), text.size(), "%.1f", std::abs(declination));
    const std::string degrees = Words::decimal(text.data());
    return declination < 0.0 ? Words::tell("{1} degrees west", {degrees}) : Words::tell("{1} degrees east", {degrees});
}

TrueFan true_fan_from_magnetic(double magnetic_degrees, GeographicPoint at, std::optional<UtcTime> time) {
    const auto field = magnetic_field(at, time ? decimal_year(*time) : year_without_time);
    if (!field)
        return {std::nullopt, Words::tell("the fan bearing is magnetic and the declination cannot be told: {1}",
                                          {sentence(field.error())})};
    const Bearing fan = true_from_magnetic(Bearing::degrees(magnetic_degrees), field->declination_degrees);
    const std::string declination = spoken_declination(field->declination_degrees);
    if (time)
        return {fan.degrees(),
                Words::tell("magnetic bearings are turned to true ones by the declination, {1}", {declination})};
    return {fan.degrees(),
            Words::tell("magnetic bearings are turned to true ones by the declination, {1}, as in the middle of "
                        "2027 since the mark has no time",
                        {declination})};
}

}  // namespace plugside
