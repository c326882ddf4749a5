#include "core/simulation/plan_claims.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <map>

#include "core/plan/plan_with_posterior.h"
#include "core/simulation/burrow_simulator.h"
#include "core/simulation/plan_score.h"

namespace plugside {
namespace {

const std::vector<Claim>& of(const PlanClaims& claims, ClaimKind kind) { return claims[static_cast<std::size_t>(kind)]; }

bool holds(const std::vector<Claim>& claims, double chance, bool came_true) {
    return std::any_of(claims.begin(), claims.end(),
                       [&](const Claim& claim) { return claim.chance == chance && claim.came_true == came_true; });
}

// Marks 0, 1, 2 on a run of system 0, mark 3 on one of system 1, mark 4 another digger's. The plan puts 0, 1 together and 2,
// 3, 4.
struct Example {
    SimulatedField field;
    Plan plan;
    SystemPosterior posterior;

    Example() {
        field.truth.systems = 2;
        field.truth.tunnel_diameter = Metres::of(0.06);
        field.truth.runs = {{0, {{{0.0, 0.0}, {10.0, 0.0}}}, {}}, {1, {{{20.0, 0.0}, {30.0, 0.0}}}, {}}};
        field.survey.mounds.resize(5);
        const double east[] = {1.0, 4.0, 8.0, 25.0};
        for (std::size_t i = 0; i < 4; ++i) {
            TrueMound mound;
            mound.system = i < 3 ? 0 : 1;
            mound.run_junction = mound.plug = {east[i], 0.0};
            mound.seen_as = i;
            field.truth.mounds.push_back(mound);
        }
        posterior.marks.resize(5);
        for (std::size_t i = 0; i < 5; ++i) posterior.marks[i].mound = 4 - i;  // mark 4 - i of the survey
        const auto link = [](std::uint32_t a, std::uint32_t b) { return Link{a, b, 1.0, 1, 1}; };
        posterior.links = {link(3, 4), link(2, 4), link(1, 2), link(0, 1)};  // marks 1-0, 2-0, 3-2, 4-3
        posterior.link_probability = {0.9, 0.2, 0.4, 0.6};
        posterior.together = {{{1, 0.7}}, {{0, 0.7}, {2, 0.5}}, {{1, 0.5}}, {{4, 0.95}}, {{3, 0.95}}};
        plan.mounds.resize(5);
        plan.systems.resize(3);
        plan.systems[0].mounds = {0, 1};
        plan.systems[0].single = Probability::of(0.8);
        plan.systems[1].mounds = {2, 3};
        plan.systems[1].single = Probability::of(0.3);
        plan.systems[2].mounds = {4};
        plan.systems[2].single = Probability::of(1.0);
        for (MoundInPlan& mound : plan.mounds) mound.belongs = Probability::of(0.75);
        MainRun run;
        run.from_mound = 0;
        run.to_mound = 2;  // mark 1 lies between
        run.probability = Probability::of(0.35);
        plan.runs = {run};
    }
};

TEST(ClaimsOf, JudgesLinksAndRunsByTheTrueRuns) {
    const Example e;
    const PlanClaims claims = claims_of(e.plan, e.posterior, e.field);
    const auto& links = of(claims, ClaimKind::links);
    ASSERT_EQ(links.size(), 4u);
    EXPECT_TRUE(holds(links, 0.9, true));
    EXPECT_TRUE(holds(links, 0.2, false)) << "mark 1 lies between 0 and 2";
    EXPECT_TRUE(holds(links, 0.4, false)) << "two systems";
    EXPECT_TRUE(holds(links, 0.6, false)) << "another digger";
    ASSERT_EQ(of(claims, ClaimKind::runs).size(), 1u);
    EXPECT_TRUE(holds(of(claims, ClaimKind::runs), 0.35, false));
}

TEST(ClaimsOf, JudgesPairsThatMetAndNeighboursThatNeverDid) {
    const Example e;
    const PlanClaims claims = claims_of(e.plan, e.posterior, e.field);
    const auto& pairs = of(claims, ClaimKind::pairs);
    ASSERT_EQ(pairs.size(), 4u);  // three pairs met; marks 2 and 0 are neighbours that never did
    EXPECT_TRUE(holds(pairs, 0.95, true));
    EXPECT_TRUE(holds(pairs, 0.5, false));
    EXPECT_TRUE(holds(pairs, 0.7, false));
    EXPECT_TRUE(holds(pairs, 0.0, true));
}

TEST(ClaimsOf, JudgesSystemsOfTwoMarksAndMoreAndTheirMounds) {
    const Example e;
    const PlanClaims claims = claims_of(e.plan, e.posterior, e.field);
    const auto& systems = of(claims, ClaimKind::systems);
    ASSERT_EQ(systems.size(), 2u);
    EXPECT_TRUE(holds(systems, 0.8, true));
    EXPECT_TRUE(holds(systems, 0.3, false));
    const auto& belongs = of(claims, ClaimKind::belongs);
    ASSERT_EQ(belongs.size(), 4u);
    EXPECT_EQ(std::count_if(belongs.begin(), belongs.end(), [](const Claim& c) { return c.came_true; }), 2);
}

TEST(ClaimsOf, AgreesWithThePlanAndItsScoreOnASimulatedField) {
    const SimulatedField field = simulate_field({FieldKind::straight_with_branches, 5, 120, true, false, {}});
    const auto made = make_plan_with_posterior(field.survey, {}, learnt_link_weights());
    ASSERT_TRUE(made);
    const auto plan = make_plan(field.survey);
    ASSERT_TRUE(plan);
    EXPECT_EQ(plan->mounds, made->plan.mounds);
    EXPECT_EQ(plan->probes.size(), made->plan.probes.size());

    const PlanClaims claims = claims_of(made->plan, made->posterior, field);
    EXPECT_EQ(of(claims, ClaimKind::links).size(), made->posterior.links.size());
    EXPECT_EQ(of(claims, ClaimKind::runs).size(), made->plan.runs.size());
    EXPECT_GT(of(claims, ClaimKind::pairs).size(), made->posterior.links.size());
    const PlanScore score = score_plan(made->plan, field);
    std::size_t hits = 0;
    for (const LadderOutcome& ladder : score.ladders) hits += ladder.hit ? 1U : 0U;
    std::size_t came_true = 0;
    for (const ClaimKind kind : {ClaimKind::plug_side, ClaimKind::between_mounds})
        for (const Claim& claim : of(claims, kind)) came_true += claim.came_true ? 1U : 0U;
    EXPECT_EQ(came_true, hits);
    EXPECT_EQ(of(claims, ClaimKind::plug_side).size() + of(claims, ClaimKind::between_mounds).size(), score.ladders.size());
    // the shares of draws say more than nothing: they beat the base rate
    for (const ClaimKind kind : {ClaimKind::links, ClaimKind::pairs}) {
        const Calibration c = calibration_of(of(claims, kind));
        EXPECT_LT(c.brier.score, 0.8 * c.brier.uncertainty) << to_text(kind);
    }
}

TEST(PlanScore, CountsAnimalsReachedByRankAndNeverFewer) {
    const SimulatedField field = simulate_field({FieldKind::meander, 8, 120, true, false, {}});
    auto made = make_plan_with_posterior(field.survey, {}, learnt_link_weights());
    ASSERT_TRUE(made);
    const PlanScore score = score_plan(made->plan, field);
    ASSERT_EQ(score.reached_by_sets.size(), score.sets + 1);
    EXPECT_EQ(score.reached_by_sets.front(), 0u);
    EXPECT_EQ(score.reached_by_sets.back(), score.animals_reached);
    EXPECT_GT(score.animals_reached, 0u);
    for (std::size_t k = 1; k < score.reached_by_sets.size(); ++k) {
        EXPECT_GE(score.reached_by_sets[k], score.reached_by_sets[k - 1]);
        EXPECT_LE(score.reached_by_sets[k], score.reached_by_sets[k - 1] + 1);
    }
    // by rank, not by the order they stand in
    std::reverse(made->plan.sets.begin(), made->plan.sets.end());
    EXPECT_EQ(score_plan(made->plan, field).reached_by_sets, score.reached_by_sets);
    for (SetPoint& set : made->plan.sets) set.choice = SetChoice::dropped;
    EXPECT_EQ(score_plan(made->plan, field).reached_by_sets, std::vector<std::size_t>{0});
}

}  // namespace
}  // namespace plugside
