// A survey's walks as the GPX 1.1 file that a handheld would give: marks as waypoints, tracks with their segments and times.
//
// Notes:   cmt says what the walker noted ("fan 135 fresh"), the fan in whole degrees from true north as a person writes it;
//          type says the kind of sign; hdop carries the mark's position error by the reader's own rule (see gpx_marks.h).
// Reading it back gives the same marks and tracks: places to 1e-9 degrees, fans to half a degree, times to the millisecond.
//          All walks of the survey stand in the one file, so they are one walk when read again.
// Safety, errors: as geopackage_layers.h. Cost: linear.
#pragma once

#include <filesystem>
#include <string>
#include <tl/expected.hpp>

#include "core/survey/refusal.h"
#include "core/survey/survey.h"
#include "geo/frame/local_frame.h"

namespace plugside {

[[nodiscard]] tl::expected<void, Refusal> write_walk(const Survey& survey, const LocalFrame& frame,
                                                     const std::string& field_name, const std::filesystem::path& file);

}  // namespace plugside
