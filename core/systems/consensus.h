// One partition that stands for many draws.
//
// Loss:    1 - the adjusted Rand index with the truth, in expectation over the draws (to first order: the index of the expected
//          pair counts; Fritsch & Ickstadt 2009 [memory]). Average linkage on the shares of draws is cut where it is highest; then
//          single marks move between groups, or out on their own, as long as it rises.
// Result:  labels 0.. in order of each group's first mark.
// Degenerate input: no mark: no label. One mark: one group.
// Cost:    O(pairs log pairs).
#pragma once

#include <vector>

#include "core/systems/co_membership.h"

namespace plugside {

struct Consensus {
    std::vector<std::uint32_t> label;
    std::uint32_t groups = 0;
    double expected_index = 1.0;  // that the partition claims of itself
};

[[nodiscard]] Consensus consensus_of(const std::vector<std::vector<CoMembership::Near>>& table);

}  // namespace plugside
