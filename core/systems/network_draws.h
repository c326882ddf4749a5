// Networks drawn given what is known: exactly where they can be, by chains where knowledge speaks of whole systems.
//
// Method:  links that have next to no chance are left out: a link's chance is at most weight x (1 / root + 1 / root) of its
// ends, whatever the
//          rest; those below exp(prune_log_chance) go, unless they are forced or hold the witness together. What the
//          remaining links connect is a part; parts do not touch. Parts without pairs and without two catches are drawn
//          exactly and independently by ForestSampler with the forced links drawn together into one node; the others by
//          several NetworkChains each, started from different draws mended to obey.
// Result:  draw k takes turn k / chains of chain k % chains of each chained part and the exact draw k of the others.
// Guarantee: every draw obeys all that is certain. Equal for any number of threads. Draws of a part do not depend on marks
// and links of other
//          parts, nor on the numbering: chains are keyed by the part's marks' keys and work in the keys' order.
// Convergence: of each chained part the number of systems and the links with a chance within 5-95 in 100; the worst is told.
// `converged`
//          says that R-hat of the systems is at most 1.01 and its size at least 100 a chain (the bounds of Vehtari et al.
//          2021), and R-hat of the links at most 1.05 and their size at least 50 a chain (our assumption: the worst of
//          hundreds of streams lies above 1.01 by chance). Exact parts are converged by nature.
// Weights: held within 12 of the lesser root's, as ForestSampler holds them.
// Preconditions: log weights finite; `known` made by known_links for these marks and links.
// Degenerate input: no mark: draws of nothing. Fewer draws than chains: as many chains as draws.
// Errors:  returns nothing when stopped.
// Cost:    exact parts near O(marks) a draw; chained ones moves_per_mark moves a mark and draw.
#pragma once

#include <optional>

#include "core/plan/progress.h"
#include "core/systems/known_links.h"

namespace plugside {

struct NetworkDrawOptions {
    std::uint32_t chains = 4;           // at least 3; Vehtari et al. 2021 advise four
    std::uint32_t warm_up_draws = 60;   // draws thrown away, of each chain
    double moves_per_mark = 2.0;        // between draws
    double prune_log_chance = -9.0;     // a link of chance 1 in 8,000
    double log_weight_of_added = -4.0;  // of links that were no candidates: rare unless something asks for them
    unsigned threads = 2;
};

struct DrawnNetwork {
    std::vector<std::uint32_t> links;  // ascending
    std::vector<std::uint32_t> tree;   // of each mark the least mark of its tree
    std::uint32_t trees = 0;
};

struct NetworkConvergence {
    bool converged = true;
    std::size_t chained_marks = 0;  // marks in parts that chains drew; 0: all is exact
    double systems_r_hat = 1.0;     // the worst over parts, as are all
    double systems_size = 0.0;      // effective sample size
    double links_r_hat = 1.0;
    double links_size = 0.0;
};

struct DrawnNetworks {
    std::vector<Link> links;  // the candidates, then those that were added
    std::vector<DrawnNetwork> draws;
    NetworkConvergence convergence;
};

[[nodiscard]] std::optional<DrawnNetworks> draw_networks(const std::vector<std::uint64_t>& keys,
                                                         const std::vector<Link>& links,
                                                         const std::vector<double>& log_weight,
                                                         const std::vector<double>& log_root, const KnownLinks& known,
                                                         std::uint32_t draws, const NetworkDrawOptions& options = {},
                                                         const Progress& progress = {});

}  // namespace plugside
