// The set points as GPX 1.1 waypoints for the handheld, in walking order, or as one route; symbols are left to the device.
//
// Which:   sets that are not dropped. Name "S07 A" (visit order, system letter); desc holds the instruction; cmt the chance.
// Where:   the middle of the ladder as far as the marks tell; the text says where it really is, relative to the plug.
// Schema:  valid against GPX 1.1: longitude in [-180, 180), element order as the schema has it.
// Safety, errors, stop: as geopackage_layers.h. Cost: linear in sets.
#pragma once

#include <filesystem>
#include <tl/expected.hpp>

#include "core/plan/plan.h"
#include "core/plan/progress.h"
#include "core/survey/refusal.h"
#include "core/units/display.h"
#include "geo/read/field_survey.h"

namespace plugside {

[[nodiscard]] tl::expected<void, Refusal> write_waypoints(const FieldSurvey& field, const Plan& plan,
                                                          const std::filesystem::path& file, LengthUnits units,
                                                          const Progress& progress = {});

// The same sets as the points of one route, which a handheld leads along; without a set the route has no point.
[[nodiscard]] tl::expected<void, Refusal> write_set_route(const FieldSurvey& field, const Plan& plan,
                                                          const std::filesystem::path& file, LengthUnits units,
                                                          const Progress& progress = {});

}  // namespace plugside
