#include "core/units/display.h"

#include <array>
#include <cmath>
#include <cstdio>

#include "core/words/words.h"

namespace plugside {

namespace {

std::string with_digits(double value, int digits, const std::string& unit) {
    std::array<char, 64> text{};
    std::snprintf(text.data(), text.size(), "%.*f", digits, value);
    return Words::decimal(text.data()) + " " + unit;
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
    if (inches < 24) return Words::tell("{1} in", {sign + std::to_string(inches)});
    const std::string feet = sign + std::to_string(inches / 12);
    return inches % 12 == 0 ? Words::tell("{1} ft", {feet})
                            : Words::tell("{1} ft {2} in", {feet, std::to_string(inches % 12)});
}

std::string ground_distance(Metres length, LengthUnits units) {
    const double value = units == LengthUnits::metres ? length.value() : length.feet();
    return with_digits(value, std::abs(value) < 10.0 ? 1 : 0, units == LengthUnits::metres ? "m" : Words::tell("ft"));
}

std::string ground_area(double area_m2, LengthUnits units) {
    // 1 international acre = 4046.8564224 m2 (66 ft x 660 ft of 0.3048 m)
    const double value = units == LengthUnits::metres ? area_m2 / 10000.0 : area_m2 / 4046.8564224;
    const std::string unit = units == LengthUnits::metres ? "ha" : Words::tell("acres");
    return with_digits(value, value < 1.0 ? 2 : (value < 100.0 ? 1 : 0), unit);
}

std::string compass_point(Bearing bearing) {
    static constexpr std::array<const char*, 16> points{
        Words::later("N"), Words::later("NNE"), Words::later("NE"), Words::later("ENE"),
        Words::later("E"), Words::later("ESE"), Words::later("SE"), Words::later("SSE"),
        Words::later("S"), Words::later("SSW"), Words::later("SW"), Words::later("WSW"),
        Words::later("W"), Words::later("WNW"), Words::later("NW"), Words::later("NNW")};
    // in Spanish the west is O
    return Words::shown(points.at(static_cast<std::size_t>(std::lround(bearing.degrees() / 22.5)) % points.size()));
}

}  // namespace plugside
