// Why a set is proposed where it is, and where else its animal could be met.
//
// mounds: those that the ladder is taped from and to.
// links:  runs of its system that meet one of these mounds, the likeliest first; one that joins the two is the first.
// others: the other places of the same system where a ladder would be worth pushing, the greater chance first, then the fewer holes:
//         those set already (kept, dropped or proposed) come after those that are free.
// Cost:   O(runs + probes + sets).
#pragma once

#include <optional>
#include <vector>

#include "core/plan/plan.h"

namespace plugside {

struct OtherPlace {
    std::size_t probe = 0;
    std::optional<std::size_t> set;  // index into plan.sets where it is one
};

struct WhyHere {
    std::vector<std::size_t> mounds;
    std::vector<std::size_t> runs;  // indexes into plan.runs
    std::vector<OtherPlace> others;
};

[[nodiscard]] WhyHere why_here(const Plan& plan, std::size_t set);

}  // namespace plugside
