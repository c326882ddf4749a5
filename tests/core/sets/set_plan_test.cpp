#include "core/sets/set_plan.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <bit>
#include <cmath>
#include <map>
#include <numeric>
#include <random>
#include <set>

#include "core/plan/make_plan.h"
#include "core/sets/expected_reach.h"
#include "core/systems/disjoint_sets.h"
#include "tests/core/surveys.h"

namespace plugside {
namespace {

// Drawn networks of a few marks, with no regard to where they lie.
SystemPosterior drawn(std::size_t marks, std::size_t draws, std::uint64_t seed) {
    SystemPosterior posterior;
    posterior.marks.resize(marks);
    posterior.system.assign(marks, 0);
    std::mt19937_64 random(seed);
    for (std::size_t d = 0; d < draws; ++d) {
        std::vector<std::uint32_t> label;
        for (std::size_t i = 0; i < marks; ++i) label.push_back(static_cast<std::uint32_t>(random() % 4));
        posterior.drawn_system.push_back(label);
    }
    return posterior;
}

struct Candidate {
    std::size_t mark;
    double chance;
};

// Every outcome of every set in every draw, counted out.
double reached_by_enumeration(const SystemPosterior& posterior, const std::vector<Candidate>& sets) {
    double expected = 0.0;
    for (const auto& label : posterior.drawn_system)
        for (std::size_t outcome = 0; outcome < (std::size_t{1} << sets.size()); ++outcome) {
            double chance = 1.0;
            std::set<std::uint32_t> animals;
            for (std::size_t i = 0; i < sets.size(); ++i) {
                const bool met = (outcome >> i & 1U) != 0;
                chance *= met ? sets[i].chance : 1.0 - sets[i].chance;
                if (met) animals.insert(label[sets[i].mark]);
            }
            expected += chance * static_cast<double>(animals.size());
        }
    return expected / static_cast<double>(posterior.drawn_system.size());
}

TEST(ExpectedReach, IsThatOfAllOutcomesCountedOut) {
    const SystemPosterior posterior = drawn(6, 7, 3);
    const std::vector<Candidate> sets = {{0, 0.9}, {2, 0.7}, {2, 0.8}, {5, 0.4}, {1, 1.0}};
    ExpectedReach reach(posterior);
    for (std::size_t n = 0; n < sets.size(); ++n) {
        const double gain = reach.gain(sets[n].mark, sets[n].chance);
        const double before = reach.reached();
        reach.take(sets[n].mark, sets[n].chance);
        const double wanted =
            reached_by_enumeration(posterior, {sets.begin(), sets.begin() + static_cast<std::ptrdiff_t>(n) + 1});
        EXPECT_NEAR(reach.reached(), wanted, 1e-5);
        EXPECT_NEAR(gain, wanted - before, 1e-5);
    }
}

TEST(ExpectedReach, GainsNeverGrow) {
    const SystemPosterior posterior = drawn(12, 20, 9);
    ExpectedReach reach(posterior);
    for (std::size_t taken = 0; taken < 6; ++taken) {
        std::vector<double> before;
        for (std::size_t i = 0; i < 12; ++i) before.push_back(reach.gain(i, 0.8));
        reach.take(taken, 0.7);
        for (std::size_t i = 0; i < 12; ++i) EXPECT_LE(reach.gain(i, 0.8), before[i] + 1e-7);
    }
}

TEST(ExpectedReach, TwoSetsInOneAnimalsSystemCountOnce) {
    SystemPosterior posterior;
    posterior.marks.resize(3);
    posterior.system = {0, 0, 1};  // without draws the consensus is what there is
    ExpectedReach reach(posterior);
    reach.take(0, 1.0);
    EXPECT_NEAR(reach.gain(1, 1.0), 0.0, 1e-9);
    EXPECT_NEAR(reach.gain(2, 1.0), 1.0, 1e-9);
}

// Plugs far apart, each with a probe; what hangs together is only in the draws.
struct SmallField {
    Survey survey;
    Plan plan;
    SystemPosterior posterior;
};

SmallField small_field(std::size_t mounds, std::uint64_t seed) {
    SmallField field;
    field.posterior = drawn(mounds, 9, seed);
    field.plan.systems.resize(1);
    std::mt19937_64 random(seed + 100);
    for (std::size_t i = 0; i < mounds; ++i) {
        field.survey.mounds.push_back(test::mound_at(50.0 * static_cast<double>(i), 0.0, 0.0));
        field.survey.mounds.back().name = "M" + std::to_string(i + 1);
        field.survey.mounds.back().freshness = Freshness::fresh;
        field.posterior.marks[i].mound = i;
        ProbeSite site;
        site.key = {ProbeKind::plug_side, field.survey.mounds.back().name, ""};
        site.from_mound = i;
        site.hit = site.hit_as_proposed = Probability::of(0.5 + 0.5 * static_cast<double>(random() % 100) / 100.0);
        site.middle = site.middle_as_proposed = field.survey.mounds.back().plug;
        field.plan.probes.push_back(site);
    }
    return field;
}

TEST(SetPlan, ABudgetReachesNearlyWhatTheBestChoiceOfAsManySetsDoes) {
    for (std::uint64_t seed = 1; seed <= 12; ++seed) {
        const SmallField field = small_field(8, seed);
        for (const int budget : {1, 2, 3, 4}) {
            PlanOptions options;
            options.most_sets = budget;
            const SetChoiceResult chosen = choose_sets(field.survey, field.plan, field.posterior, options);
            ASSERT_EQ(chosen.sets.size(), static_cast<std::size_t>(budget));
            double best = 0.0;
            for (unsigned choice = 0; choice < 256; ++choice) {
                if (std::popcount(choice) != budget) continue;
                std::vector<Candidate> sets;
                for (std::size_t i = 0; i < 8; ++i)
                    if ((choice >> i & 1U) != 0) sets.push_back({i, field.plan.probes[i].hit.value()});
                best = std::max(best, reached_by_enumeration(field.posterior, sets));
            }
            EXPECT_LE(chosen.expected_reached.back(), best + 1e-5);
            EXPECT_GE(chosen.expected_reached.back(), (1.0 - std::exp(-1.0)) * best);
            if (budget == 1) {
                EXPECT_NEAR(chosen.expected_reached.back(), best, 1e-5);
            }
        }
    }
}

TEST(SetPlan, TakesTheGreatestGainFirstAsIfAllWereAskedEveryTime) {
    const SmallField field = small_field(10, 5);
    PlanOptions options;
    options.most_sets = 6;
    const SetChoiceResult chosen = choose_sets(field.survey, field.plan, field.posterior, options);
    ExpectedReach reach(field.posterior);
    std::set<std::size_t> taken;
    for (const SetPoint& set : chosen.sets) {
        const double gain = reach.gain(set.probe, field.plan.probes[set.probe].hit.value());
        for (std::size_t p = 0; p < 10; ++p)
            EXPECT_TRUE(taken.contains(p) || reach.gain(p, field.plan.probes[p].hit.value()) <= gain + 1e-8) << p;
        reach.take(set.probe, field.plan.probes[set.probe].hit.value());
        taken.insert(set.probe);
    }
}

TEST(SetPlan, ASystemThatMayBeTwoGetsMoreSetsThanOneThatIsSurelyOne) {
    SmallField field = small_field(6, 1);
    for (auto& site : field.plan.probes) site.hit = site.hit_as_proposed = Probability::of(0.97);
    field.posterior.drawn_system.assign(10, {0, 0, 0, 0, 0, 0});
    PlanOptions options;
    EXPECT_EQ(choose_sets(field.survey, field.plan, field.posterior, options).sets.size(), 2U);
    for (std::size_t d = 0; d < 5; ++d)
        field.posterior.drawn_system[d] = {0, 0, 1, 1, 2, 2};  // in half of the draws it is three
    const SetChoiceResult doubtful = choose_sets(field.survey, field.plan, field.posterior, options);
    EXPECT_EQ(doubtful.sets.size(), 3U);
    EXPECT_NEAR(doubtful.expected_reached.back(), 2.0 * 0.97, 0.05);
}

TEST(SetPlan, TheCurveGoesWithTheSetsAndNeverFalls) {
    const Survey survey = test::simulated_survey(8, 150);
    const Plan plan = *make_plan(survey);
    ASSERT_EQ(plan.expected_reached_by_sets.size(), plan.sets.size());
    EXPECT_TRUE(std::is_sorted(plan.expected_reached_by_sets.begin(), plan.expected_reached_by_sets.end()));
    EXPECT_GT(plan.expected_reached_by_sets.back(), 0.7 * plan.estimate.expected);
    PlanOptions options;
    options.most_sets = 5;
    const Plan budget = *make_plan(survey, options);
    ASSERT_EQ(budget.sets.size(), 5U);
    EXPECT_NEAR(budget.expected_reached_by_sets.back(), plan.expected_reached_by_sets[4], 0.05);
    options.most_sets = 0;
    EXPECT_TRUE(make_plan(survey, options)->sets.empty());
}

TEST(SetPlan, ADroppedSetAddsNothingToTheCurve) {
    Survey survey = test::simulated_survey(8, 100);
    const Plan before = *make_plan(survey);
    decide(survey, {before.probes[before.sets[0].probe].key, SetChoice::dropped, {}});
    const Plan after = *make_plan(survey);
    ASSERT_EQ(after.sets[0].choice, SetChoice::dropped);
    EXPECT_EQ(after.expected_reached_by_sets[0], 0.0);
    EXPECT_GT(after.expected_reached_by_sets[1], 0.0);
}

TEST(SystemPosterior, KeepsDrawsWhoseLinksAndLabelsSayTheSame) {
    const Survey survey = test::simulated_survey(6, 120);
    const SystemPosterior posterior = *infer_systems(survey, {}, learnt_link_weights());
    ASSERT_FALSE(posterior.drawn_links.empty());
    EXPECT_LE(posterior.drawn_links.size(), 200U);
    ASSERT_EQ(posterior.drawn_links.size(), posterior.drawn_system.size());
    for (std::size_t d = 0; d < posterior.drawn_links.size(); ++d) {
        EXPECT_TRUE(std::is_sorted(posterior.drawn_links[d].begin(), posterior.drawn_links[d].end()));
        DisjointSets joined(posterior.marks.size());
        for (const std::uint32_t e : posterior.drawn_links[d])
            EXPECT_TRUE(joined.join(posterior.links[e].first, posterior.links[e].second)) << "a forest has no cycle";
        const std::vector<std::uint32_t> label = joined.labels();
        for (const Link& link : posterior.links)
            EXPECT_EQ(label[link.first] == label[link.second],
                      posterior.drawn_system[d][link.first] == posterior.drawn_system[d][link.second]);
    }
}

}  // namespace
}  // namespace plugside
