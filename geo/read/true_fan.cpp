#include "geo/read/true_fan.h"

#include <array>
#include <cmath>
#include <cstdio>

#include "geo/frame/declination.h"

namespace plugside {

std::string spoken_declination(double declination) {
    std::array<char, 48> text{};
    std::snprintf(text.data(), text.size(), "%.1f degrees %s", std::abs(declination), declination < 0.0 ? "west" : "east");
    return text.data();
}

TrueFan true_fan_from_magnetic(double magnetic_degrees, GeographicPoint at, std::optional<UtcTime> time) {
    const auto field = magnetic_field(at, time ? decimal_year(*time) : year_without_time);
    if (!field)
        return {std::nullopt, "the fan bearing is magnetic and the declination cannot be told: " + sentence(field.error())};
    const Bearing fan = true_from_magnetic(Bearing::degrees(magnetic_degrees), field->declination_degrees);
    std::string said =
        "magnetic bearings are turned to true ones by the declination, " + spoken_declination(field->declination_degrees);
    if (!time) said += ", as in the middle of 2027 since the mark has no time";
    return {fan.degrees(), said};
}

}  // namespace plugside
