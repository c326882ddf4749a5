// Degrees as people and receivers write them: decimal, degrees and minutes, degrees, minutes and seconds, with hemisphere
// letters before or after.
//
// Read:    "-120.5", "38,25" (with a decimal comma), "38.25 N", "38° 15.5' N", "38°15'30.5\"N", "N 38 15 30.5", "38:15:30",
//          "38d15m30s", "120 30 W", "120° 30' O" (O is oeste, west), "Norte 38 15". Degrees, minutes and seconds may be
//          parted by their signs, by blanks or by colons; only the last of them may have a fraction.
// Refused: minutes or seconds of 60 or more, a sign beside a letter, two letters, more than 360 degrees, exponents, anything
//          else.
// Axis:    what the letter says; nothing without one. The sign is the letter's (S and W negative) or the number's own.
// Cost:    linear. Source: ISO 6709 for signs and letters; the rest is common practice.
#pragma once

#include <optional>
#include <string_view>

namespace plugside {

enum class Axis { longitude, latitude };

struct DegreesText {
    double degrees = 0.0;
    std::optional<Axis> axis;
    friend bool operator==(const DegreesText&, const DegreesText&) = default;
};

[[nodiscard]] std::optional<DegreesText> parse_degrees(std::string_view text, char decimal = '.');

// Degrees and minutes in one number, as receivers send them: 3815.5 is 38 degrees 15.5 minutes. Nothing where the minutes
// are 60 or more.
[[nodiscard]] std::optional<double> unpacked_minutes(double packed);

}  // namespace plugside
