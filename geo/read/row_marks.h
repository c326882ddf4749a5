// A row of a person's table or layer as the waypoint that it means, so that tables, layers and handhelds' files are read by
// the same rules (gpx_marks.h).
//
// Texts: the fan's column becomes "fan ..." and goes before the note, then the freshness, so that the note shows all that
// was
//        said and a person can correct it in one place. A fan's comma ("135,5") becomes a point.
// Time:  of the common ways to write it, see TimeWriting; a day without a time of day is not used.
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "geo/read/finding_list.h"
#include "geo/read/gpx.h"

namespace plugside {

// What a column of a table or layer means.
enum class ColumnRole {
    none,
    name,
    longitude,
    latitude,
    easting,
    northing,
    fan_bearing,
    freshness,
    kind,
    note,
    date,  // without the time of day
    time,  // with its day, or the time of day beside a date
    hdop,
    satellites,
    accuracy,  // metres
    walker,
    picture,
};

// "name", "longitude", ...: for lists to choose from.
[[nodiscard]] std::string to_text(ColumnRole role);

// The role that a column's heading names, in English or Spanish ("lat", "Longitud", "fan", "Abanico", "E", "Rumbo").
[[nodiscard]] ColumnRole role_named(std::string_view heading);

enum class DateOrder { year_first, day_first, month_first };

struct TimeWriting {
    DateOrder order = DateOrder::year_first;
    int minutes_east_of_utc = 0;  // of times that name no zone
    friend bool operator==(const TimeWriting&, const TimeWriting&) = default;
};

// "2026-03-01T09:30:00Z", "2026-03-01 09:30", "1/3/2026 9:30:05 pm", "01.03.2026 09:30"; nothing for anything else.
[[nodiscard]] std::optional<UtcTime> parse_time(std::string_view text, const TimeWriting& writing);

struct MarkTexts {
    std::string name, fan, freshness, kind, note, hdop, satellites, accuracy, picture;
};

// Everything but place, time and `called`. Numbers that are none are findings.
[[nodiscard]] GpxWaypoint waypoint_of(const MarkTexts& texts, char decimal, const std::string& where, FindingList& findings);

}  // namespace plugside
