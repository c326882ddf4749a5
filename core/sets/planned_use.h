// What the sets that stand are about to put down, as a label asks: from plan, decisions and work order.
//
// Counted: sets that stand (kept, moved, still proposed) whose method puts bait or fumigant; placements by the method.
// Area:    the field's own, else the area walked; nothing without either.
// Spacing: between the middles of the ladders of one system, as far as the marks tell.
// Places:  buildings that may be lived in, and wells, of the map; from the whole treated systems with their uncertainty.
// Cost:    O(sets^2 within a system + treated systems x areas).
#pragma once

#include <vector>

#include "core/plan/plan.h"
#include "core/sets/work_order.h"

namespace plugside {

[[nodiscard]] PlannedUse planned_use(const Survey& survey, const WorkOrder& work, const Plan& plan, UtcTime now);

// `compare` of it with the work order's label.
[[nodiscard]] std::vector<LabelCheck> label_checks(const Survey& survey, const WorkOrder& work, const Plan& plan,
                                                   UtcTime now, const std::vector<Application>& season, LengthUnits units);

}  // namespace plugside
