// Which of the four tints each system is drawn in, so that neighbours differ.
//
// Result: an index 0..3 a system. Systems whose outlines come within a few metres are neighbours; where a system has
//         neighbours in all four tints it takes the one that fewest of them have.
// Cost:   O(systems log systems + neighbouring pairs).
#pragma once

#include <cstddef>
#include <vector>

#include "core/plan/plan.h"

namespace plugside {

[[nodiscard]] std::vector<std::size_t> system_tints(const Plan& plan);

}  // namespace plugside
