#include "core/systems/network_chain.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <limits>
#include <map>

#include "core/simulation/random.h"
#include "core/simulation/rank_histogram.h"
#include "core/systems/forest_matrix.h"
#include "core/systems/forest_sampler.h"
#include "tests/core/systems/all_forests.h"

namespace plugside {
namespace {

using Move = NetworkChain::Move;
constexpr double must = std::numeric_limits<double>::infinity();
constexpr std::array<Move, 5> all_moves{Move::toggle, Move::reattach, Move::place, Move::redraw, Move::redraw_all};

void weigh(SmallGraph& graph, std::uint64_t seed) {
    Random random(seed);
    for (std::size_t e = 0; e < graph.links.size(); ++e) graph.log_weight.push_back(random.uniform(-1.5, 1.5));
    for (std::uint32_t i = 0; i < graph.marks; ++i) graph.log_root.push_back(random.uniform(-1.0, 1.0));
}

SmallGraph complete_four() {
    SmallGraph graph{4, {}, {}, {}};
    for (std::uint32_t a = 0; a < 4; ++a)
        for (std::uint32_t b = a + 1; b < 4; ++b) graph.links.push_back({a, b, 1.0, 1, 1});
    weigh(graph, 4);
    return graph;
}

// 0 1 2
// 3 4 5
SmallGraph grid_of_two_by_three() {
    SmallGraph graph{6,
                     {{0, 1, 1.0, 1, 1},
                      {0, 3, 1.0, 1, 1},
                      {1, 2, 1.0, 1, 1},
                      {1, 4, 1.0, 1, 1},
                      {2, 5, 1.0, 1, 1},
                      {3, 4, 1.0, 1, 1},
                      {4, 5, 1.0, 1, 1}},
                     {},
                     {}};
    weigh(graph, 6);
    return graph;
}

// Five in a ring about a sixth: triangles, so that marks can be put into links.
SmallGraph wheel_of_five() {
    SmallGraph graph{6, {}, {}, {}};
    for (std::uint32_t i = 0; i < 5; ++i) graph.links.push_back({i, 5, 1.0, 1, 1});
    for (std::uint32_t i = 0; i < 4; ++i) graph.links.push_back({i, i + 1, 1.0, 1, 1});
    graph.links.push_back({0, 4, 1.0, 1, 1});
    weigh(graph, 5);
    return graph;
}

NetworkChain chain_from(const SmallGraph& graph, const NetworkTerms& terms, LinkSet start, std::uint64_t seed) {
    return {graph.marks, graph.links, graph.log_weight, graph.log_root, terms, links_of(start), seed};
}

// Chance of so uneven counts; forests expected fewer than five times are taken together.
double p_value(const AllForests& all, const std::map<LinkSet, int>& times, int draws) {
    double statistic = 0.0, rare_expected = 0.0, rare_seen = 0.0;
    std::size_t cells = 0;
    int seen_in_all = 0;
    for (std::size_t k = 0; k < all.sets.size(); ++k) {
        const auto found = times.find(all.sets[k]);
        const int seen = found == times.end() ? 0 : found->second;
        seen_in_all += seen;
        const double expected = all.share[k] * draws;
        if (expected < 5.0) {
            rare_expected += expected;
            rare_seen += seen;
            continue;
        }
        statistic += (seen - expected) * (seen - expected) / expected;
        ++cells;
    }
    if (rare_expected >= 5.0) {
        statistic += (rare_seen - rare_expected) * (rare_seen - rare_expected) / rare_expected;
        ++cells;
    }
    if (seen_in_all != draws) return 0.0;  // something that is no forest, or that a hard term forbids
    return chi_square_tail(statistic, cells - 1);
}

// Forests drawn from the law itself, each moved on a few times: the law must be the same again, whatever the move can reach.
double p_after_moves(const SmallGraph& graph, const NetworkTerms& terms, const std::vector<Move>& moves, int draws,
                     std::uint64_t seed) {
    const AllForests all = all_forests(graph, terms);
    Random random(seed);
    std::map<LinkSet, int> times;
    for (int draw = 0; draw < draws; ++draw) {
        double u = random.uniform();
        std::size_t k = 0;
        while (k + 1 < all.share.size() && u >= all.share[k]) u -= all.share[k++];
        NetworkChain chain = chain_from(graph, terms, all.sets[k], random.bits());
        for (const Move move : moves) chain.make(move);
        ++times[set_of(chain.links())];
    }
    return p_value(all, times, draws);
}

// Many runs from one forest far off, long enough to forget it.
double p_after_long_runs(const SmallGraph& graph, const NetworkTerms& terms, LinkSet start, std::size_t moves, int draws,
                         std::uint64_t seed) {
    const AllForests all = all_forests(graph, terms);
    std::map<LinkSet, int> times;
    for (int draw = 0; draw < draws; ++draw) {
        NetworkChain chain = chain_from(graph, terms, start, mixed(seed, static_cast<std::uint64_t>(draw)));
        chain.run(moves);
        ++times[set_of(chain.links())];
    }
    return p_value(all, times, draws);
}

TEST(NetworkChain, EachKindOfMoveLeavesTheLawOnAllForestsOfSmallGraphsAsItIs) {
    for (const SmallGraph& graph : {complete_four(), grid_of_two_by_three(), wheel_of_five()})
        for (const Move move : all_moves)
            EXPECT_GT(p_after_moves(graph, {}, {move, move, move}, 40000, 11), 1e-4)
                << "move " << static_cast<int>(move) << " on " << graph.links.size() << " links";
}

TEST(NetworkChain, CountsTheForestsOfK4AsTheyArePublished) {
    EXPECT_EQ(all_forests(complete_four()).sets.size(), 38U) << "labelled forests on 4 nodes, OEIS A001858 [memory]";
}

TEST(NetworkChain, EveryMoveIsAsLikelyAsItsReverseUnderTheLaw) {
    // detailed balance, forest by forest, of the moves as they are: share x chance there against share x chance back
    const SmallGraph graph = complete_four();
    NetworkTerms terms;
    terms.pairs = {{0, 2, 0.7}, {1, 3, -0.9}};
    terms.catches = {1, 0, 2, 1};
    terms.log_per_extra_catch = -0.8;
    const AllForests all = all_forests(graph, terms);
    constexpr int tries = 12000;
    for (const Move move : all_moves) {
        std::map<std::pair<std::size_t, std::size_t>, int> times;
        for (std::size_t k = 0; k < all.sets.size(); ++k)
            for (std::uint64_t t = 0; t < tries; ++t) {
                NetworkChain chain = chain_from(graph, terms, all.sets[k], mixed(t, all.sets[k] + 1));
                chain.make(move);
                const auto to = std::lower_bound(all.sets.begin(), all.sets.end(), set_of(chain.links())) - all.sets.begin();
                ++times[{k, static_cast<std::size_t>(to)}];
            }
        double statistic = 0.0;
        std::size_t ways = 0;
        for (std::size_t a = 0; a < all.sets.size(); ++a)
            for (std::size_t b = a + 1; b < all.sets.size(); ++b) {
                // were the two flows one, the moves seen there and back would share out as 1 / share
                const double there = times[{a, b}];
                const double both = there + times[{b, a}];
                const double expected = both * all.share[b] / (all.share[a] + all.share[b]);
                if (std::min(expected, both - expected) < 5.0) continue;
                statistic += (there - expected) * (there - expected) * both / (expected * (both - expected));
                ++ways;
            }
        EXPECT_GT(ways, 20U) << "move " << static_cast<int>(move);
        EXPECT_GT(chi_square_tail(statistic, ways), 1e-4) << "move " << static_cast<int>(move);
    }
}

TEST(NetworkChain, AllMovesTogetherReachTheLawFromAnyStart) {
    for (const SmallGraph& graph : {complete_four(), grid_of_two_by_three(), wheel_of_five()}) {
        EXPECT_GT(p_after_long_runs(graph, {}, 0, 150, 25000, 21), 1e-4) << graph.links.size();
        EXPECT_GT(p_after_long_runs(graph, {}, all_forests(graph).sets.back(), 150, 25000, 22), 1e-4) << graph.links.size();
    }
}

TEST(NetworkChain, ReachesTheLawOfTheForestsThatHardTermsLeave) {
    const SmallGraph graph = wheel_of_five();
    NetworkTerms terms;
    terms.pairs = {{0, 2, must}, {1, 3, -must}};
    terms.forced.assign(graph.links.size(), false);
    terms.forced[9] = true;  // 0-4
    const AllForests all = all_forests(graph, terms);
    ASSERT_GT(all.sets.size(), 20U);
    for (const Move move : all_moves)
        EXPECT_GT(p_after_moves(graph, terms, {move, move, move}, 40000, 31), 1e-4) << static_cast<int>(move);
    EXPECT_GT(p_after_long_runs(graph, terms, all.sets.front(), 2000, 6000, 32), 1e-4);
    EXPECT_GT(p_after_long_runs(graph, terms, all.sets.back(), 2000, 6000, 33), 1e-4);
}

TEST(NetworkChain, ReachesTheLawWithSoftTermsAndCatches) {
    const SmallGraph graph = grid_of_two_by_three();
    NetworkTerms terms;
    terms.pairs = {{0, 5, 1.2}, {1, 3, -0.7}, {2, 4, must}};
    terms.catches = {1, 0, 1, 2, 0, 1};
    terms.log_per_extra_catch = std::log(3.0 / 14.0);
    for (const Move move : all_moves)
        EXPECT_GT(p_after_moves(graph, terms, {move, move, move}, 40000, 41), 1e-4) << static_cast<int>(move);
    EXPECT_GT(p_after_long_runs(graph, terms, all_forests(graph, terms).sets.front(), 200, 20000, 42), 1e-4);
}

// Marks at random places, each linked to all within a reach.
SmallGraph scattered(std::uint32_t marks, std::uint64_t seed) {
    SmallGraph graph{marks, {}, {}, {}};
    Random random(seed);
    std::vector<LocalPoint> places;
    const double side = std::sqrt(static_cast<double>(marks));
    for (std::uint32_t i = 0; i < marks; ++i) places.push_back({random.uniform(0.0, side), random.uniform(0.0, side)});
    for (std::uint32_t a = 0; a < marks; ++a)
        for (std::uint32_t b = a + 1; b < marks; ++b)
            if (const double length = distance_m(places[a], places[b]); length < 1.8) {
                graph.links.push_back({a, b, length, 1, 1});
                graph.log_weight.push_back(2.5 - 2.5 * length + random.uniform(-0.5, 0.5));
            }
    graph.log_root.assign(marks, -1.5);
    return graph;
}

TEST(NetworkChain, LinkSharesAgreeWithTheInverseMatrix) {
    const SmallGraph graph = scattered(40, 7);
    const ForestMarginals exact = forest_marginals(graph.marks, graph.links, graph.log_weight, std::exp(-1.5));
    constexpr int runs = 2000;
    std::vector<int> times(graph.links.size(), 0);
    double trees = 0.0;
    for (std::uint64_t run = 0; run < runs; ++run) {
        const Forest start =
            ForestSampler(std::vector<std::uint64_t>(graph.marks, 5), graph.links, graph.log_weight, graph.log_root).draw(0);
        std::vector<std::uint32_t> links;
        for (const std::uint32_t e : start.arrow)
            if (e != no_link) links.push_back(e);
        NetworkChain chain(graph.marks, graph.links, graph.log_weight, graph.log_root, {}, links, run);
        chain.run(40 * 60);  // local moves only: redraw_all would make this a test of Wilson's algorithm
        trees += static_cast<double>(graph.marks - chain.link_count());
        for (const std::uint32_t e : chain.links()) ++times[e];
    }
    for (std::size_t e = 0; e < graph.links.size(); ++e) {
        const double p = exact.link[e];
        EXPECT_NEAR(times[e] / static_cast<double>(runs), p, 4.5 * std::sqrt(p * (1.0 - p) / runs) + 3e-4) << e;
    }
    EXPECT_NEAR(trees / runs, exact.expected_trees, 0.25);
}

// Geweke 2004, Getting it right: joint distribution tests of posterior simulators, JASA 99. The log weights of four links
// have a normal prior; "the data" are a forest given the weights. Direct draws of both must look as the sampler that goes
// round and round.
TEST(NetworkChain, TheJointDrawsOfWeightsAndForestLookAlikeBothWays) {
    SmallGraph graph = grid_of_two_by_three();
    const std::size_t m = graph.links.size();
    const auto normalisers = [&](const std::vector<double>& w) {
        SmallGraph other = graph;
        other.log_weight = w;
        double sum = 0.0;
        for (LinkSet set = 0; set < LinkSet{1} << m; ++set) sum += forest_weight(other, {}, set);
        return sum;
    };
    const auto functions = [&](const std::vector<double>& w, std::size_t links, bool first_in) {
        return std::array<double, 5>{w[0], w[0] * w[0], static_cast<double>(links), first_in ? w[0] : 0.0, w[0] * w[3]};
    };
    Random random(2004);
    std::array<double, 5> direct{}, direct_square{}, round{}, round_square{};
    constexpr int draws = 20000, batches = 50, a_batch = 4000;
    std::vector<double> w(m);
    for (int draw = 0; draw < draws; ++draw) {
        for (double& x : w) x = random.normal(0.0, 1.0);
        const Forest forest =
            ForestSampler({1, 2, 3, 4, 5, 6}, graph.links, w, graph.log_root).draw(static_cast<std::uint64_t>(draw));
        const bool first_in = std::count(forest.arrow.begin(), forest.arrow.end(), 0U) > 0;
        const auto values = functions(w, graph.marks - forest.trees, first_in);
        for (std::size_t f = 0; f < 5; ++f) {
            direct[f] += values[f] / draws;
            direct_square[f] += values[f] * values[f] / draws;
        }
    }
    std::fill(w.begin(), w.end(), 0.0);
    NetworkChain chain(graph.marks, graph.links, w, graph.log_root, {}, {}, 77);
    for (int batch = 0; batch < batches; ++batch) {
        std::array<double, 5> mean{};
        double sum = normalisers(w);
        for (int step = 0; step < a_batch; ++step) {
            std::vector<double> proposed = w;
            const std::size_t e = random.below(m);
            proposed[e] += random.normal(0.0, 1.0);
            const double new_sum = normalisers(proposed);
            const double in = chain.has(static_cast<std::uint32_t>(e)) ? 1.0 : 0.0;
            const double ratio =
                in * (proposed[e] - w[e]) - std::log(new_sum / sum) - 0.5 * (proposed[e] * proposed[e] - w[e] * w[e]);
            if (std::log(1.0 - random.uniform()) < ratio) {
                w = proposed;
                sum = new_sum;
                chain.set_log_weights(w);
            }
            chain.run(3);
            const auto values = functions(w, chain.link_count(), chain.has(0));
            for (std::size_t f = 0; f < 5; ++f) mean[f] += values[f] / a_batch;
        }
        for (std::size_t f = 0; f < 5; ++f) {
            round[f] += mean[f] / batches;
            round_square[f] += mean[f] * mean[f] / batches;
        }
    }
    for (std::size_t f = 0; f < 5; ++f) {
        const double variance =
            (direct_square[f] - direct[f] * direct[f]) / draws + (round_square[f] - round[f] * round[f]) / (batches - 1);
        EXPECT_LT(std::abs(direct[f] - round[f]) / std::sqrt(variance), 4.0) << "function " << f;
    }
}

TEST(NetworkChain, TreesAreTheConnectedPartsOfTheLinks) {
    const SmallGraph graph = scattered(120, 9);
    NetworkTerms terms;
    terms.catches.assign(graph.marks, 0);
    terms.catches[3] = terms.catches[40] = 1;
    terms.log_per_extra_catch = -1.0;
    terms.pairs = {{5, 90, -2.0}, {17, 60, -must}};
    NetworkChain chain(graph.marks, graph.links, graph.log_weight, graph.log_root, terms, {}, 3);
    for (int round = 0; round < 200; ++round) {
        chain.run(100);
        chain.make(Move::redraw_all);
        DisjointSets joined(graph.marks);
        for (const std::uint32_t e : chain.links())
            EXPECT_TRUE(joined.join(graph.links[e].first, graph.links[e].second)) << "a cycle";
        EXPECT_NE(chain.tree()[17], chain.tree()[60]);
        for (const Link& link : graph.links)
            EXPECT_EQ(chain.tree()[link.first] == chain.tree()[link.second],
                      joined.representative(link.first) == joined.representative(link.second));
    }
}

TEST(NetworkChain, NoMarkAndNoLinkAreNoSpecialTrouble) {
    NetworkChain none(0, {}, {}, {}, {}, {}, 1);
    none.run(50);
    EXPECT_EQ(none.link_count(), 0U);
    NetworkChain lonely(3, {}, {}, {0.0, 0.0, 0.0}, {}, {}, 1);
    lonely.run(50);
    for (const Move move : all_moves) lonely.make(move);
    EXPECT_TRUE(lonely.links().empty());
    EXPECT_NE(lonely.tree()[0], lonely.tree()[2]);
}

}  // namespace
}  // namespace plugside
