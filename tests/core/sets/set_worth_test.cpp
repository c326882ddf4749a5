#include "core/sets/set_worth.h"

#include <gtest/gtest.h>

#include <cmath>
#include <map>
#include <random>
#include <set>

#include "core/plan/make_plan.h"
#include "tests/core/surveys.h"

namespace plugside {
namespace {

// A plan that knows nothing but its draws: a mound, a probe and a set for each mark.
Plan plan_of_draws(std::vector<std::vector<std::uint32_t>> trees, const std::vector<double>& hits) {
    Plan plan;
    auto drawn = std::make_shared<DrawnSystems>();
    drawn->tree = std::move(trees);
    for (std::size_t i = 0; i < hits.size(); ++i) {
        drawn->plug.push_back({static_cast<double>(i), 0.0});
        drawn->mound.push_back(i);
        plan.mounds.emplace_back();
        ProbeSite site;
        site.key = {ProbeKind::plug_side, "M" + std::to_string(i + 1), ""};
        site.from_mound = i;
        site.hit = Probability::of(hits[i]);
        site.expected_rungs = 3.0;
        plan.probes.push_back(site);
        SetPoint set;
        set.probe = i;
        set.rank = static_cast<int>(i) + 1;
        plan.sets.push_back(set);
    }
    plan.systems.resize(1);
    plan.drawn = drawn;
    return plan;
}

Plan random_plan(std::size_t marks, std::size_t draws, std::uint64_t seed) {
    std::mt19937_64 random(seed);
    std::vector<std::vector<std::uint32_t>> trees(draws);
    for (auto& tree : trees)
        for (std::size_t i = 0; i < marks; ++i) tree.push_back(static_cast<std::uint32_t>(random() % marks));
    std::vector<double> hits;
    for (std::size_t i = 0; i < marks; ++i) hits.push_back(0.2 + 0.8 * static_cast<double>(random() % 1000) / 1000.0);
    return plan_of_draws(std::move(trees), hits);
}

// The chance of each number of animals reached, by every outcome of every set in every draw.
std::map<std::size_t, double> counted_out(const Plan& plan, const std::vector<std::size_t>& sets) {
    std::map<std::size_t, double> chance_of;
    for (const auto& tree : plan.drawn->tree)
        for (std::size_t outcome = 0; outcome < (std::size_t{1} << sets.size()); ++outcome) {
            double chance = 1.0 / static_cast<double>(plan.drawn->tree.size());
            std::set<std::uint32_t> animals;
            for (std::size_t i = 0; i < sets.size(); ++i) {
                const bool met = (outcome >> i & 1U) != 0;
                const double hit = plan.probes[sets[i]].hit.value();
                chance *= met ? hit : 1.0 - hit;
                if (met) animals.insert(tree[sets[i]]);
            }
            chance_of[animals.size()] += chance;
        }
    return chance_of;
}

double mean_of(const std::map<std::size_t, double>& chance_of) {
    double mean = 0.0;
    for (const auto& [number, chance] : chance_of) mean += static_cast<double>(number) * chance;
    return mean;
}

std::vector<SetChoice> choices_keeping(const Plan& plan, const std::vector<std::size_t>& kept) {
    std::vector<SetChoice> choices(plan.sets.size(), SetChoice::proposed);
    for (const std::size_t s : kept) choices[s] = SetChoice::kept;
    return choices;
}

TEST(ReachOfSets, IsThatOfAllOutcomesCountedOutWithItsInterval) {
    for (std::uint64_t seed = 1; seed <= 20; ++seed) {
        const Plan plan = random_plan(7, 5, seed);
        const std::vector<std::size_t> sets{0, 2, 3, 4, 6};
        const ReachOfSets reach = reach_of_chosen(plan, choices_keeping(plan, sets));
        const auto exact = counted_out(plan, sets);
        EXPECT_NEAR(reach.reached(), mean_of(exact), 1e-12) << seed;
        const CountInterval interval = reach.interval();
        EXPECT_NEAR(interval.expected, mean_of(exact), 1e-12);
        double below_low = 0.0;
        double up_to_high = 0.0;
        for (const auto& [number, chance] : exact) {
            if (static_cast<double>(number) < interval.low) below_low += chance;
            if (static_cast<double>(number) <= interval.high) up_to_high += chance;
        }
        EXPECT_LT(below_low, 0.05) << seed;
        EXPECT_GE(up_to_high, 0.95 - 1e-9) << seed;
        // and no wider than that
        EXPECT_GE(below_low + exact.at(static_cast<std::size_t>(interval.low)), 0.05 - 1e-9);
        EXPECT_LT(up_to_high - exact.at(static_cast<std::size_t>(interval.high)), 0.95);
    }
}

TEST(ReachOfSets, OfNothingIsNothing) {
    const Plan plan = random_plan(4, 3, 1);
    const CountInterval none = ReachOfSets(plan).interval();
    EXPECT_EQ(none.expected, 0.0);
    EXPECT_EQ(none.low, 0.0);
    EXPECT_EQ(none.high, 0.0);
    EXPECT_EQ(ReachOfSets(Plan{}).interval().high, 0.0);
}

TEST(ReachOfSets, WithoutDrawsThePlansSystemsStandForThem) {
    Plan plan = random_plan(4, 3, 2);
    plan.drawn.reset();
    plan.systems.resize(2);
    plan.probes[2].system = plan.probes[3].system = 1;
    for (ProbeSite& site : plan.probes) site.hit = Probability::of(0.5);
    EXPECT_NEAR(reach_of_chosen(plan, choices_keeping(plan, {0, 1, 2})).reached(), 0.75 + 0.5, 1e-12);
}

TEST(ReachOfSets, OfAllSetsAgreesWithWhatThePlanExpectsOfThemWithinTheSpreadOfItsDraws) {
    const Plan plan = *make_plan(test::simulated_survey(5, 120));
    const ReachOfSets reach = reach_of_chosen(plan, std::vector<SetChoice>(plan.sets.size(), SetChoice::proposed), true);
    const CountInterval interval = reach.interval();
    EXPECT_GT(reach.reached(), 0.5 * plan.estimate.expected);
    EXPECT_LT(reach.reached(), plan.estimate.expected);
    EXPECT_LE(interval.low, reach.reached());
    EXPECT_GE(interval.high, reach.reached());
    // the plan's own figure rests on other draws, without the spread of scales that the number of animals has
    EXPECT_NEAR(reach.reached(), plan.expected_reached_by_sets.back(), 0.35 * reach.reached());
}

TEST(SetWorth, IsTheGreatestGainAMinuteByAllOutcomesCountedOut) {
    for (std::uint64_t seed = 1; seed <= 20; ++seed) {
        Plan plan = random_plan(8, 6, seed);
        for (std::size_t s = 0; s < plan.probes.size(); ++s)
            plan.probes[s].expected_rungs = 1.0 + static_cast<double>(s * 5 % 7);
        const std::vector<std::size_t> kept{1, 4};
        const auto choices = choices_keeping(plan, kept);
        const auto order = undecided_by_worth(plan, choices, reach_of_chosen(plan, choices));
        ASSERT_EQ(order.size(), 6U);
        const double before = mean_of(counted_out(plan, kept));
        for (std::size_t k = 0; k < order.size(); ++k) {
            std::vector<std::size_t> with = kept;
            with.push_back(order[k].set);
            const double gain = mean_of(counted_out(plan, with)) - before;
            EXPECT_NEAR(order[k].gain, gain, 1e-12) << seed;
            EXPECT_NEAR(order[k].minutes, 0.5 * plan.probes[order[k].set].expected_rungs + 6.0, 1e-12);
            if (k > 0) {
                EXPECT_GE(order[k - 1].animals_a_minute(), order[k].animals_a_minute() - 1e-9);
            }
        }
    }
}

TEST(SetWorth, AMinuteAHoleAndAMinuteToPlaceAreOptionsThatCanTurnTheOrder) {
    Plan plan = plan_of_draws({{0, 1}}, {0.99, 0.90});
    plan.probes[0].expected_rungs = 8.0;
    plan.probes[1].expected_rungs = 2.0;
    const auto choices = choices_keeping(plan, {});
    const ReachOfSets none(plan);
    EXPECT_EQ(undecided_by_worth(plan, choices, none, {0.5, 6.0}).front().set, 1U);
    EXPECT_EQ(undecided_by_worth(plan, choices, none, {0.0, 6.0}).front().set, 0U);
    EXPECT_EQ(undecided_by_worth(plan, choices, none, {0.0, 0.0}).front().set, 0U);
}

TEST(SetWorth, TheFirstSetOfEachAnimalComesBeforeTheSecondOfOneThatIsKept) {
    // marks 0 and 1 are one animal in every draw, 2 another; the third set is the worst of all
    const Plan plan = plan_of_draws({{0, 0, 2}, {1, 1, 0}}, {0.97, 0.96, 0.6});
    auto choices = choices_keeping(plan, {});
    EXPECT_EQ(undecided_by_worth(plan, choices, reach_of_chosen(plan, choices)).front().set, 0U);
    choices[0] = SetChoice::kept;
    EXPECT_EQ(undecided_by_worth(plan, choices, reach_of_chosen(plan, choices)).front().set, 2U);
}

TEST(SetWorth, EqualOnesStandByNumberAndADecisionMovesOnlySetsOfTheSameAnimal) {
    const Plan equal = plan_of_draws({{0, 1, 2, 3}}, {0.9, 0.9, 0.9, 0.9});
    auto choices = choices_keeping(equal, {});
    const auto sets_of = [](const std::vector<SetWorth>& order) {
        std::vector<std::size_t> sets;
        for (const SetWorth& worth : order) sets.push_back(worth.set);
        return sets;
    };
    EXPECT_EQ(sets_of(undecided_by_worth(equal, choices, reach_of_chosen(equal, choices))),
              (std::vector<std::size_t>{0, 1, 2, 3}));
    for (std::uint64_t seed = 1; seed <= 10; ++seed) {
        const Plan plan = *make_plan(test::simulated_survey(seed, 80));
        std::vector<SetChoice> before(plan.sets.size(), SetChoice::proposed);
        const auto first = sets_of(undecided_by_worth(plan, before, reach_of_chosen(plan, before)));
        ASSERT_GT(first.size(), 4U);
        // dropping moves none
        auto dropped = before;
        dropped[first[1]] = SetChoice::dropped;
        auto expected = first;
        expected.erase(expected.begin() + 1);
        EXPECT_EQ(sets_of(undecided_by_worth(plan, dropped, reach_of_chosen(plan, dropped))), expected);
        // keeping moves only what may be the same animal
        auto kept = before;
        kept[first[0]] = SetChoice::kept;
        const std::size_t mark = plan.probes[plan.sets[first[0]].probe].from_mound;
        const auto may_be_same = [&](std::size_t set) {
            const std::size_t other = plan.probes[plan.sets[set].probe].from_mound;
            std::size_t a = 0;
            std::size_t b = 0;
            for (std::size_t i = 0; i < plan.drawn->mound.size(); ++i) {
                if (plan.drawn->mound[i] == mark) a = i;
                if (plan.drawn->mound[i] == other) b = i;
            }
            for (const auto& tree : plan.drawn->tree)
                if (tree[a] == tree[b]) return true;
            return false;
        };
        auto apart_before = first;
        auto apart_after = sets_of(undecided_by_worth(plan, kept, reach_of_chosen(plan, kept)));
        std::erase_if(apart_before, may_be_same);
        std::erase_if(apart_after, may_be_same);
        EXPECT_EQ(apart_before, apart_after) << seed;
    }
}

}  // namespace
}  // namespace plugside
