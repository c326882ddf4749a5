#include "core/mending/sentences.h"

#include <array>
#include <cmath>
#include <cstdio>

namespace plugside {

namespace {

std::string whole(double value, const char* unit) { return std::to_string(std::llround(value)) + " " + unit; }

std::string counted(double value, const char* unit) {
    const long long count = std::llround(value);
    return std::to_string(count) + " " + unit + (count == 1 ? "" : "s");
}

}  // namespace

std::string in_metres(double metres) {
    if (metres >= 9.95) return whole(metres, "m");
    std::array<char, 24> text{};
    std::snprintf(text.data(), text.size(), "%.1f m", metres);
    return text.data();
}

std::string in_time(double seconds) {
    if (seconds < 99.5) return whole(seconds, "s");
    if (seconds < 5400.0) return whole(seconds / 60.0, "min");
    if (seconds < 36.0 * 3600.0) return counted(seconds / 3600.0, "hour");
    return counted(seconds / 86400.0, "day");
}

std::string in_degrees(double degrees) { return counted(degrees, "degree"); }

std::string listed(const std::vector<std::string>& names, std::size_t most) {
    std::string text;
    const bool all = names.size() <= most;
    const std::size_t told = all ? names.size() : most - 1;
    for (std::size_t i = 0; i < told; ++i) {
        if (i > 0) text += all && i + 1 == told ? " and " : ", ";
        text += names[i];
    }
    if (!all) text += " and " + std::to_string(names.size() - told) + " more";
    return text;
}

std::string time_of_day(UtcTime time) {
    const auto day = std::chrono::floor<std::chrono::days>(time);
    const std::chrono::year_month_day date{day};
    const std::chrono::hh_mm_ss clock{std::chrono::floor<std::chrono::seconds>(time - day)};
    std::array<char, 64> text{};
    std::snprintf(text.data(), text.size(), "%04d-%02u-%02u %02d:%02d:%02d UTC", static_cast<int>(date.year()),
                  static_cast<unsigned>(date.month()), static_cast<unsigned>(date.day()),
                  static_cast<int>(clock.hours().count()), static_cast<int>(clock.minutes().count()),
                  static_cast<int>(clock.seconds().count()));
    return text.data();
}

std::string direction_in_words(Bearing bearing) {
    constexpr std::array<const char*, 8> words{"north", "north-east", "east", "south-east",
                                               "south", "south-west", "west", "north-west"};
    return words.at(static_cast<std::size_t>(std::lround(bearing.degrees() / 45.0)) % 8);
}

}  // namespace plugside
