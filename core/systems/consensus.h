// One partition that stands for many draws.
//
// Loss:    least_share for each pair put together that is not one animal's, 1 - least_share for each pair of one animal that is put
//          apart, in expectation over the draws (Binder 1978 [memory]): a pair is better together where it is in more than
//          least_share of the draws. Average linkage on the shares stops at that mean share; then single marks move between groups
//          as long as the loss falls.
// Local:   what is grouped in one part of a field does not depend on marks that none of the part ever met.
// expected_index: the adjusted Rand index of the expected pair counts (Fritsch & Ickstadt 2009 [memory]).
// Told:    a share far beyond 0 and 1 decides its pair against whatever else speaks; the index counts it as 0 or 1.
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

// Of .3, .35 and .4 the best mean index on simulated fields, above that of the cut with the best expected index over the field.
inline constexpr double least_share_together = 0.35;

[[nodiscard]] Consensus consensus_of(const std::vector<std::vector<CoMembership::Near>>& table,
                                     double least_share = least_share_together);

}  // namespace plugside
