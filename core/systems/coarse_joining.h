// Parts of a graph whose links speak for or against togetherness: the coarse form's way from links to systems.
//
// Method:   agglomeration in rounds. Between two groups stands the sum of their links' evidence; in each round every two groups that
//           are each other's best are joined, if what stands between them exceeds the threshold. After `most_rounds` the rest is joined one pair after another, best first, each by what stood between the
//           two at that time: so no order of evidence makes the cost grow beyond near-linear.
// Result:   label of each thing, 0.. in order of each group's first thing.
// Degenerate input: no thing: no label; no link: each thing alone.
// Preconditions: first < second < things, each pair once (asserts in debug builds).
// Deterministic; ties by index. Errors: returns nothing when stopped, asked every round.
// Cost:     O((n + m) most_rounds) at worst, about O(n + m) on fields, where each round leaves half of the links or fewer.
// Source:   joining mutual bests: Murtagh 1983, Computer Journal 26:354 [memory]; evidence of both signs: Keuper et al. 2015, "Efficient
//           decomposition of image and mesh graphs by lifted multicuts" [memory].
#pragma once

#include <cstdint>
#include <optional>
#include <vector>

#include "core/systems/coarse_links.h"

namespace plugside {

struct CoarseJoiningOptions {
    float threshold = 2.5F;    // log-odds; chosen on simulated fields (tests/training/fit_coarse_links)
    int most_rounds = 40;      // simulated fields take about ten
};

[[nodiscard]] std::optional<std::vector<std::uint32_t>> join_by_evidence(std::size_t things, std::vector<CoarseLink> links,
                                                                         const CoarseJoiningOptions& options,
                                                                         const Progress& progress = {});

}  // namespace plugside
