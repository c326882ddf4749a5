#include "core/systems/forest_sampler.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <map>
#include <random>
#include <set>

#include "core/systems/disjoint_sets.h"
#include "core/systems/forest_matrix.h"
#include "core/systems/keyed_random.h"

namespace plugside {
namespace {

std::vector<std::uint64_t> keys_of(std::size_t nodes) {
    std::vector<std::uint64_t> keys;
    for (std::size_t i = 0; i < nodes; ++i) keys.push_back(mixed(i + 17));
    return keys;
}

std::vector<Link> complete_graph(std::uint32_t nodes) {
    std::vector<Link> links;
    for (std::uint32_t a = 0; a < nodes; ++a)
        for (std::uint32_t b = a + 1; b < nodes; ++b) links.push_back({a, b, 1.0 + a + 0.1 * b, 1, 1});
    return links;
}

std::set<std::uint32_t> links_in(const Forest& forest) {
    std::set<std::uint32_t> used;
    for (const std::uint32_t link : forest.arrow)
        if (link != no_link) used.insert(link);
    return used;
}

TEST(ForestSampler, DrawsEachOfTheSixteenTreesOfK4EquallyOften) {
    const std::vector<Link> links = complete_graph(4);
    const ForestSampler sampler(keys_of(4), links, std::vector<double>(links.size(), 0.0), 0.1);
    std::map<std::set<std::uint32_t>, int> times;
    int trees = 0;
    for (std::uint64_t draw = 0; trees < 16000; ++draw) {
        const Forest forest = sampler.draw(draw);
        if (forest.trees != 1) continue;
        ++trees;
        ++times[links_in(forest)];
    }
    ASSERT_EQ(times.size(), 16U);
    double chi_square = 0.0;
    for (const auto& [tree, count] : times) chi_square += (count - 1000.0) * (count - 1000.0) / 1000.0;
    EXPECT_LT(chi_square, 37.70) << "0.999 quantile of chi-square with 15 degrees of freedom";
}

TEST(ForestSampler, DrawsRootedForestsInProportionToTheirWeight) {
    // a path of three with weights 2 and 1/2, roots 1: all 8 + ... forests by hand
    const std::vector<Link> links{{0, 1, 1.0, 1, 1}, {1, 2, 1.0, 1, 1}};
    const ForestSampler sampler(keys_of(3), links, {std::log(2.0), std::log(0.5)}, 1.0);
    std::map<std::pair<std::set<std::uint32_t>, std::vector<std::uint32_t>>, int> times;
    const int draws = 60000;
    for (int draw = 0; draw < draws; ++draw) {
        const Forest forest = sampler.draw(static_cast<std::uint64_t>(draw));
        ++times[{links_in(forest), forest.tree}];
    }
    // weight of a set of links times the number of rootings: {} 1; {01} 2 x 2; {12} .5 x 2; both 1 x 3
    const double total = 1.0 + 4.0 + 1.0 + 3.0;
    const std::map<std::set<std::uint32_t>, double> share{
        {{}, 1.0 / total}, {{0}, 2.0 / total}, {{1}, 0.5 / total}, {{0, 1}, 1.0 / total}};  // of each single rooting
    ASSERT_EQ(times.size(), 1U + 2U + 2U + 3U);
    double chi_square = 0.0;
    for (const auto& [forest, count] : times) {
        const double expected = share.at(forest.first) * draws;
        chi_square += (count - expected) * (count - expected) / expected;
    }
    EXPECT_LT(chi_square, 24.32) << "0.999 quantile of chi-square with 7 degrees of freedom";
}

TEST(ForestSampler, LinkSharesAndTreeCountsAgreeWithTheInverseMatrix) {
    std::mt19937_64 random(77);
    std::uniform_real_distribution<double> weight(-2.5, 2.5);
    const std::vector<Link> links = complete_graph(9);
    std::vector<double> log_weight(links.size());
    for (double& w : log_weight) w = weight(random);
    const ForestMarginals exact = forest_marginals(9, links, log_weight, 1.0);
    const ForestSampler sampler(keys_of(9), links, log_weight, 1.0);
    std::vector<int> times(links.size(), 0);
    double trees = 0.0;
    const int draws = 40000;
    for (int draw = 0; draw < draws; ++draw) {
        const Forest forest = sampler.draw(static_cast<std::uint64_t>(draw));
        trees += forest.trees;
        for (const std::uint32_t link : links_in(forest)) ++times[link];
    }
    for (std::size_t e = 0; e < links.size(); ++e) {
        const double p = exact.link[e];
        EXPECT_NEAR(times[e] / static_cast<double>(draws), p, 4.5 * std::sqrt(p * (1.0 - p) / draws) + 1e-4) << e;
    }
    EXPECT_NEAR(trees / draws, exact.expected_trees, 0.03);
}

TEST(ForestSampler, EveryDrawIsARootedForest) {
    std::mt19937_64 random(5);
    std::uniform_real_distribution<double> weight(-3.0, 3.0);
    const std::vector<Link> links = complete_graph(14);
    std::vector<double> log_weight(links.size());
    for (double& w : log_weight) w = weight(random);
    const ForestSampler sampler(keys_of(14), links, log_weight, 1.0);
    for (std::uint64_t draw = 0; draw < 300; ++draw) {
        const Forest forest = sampler.draw(draw);
        DisjointSets joined(14);
        std::uint32_t roots = 0;
        for (std::uint32_t i = 0; i < 14; ++i) {
            if (forest.arrow[i] == no_link) {
                ++roots;
                EXPECT_EQ(forest.tree[i], i);
                continue;
            }
            EXPECT_TRUE(joined.join(links[forest.arrow[i]].first, links[forest.arrow[i]].second)) << "a cycle";
        }
        EXPECT_EQ(roots, forest.trees);
        for (std::uint32_t i = 0; i < 14; ++i)
            EXPECT_EQ(joined.representative(i), joined.representative(forest.tree[i]));
    }
}

TEST(ForestSampler, TheDrawDoesNotDependOnTheNumberingOfTheMarks) {
    std::mt19937_64 random(99);
    std::uniform_real_distribution<double> weight(-2.0, 2.0);
    const std::uint32_t n = 10;
    const std::vector<std::uint64_t> keys = keys_of(n);
    const std::vector<Link> links = complete_graph(n);
    std::vector<double> log_weight(links.size());
    for (double& w : log_weight) w = weight(random);
    std::vector<std::uint32_t> number(n);
    for (std::uint32_t i = 0; i < n; ++i) number[i] = i;
    std::shuffle(number.begin(), number.end(), random);
    std::vector<std::uint64_t> other_keys(n);
    for (std::uint32_t i = 0; i < n; ++i) other_keys[number[i]] = keys[i];
    std::vector<Link> other_links;
    for (const Link& link : links) {
        const auto [low, high] = std::minmax(number[link.first], number[link.second]);
        other_links.push_back({low, high, link.length_m, 1, 1});
    }
    const ForestSampler sampler(keys, links, log_weight, 1.0);
    const ForestSampler other(other_keys, other_links, log_weight, 1.0);
    for (std::uint64_t draw = 0; draw < 200; ++draw) {
        const Forest a = sampler.draw(draw);
        const Forest b = other.draw(draw);
        for (std::uint32_t i = 0; i < n; ++i) {
            EXPECT_EQ(number[a.tree[i]], b.tree[number[i]]);
            EXPECT_EQ(a.arrow[i], b.arrow[number[i]]) << "links keep their places in the list";
        }
    }
}

TEST(ForestSampler, NoMarkAndNoLinkGiveForestsOfRoots) {
    EXPECT_EQ(ForestSampler({}, {}, {}, 1.0).draw(0).trees, 0U);
    EXPECT_EQ(ForestSampler(keys_of(3), {}, {}, 1.0).draw(0).trees, 3U);
}

}  // namespace
}  // namespace plugside
