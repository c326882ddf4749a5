#include "geo/read/row_marks.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <utility>
#include <vector>

#include "core/words/words.h"
#include "geo/read/numbers.h"

namespace plugside {

namespace {

constexpr std::array<std::pair<ColumnRole, const char*>, 17> role_words{{
    {ColumnRole::none, "none"},
    {ColumnRole::name, "name"},
    {ColumnRole::longitude, "longitude"},
    {ColumnRole::latitude, "latitude"},
    {ColumnRole::easting, "easting"},
    {ColumnRole::northing, "northing"},
    {ColumnRole::fan_bearing, "fan bearing"},
    {ColumnRole::freshness, "freshness"},
    {ColumnRole::kind, "kind"},
    {ColumnRole::note, "note"},
    {ColumnRole::date, "date"},
    {ColumnRole::time, "time"},
    {ColumnRole::hdop, "hdop"},
    {ColumnRole::satellites, "satellites"},
    {ColumnRole::accuracy, "accuracy"},
    {ColumnRole::walker, "walker"},
    {ColumnRole::picture, "picture"},
}};

// Headings in lower case without blanks, points, underscores and hyphens.
constexpr std::array<std::pair<std::string_view, ColumnRole>, 89> headings{{
    {"name", ColumnRole::name},
    {"id", ColumnRole::name},
    {"mark", ColumnRole::name},
    {"mound", ColumnRole::name},
    {"moundid", ColumnRole::name},
    {"waypoint", ColumnRole::name},
    {"label", ColumnRole::name},
    {"number", ColumnRole::name},
    {"no", ColumnRole::name},
    {"nombre", ColumnRole::name},
    {"marca", ColumnRole::name},
    {"punto", ColumnRole::name},
    {"numero", ColumnRole::name},
    {"número", ColumnRole::name},
    {"longitude", ColumnRole::longitude},
    {"lon", ColumnRole::longitude},
    {"long", ColumnRole::longitude},
    {"lng", ColumnRole::longitude},
    {"longitud", ColumnRole::longitude},
    {"x", ColumnRole::longitude},
    {"latitude", ColumnRole::latitude},
    {"lat", ColumnRole::latitude},
    {"latitud", ColumnRole::latitude},
    {"y", ColumnRole::latitude},
    {"easting", ColumnRole::easting},
    {"east", ColumnRole::easting},
    {"e", ColumnRole::easting},
    {"utme", ColumnRole::easting},
    {"utmx", ColumnRole::easting},
    {"este", ColumnRole::easting},
    {"xutm", ColumnRole::easting},
    {"northing", ColumnRole::northing},
    {"north", ColumnRole::northing},
    {"n", ColumnRole::northing},
    {"utmn", ColumnRole::northing},
    {"utmy", ColumnRole::northing},
    {"norte", ColumnRole::northing},
    {"yutm", ColumnRole::northing},
    {"fan", ColumnRole::fan_bearing},
    {"fanbearing", ColumnRole::fan_bearing},
    {"bearing", ColumnRole::fan_bearing},
    {"fandirection", ColumnRole::fan_bearing},
    {"direction", ColumnRole::fan_bearing},
    {"azimuth", ColumnRole::fan_bearing},
    {"abanico", ColumnRole::fan_bearing},
    {"rumbo", ColumnRole::fan_bearing},
    {"azimut", ColumnRole::fan_bearing},
    {"acimut", ColumnRole::fan_bearing},
    {"orientacion", ColumnRole::fan_bearing},
    {"orientación", ColumnRole::fan_bearing},
    {"direccion", ColumnRole::fan_bearing},
    {"dirección", ColumnRole::fan_bearing},
    {"freshness", ColumnRole::freshness},
    {"fresh", ColumnRole::freshness},
    {"age", ColumnRole::freshness},
    {"state", ColumnRole::freshness},
    {"estado", ColumnRole::freshness},
    {"frescura", ColumnRole::freshness},
    {"kind", ColumnRole::kind},
    {"type", ColumnRole::kind},
    {"sign", ColumnRole::kind},
    {"animal", ColumnRole::kind},
    {"tipo", ColumnRole::kind},
    {"clase", ColumnRole::kind},
    {"note", ColumnRole::note},
    {"notes", ColumnRole::note},
    {"comment", ColumnRole::note},
    {"comments", ColumnRole::note},
    {"remark", ColumnRole::note},
    {"remarks", ColumnRole::note},
    {"description", ColumnRole::note},
    {"desc", ColumnRole::note},
    {"nota", ColumnRole::note},
    {"notas", ColumnRole::note},
    {"observaciones", ColumnRole::note},
    {"comentario", ColumnRole::note},
    {"descripcion", ColumnRole::note},
    {"descripción", ColumnRole::note},
    {"date", ColumnRole::date},
    {"fecha", ColumnRole::date},
    {"time", ColumnRole::time},
    {"datetime", ColumnRole::time},
    {"timestamp", ColumnRole::time},
    {"hora", ColumnRole::time},
    {"fechahora", ColumnRole::time},
    {"hdop", ColumnRole::hdop},
    {"satellites", ColumnRole::satellites},
    {"sat", ColumnRole::satellites},
    {"satelites", ColumnRole::satellites},
}};
constexpr std::array<std::pair<std::string_view, ColumnRole>, 18> more_headings{{
    {"observacion", ColumnRole::note},
    {"observación", ColumnRole::note},
    {"observation", ColumnRole::note},
    {"observations", ColumnRole::note},
    {"accuracy", ColumnRole::accuracy},
    {"accuracym", ColumnRole::accuracy},
    {"precision", ColumnRole::accuracy},
    {"precisión", ColumnRole::accuracy},
    {"exactitud", ColumnRole::accuracy},
    {"walker", ColumnRole::walker},
    {"observer", ColumnRole::walker},
    {"who", ColumnRole::walker},
    {"person", ColumnRole::walker},
    {"persona", ColumnRole::walker},
    {"observador", ColumnRole::walker},
    {"picture", ColumnRole::picture},
    {"photo", ColumnRole::picture},
    {"foto", ColumnRole::picture},
}};

std::string plain(std::string_view heading) {
    std::string word;
    for (const char c : trimmed(heading)) {
        if (c == ' ' || c == '_' || c == '-' || c == '.' || c == '"') continue;
        word += c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
    }
    return word;
}

bool digit(char c) { return c >= '0' && c <= '9'; }

// Takes one to `most` digits off the front.
std::optional<int> take_number(std::string_view& text, std::size_t most) {
    std::size_t length = 0;
    int value = 0;
    while (length < text.size() && length < most && digit(text[length])) value = value * 10 + (text[length++] - '0');
    if (length == 0 || (length < text.size() && digit(text[length]))) return std::nullopt;
    text.remove_prefix(length);
    return value;
}

bool take(std::string_view& text, char wanted) {
    if (text.empty() || text.front() != wanted) return false;
    text.remove_prefix(1);
    return true;
}

void skip_blanks(std::string_view& text) {
    while (!text.empty() && (text.front() == ' ' || text.front() == '\t')) text.remove_prefix(1);
}

std::optional<std::chrono::sys_days> take_day(std::string_view& text, DateOrder order) {
    const auto first = take_number(text, 4);
    if (!first || text.empty()) return std::nullopt;
    const char between = text.front();
    if (between != '-' && between != '/' && between != '.') return std::nullopt;
    text.remove_prefix(1);
    const auto second = take_number(text, 2);
    if (!second || !take(text, between)) return std::nullopt;
    const auto third = take_number(text, 4);
    if (!third) return std::nullopt;
    int year = *third;
    int month = order == DateOrder::month_first ? *first : *second;
    int day = order == DateOrder::month_first ? *second : *first;
    if (*first > 31) {  // a year in front says itself what it is
        year = *first;
        month = *second;
        day = *third;
    } else if (order == DateOrder::year_first) {
        return std::nullopt;
    }
    if (year < 100) year += 2000;
    const std::chrono::year_month_day date{std::chrono::year{year}, std::chrono::month{static_cast<unsigned>(month)},
                                           std::chrono::day{static_cast<unsigned>(day)}};
    if (!date.ok()) return std::nullopt;
    return std::chrono::sys_days{date};
}

// 12-hour clocks: "pm", "p.m.", "p. m."
std::optional<int> hour_of(int hour, std::string_view half) {
    const std::string word = plain(half);
    if (word.empty()) return hour <= 23 ? std::optional(hour) : std::nullopt;
    if ((word != "am" && word != "pm") || hour < 1 || hour > 12) return std::nullopt;
    return hour % 12 + (word == "pm" ? 12 : 0);
}

}  // namespace

std::string to_text(ColumnRole role) {
    return std::find_if(role_words.begin(), role_words.end(), [&](const auto& word) { return word.first == role; })->second;
}

ColumnRole role_named(std::string_view heading) {
    const std::string word = plain(heading);
    for (const auto& [name, role] : headings)
        if (word == name) return role;
    for (const auto& [name, role] : more_headings)
        if (word == name) return role;
    return ColumnRole::none;
}

std::optional<UtcTime> parse_time(std::string_view text, const TimeWriting& writing) {
    text = trimmed(text);
    const std::string_view whole = text;
    const auto day = take_day(text, writing.order);
    if (!day) return std::nullopt;
    if (!text.empty() && text.front() == 'T') {  // ISO 8601, with a zone or without
        const auto sign = whole.find_last_of("+-");
        const bool zoned = whole.back() == 'Z' || (sign != std::string_view::npos && sign > whole.find('T'));
        if (const auto time = parse_utc_time(whole))
            return zoned ? *time : *time - std::chrono::minutes(writing.minutes_east_of_utc);
        text.remove_prefix(1);
    }
    skip_blanks(text);
    const auto hour = take_number(text, 2);
    if (!hour || !take(text, ':')) return std::nullopt;
    const auto minute = take_number(text, 2);
    if (!minute || *minute > 59) return std::nullopt;
    double seconds = 0.0;
    if (take(text, ':')) {
        std::size_t length = 0;
        while (length < text.size() && length < 9 && (digit(text[length]) || text[length] == '.')) ++length;
        const auto value = parse_number(text.substr(0, length));
        if (!value || *value < 0.0 || *value >= 61.0) return std::nullopt;
        seconds = *value;
        text.remove_prefix(length);
    }
    text = trimmed(text);
    const bool utc = text == "Z" || text == "UTC";
    const auto of_day = hour_of(*hour, utc ? std::string_view() : text);
    if (!of_day) return std::nullopt;
    return UtcTime{*day} + std::chrono::hours(*of_day) +
           std::chrono::minutes(*minute - (utc ? 0 : writing.minutes_east_of_utc)) +
           std::chrono::milliseconds(std::lround(seconds * 1000.0));
}

GpxWaypoint waypoint_of(const MarkTexts& texts, char decimal, const std::string& where, FindingList& findings) {
    const auto pointed = [&](std::string_view text) {
        std::string number(trimmed(text));
        if (decimal != '.') std::replace(number.begin(), number.end(), decimal, '.');
        return number;
    };
    const auto number = [&](const std::string& text, const char* what) -> std::optional<double> {
        if (trimmed(text).empty()) return std::nullopt;
        const auto value = parse_number(pointed(text));
        if (value && *value >= 0.0) return value;
        findings.add(where, Words::tell("the {1} {2} was not understood", {Words::shown(what), quoted_for_display(text)}));
        return std::nullopt;
    };
    GpxWaypoint waypoint;
    waypoint.name = texts.name;
    waypoint.type = texts.kind;
    std::string& note = waypoint.comment;
    if (const std::string fan = pointed(texts.fan); !fan.empty())
        note = fan.rfind("fan", 0) == 0 || fan.rfind("Fan", 0) == 0 ? fan : "fan " + fan;
    for (const std::string* text : {&texts.freshness, &texts.note})
        if (const std::string_view part = trimmed(*text); !part.empty())
            note.append(note.empty() ? "" : text == &texts.note ? "; " : " ").append(part);
    waypoint.hdop = number(texts.hdop, "hdop");
    if (const auto count = number(texts.satellites, Words::later("number of satellites")); count && *count <= 1000.0)
        waypoint.satellites = static_cast<int>(*count);
    waypoint.accuracy_m = number(texts.accuracy, Words::later("accuracy"));
    waypoint.link = texts.picture;
    return waypoint;
}

}  // namespace plugside
