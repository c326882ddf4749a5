// Which way the walker went at a mark, from the track: what "3 o'clock" in a note is told from.
//
// By time:  from the last place before the mark's time that lies at least 4 m from the mark to the first after it that does;
// a
//           walker stands and turns about at a mound, so nearer places tell nothing. At an end of the track the mark itself
//           takes the missing side. Segments do not count as breaks.
// Nothing where the mark or the track has no times, the track's times are more than ten minutes from the mark's, or the two
// places lie less than 4 m apart. Our assumption: 4 m, beyond a receiver's jitter from fix to fix, within a few steps.
// Degrees clockwise from true north. Cost: O(n log n) once, then O(log n) and the few places around the mark.
#pragma once

#include <optional>
#include <vector>

#include "core/units/bearing.h"
#include "geo/read/geographic_survey.h"

namespace plugside {

class TrackTimes {
public:
    explicit TrackTimes(const std::vector<std::vector<GeographicTrackPoint>>& segments);

    [[nodiscard]] std::optional<Bearing> walking_direction(GeographicPoint mark, std::optional<UtcTime> time) const;

private:
    struct Fix {
        UtcTime time;
        GeographicPoint at;
    };
    std::vector<Fix> fixes_;  // by time
};

}  // namespace plugside
