// Numbers and times as files write them, read strictly: the whole text or nothing.
//
// parse_number: a decimal number with an optional sign, fraction and exponent, surrounded by at most XML white space; never
//               hexadecimal, never "nan" or "inf", never a number that a double cannot hold. Independent of the locale.
// parse_utc_time: ISO 8601 as XML's dateTime has it: 2026-03-01T09:30:00[.123][Z|+hh:mm]; without a zone it is UTC, as GPX
//               says. Years 1..9999; seconds of 60 (a leap second) are taken as the next minute; finer than milliseconds is
//               cut.
// Cost: O(length).
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "core/survey/mound.h"

namespace plugside {

[[nodiscard]] std::optional<double> parse_number(std::string_view text);
[[nodiscard]] std::optional<UtcTime> parse_utc_time(std::string_view text);

// "2026-03-01T09:30:00Z", with ".123" before the Z when there are milliseconds.
[[nodiscard]] std::string format_utc_time(UtcTime time);

[[nodiscard]] std::string_view trimmed(std::string_view text);

}  // namespace plugside
