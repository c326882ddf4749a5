#include "core/sets/budget.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

#include "core/plan/make_plan.h"
#include "core/sets/reach_of_sets.h"
#include "tests/core/surveys.h"

namespace plugside {
namespace {

const Plan& example_plan() {
    static const Plan plan = *make_plan(test::simulated_survey(5, 90));
    return plan;
}

std::vector<SetChoice> undecided(const Plan& plan) { return std::vector<SetChoice>(plan.sets.size(), SetChoice::proposed); }

double reached_by(const Plan& plan, const std::vector<std::size_t>& sets) {
    ReachOfSets reach(plan);
    for (const std::size_t s : sets) reach.take(s, plan.probes[plan.sets[s].probe].hit.value());
    return reach.reached();
}

TEST(Budget, what_is_said_to_be_reached_is_what_those_sets_reach_and_costs_what_they_cost) {
    const Plan& plan = example_plan();
    for (const BudgetUnit unit : {BudgetUnit::sets, BudgetUnit::traps, BudgetUnit::minutes}) {
        const double budget = unit == BudgetUnit::minutes ? 50.0 : 6.0;
        const BudgetSpent spent = spend_budget(plan, undecided(plan), unit, budget);
        double cost = 0.0;
        for (const std::size_t s : spent.sets) cost += cost_of(plan.probes[plan.sets[s].probe], unit);
        EXPECT_NEAR(spent.cost, cost, 1e-9);
        EXPECT_LE(spent.cost, budget + 1e-9);
        EXPECT_NEAR(spent.reached, reached_by(plan, spent.sets), 1e-9);
        EXPECT_GE(spent.most_possible, spent.reached);
        EXPECT_LE(spent.most_possible, 1.01 * spent.reached);
        EXPECT_GT(spent.reached, 2.0);
    }
}

TEST(Budget, kept_sets_are_taken_first_and_dropped_ones_never) {
    const Plan& plan = example_plan();
    std::vector<SetChoice> choices = undecided(plan);
    const std::vector<std::size_t> free_choice = spend_budget(plan, choices, BudgetUnit::sets, 4.0).sets;
    const std::size_t last = plan.sets.size() - 1;
    choices[free_choice.front()] = SetChoice::dropped;
    choices[last] = SetChoice::kept;
    const std::vector<std::size_t> sets = spend_budget(plan, choices, BudgetUnit::sets, 4.0).sets;
    EXPECT_EQ(sets.size(), 4U);
    EXPECT_EQ(sets.front(), last);
    EXPECT_EQ(std::count(sets.begin(), sets.end(), free_choice.front()), 0);
}

TEST(Budget, the_curve_rises_ever_less_steeply_to_what_all_sets_reach_and_no_budget_reaches_less) {
    const Plan& plan = example_plan();
    const std::vector<BudgetStep> curve = budget_curve(plan, undecided(plan), BudgetUnit::sets);
    ASSERT_EQ(curve.size(), plan.sets.size());
    std::vector<std::size_t> all;
    double before = 0.0;
    double rise = 1.0;
    for (std::size_t i = 0; i < curve.size(); ++i) {
        all.push_back(curve[i].set);
        EXPECT_DOUBLE_EQ(curve[i].cost, static_cast<double>(i + 1));
        EXPECT_LE(curve[i].reached - before, rise + 1e-9);
        rise = curve[i].reached - before;
        before = curve[i].reached;
    }
    EXPECT_NEAR(before, reached_by(plan, all), 1e-9);
    for (const std::size_t sets : {1U, 3U, 8U}) {
        const BudgetSpent spent = spend_budget(plan, undecided(plan), BudgetUnit::sets, static_cast<double>(sets));
        EXPECT_GE(spent.reached, curve[sets - 1].reached - 1e-9);
    }
}

TEST(Budget, a_set_in_a_lateral_takes_one_trap_and_one_in_a_run_two) {
    ProbeSite site;
    site.key.kind = ProbeKind::plug_side;
    EXPECT_EQ(traps_at(site), 1);
    site.key.kind = ProbeKind::between_mounds;
    EXPECT_EQ(traps_at(site), 2);
    site.expected_rungs = 4.0;
    EXPECT_DOUBLE_EQ(cost_of(site, BudgetUnit::minutes, {.minutes_a_hole = 0.5, .minutes_to_place = 6.0}), 8.0);
}

TEST(Budget, without_sets_nothing_is_spent) {
    const BudgetSpent spent = spend_budget(Plan{}, {}, BudgetUnit::traps, 10.0);
    EXPECT_TRUE(spent.sets.empty());
    EXPECT_TRUE(spent.proven_best);
    EXPECT_TRUE(budget_curve(Plan{}, {}, BudgetUnit::traps).empty());
}

}  // namespace
}  // namespace plugside
