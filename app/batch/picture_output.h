// The map of a plan as a PNG picture, drawn without a display.
//
// Precondition: a DrawingProgram.
// Safety: as geo/write: written beside its final name, then renamed.
#pragma once

#include <filesystem>
#include <tl/expected.hpp>

#include "core/plan/plan.h"
#include "core/survey/refusal.h"
#include "core/units/display.h"
#include "geo/read/field_survey.h"

namespace plugside {

[[nodiscard]] tl::expected<void, Refusal> write_picture(const FieldSurvey& field, const Plan& plan,
                                                        const std::filesystem::path& file, LengthUnits units);

}  // namespace plugside
