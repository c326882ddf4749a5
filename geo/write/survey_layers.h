// The layers of what a person brought home and decided: mounds, walk_tracks, the three of the ground, set_decisions.
// They hold all of a Survey, so that a handed-out file can be read back; `plan` fills what it adds to each mound.
//
// mounds:        as they stand, with their mends; where a mend changed anything of one, what was recorded stands beside it
//                (recorded_lon, recorded_lat, recorded_fan_bearing, recorded_kind, recorded_freshness, recorded_position_sd_m,
//                recorded_set_aside_because), else nothing does. set_aside_because: by a person or a mend; not_used_because
//                also tells what the kind and the ground decide.
// walk_tracks:   one row a segment (walk_id, source, segment, times: a JSON list with a time or null a point); a walk
//                without a track, and a segment of one place, keep their row with no or a doubled vertex: the times tell the
//                number.
// set_decisions: the decisions as the person made them, also on sites that the plan no longer proposes.
// Bearings: degrees from true north, turned here from the plane's (LocalFrame::true_bearing).
// Cost: linear.
#pragma once

#include <vector>

#include "core/plan/plan.h"
#include "core/survey/survey.h"
#include "geo/frame/local_frame.h"
#include "geo/write/layer_content.h"

namespace plugside {

// Without a plan (null) the columns of systems and take-offs hold nothing.
[[nodiscard]] LayerContent mound_layer(const Survey& survey, const Plan* plan, const LocalFrame& frame);
[[nodiscard]] LayerContent walk_track_layer(const Survey& survey, const LocalFrame& frame);
[[nodiscard]] LayerContent set_decision_layer(const Survey& survey);
// field_boundaries, barriers, keep_clear_areas.
[[nodiscard]] std::vector<LayerContent> ground_layers(const Ground& ground, const LocalFrame& frame);

// The latest time in the survey, or the start of 1970: what a file made from it is stamped with.
[[nodiscard]] UtcTime latest_time(const Survey& survey);

}  // namespace plugside
