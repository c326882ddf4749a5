#include "geo/read/numbers.h"

#include <array>
#include <charconv>
#include <chrono>
#include <cmath>
#include <cstdio>

namespace plugside {

namespace {

// Takes a run of exactly `digits` digits off the front.
std::optional<int> take_digits(std::string_view& text, std::size_t digits) {
    if (text.size() < digits) return std::nullopt;
    int value = 0;
    for (std::size_t i = 0; i < digits; ++i) {
        if (text[i] < '0' || text[i] > '9') return std::nullopt;
        value = value * 10 + (text[i] - '0');
    }
    text.remove_prefix(digits);
    return value;
}

bool take(std::string_view& text, char expected) {
    if (text.empty() || text.front() != expected) return false;
    text.remove_prefix(1);
    return true;
}

std::optional<std::chrono::sys_days> take_date(std::string_view& text) {
    const auto year = take_digits(text, 4);
    if (!year || *year == 0 || !take(text, '-')) return std::nullopt;
    const auto month = take_digits(text, 2);
    if (!month || !take(text, '-')) return std::nullopt;
    const auto day = take_digits(text, 2);
    if (!day) return std::nullopt;
    const std::chrono::year_month_day date{std::chrono::year{*year}, std::chrono::month{static_cast<unsigned>(*month)},
                                           std::chrono::day{static_cast<unsigned>(*day)}};
    if (!date.ok()) return std::nullopt;
    return std::chrono::sys_days{date};
}

// Fractions of a second after the point, cut to milliseconds.
std::optional<int> take_milliseconds(std::string_view& text) {
    if (!take(text, '.')) return 0;
    int milliseconds = 0;
    std::size_t digits = 0;
    while (!text.empty() && text.front() >= '0' && text.front() <= '9') {
        if (digits < 3) milliseconds = milliseconds * 10 + (text.front() - '0');
        ++digits;
        text.remove_prefix(1);
    }
    if (digits == 0) return std::nullopt;
    for (std::size_t i = digits; i < 3; ++i) milliseconds *= 10;
    return milliseconds;
}

// Minutes east of UTC.
std::optional<int> take_zone(std::string_view& text) {
    if (text.empty() || take(text, 'Z')) return 0;
    const bool west = text.front() == '-';
    if (!west && text.front() != '+') return std::nullopt;
    text.remove_prefix(1);
    const auto hours = take_digits(text, 2);
    if (!hours || *hours > 14 || !take(text, ':')) return std::nullopt;
    const auto minutes = take_digits(text, 2);
    if (!minutes || *minutes > 59) return std::nullopt;
    return (west ? -1 : 1) * (*hours * 60 + *minutes);
}

}  // namespace

std::string_view trimmed(std::string_view text) {
    constexpr std::string_view blank = " \t\r\n";
    const auto first = text.find_first_not_of(blank);
    if (first == std::string_view::npos) return {};
    return text.substr(first, text.find_last_not_of(blank) - first + 1);
}

std::optional<double> parse_number(std::string_view text) {
    text = trimmed(text);
    if (!text.empty() && text.front() == '+') {
        text.remove_prefix(1);
        if (!text.empty() && text.front() == '-') return std::nullopt;
    }
    double value = 0.0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
    if (error != std::errc{} || end != text.data() + text.size() || !std::isfinite(value)) return std::nullopt;
    return value;
}

std::optional<UtcTime> parse_utc_time(std::string_view text) {
    text = trimmed(text);
    const auto date = take_date(text);
    if (!date || !take(text, 'T')) return std::nullopt;
    const auto hours = take_digits(text, 2);
    if (!hours || *hours > 23 || !take(text, ':')) return std::nullopt;
    const auto minutes = take_digits(text, 2);
    if (!minutes || *minutes > 59 || !take(text, ':')) return std::nullopt;
    const auto seconds = take_digits(text, 2);
    if (!seconds || *seconds > 60) return std::nullopt;
    const auto milliseconds = take_milliseconds(text);
    if (!milliseconds) return std::nullopt;
    const auto zone = take_zone(text);
    if (!zone || !text.empty()) return std::nullopt;
    return UtcTime{*date} + std::chrono::hours(*hours) + std::chrono::minutes(*minutes - *zone) +
           std::chrono::seconds(*seconds) + std::chrono::milliseconds(*milliseconds);
}

std::string format_utc_time(UtcTime time) {
    const auto day = std::chrono::floor<std::chrono::days>(time);
    const std::chrono::year_month_day date{day};
    const std::chrono::hh_mm_ss clock{time - day};
    std::array<char, 64> text{};
    std::snprintf(text.data(), text.size(), "%04d-%02u-%02uT%02d:%02d:%02d", static_cast<int>(date.year()),
                  static_cast<unsigned>(date.month()), static_cast<unsigned>(date.day()),
                  static_cast<int>(clock.hours().count()), static_cast<int>(clock.minutes().count()),
                  static_cast<int>(clock.seconds().count()));
    std::string result = text.data();
    if (const auto milliseconds = clock.subseconds().count(); milliseconds != 0) {
        std::snprintf(text.data(), text.size(), ".%03d", static_cast<int>(milliseconds));
        result += text.data();
    }
    return result + "Z";
}

}  // namespace plugside
