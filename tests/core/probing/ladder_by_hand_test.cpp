#include "core/probing/ladder_by_hand.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "core/plan/make_plan.h"
#include "tests/core/surveys.h"

namespace plugside {
namespace {

void expect_same_site(const ProbeSite& a, const ProbeSite& b) {
    EXPECT_EQ(a.key, b.key);
    EXPECT_EQ(a.hit, b.hit);
    EXPECT_EQ(a.expected_rungs, b.expected_rungs);
    EXPECT_EQ(a.rungs, b.rungs);
    EXPECT_EQ(a.run_offset, b.run_offset);
    EXPECT_EQ(a.run_offset_sd, b.run_offset_sd);
    EXPECT_EQ(a.along_row.chance, b.along_row.chance);
    EXPECT_LT(distance_m(a.middle, b.middle), 1e-9);
    ASSERT_EQ(a.rung_places.size(), b.rung_places.size());
    for (std::size_t i = 0; i < a.rung_places.size(); ++i) EXPECT_LT(distance_m(a.rung_places[i], b.rung_places[i]), 1e-9);
    EXPECT_EQ(a.hit_as_proposed, b.hit_as_proposed);
}

class MovedByHand : public testing::TestWithParam<ProbeKind> {};

TEST_P(MovedByHand, ALadderHasTheChanceAndTheRungsThatTheNextPlanGivesIt) {
    Survey survey = test::simulated_survey(11, 60);
    const Plan plan = *make_plan(survey);
    std::size_t tried = 0;
    for (const ProbeSite& site : plan.probes) {
        if (site.key.kind != GetParam() || tried >= 4) continue;
        ++tried;
        const LadderByHand by_hand(site);
        expect_same_site(by_hand.at({site.ladder.along, site.ladder.across}), site);
        const LadderPlace place{site.ladder.along + Metres::of(0.11), site.ladder.across + Metres::of(-0.07)};
        Survey decided = survey;
        decide(decided, {site.key, SetChoice::moved, place});
        const Plan next = *make_plan(decided);
        const auto after = std::find_if(next.probes.begin(), next.probes.end(),
                                        [&](const ProbeSite& other) { return other.key == site.key; });
        ASSERT_NE(after, next.probes.end());
        const ProbeSite moved = by_hand.at(place);
        expect_same_site(moved, *after);
        EXPECT_NE(moved.hit, site.hit);
        // and moved on from where it was moved to, as well as straight from the first place
        const LadderPlace further{place.along + Metres::of(-0.2), place.across + Metres::of(0.15)};
        expect_same_site(LadderByHand(*after).at(further), by_hand.at(further));
    }
    EXPECT_GT(tried, 0U);
}

INSTANTIATE_TEST_SUITE_P(OfEachKind, MovedByHand, testing::Values(ProbeKind::plug_side, ProbeKind::between_mounds),
                         [](const auto& kind) { return kind.param == ProbeKind::plug_side ? "PlugSide" : "Between"; });

TEST(LadderByHand, FarFromEveryRunHasNoChanceAndTakesAllItsRungs) {
    const Survey survey = test::straight_run(6);
    const Plan plan = *make_plan(survey);
    ASSERT_FALSE(plan.probes.empty());
    for (const ProbeSite& site : plan.probes) {
        const ProbeSite far =
            LadderByHand(site).at({Metres::of(site.to_mound ? 0.5 : 9.0), Metres::of(site.to_mound ? 9.0 : 0.0)});
        EXPECT_EQ(far.hit.value(), 0.0);
        EXPECT_NEAR(far.expected_rungs, static_cast<double>(far.rungs.size()), 1e-9);
    }
}

}  // namespace
}  // namespace plugside
