// One scouting walk: where the walker went and which file said so.
//
// id:       short and unique within a survey, e.g. "walk 1".
// source:   the file's name without its folder (no path of a machine is kept or exported).
// segments: unbroken stretches of the track in the order walked; a receiver that lost its fix starts a new one.
//           May be empty: marks without a track are a walk too.
// bearings_from: the north that the walk's bare bearings were read from, as a person told it; not told counts as true. A
// note
//           that names its own north ("135M") goes by that whatever stands here. geo/read/north_of_walk.h turns the fans.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/geometry/point.h"
#include "core/survey/mound.h"

namespace plugside {

struct TrackPoint {
    LocalPoint at;
    std::optional<UtcTime> time;
    friend bool operator==(const TrackPoint&, const TrackPoint&) = default;
};

using TrackSegment = std::vector<TrackPoint>;

enum class North { not_told, true_north, magnetic_north };

// "not told", "true", "magnetic".
[[nodiscard]] std::string to_text(North north);
[[nodiscard]] std::optional<North> north_from_text(const std::string& text);

struct Walk {
    std::string id;
    std::string source;
    std::vector<TrackSegment> segments;
    North bearings_from = North::not_told;
    friend bool operator==(const Walk&, const Walk&) = default;
};

}  // namespace plugside
