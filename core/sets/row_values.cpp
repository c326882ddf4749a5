#include "core/sets/row_values.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>
#include <cstdio>

#include "core/words/words.h"

namespace plugside::rows {

namespace {

template <typename Word>
bool take_word(const std::optional<Word>& word, Word& value) {
    if (!word) return false;
    value = *word;
    return true;
}

// Text before and after the first blank.
std::pair<std::string, std::string> parted(const std::string& text) {
    const std::size_t blank = text.find(' ');
    if (blank == std::string::npos) return {text, ""};
    return {text.substr(0, blank), text.substr(blank + 1)};
}

bool take_number_before(const std::string& text, const std::string& end, double& value) {
    return text.size() > end.size() && text.ends_with(end) && take(text.substr(0, text.size() - end.size()), value);
}

}  // namespace

std::string text_of(bool value) { return value ? "yes" : "no"; }
std::string text_of(int value) { return std::to_string(value); }

std::string text_of(double value) {
    std::array<char, 64> text{};
    const auto [end, error] = std::to_chars(text.data(), text.data() + text.size(), value);
    return error == std::errc() ? std::string(text.data(), end) : std::string();
}

std::string text_of(const std::string& value) {
    std::string text;
    for (const char letter : value) switch (letter) {
            case '\n': text += "\\n"; break;
            case '\r': text += "\\r"; break;
            case '\t': text += "\\t"; break;
            case '\\': text += "\\\\"; break;
            default: text += letter;
        }
    // what would be taken for an answer, or lose its blanks when a line is read
    if (text == "not-known") return "not\\-known";
    if (text.starts_with(' ')) text.replace(0, 1, "\\s");
    if (text.ends_with(' ')) text.replace(text.size() - 1, 1, "\\s");
    return text;
}

std::string text_of(Metres value) { return text_of(value.value()) + " m"; }
std::string text_of(const Quantity& value) { return text_of(value.value) + " " + to_text(value.unit); }
std::string text_of(const AreaRate& value) { return text_of(value.amount) + " per " + to_text(value.per); }
std::string text_of(CalendarDay value) { return day_shown(value); }

std::string text_of(UtcTime value) {
    const CalendarDay day = std::chrono::floor<std::chrono::days>(value);
    const std::chrono::hh_mm_ss clock{value - day};
    std::array<char, 64> text{};
    std::snprintf(text.data(), text.size(), "T%02d:%02d:%02d.%03dZ", static_cast<int>(clock.hours().count()),
                  static_cast<int>(clock.minutes().count()), static_cast<int>(clock.seconds().count()),
                  static_cast<int>(clock.subseconds().count()));
    return day_shown(day) + text.data();
}

std::string text_of(const WaterDay& value) {
    const auto water = [](std::optional<double> mm) { return mm ? text_of(*mm) : std::string("-"); };
    return day_shown(value.day) + " " + water(value.rain_mm) + " " + water(value.irrigation_mm);
}

std::string text_of(const std::set<PropertyUse>& value) {
    std::string text;
    for (const PropertyUse use : value) text += (text.empty() ? "" : " ") + to_text(use);
    return text;
}

std::string text_of(const PlaceInDegrees& value) { return text_of(value.latitude) + " " + text_of(value.longitude); }

namespace {

// Keys in one row: "plug-side:M12" and "between:M12:M13", a blank between them; blank, colon and the sign itself as %20, %3A, %25.
constexpr std::string_view set_apart = " :%\n\r\t\\";

void add_name(std::string& text, const std::string& name) {
    constexpr const char* digits = "0123456789ABCDEF";
    for (const char letter : name) {
        if (set_apart.find(letter) == std::string_view::npos) {
            text += letter;
            continue;
        }
        const auto code = static_cast<unsigned char>(letter);
        text += '%';
        text += digits[code / 16];
        text += digits[code % 16];
    }
}

std::optional<std::string> name_in(const std::string& text) {
    std::string name;
    for (std::size_t i = 0; i < text.size(); ++i) {
        if (text[i] != '%') {
            name += text[i];
            continue;
        }
        unsigned code = 0;
        if (i + 2 >= text.size()) return std::nullopt;
        const auto [end, error] = std::from_chars(text.data() + i + 1, text.data() + i + 3, code, 16);
        if (error != std::errc() || end != text.data() + i + 3) return std::nullopt;
        name += static_cast<char>(code);
        i += 2;
    }
    return name;
}

std::optional<ProbeKey> key_in(const std::string& text) {
    const std::size_t first = text.find(':');
    if (first == std::string::npos) return std::nullopt;
    const std::string kind = text.substr(0, first);
    const std::size_t second = text.find(':', first + 1);
    if (kind != (second == std::string::npos ? "plug-side" : "between")) return std::nullopt;
    const auto from = name_in(text.substr(first + 1, second == std::string::npos ? second : second - first - 1));
    const auto to = name_in(second == std::string::npos ? std::string() : text.substr(second + 1));
    if (!from || from->empty() || !to || to->empty() != (second == std::string::npos)) return std::nullopt;
    return ProbeKey{second == std::string::npos ? ProbeKind::plug_side : ProbeKind::between_mounds, *from, *to};
}

}  // namespace

std::string text_of(const std::vector<ProbeKey>& value) {
    std::string text;
    for (const ProbeKey& key : value) {
        if (!text.empty()) text += ' ';
        text += key.kind == ProbeKind::plug_side ? "plug-side:" : "between:";
        add_name(text, key.from_mound);
        if (key.kind == ProbeKind::plug_side) continue;
        text += ':';
        add_name(text, key.to_mound);
    }
    return text;
}

bool take(const std::string& text, PlaceInDegrees& value) {
    const auto [latitude, longitude] = parted(text);
    PlaceInDegrees read;
    if (!take(latitude, read.latitude) || !take(longitude, read.longitude)) return false;
    if (std::abs(read.latitude) > 90.0 || std::abs(read.longitude) > 180.0) return false;
    value = read;
    return true;
}

bool take(const std::string& text, std::vector<ProbeKey>& value) {
    std::vector<ProbeKey> keys;
    for (std::size_t from = 0; from < text.size();) {
        const std::size_t end = std::min(text.find(' ', from), text.size());
        const auto key = key_in(text.substr(from, end - from));
        if (!key) return false;
        keys.push_back(*key);
        from = end + 1;
    }
    value = std::move(keys);
    return true;
}

bool take(const std::string& text, bool& value) {
    if (text != "yes" && text != "no") return false;
    value = text == "yes";
    return true;
}

bool take(const std::string& text, int& value) {
    int read = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), read);
    if (error != std::errc() || end != text.data() + text.size()) return false;
    value = read;
    return true;
}

