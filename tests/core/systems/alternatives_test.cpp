#include "core/systems/alternatives.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <set>

#include "core/plan/alternative_words.h"
#include "core/plan/plan_with_posterior.h"
#include "core/systems/co_membership.h"
#include "tests/core/surveys.h"

namespace plugside {
namespace {

// Marks in a row, 2 m apart, neighbours linked; the draws as given; the consensus as given.
SystemPosterior posterior_of(std::vector<std::uint32_t> system, std::vector<std::vector<std::uint32_t>> draws) {
    SystemPosterior posterior;
    const auto n = static_cast<std::uint32_t>(system.size());
    CoMembership met(n);
    for (const auto& draw : draws) met.add(draw);
    posterior.together = met.table();
    for (std::uint32_t i = 0; i < n; ++i) {
        Mark mark;
        mark.mound = i;
        mark.plug = {2.0 * i, 0.0};
        mark.key = 1000 + i;
        posterior.marks.push_back(mark);
        if (i + 1 < n) posterior.links.push_back({i, i + 1, 2.0, 1, 1});
    }
    posterior.systems = n == 0 ? 0 : *std::max_element(system.begin(), system.end()) + 1;
    for (std::uint32_t i = 0; i < n; ++i) {
        double sum = 0.0;
        for (const CoMembership::Near& near : posterior.together[i])
            if (system[near.mark] == system[i]) sum += near.share;
        const auto others = std::count(system.begin(), system.end(), system[i]) - 1;
        posterior.belongs.push_back(others > 0 ? sum / static_cast<double>(others) : 1.0);
    }
    posterior.system = std::move(system);
    posterior.drawn_system = std::move(draws);
    return posterior;
}

TEST(Alternatives, TwoSystemsAreOneWhereATreeHoldsMoreThanHalfOfEach) {
    // systems 0: marks 0-3, 1: marks 4-6
    const Alternatives found =
        alternatives_of(posterior_of({0, 0, 0, 0, 1, 1, 1}, {
                                                                {0, 0, 0, 0, 0, 0, 0},  // one
                                                                {0, 1, 1, 1, 1, 1, 6},  // one: 3 of 4, 2 of 3
                                                                {0, 0, 2, 2, 2, 2, 2},  // half of the first only
                                                                {0, 0, 0, 0, 4, 4, 4},  // two
                                                            }));
    ASSERT_EQ(found.joined.size(), 1U);
    EXPECT_EQ(found.joined[0].first, 0U);
    EXPECT_EQ(found.joined[0].second, 1U);
    EXPECT_EQ(found.joined[0].one.value(), 0.5);
}

TEST(Alternatives, TheLikeliestSplitNamesTheMoundsApart) {
    // one system of six; two in 3 of 5 draws, mostly with 4 and 5 apart; a single mark apart is no second animal
    const Alternatives found = alternatives_of(posterior_of({0, 0, 0, 0, 0, 0}, {
                                                                                    {0, 0, 0, 0, 4, 4},
                                                                                    {0, 0, 0, 0, 4, 4},
                                                                                    {0, 0, 0, 3, 3, 3},
                                                                                    {0, 0, 0, 0, 0, 5},
                                                                                    {0, 0, 0, 0, 0, 0},
                                                                                }));
    ASSERT_EQ(found.split.size(), 1U);
    EXPECT_EQ(found.split[0].two.value(), 0.6);
    EXPECT_EQ(found.split[0].apart, (std::vector<std::size_t>{4, 5}));
    EXPECT_TRUE(found.joined.empty());
}

TEST(Alternatives, ADoubtfulMoundIsToldWithItsRunnerUp) {
    // mark 3 stands with 0-2 in the consensus but was drawn with 4-6 in three of five draws
    const std::vector<std::uint32_t> there{0, 0, 0, 4, 4, 4, 4};
    const Alternatives found = alternatives_of(
        posterior_of({0, 0, 0, 0, 1, 1, 1}, {there, there, there, {0, 0, 0, 0, 4, 4, 4}, {0, 0, 0, 0, 4, 4, 4}}));
    ASSERT_EQ(found.doubtful.size(), 1U);
    EXPECT_EQ(found.doubtful[0].mound, 3U);
    EXPECT_EQ(found.doubtful[0].system, 0U);
    EXPECT_NEAR(found.doubtful[0].belongs.value(), 0.4, 1e-12);
    EXPECT_EQ(found.doubtful[0].runner_up, std::optional<std::size_t>(1));
    EXPECT_NEAR(found.doubtful[0].of_runner_up.value(), 0.6, 1e-12);
}

TEST(Alternatives, OfCertainDrawsThereAreNone) {
    const std::vector<std::uint32_t> sure{0, 0, 0, 0, 4, 4, 4, 4};
    const Alternatives found = alternatives_of(posterior_of({0, 0, 0, 0, 1, 1, 1, 1}, {sure, sure, sure}));
    EXPECT_TRUE(found.joined.empty() && found.split.empty() && found.doubtful.empty());
}

TEST(Alternatives, OfNothingOneOrTwoMarksThereAreNone) {
    EXPECT_TRUE(alternatives_of(SystemPosterior{}).joined.empty());
    for (const std::size_t mounds : {0U, 1U, 2U}) {
        const Plan plan = *make_plan(test::straight_run(mounds));
        EXPECT_TRUE(plan.alternatives.split.empty());
        EXPECT_TRUE(plan.alternatives.joined.empty() || mounds == 2U);
    }
}

TEST(Alternatives, RareOnesAreLeftOutAndTheLikeliestStandFirst) {
    std::vector<std::vector<std::uint32_t>> draws(20, {0, 0, 2, 2, 4, 4});
    for (std::size_t d = 0; d < 9; ++d) draws[d] = {0, 0, 0, 0, 4, 4};
    for (std::size_t d = 9; d < 13; ++d) draws[d] = {0, 0, 2, 2, 2, 2};
    const Alternatives found = alternatives_of(posterior_of({0, 0, 1, 1, 2, 2}, draws));
    ASSERT_EQ(found.joined.size(), 2U);
    EXPECT_EQ(found.joined[0].one.value(), 0.45);
    EXPECT_EQ(found.joined[1].one.value(), 0.20);
    EXPECT_EQ(alternatives_of(posterior_of({0, 0, 1, 1, 2, 2}, draws), {0.3, 0.5}).joined.size(), 1U);
}

// Shares told of simulated fields, held against a plain count over all draws and pairs of marks.
TEST(Alternatives, AgreeWithAPlainCountOnSimulatedFields) {
    for (const FieldKind kind : {FieldKind::crowded_growth, FieldKind::food_tree}) {
        const auto made = make_plan_with_posterior(test::simulated_survey(44, 150, kind), {}, learnt_link_weights());
        const SystemPosterior& posterior = made->posterior;
        const auto size = [&](std::size_t s) { return std::count(posterior.system.begin(), posterior.system.end(), s); };
        EXPECT_FALSE(made->plan.alternatives.joined.empty());
        EXPECT_FALSE(made->plan.alternatives.doubtful.empty());
        for (const JoinedSystems& joined : made->plan.alternatives.joined) {
            int times = 0;
            for (const auto& tree : posterior.drawn_system)
                for (std::uint32_t t = 0; t < tree.size(); ++t) {
                    std::ptrdiff_t first = 0, second = 0;
                    for (std::size_t i = 0; i < tree.size(); ++i) {
                        if (tree[i] != t) continue;
                        first += posterior.system[i] == joined.first ? 1 : 0;
                        second += posterior.system[i] == joined.second ? 1 : 0;
                    }
                    if (2 * first > size(joined.first) && 2 * second > size(joined.second)) ++times;
                }
            ASSERT_NEAR(joined.one.value(), times / static_cast<double>(posterior.drawn_system.size()), 1e-12);
        }
        for (const SplitSystem& split : made->plan.alternatives.split) {
            const BurrowSystem& system = made->plan.systems.at(split.system);
            EXPECT_GE(split.two.value(), 0.1);
            EXPECT_GE(split.apart.size(), 2U);
            EXPECT_LE(2 * split.apart.size(), system.mounds.size());
            EXPECT_TRUE(std::includes(system.mounds.begin(), system.mounds.end(), split.apart.begin(), split.apart.end()));
        }
        for (const DoubtfulMound& doubtful : made->plan.alternatives.doubtful) {
            EXPECT_EQ(made->plan.mounds.at(doubtful.mound).system, doubtful.system);
            EXPECT_LT(doubtful.belongs.value(), 0.5);
            EXPECT_NE(doubtful.runner_up, std::optional<std::size_t>(doubtful.system));
        }
    }
}

std::multiset<double> shares(const Plan& plan) {
    std::multiset<double> all;
    for (const JoinedSystems& joined : plan.alternatives.joined) all.insert(joined.one.value());
    for (const SplitSystem& split : plan.alternatives.split) all.insert(10.0 + split.two.value());
    for (const DoubtfulMound& doubtful : plan.alternatives.doubtful) all.insert(20.0 + doubtful.of_runner_up.value());
    return all;
}

TEST(Alternatives, DoNotChangeWhenTheMarksAreRenumbered) {
    Survey survey = test::simulated_survey(45, 120);
    const Plan plan = *make_plan(survey);
    std::reverse(survey.mounds.begin(), survey.mounds.end());
    EXPECT_EQ(shares(plan), shares(*make_plan(survey)));
}

TEST(AlternativeWords, SayWhichMoundsAndSystems) {
    Survey survey = test::straight_run(9);
    Plan plan;
    for (const char* letter : {"A", "B"}) {
        plan.systems.emplace_back();
        plan.systems.back().letter = letter;
    }
    const JoinedSystems joined{0, 1, Probability::of(0.31)};
    const SplitSystem split{1, Probability::of(0.4), {1, 2, 3, 4, 5, 7}};
    plan.alternatives = {{joined}, {split}, {}};
    EXPECT_EQ(words_for(joined, plan), "A and B are one animal's in 31 of 100");
    EXPECT_EQ(words_for(split, survey, plan), "B is two animals' in 40 of 100: M2, M3, M4, M5 and 2 more apart");
    EXPECT_EQ(words_for(SplitSystem{0, Probability::of(0.2), {0, 8}}, survey, plan),
              "A is two animals' in 20 of 100: M1 and M9 apart");
    EXPECT_EQ(words_for(DoubtfulMound{6, 0, Probability::of(0.38), 1, Probability::of(0.3)}, survey, plan),
              "M7 hangs together with A in 38 of 100, with B in 30");
    EXPECT_EQ(words_for(DoubtfulMound{6, 0, Probability::of(0.38), {}, {}}, survey, plan),
              "M7 hangs together with A in 38 of 100, with no other system more than now and then");
    EXPECT_EQ(likeliest_alternatives(survey, plan, 5).size(), 2U);
    EXPECT_EQ(likeliest_alternatives(survey, plan, 1).front(), words_for(split, survey, plan));
    EXPECT_EQ(likeliest_alternatives(survey, plan, 5, 0).size(), 1U);
}

}  // namespace
}  // namespace plugside
