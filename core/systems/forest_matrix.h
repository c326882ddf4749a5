// Sums over all rooted spanning forests of a weighted graph, exact.
//
// A rooted forest weighs the product of its links' weights times the product of its roots' weights. With L the weighted
// Laplacian and Q the diagonal of root weights, the sum over all of them is det(L + Q), and
//   P(link ij is in the forest) = w_ij (K_ii + K_jj - 2 K_ij),   P(i hangs from root j) = K_ij q_j,   K = (L + Q)^-1.
// Preconditions: weights > 0 and finite, given as logarithms; root weight > 0.
// Degenerate input: no node: log sum 0. No link: every node its own root.
// Cost:   log sum by sparse Cholesky, about O(n^1.5) on graphs in the plane; marginals dense, O(n^3), for up to some hundreds.
// Source: the matrix-tree theorem and its rooted-forest form (Chaiken 1982; Chebotarev & Agaev 2002 [memory]).
#pragma once

#include <cstdint>
#include <vector>

#include "core/systems/neighbour_graph.h"

namespace plugside {

// log det(L + root_weight I). `log_weight` runs parallel to `links`.
[[nodiscard]] double log_forest_sum(std::size_t marks, const std::vector<Link>& links,
                                    const std::vector<double>& log_weight, double root_weight);

// The same with a root weight of each mark's own, as logarithms.
[[nodiscard]] double log_forest_sum(std::size_t marks, const std::vector<Link>& links,
                                    const std::vector<double>& log_weight, const std::vector<double>& log_root_weight);

struct ForestMarginals {
    double log_sum = 0.0;
    std::vector<double> link;        // P(link in the forest)
    double expected_trees = 0.0;
};
[[nodiscard]] ForestMarginals forest_marginals(std::size_t marks, const std::vector<Link>& links,
                                               const std::vector<double>& log_weight, double root_weight);
[[nodiscard]] ForestMarginals forest_marginals(std::size_t marks, const std::vector<Link>& links,
                                               const std::vector<double>& log_weight,
                                               const std::vector<double>& log_root_weight);

}  // namespace plugside
