// Which of the four tints each system is drawn in, so that neighbours differ.
//
// Result: an index 0..3 a system. Where a system has neighbours in all four tints it takes the one whose bearers are
// furthest
//         away: the nearest neighbours then still differ.
// Cost:   O(systems log systems + pairs of neighbours).
#pragma once

#include <cstddef>
#include <vector>

#include "core/plan/plan.h"

namespace plugside {

[[nodiscard]] std::vector<std::size_t> system_tints(const Plan& plan);

}  // namespace plugside
