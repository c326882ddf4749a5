#include "core/systems/network_draws.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <map>
#include <numeric>

#include "core/simulation/rank_histogram.h"
#include "core/systems/forest_sampler.h"
#include "tests/core/systems/all_forests.h"
#include "tests/core/systems/scattered_field.h"

namespace plugside {
namespace {

DrawnNetworks drawn(const ScatteredField& field, const KnownLinks& known, std::uint32_t draws,
                    const NetworkDrawOptions& options = {}) {
    auto result = draw_networks(field.keys, field.links, field.log_weight, field.log_root, known, draws, options);
    EXPECT_TRUE(result);
    return *result;
}

MarkFact about(FactKind kind, std::uint32_t a, std::uint32_t b, std::size_t number) {
    return {kind, a, b, {}, {}, number, "fact " + std::to_string(number)};
}

// Random facts of all kinds that hold at least in one random partition, so that most sets do not contradict themselves.
std::vector<MarkFact> random_facts(const ScatteredField& field, Random& random) {
    const std::size_t n = field.places.size();
    const auto shift = static_cast<std::uint64_t>(random.bits());
    const Forest truth = ForestSampler(field.keys, field.links, field.log_weight, field.log_root).draw(shift);
    std::vector<MarkFact> facts;
    const std::size_t count = 1 + random.below(7);
    while (facts.size() < count) {
        const auto a = static_cast<std::uint32_t>(random.below(n));
        const auto b = static_cast<std::uint32_t>(random.below(n));
        if (a == b) continue;
        const bool together = truth.tree[a] == truth.tree[b];
        const std::size_t k = facts.size();
        MarkFact fact = about(together ? FactKind::same_system : FactKind::different_systems, a, b, k);
        const std::size_t kind = random.below(8);
        if (kind == 0 && truth.arrow[a] != no_link) {
            const Link& link = field.links[truth.arrow[a]];
            fact = about(FactKind::run_here, link.first, link.second, k);
        } else if (kind == 1) {
            fact.kind = FactKind::no_run_across;
            fact.line = Polyline{{field.places[a], midpoint(field.places[a], field.places[b]) + LocalVector{0.3, 0.2}}};
        } else if (kind == 2) {
            fact.kind = FactKind::caught_here;
        } else if (kind == 3) {
            fact.kind = random.chance(0.5) ? FactKind::probe_found : FactKind::probe_nothing;
        } else if (kind == 4) {
            fact.kind = random.chance(0.5) ? FactKind::same_system : FactKind::different_systems;
            fact.log_strength = 1.5;
        } else if (kind == 5) {
            fact.kind = random.chance(0.5) ? FactKind::same_system : FactKind::different_systems;  // may contradict
        }
        facts.push_back(fact);
    }
    return facts;
}

bool was_set_aside(const KnownLinks& known, std::size_t fact) {
    return std::any_of(known.conflicts.begin(), known.conflicts.end(),
                       [&](const FactConflict& conflict) { return conflict.set_aside == fact; });
}

// What the draw does against the facts that were taken, told from the facts and the ground alone.
int breaches(const ScatteredField& field, const std::vector<MarkFact>& facts, const KnownLinks& known,
             const DrawnNetworks& networks, const DrawnNetwork& draw) {
    int count = 0;
    for (const MarkFact& fact : facts) {
        if (fact.log_strength || was_set_aside(known, fact.fact)) continue;
        const bool together = fact.kind != FactKind::no_run_across && draw.tree[fact.first] == draw.tree[fact.second];
        if (fact.kind == FactKind::same_system && !together) ++count;
        if (fact.kind == FactKind::different_systems && together) ++count;
        bool there = false;
        for (const std::uint32_t e : draw.links) {
            const Link& link = networks.links[e];
            if (link.first == std::min(fact.first, fact.second) && link.second == std::max(fact.first, fact.second))
                there = true;
            if (fact.kind == FactKind::no_run_across && segments_meet(field.places[link.first], field.places[link.second],
                                                                      fact.line->vertices[0], fact.line->vertices[1]))
                ++count;
        }
        if (fact.kind == FactKind::run_here && !there) ++count;
    }
    return count;
}

TEST(NetworkDraws, WhatIsKnownHoldsInEveryDrawOfAThousandRandomSets) {
    Random random(1000);
    std::size_t facts_in_all = 0, set_aside = 0, draws_with_chain = 0;
    NetworkDrawOptions options;
    options.warm_up_draws = 5;
    options.threads = 1;
    for (std::uint64_t round = 0; round < 1000; ++round) {
        const ScatteredField field = scattered_field(4 + static_cast<std::uint32_t>(random.below(36)), round);
        const std::vector<MarkFact> facts = random_facts(field, random);
        const KnownLinks known = known_links(field.places, field.links, facts);
        const DrawnNetworks networks = drawn(field, known, 12, options);
        facts_in_all += facts.size();
        set_aside += known.conflicts.size();
        draws_with_chain += networks.convergence.chained_marks > 0 ? 1 : 0;
        for (const DrawnNetwork& draw : networks.draws) {
            ASSERT_EQ(breaches(field, facts, known, networks, draw), 0) << "set " << round;
            DisjointSets joined(field.keys.size());
            for (const std::uint32_t e : draw.links)
                ASSERT_TRUE(joined.join(networks.links[e].first, networks.links[e].second)) << "a cycle in set " << round;
            ASSERT_EQ(draw.trees, field.keys.size() - draw.links.size());
            ASSERT_TRUE(std::is_sorted(draw.links.begin(), draw.links.end()));
        }
    }
    EXPECT_GT(draws_with_chain, 700U);
    EXPECT_LT(static_cast<double>(set_aside), 0.12 * static_cast<double>(facts_in_all)) << "most facts can be obeyed";
}

// Independent enough draws of small fields against enumeration of the forests that obey.
double p_against_enumeration(const ScatteredField& field, const KnownLinks& known, double moves_per_mark) {
    NetworkDrawOptions options;
    options.moves_per_mark = moves_per_mark;
    options.prune_log_chance = -50.0;
    const std::uint32_t draws = 8000;
    const DrawnNetworks networks = drawn(field, known, draws, options);
    SmallGraph graph{static_cast<std::uint32_t>(field.keys.size()), networks.links, field.log_weight, field.log_root};
    graph.log_weight.resize(networks.links.size(), options.log_weight_of_added);
    for (std::size_t e = 0; e < known.log_weight_change.size(); ++e) graph.log_weight[e] += known.log_weight_change[e];
    for (const std::uint32_t e : known.removed) graph.log_weight[e] = -1e9;
    NetworkTerms terms{known.pairs, known.catches, known.log_per_extra_catch,
                       std::vector<bool>(networks.links.size(), false)};
    for (const std::uint32_t e : known.forced) terms.forced[e] = true;
    const AllForests all = all_forests(graph, terms);
    std::map<LinkSet, double> times;
    for (const DrawnNetwork& draw : networks.draws) times[set_of(draw.links)] += 1.0;
    double statistic = 0.0, rare = 0.0, rare_seen = 0.0, seen_in_all = 0.0;
    std::size_t cells = 0;
    for (std::size_t k = 0; k < all.sets.size(); ++k) {
        const double expected = all.share[k] * draws;
        const double seen = times[all.sets[k]];
        seen_in_all += seen;
        if (expected < 5.0) {
            rare += expected;
            rare_seen += seen;
            continue;
        }
        statistic += (seen - expected) * (seen - expected) / expected;
        ++cells;
    }
    EXPECT_EQ(seen_in_all, draws) << "a draw that does not obey";
    EXPECT_GT(cells, 5U);
    if (rare > 5.0) statistic += (rare_seen - rare) * (rare_seen - rare) / rare;
    return chi_square_tail(statistic, cells - (rare > 5.0 ? 0 : 1));
}

ScatteredField small_field() {
    ScatteredField field;
    Random random(12);
    for (std::uint32_t i = 0; i < 6; ++i) {
        field.places.push_back({static_cast<double>(i % 3), static_cast<double>(i / 3)});
        field.keys.push_back(mixed(99, i));
        field.log_root.push_back(random.uniform(-1.0, 0.5));
    }
    for (const auto& [a, b] :
         {std::pair(0U, 1U), {0U, 3U}, {0U, 4U}, {1U, 2U}, {1U, 4U}, {2U, 4U}, {2U, 5U}, {3U, 4U}, {4U, 5U}}) {
        field.links.push_back({a, b, distance_m(field.places[a], field.places[b]), 1, 1});
        field.log_weight.push_back(random.uniform(-1.0, 1.5));
    }
    return field;
}

TEST(NetworkDraws, ForcedLinksAreDrawnExactly) {
    const ScatteredField field = small_field();
    const KnownLinks known =
        known_links(field.places, field.links, {about(FactKind::run_here, 0, 4, 0), about(FactKind::run_here, 2, 5, 1)});
    EXPECT_GT(p_against_enumeration(field, known, 1.0), 1e-4);
}

TEST(NetworkDraws, AgreeWithTheForestsThatObey) {
    const ScatteredField field = small_field();
    std::vector<MarkFact> facts{about(FactKind::same_system, 0, 5, 0), about(FactKind::different_systems, 1, 3, 1)};
    EXPECT_GT(p_against_enumeration(field, known_links(field.places, field.links, facts), 60.0), 1e-4);
    facts.push_back(about(FactKind::caught_here, 2, no_mark, 2));
    facts.push_back(about(FactKind::caught_here, 3, no_mark, 3));
    facts.push_back(about(FactKind::run_here, 3, 4, 4));
    facts.push_back(about(FactKind::different_systems, 2, 4, 5));
    facts.back().log_strength = 1.0;
    EXPECT_GT(p_against_enumeration(field, known_links(field.places, field.links, facts), 60.0), 1e-4);
}

TEST(NetworkDraws, AreTheSameForAnyNumberOfThreadsAndAnyNumbering) {
    const ScatteredField field = scattered_field(60, 5);
    const std::vector<MarkFact> facts{about(FactKind::same_system, 3, 40, 0), about(FactKind::different_systems, 7, 22, 1),
                                      about(FactKind::run_here, field.links[9].first, field.links[9].second, 2)};
    NetworkDrawOptions one;
    one.threads = 1;
    const KnownLinks known = known_links(field.places, field.links, facts);
    const DrawnNetworks first = drawn(field, known, 100, one);
    NetworkDrawOptions four;
    four.threads = 4;
    const DrawnNetworks second = drawn(field, known, 100, four);
    ScatteredField other = field;  // numbered backwards
    const auto n = static_cast<std::uint32_t>(field.keys.size());
    std::reverse(other.places.begin(), other.places.end());
    std::reverse(other.keys.begin(), other.keys.end());
    for (Link& link : other.links) link = {n - 1 - link.second, n - 1 - link.first, link.length_m, 1, 1};
    std::vector<MarkFact> other_facts = facts;
    for (MarkFact& fact : other_facts) {
        fact.first = n - 1 - fact.first;
        fact.second = n - 1 - fact.second;
    }
    const DrawnNetworks third = drawn(other, known_links(other.places, other.links, other_facts), 100, one);
    for (std::size_t k = 0; k < 100; ++k) {
        EXPECT_EQ(first.draws[k].links, second.draws[k].links);
        EXPECT_EQ(first.draws[k].tree, second.draws[k].tree);
        EXPECT_EQ(first.draws[k].links, third.draws[k].links) << "links keep their places in the list";
    }
}

TEST(NetworkDraws, WhatIsKnownAtOneEndLeavesTheOtherEndAsItWas) {
    ScatteredField field = scattered_field(30, 5);
    const ScatteredField far = scattered_field(30, 6, 1000.0);
    for (const Link& link : far.links) field.links.push_back({link.first + 30, link.second + 30, link.length_m, 1, 1});
    field.places.insert(field.places.end(), far.places.begin(), far.places.end());
    field.keys.insert(field.keys.end(), far.keys.begin(), far.keys.end());
    field.log_weight.insert(field.log_weight.end(), far.log_weight.begin(), far.log_weight.end());
    field.log_root.insert(field.log_root.end(), far.log_root.begin(), far.log_root.end());
    const MarkFact here = about(FactKind::different_systems, field.links[0].first, field.links[0].second, 0);
    const Link& there_link = field.links.back();
    const MarkFact there = about(FactKind::different_systems, there_link.first, there_link.second, 1);
    const auto of = [&](const std::vector<MarkFact>& facts) {
        return drawn(field, known_links(field.places, field.links, facts), 60);
    };
    const DrawnNetworks none = of({}), west = of({here}), both = of({here, there});
    bool west_differs = false;
    for (std::size_t k = 0; k < 60; ++k)
        for (std::uint32_t i = 0; i < 60; ++i) {
            const DrawnNetworks& before = i < 30 ? both : none;
            EXPECT_EQ(before.draws[k].tree[i], west.draws[k].tree[i]) << i;
            west_differs = west_differs || none.draws[k].tree[i] != west.draws[k].tree[i];
        }
    EXPECT_TRUE(west_differs);
}

TEST(NetworkDraws, TellWhetherTheChainsHaveConverged) {
    const ScatteredField field = scattered_field(120, 5);
    EXPECT_TRUE(drawn(field, {}, 50).convergence.converged) << "exact draws";
    const KnownLinks known = known_links(
        field.places, field.links, {about(FactKind::same_system, 3, 40, 0), about(FactKind::different_systems, 7, 22, 1)});
    EXPECT_FALSE(drawn(field, known, 60).convergence.converged) << "15 draws a chain say nothing";
    NetworkDrawOptions options;
    options.moves_per_mark = 12.0;
    const NetworkConvergence enough = drawn(field, known, 4000, options).convergence;
    EXPECT_TRUE(enough.converged) << enough.systems_r_hat << " " << enough.systems_size << " " << enough.links_r_hat << " "
                                  << enough.links_size;
    EXPECT_GT(enough.chained_marks, 100U);
}

TEST(NetworkDraws, StopWhenTold) {
    const ScatteredField field = scattered_field(40, 5);
    std::stop_source stop;
    stop.request_stop();
    EXPECT_FALSE(
        draw_networks(field.keys, field.links, field.log_weight, field.log_root, {}, 10, {}, {stop.get_token(), {}}));
}

TEST(NetworkDraws, NoMarkAndNoDrawAreNoSpecialTrouble) {
    EXPECT_EQ(drawn({}, {}, 3).draws[2].trees, 0U);
    EXPECT_TRUE(drawn(scattered_field(5, 1), {}, 0).draws.empty());
    EXPECT_TRUE(drawn(scattered_field(5, 1),
                      known_links(scattered_field(5, 1).places, scattered_field(5, 1).links,
                                  {about(FactKind::same_system, 0, 4, 0)}),
                      2)
                    .draws.size() == 2);
}

}  // namespace
}  // namespace plugside
