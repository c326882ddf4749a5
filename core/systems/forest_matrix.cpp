#include "core/systems/forest_matrix.h"

#include <Eigen/Cholesky>
#include <Eigen/SparseCholesky>
#include <Eigen/SparseCore>
#include <cassert>
#include <cmath>

namespace plugside {

namespace {

using SparseMatrix = Eigen::SparseMatrix<double>;

SparseMatrix laplacian_with_roots(std::size_t marks, const std::vector<Link>& links, const std::vector<double>& log_weight,
                                  const std::vector<double>& log_root_weight) {
    const auto n = static_cast<Eigen::Index>(marks);
    std::vector<Eigen::Triplet<double>> entries;
    entries.reserve(marks + 4 * links.size());
    for (Eigen::Index i = 0; i < n; ++i) entries.emplace_back(i, i, std::exp(log_root_weight[static_cast<std::size_t>(i)]));
    for (std::size_t e = 0; e < links.size(); ++e) {
        const double weight = std::exp(log_weight[e]);
        const auto i = static_cast<Eigen::Index>(links[e].first);
        const auto j = static_cast<Eigen::Index>(links[e].second);
        entries.emplace_back(i, i, weight);
        entries.emplace_back(j, j, weight);
        entries.emplace_back(i, j, -weight);
        entries.emplace_back(j, i, -weight);
    }
    SparseMatrix matrix(n, n);
    matrix.setFromTriplets(entries.begin(), entries.end());
    return matrix;
}

}  // namespace

double log_forest_sum(std::size_t marks, const std::vector<Link>& links, const std::vector<double>& log_weight,
                      double root_weight) {
    return log_forest_sum(marks, links, log_weight, std::vector<double>(marks, std::log(root_weight)));
}

double log_forest_sum(std::size_t marks, const std::vector<Link>& links, const std::vector<double>& log_weight,
                      const std::vector<double>& log_root_weight) {
    assert(log_weight.size() == links.size() && log_root_weight.size() == marks);
    if (marks == 0) return 0.0;
    const Eigen::SimplicialLDLT<SparseMatrix> factor(laplacian_with_roots(marks, links, log_weight, log_root_weight));
    return factor.vectorD().array().log().sum();
}

ForestMarginals forest_marginals(std::size_t marks, const std::vector<Link>& links, const std::vector<double>& log_weight,
                                 double root_weight) {
    return forest_marginals(marks, links, log_weight, std::vector<double>(marks, std::log(root_weight)));
}

ForestMarginals forest_marginals(std::size_t marks, const std::vector<Link>& links, const std::vector<double>& log_weight,
                                 const std::vector<double>& log_root_weight) {
    assert(log_weight.size() == links.size() && log_root_weight.size() == marks);
    ForestMarginals result;
    result.link.resize(links.size());
    if (marks == 0) return result;
    const auto n = static_cast<Eigen::Index>(marks);
    const Eigen::MatrixXd matrix = laplacian_with_roots(marks, links, log_weight, log_root_weight);
    const Eigen::LLT<Eigen::MatrixXd> factor(matrix);
    result.log_sum = 2.0 * factor.matrixLLT().diagonal().array().log().sum();
    const Eigen::MatrixXd inverse = factor.solve(Eigen::MatrixXd::Identity(n, n));
    for (Eigen::Index i = 0; i < n; ++i)
        result.expected_trees += std::exp(log_root_weight[static_cast<std::size_t>(i)]) * inverse(i, i);
    for (std::size_t e = 0; e < links.size(); ++e) {
        const auto i = static_cast<Eigen::Index>(links[e].first);
        const auto j = static_cast<Eigen::Index>(links[e].second);
        result.link[e] = std::exp(log_weight[e]) * (inverse(i, i) + inverse(j, j) - 2.0 * inverse(i, j));
    }
    return result;
}

}  // namespace plugside
