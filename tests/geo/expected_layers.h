// What each layer of an exported plan has to hold, put together from the survey and the plan by hand, without the writer's
// own layer builders: one line a value (layer, row, column, value), shapes as well-known text under the column "geom".
#pragma once

#include <string>

#include "core/plan/plan.h"
#include "core/units/display.h"
#include "geo/read/field_survey.h"

namespace plugside::testing_support {

[[nodiscard]] std::string expected_layers(const FieldSurvey& field, const Plan& plan, LengthUnits units);

// No file of this process grows beyond `bytes`; what goes beyond fails as on a full disk.
void limit_file_size(unsigned long bytes);

}  // namespace plugside::testing_support
