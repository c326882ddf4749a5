// The ground alone as a GeoPackage: field_boundaries, barriers, keep_clear_areas, with the columns they have in a plan.
//
// All three layers exist, also when empty.
// Safety, errors, cost: as geopackage_layers.h.
#pragma once

#include <filesystem>
#include <tl/expected.hpp>

#include "core/survey/ground.h"
#include "core/survey/refusal.h"
#include "geo/frame/local_frame.h"

namespace plugside {

[[nodiscard]] tl::expected<void, Refusal> write_ground(const Ground& ground, const LocalFrame& frame,
                                                       const std::filesystem::path& file);

}  // namespace plugside
