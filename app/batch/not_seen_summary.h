// What the walk did not see, in a few lines for a terminal: area walked and unwalked, mounds and animals with their
// interval.
//
// Without a track one line that says so.
#pragma once

#include <optional>
#include <string>

#include "core/units/display.h"
#include "core/walking/not_seen.h"

namespace plugside {

[[nodiscard]] std::string not_seen_summary(const std::optional<NotSeen>& not_seen, LengthUnits units);

}  // namespace plugside
