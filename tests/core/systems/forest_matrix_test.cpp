#include "core/systems/forest_matrix.h"

#include <gtest/gtest.h>

#include <cmath>
#include <random>

namespace plugside {
namespace {

std::vector<Link> complete_graph(std::uint32_t nodes) {
    std::vector<Link> links;
    for (std::uint32_t a = 0; a < nodes; ++a)
        for (std::uint32_t b = a + 1; b < nodes; ++b) links.push_back({a, b, 1.0, 1, 1});
    return links;
}

std::vector<Link> grid_graph(std::uint32_t side) {
    std::vector<Link> links;
    for (std::uint32_t y = 0; y < side; ++y)
        for (std::uint32_t x = 0; x < side; ++x) {
            if (x + 1 < side) links.push_back({y * side + x, y * side + x + 1, 1.0, 1, 1});
            if (y + 1 < side) links.push_back({y * side + x, (y + 1) * side + x, 1.0, 1, 1});
        }
    return links;
}

// Spanning trees are counted as rooted forests with a root weight so small that one root is left: it can stand at each node.
double log_trees(std::uint32_t nodes, const std::vector<Link>& links, double root_weight) {
    const std::vector<double> unit(links.size(), 0.0);
    return log_forest_sum(nodes, links, unit, root_weight) - std::log(root_weight * nodes);
}

TEST(ForestMatrix, CountsTheSpanningTreesOfCompleteGraphsAsCayleysFormula) {
    // Cayley 1889: n^(n-2)
    for (std::uint32_t n = 2; n <= 12; ++n)
        EXPECT_NEAR(log_trees(n, complete_graph(n), 1e-7), (n - 2.0) * std::log(n), 1e-6) << n;
}

TEST(ForestMatrix, CountsTheSpanningTreesOfGrids) {
    // 4 x 4: 100352 (OEIS A007341 [memory]); 100 x 100: log count 11484.461618, closed form by the eigenvalues of the path
    EXPECT_NEAR(log_trees(16, grid_graph(4), 1e-9), std::log(100352.0), 1e-6);
    EXPECT_NEAR(log_trees(10000, grid_graph(100), 1e-10), 11484.461618, 1e-4);
}

TEST(ForestMatrix, SumsAllRootedForestsOfATriangleByHand) {
    // weights 1 on links, 2 on roots: no link 8, one link 3 x (2 roots in its tree) x 2 x 2, two links 3 x 3 roots x 2
    const std::vector<double> unit(3, 0.0);
    EXPECT_NEAR(std::exp(log_forest_sum(3, complete_graph(3), unit, 2.0)), 8.0 + 24.0 + 18.0, 1e-9);
}

TEST(ForestMatrix, DenseAndSparseSumsAgreeAndMarginalsAreTheirSlopes) {
    std::mt19937_64 random(20260311);
    std::uniform_real_distribution<double> weight(-2.0, 2.0);
    const std::vector<Link> links = grid_graph(5);
    std::vector<double> log_weight(links.size());
    for (double& w : log_weight) w = weight(random);
    const ForestMarginals marginals = forest_marginals(25, links, log_weight, 0.7);
    EXPECT_NEAR(marginals.log_sum, log_forest_sum(25, links, log_weight, 0.7), 1e-9);
    double links_expected = 0.0;
    for (std::size_t e = 0; e < links.size(); ++e) {
        std::vector<double> raised = log_weight;
        raised[e] += 1e-5;
        const double slope = (log_forest_sum(25, links, raised, 0.7) - marginals.log_sum) / 1e-5;
        EXPECT_NEAR(marginals.link[e], slope, 1e-4);
        links_expected += marginals.link[e];
    }
    EXPECT_NEAR(marginals.expected_trees, 25.0 - links_expected, 1e-9) << "a forest has as many trees as nodes less links";
}

TEST(ForestMatrix, NoNodeAndNoLinkAreNoSpecialTrouble) {
    EXPECT_EQ(log_forest_sum(0, {}, {}, 1.0), 0.0);
    EXPECT_NEAR(log_forest_sum(3, {}, {}, 2.0), 3.0 * std::log(2.0), 1e-12);
    EXPECT_NEAR(forest_marginals(3, {}, {}, 2.0).expected_trees, 3.0, 1e-12);
}

}  // namespace
}  // namespace plugside
