// One scouting walk: where the walker went and which file said so.
//
// id:       short and unique within a survey, e.g. "walk 1".
// source:   the file's name without its folder (no path of a machine is kept or exported).
// segments: unbroken stretches of the track in the order walked; a receiver that lost its fix starts a new one.
//           May be empty: marks without a track are a walk too.
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

struct Walk {
    std::string id;
    std::string source;
    std::vector<TrackSegment> segments;
    friend bool operator==(const Walk&, const Walk&) = default;
};

}  // namespace plugside
