// Exact, independent draws of weighted rooted spanning forests.
//
// Method: Wilson's algorithm in its form with stacks of arrows: each mark owns an endless stack of arrows (to a neighbour in
//         proportion to the link's weight, or "root" in proportion to root_weight) and cycles are popped until none is left.
//         The forest that remains does not depend on the order of popping (Propp & Wilson 1998 [memory]); since the stacks are
//         keyed by mark and draw (keyed_random), neither does the draw depend on the numbering of the marks or on the threads.
// Result: for each draw, the link each mark's arrow follows (or root), and the tree each mark belongs to.
// Preconditions: weights finite; root_weight > 0.
// Degenerate input: no mark: empty draws. Links of enormous weight make long walks: log weights are held within 12 of the root's.
// Cost:   expected O(sum over marks of the mean time to reach a root), near-linear here.
// Errors: returns fewer draws when stopped.
#pragma once

#include <cstdint>
#include <vector>

#include "core/plan/progress.h"
#include "core/systems/neighbour_graph.h"

namespace plugside {

struct Forest {
    std::vector<std::uint32_t> arrow;  // link towards the root, no_link at a root
    std::vector<std::uint32_t> tree;   // the root's index
    std::uint32_t trees = 0;
};

class ForestSampler {
public:
    // `keys` are the marks' own (Mark::key); `log_weight` runs parallel to `links`.
    ForestSampler(const std::vector<std::uint64_t>& keys, const std::vector<Link>& links,
                  const std::vector<double>& log_weight, double root_weight);
    // The same with a root weight of each mark's own, given as logarithms.
    ForestSampler(const std::vector<std::uint64_t>& keys, const std::vector<Link>& links,
                  const std::vector<double>& log_weight, const std::vector<double>& log_root_weight);

    // Draw number `draw`; the same number always gives the same forest. Safe to call from several threads.
    [[nodiscard]] Forest draw(std::uint64_t draw) const;

private:
    struct Exit {
        double up_to = 0.0;  // cumulative share
        std::uint32_t link = no_link;
        std::uint32_t to = 0;
    };
    [[nodiscard]] const Exit* choose(std::size_t mark, std::uint64_t stream, std::uint32_t turn) const;

    std::vector<std::uint64_t> keys_;
    std::vector<std::uint32_t> start_;
    std::vector<Exit> exits_;
};

}  // namespace plugside