bool take(const std::string& text, double& value) {
    double read = 0.0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), read);
    if (error != std::errc() || end != text.data() + text.size() || !std::isfinite(read)) return false;
    value = read;
    return true;
}

bool take(const std::string& text, std::string& value) {
    std::string read;
    for (std::size_t i = 0; i < text.size(); ++i) {
        if (text[i] != '\\' || i + 1 == text.size()) {
            read += text[i];
            continue;
        }
        const char letter = text[++i];
        read += letter == 'n' ? '\n' : letter == 'r' ? '\r' : letter == 't' ? '\t' : letter == 's' ? ' ' : letter;
    }
    value = std::move(read);
    return true;
}

bool take(const std::string& text, Metres& value) {
    double number = 0.0;
    if (take_number_before(text, " m", number)) {
        value = Metres::of(number);
        return true;
    }
    if (!take_number_before(text, " ft", number)) return false;
    value = Metres::from_feet(number);
    return true;
}

bool take(const std::string& text, Quantity& value) {
    const auto [number, unit] = parted(text);
    Quantity read;
    if (!take(number, read.value) || !take_word(amount_unit_from_text(unit), read.unit)) return false;
    value = read;
    return true;
}

bool take(const std::string& text, AreaRate& value) {
    const std::size_t per = text.find(" per ");
    AreaRate read;
    if (per == std::string::npos || !take(text.substr(0, per), read.amount) ||
        !take_word(area_unit_from_text(text.substr(per + 5)), read.per))
        return false;
    value = read;
    return true;
}

bool take(const std::string& text, CalendarDay& value) { return take_word(day_from_text(text), value); }

