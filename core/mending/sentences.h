// Lengths, times and lists as findings say them: "0.4 m", "20 s", "6 min", "2 days", "M001, M002 and M003".
#pragma once

#include <string>
#include <vector>

#include "core/survey/mound.h"

namespace plugside {

[[nodiscard]] std::string in_metres(double metres);    // one decimal below 10 m, none above
[[nodiscard]] std::string in_time(double seconds);     // the largest unit that fits, at least one
[[nodiscard]] std::string in_degrees(double degrees);  // "12 degrees"
[[nodiscard]] std::string listed(const std::vector<std::string>& names, std::size_t most = 6);  // "... and 4 more" beyond
[[nodiscard]] std::string both_of(const std::string& one, const std::string& other);            // "M001 and M002"
[[nodiscard]] std::string time_of_day(UtcTime time);  // "2025-04-10 13:05:20 UTC", or local where the window says so

// "south-east": one of eight directions in words.
[[nodiscard]] std::string direction_in_words(Bearing bearing);

}  // namespace plugside
