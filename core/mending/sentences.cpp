#include "core/mending/sentences.h"

#include <array>
#include <cmath>
#include <cstdio>

#include "core/words/words.h"

namespace plugside {

namespace {

std::string whole(double value, const char* unit) { return std::to_string(std::llround(value)) + " " + unit; }

}  // namespace

std::string in_metres(double metres) {
    if (metres >= 9.95) return whole(metres, "m");
    std::array<char, 24> text{};
    std::snprintf(text.data(), text.size(), "%.1f", metres);
    return Words::decimal(text.data()) + " m";
}

std::string in_time(double seconds) {
    if (seconds < 99.5) return whole(seconds, "s");
    if (seconds < 5400.0) return whole(seconds / 60.0, "min");
    const bool hours = seconds < 36.0 * 3600.0;
    const long long count = std::llround(seconds / (hours ? 3600.0 : 86400.0));
    const std::string number = std::to_string(count);
    if (hours) return count == 1 ? Words::tell("{1} hour", {number}) : Words::tell("{1} hours", {number});
    return count == 1 ? Words::tell("{1} day", {number}) : Words::tell("{1} days", {number});
}

std::string in_degrees(double degrees) {
    const long long count = std::llround(degrees);
    const std::string number = std::to_string(count);
    return count == 1 ? Words::tell("{1} degree", {number}) : Words::tell("{1} degrees", {number});
}

std::string both_of(const std::string& one, const std::string& other) { return Words::tell("{1} and {2}", {one, other}); }

std::string listed(const std::vector<std::string>& names, std::size_t most) {
    if (names.empty()) return {};
    const bool all = names.size() <= most;
    const std::size_t told = all ? names.size() - 1 : most - 1;  // before the "and"
    std::string text;
    for (std::size_t i = 0; i < told; ++i) text += (i > 0 ? ", " : "") + names[i];
    if (!all) return Words::tell("{1} and {2} more", {text, std::to_string(names.size() - told)});
    return told == 0 ? names.back() : both_of(text, names.back());
}

std::string time_of_day(UtcTime time) { return Words::moment(time); }

std::string direction_in_words(Bearing bearing) {
    constexpr std::array<const char*, 8> words{
        Words::later("north"), Words::later("north-east"), Words::later("east"), Words::later("south-east"),
        Words::later("south"), Words::later("south-west"), Words::later("west"), Words::later("north-west")};
    return Words::shown(words.at(static_cast<std::size_t>(std::lround(bearing.degrees() / 45.0)) % 8));
}

}  // namespace plugside