bool take(const std::string& text, UtcTime& value) {
    // 2025-04-10T12:00:00.000Z, the thousandths may be left out
    if (text.size() != 24 && text.size() != 20) return false;
    const auto day = day_from_text(text.substr(0, 10));
    const auto number = [&](std::size_t from, std::size_t count) {
        int read = -1;
        const std::string digits = text.substr(from, count);
        return digits.find_first_not_of("0123456789") == std::string::npos && take(digits, read) ? read : -1;
    };
    const int hours = number(11, 2);
    const int minutes = number(14, 2);
    const int seconds = number(17, 2);
    const int thousandths = text.size() == 24 ? number(20, 3) : 0;
    if (!day || text[10] != 'T' || text[13] != ':' || text[16] != ':' || text.back() != 'Z' ||
        (text.size() == 24 && text[19] != '.') || hours < 0 || hours > 23 || minutes < 0 || minutes > 59 || seconds < 0 ||
        seconds > 59 || thousandths < 0)
        return false;
    value = UtcTime(*day) + std::chrono::hours(hours) + std::chrono::minutes(minutes) + std::chrono::seconds(seconds) +
            std::chrono::milliseconds(thousandths);
    return true;
}

bool take(const std::string& text, WaterDay& value) {
    const auto [day, rest] = parted(text);
    const auto [rain, irrigation] = parted(rest);
    WaterDay read;
    const auto water = [](const std::string& cell, std::optional<double>& mm) {
        double number = 0.0;
        if (cell == "-") return true;
        if (!take(cell, number) || number < 0.0) return false;
        mm = number;
        return true;
    };
    if (!take(day, read.day) || !water(rain, read.rain_mm) || !water(irrigation, read.irrigation_mm)) return false;
    value = read;
    return true;
}

bool take(const std::string& text, std::set<PropertyUse>& value) {
    std::set<PropertyUse> read;
    for (std::string rest = text; !rest.empty();) {
        const auto [word, more] = parted(rest);
        const auto use = property_use_from_text(word);
        if (!use) return false;
        read.insert(*use);
        rest = more;
    }
    value = std::move(read);
    return true;
}

bool take(const std::string& text, SoilMoisture& value) { return take_word(soil_moisture_from_text(text), value); }
bool take(const std::string& text, SoilTexture& value) { return take_word(soil_texture_from_text(text), value); }
bool take(const std::string& text, SiteUse& value) { return take_word(site_use_from_text(text), value); }
bool take(const std::string& text, WildlifeAnswer& value) { return take_word(wildlife_answer_from_text(text), value); }
bool take(const std::string& text, UtilitiesCall& value) { return take_word(utilities_call_from_text(text), value); }
bool take(const std::string& text, OfficeAnswer& value) { return take_word(office_answer_from_text(text), value); }
bool take(const std::string& text, Ingredient& value) { return take_word(ingredient_from_text(text), value); }
bool take(const std::string& text, LicenceKind& value) { return take_word(licence_kind_from_text(text), value); }
bool take(const std::string& text, Stuff& value) { return take_word(stuff_from_text(text), value); }
bool take(const std::string& text, Placement& value) { return take_word(placement_from_text(text), value); }
bool take(const std::string& text, CoverRule& value) { return take_word(cover_rule_from_text(text), value); }
bool take(const std::string& text, ProbeKind& value) { return take_word(probe_kind_from_text(text), value); }
bool take(const std::string& text, LoadItem& value) { return take_word(item_from_text(text), value); }

const char* expected_word() { return Words::later("one of the words of this answer"); }
template <>
const char* expected_for<bool>() {
    return Words::later("yes or no");
}
template <>
const char* expected_for<int>() {
    return Words::later("a whole number");
}
template <>
const char* expected_for<double>() {
    return Words::later("a number");
}
template <>
const char* expected_for<Metres>() {
    return Words::later("a length as 30 m or 100 ft");
}
template <>
const char* expected_for<Quantity>() {
    return Words::later("an amount as 1 teaspoons or 20 grams");
}
template <>
const char* expected_for<AreaRate>() {
    return Words::later("a rate as 1 pounds per acre");
}
template <>
const char* expected_for<CalendarDay>() {
    return Words::later("a day as 2025-04-10");
}
template <>
const char* expected_for<UtcTime>() {
    return Words::later("a time as 2025-04-10T12:00:00Z");
}
template <>
const char* expected_for<WaterDay>() {
    return Words::later("a day, millimetres of rain and of irrigation, as 2025-04-10 5 -");
}

template <>
const char* expected_for<PlaceInDegrees>() {
    return Words::later("a latitude and a longitude in degrees, as in 38.5412 -121.7405");
}
template <>
const char* expected_for<std::vector<ProbeKey>>() {
    return Words::later("places of sets, as in plug-side:M12 between:M12:M13");
}

}  // namespace plugside::rows
