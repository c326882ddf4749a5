// One partition that stands for many draws.
//
// Loss:    1 - the adjusted Rand index with the truth, in expectation over the draws (to first order: the index of the expected
//          pair counts; Fritsch & Ickstadt 2009 [memory]). Average linkage on the shares of draws is cut where it is highest among
//          the numbers of groups in `groups` (the interval of the number of systems, so that picture and count agree); then single
//          marks move between groups as long as it rises.
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

struct GroupCount {
    std::size_t low = 1;
    std::size_t high = static_cast<std::size_t>(-1);
};

[[nodiscard]] Consensus consensus_of(const std::vector<std::vector<CoMembership::Near>>& table, GroupCount groups = {});

}  // namespace plugside
