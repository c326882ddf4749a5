// Which way the walker went at a place: the direction of the nearest piece of any track, over a few metres of it. Which way
// at a time is another question (geo/read/walking_direction.h).
//
// Direction: from the track `half_span` before the nearest place to the one `half_span` after it, so that a receiver's unrest
//            and a step aside do not turn it.
// Degenerate input: no track, or none that moves there: nothing. A segment ends the way at its ends.
// Cost:      O(fixes).
#pragma once

#include <optional>
#include <vector>

#include "core/geometry/point.h"
#include "core/survey/walk.h"
#include "core/units/bearing.h"

namespace plugside {

[[nodiscard]] std::optional<Bearing> track_direction(const std::vector<Walk>& walks, LocalPoint at,
                                                       Metres half_span = Metres::of(4.0));

}  // namespace plugside
