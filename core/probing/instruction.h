// A probe site told in words, relative to marks that the walker can see on the ground: this plug, that plug, this fan.
// Short enough to remember while walking. English.
//
// Units:  tape readings in `units`.
// Cost:   O(rungs).
#pragma once

#include <string>

#include "core/plan/plan.h"
#include "core/units/display.h"

namespace plugside {

[[nodiscard]] std::string instruction(const ProbeSite& site, const Survey& survey, LengthUnits units);

}  // namespace plugside
