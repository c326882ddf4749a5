#include "core/units/display.h"

#include <array>
#include <cmath>
#include <cstdio>

namespace plugside {

namespace {

std::string with_digits(double value, int digits, const char* unit) {
    std::array<char, 64> text{};
    std::snprintf(text.data(), text.size(), "%.*f %s", digits, value, unit);
    return text.data();
}

}  // namespace

std::string tape_reading(Metres length, LengthUnits units) {
    const std::string sign = length.value() < 0.0 ? "-" : "";
    const double metres = std::abs(length.value());
    if (units == LengthUnits::metres) {
        if (std::lround(metres * 100.0) < 100) return sign + with_digits(std::round(metres * 100.0), 0, "cm");
        return sign + with_digits(metres, 2, "m");
    }
    const long inches = std::lround(Metres::of(metres).inches());
    if (inches < 24) return sign + std::to_string(inches) + " in";
    const std::string feet = sign + std::to_string(inches / 12) + " ft";
    return inches % 12 == 0 ? feet : feet + " " + std::to_string(inches % 12) + " in";
}

std::string ground_distance(Metres length, LengthUnits units) {
    const double value = units == LengthUnits::metres ? length.value() : length.feet();
    return with_digits(value, std::abs(value) < 10.0 ? 1 : 0, units == LengthUnits::metres ? "m" : "ft");
}

std::string ground_area(double area_m2, LengthUnits units) {
    // 1 international acre = 4046.8564224 m2 (66 ft x 660 ft of 0.3048 m)
    const double value = units == LengthUnits::metres ? area_m2 / 10000.0 : area_m2 / 4046.8564224;
    const char* unit = units == LengthUnits::metres ? "ha" : "acres";
    return with_digits(value, value < 1.0 ? 2 : (value < 100.0 ? 1 : 0), unit);
}

std::string compass_point(Bearing bearing) {
    static constexpr std::array<const char*, 16> points{"N", "NNE", "NE", "ENE", "E", "ESE", "SE", "SSE",
                                                        "S", "SSW", "SW", "WSW", "W", "WNW", "NW", "NNW"};
    return points.at(static_cast<std::size_t>(std::lround(bearing.degrees() / 22.5)) % points.size());
}

}  // namespace plugside
