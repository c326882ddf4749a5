// Where the field is: its middle, found in a way that one bad fix cannot drag away, and whether everything lies about it.
//
// Middle:  the median longitude and latitude of the marks, else of the track points, else of the ground's vertices;
//          longitudes are unwrapped first, so that a field across the 180th meridian is no special case.
// Reach:   50 km from the middle (our assumption: no field is larger, and the plane is good to 1e-5 there). A mark or a
//          piece of ground beyond it, or within one degree of a pole, refuses the files; a track segment beyond it is left
//          out, with a finding (receivers keep old tracks).
// Cost:    linear.
#pragma once

#include <tl/expected.hpp>
#include <vector>

#include "core/survey/refusal.h"
#include "geo/read/geographic_survey.h"

namespace plugside {

// Whether a place lies within the reach of a field about `middle`.
[[nodiscard]] bool is_about(GeographicPoint middle, GeographicPoint place);

// Checks all files and drops far track segments from them; the frame is the one of everything that remains.
[[nodiscard]] tl::expected<LocalFrame, Refusal> frame_of(std::vector<GeographicFile>& files);

// The same checks about a middle that is known already: of a field that files are added to.
[[nodiscard]] tl::expected<void, Refusal> check_reach(std::vector<GeographicFile>& files, GeographicPoint middle);

}  // namespace plugside
