// Where a whole inferred burrow system may lie, and how near it may come to an area.
//
// Meaning:  the system's runs with their corridors, the take-offs and the plugs of its mounds; "may": within 1.645 standard
// deviations
//           to either side, which holds 90 of 100 where the corridor is right.
// Preconditions: `plan` was made from `survey`; both outlive the SystemReach.
// Degenerate input: a system without runs is judged by its mounds; a system number that the plan does not have comes near
// nothing. Cost:     O(runs) to make; each question O(vertices of the system's runs x vertices of the area). Source:
// measuring from the whole system and its uncertainty, not from the hole: our rule.
#pragma once

#include <cstddef>
#include <vector>

#include "core/geometry/polygon.h"
#include "core/plan/plan.h"

namespace plugside {

class SystemReach {
public:
    SystemReach(const Survey& survey, const Plan& plan, std::size_t system);

    [[nodiscard]] bool may_come_within(Metres reach, const Polygon& area) const;

private:
    struct Piece {
        LocalPoint from;
        LocalPoint to;
        double half_width_m;
    };
    std::vector<Piece> pieces_;
};

}  // namespace plugside
