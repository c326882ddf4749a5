// The order in which the sets of a plan are walked to (SetPoint::visit_order).
//
// Way:      from where the walk began, on foot: around barriers, buildings and edges of the field, through gates. Where no way leads in from
//           there (a walk that began outside a boundary without a gate) the field's edges are no walls.
// Steady:   the order is that of the sets as they would be proposed had nobody decided, with dropped ones left out and others put in where
//           they add least, unless an order found anew saves more than a twentieth of the way (steady_order.h). Dropped sets come last.
// Cut off:  sets that no way on foot leads to are walked to in one stretch, and a notice names them by rank.
// Degenerate input: no sets.
// rough_way: from each to the nearest not yet visited, not bettered: a small part of the time, a way some fifth longer.
// along_curve: in the order of a space-filling curve, straight; for more places than the others can be had for in seconds.
#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include "core/plan/plan.h"
#include "core/walking/walking_ways.h"

namespace plugside {

enum class WayForm { short_way, rough_way, along_curve };

// `proposed`: the first so many of plan.sets are what would be proposed had nobody decided (SetChoiceResult::proposed).
void order_visits(const Survey& survey, Plan& plan, std::size_t proposed, WayForm form = WayForm::short_way);

// Where the first track begins; nothing without one.
[[nodiscard]] std::optional<LocalPoint> where_the_walk_began(const Survey& survey);
// Where one walks to the places from a start: the field's edges are walls unless no way leads in from there.
[[nodiscard]] WalkingWays ways_to_places(const Ground& ground, const std::vector<LocalPoint>& places,
                                         const std::optional<LocalPoint>& start);

}  // namespace plugside
