// Rain and irrigation of the coming days, as a person pastes them: from a forecast, a sheet, a note.
//
// Line:    a day, rain, irrigation; apart by tabs, semicolons, bars, commas or blanks, whichever comes first in this order. Irrigation may be
//          wanting: then nothing is said of it. An empty cell or "-" says nothing of that day.
// Day:     2025-04-10; or 4/10/2025 and 10/4/2025, where the lines together leave one reading alone.
// Heading: a line without any figure may name the columns in any order ("date", "rain", "irrigation"; "fecha", "lluvia", "riego") and their
//          unit ("rain in", "lluvia (mm)").
// Unit:    what the cell says ("5 mm", "0.2 in"), else the heading, else millimetres or inches as `units` has it. 1 in = 25.4 mm.
// Decimal comma: read as such unless commas part the cells.
// Refused: a line that is none of this, with its number, what was found and expected; the others are taken. A day that stands twice is
//          refused the second time.
#pragma once

#include <string>
#include <vector>

#include "core/sets/conditions.h"
#include "core/survey/refusal.h"
#include "core/units/display.h"

namespace plugside {

struct WaterTable {
    std::vector<WaterDay> days;  // ascending
    std::vector<Refusal> problems;
};

[[nodiscard]] WaterTable water_table(const std::string& pasted, LengthUnits units);

}  // namespace plugside
