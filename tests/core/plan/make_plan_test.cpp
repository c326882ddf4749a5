#include "core/plan/make_plan.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <map>
#include <random>
#include <set>

#include "core/probing/instruction.h"
#include "tests/core/surveys.h"

namespace plugside {
namespace {

using Groups = std::set<std::set<std::string>>;

Groups groups_of(const Survey& survey, const Plan& plan) {
    Groups groups;
    for (const BurrowSystem& system : plan.systems) {
        std::set<std::string> names;
        for (const std::size_t mound : system.mounds) names.insert(survey.mounds[mound].name);
        groups.insert(names);
    }
    return groups;
}

std::map<ProbeKey, double> chances_of(const Plan& plan) {
    std::map<ProbeKey, double> chances;
    for (const ProbeSite& site : plan.probes) chances[site.key] = site.hit.value();
    return chances;
}

std::set<ProbeKey> sets_of(const Plan& plan) {
    std::set<ProbeKey> keys;
    for (const SetPoint& set : plan.sets) keys.insert(plan.probes[set.probe].key);
    return keys;
}

// `rounding`: places that are turned are rounded otherwise, and one draw in some hundreds may then miss a hole that it met.
void expect_same_plan(const Survey& a, const Plan& plan_a, const Survey& b, const Plan& plan_b, double rounding = 1e-6) {
    EXPECT_EQ(groups_of(a, plan_a), groups_of(b, plan_b));
    EXPECT_EQ(plan_a.estimate.low, plan_b.estimate.low);
    EXPECT_EQ(plan_a.estimate.high, plan_b.estimate.high);
    EXPECT_EQ(sets_of(plan_a), sets_of(plan_b));
    const auto chances_a = chances_of(plan_a);
    const auto chances_b = chances_of(plan_b);
    ASSERT_EQ(chances_a.size(), chances_b.size());
    for (const auto& [key, chance] : chances_a) {
        ASSERT_TRUE(chances_b.count(key)) << key.from_mound << ' ' << key.to_mound;
        EXPECT_NEAR(chance, chances_b.at(key), rounding);
    }
}

class PlanOfEveryKind : public testing::TestWithParam<FieldKind> {};

TEST_P(PlanOfEveryKind, IsPartitionedOnceEach) {
    const Survey survey = test::simulated_survey(41, 150, GetParam());
    const Plan plan = *make_plan(survey);
    std::vector<int> times(survey.mounds.size(), 0);
    for (std::size_t s = 0; s < plan.systems.size(); ++s)
        for (const std::size_t mound : plan.systems[s].mounds) {
            ++times[mound];
            EXPECT_EQ(plan.mounds[mound].system, s);
        }
    for (std::size_t i = 0; i < survey.mounds.size(); ++i) {
        EXPECT_EQ(times[i], plan.mounds[i].not_used_because ? 0 : 1);
        EXPECT_EQ(is_gopher_sign(survey.mounds[i].kind), !plan.mounds[i].not_used_because.has_value());
    }
    EXPECT_LE(plan.estimate.low, plan.estimate.high);
    EXPECT_GE(plan.systems.size(), static_cast<std::size_t>(plan.estimate.low)) << "picture and count agree";
    EXPECT_LE(plan.systems.size(), static_cast<std::size_t>(plan.estimate.high));
}

TEST_P(PlanOfEveryKind, HasRunsProbesAndSetsThatBelongTogether) {
    const Survey survey = test::simulated_survey(42, 150, GetParam());
    const Plan plan = *make_plan(survey);
    for (const MainRun& run : plan.runs) {
        EXPECT_EQ(plan.mounds[run.from_mound].system, run.system);
        EXPECT_EQ(plan.mounds[run.to_mound].system, run.system);
        EXPECT_EQ(run.line.vertices.size(), run.sd_m.size());
        EXPECT_LT(distance_m(run.line.vertices.front(), plan.mounds[run.from_mound].take_off), 1e-9);
        EXPECT_LT(distance_m(run.line.vertices.back(), plan.mounds[run.to_mound].take_off), 1e-9);
        for (const double sd : run.sd_m) EXPECT_GT(sd, 0.0);
    }
    for (const ProbeSite& site : plan.probes) {
        EXPECT_GE(site.expected_rungs, 1.0);
        EXPECT_LE(site.expected_rungs, static_cast<double>(site.rungs.size()));
        EXPECT_EQ(site.rungs.size(), site.rung_places.size());
        // a wide row may have steps as wide as the widest tunnel
        EXPECT_LE(site.ladder.step, PlanOptions{}.tunnel_diameter * (site.across_gap ? 1.2 : 1.0));
        EXPECT_FALSE(instruction(site, survey, LengthUnits::metres).empty());
    }
    std::set<int> ranks, visits;
    for (const SetPoint& set : plan.sets) {
        ranks.insert(set.rank);
        visits.insert(set.visit_order);
    }
    std::map<std::size_t, int> before_in;
    for (std::size_t i = 0; i < plan.sets.size(); ++i) {
        if (++before_in[plan.probes[plan.sets[i].probe].system] <= 2) continue;
        // more than the usual two only where one more is expected to reach another animal often enough
        EXPECT_GE(plan.expected_reached_by_sets[i] - plan.expected_reached_by_sets[i - 1], 0.02);
    }
    EXPECT_EQ(ranks.size(), plan.sets.size());
    EXPECT_EQ(visits.size(), plan.sets.size());
}

TEST_P(PlanOfEveryKind, DoesNotChangeWhenMarksAreRenumbered) {
    const Survey survey = test::simulated_survey(43, 120, GetParam());
    Survey shuffled = survey;
    std::mt19937_64 random(1);
    std::shuffle(shuffled.mounds.begin(), shuffled.mounds.end(), random);
    expect_same_plan(survey, *make_plan(survey), shuffled, *make_plan(shuffled));
}

TEST_P(PlanOfEveryKind, DoesNotChangeWhenTheFieldIsMovedAndTurned) {
    const Survey survey = test::simulated_survey(47, 120, GetParam());
    const Plan plan = *make_plan(survey);
    for (const double turn : {0.0, 37.0, 180.0, 271.5}) {
        const Survey elsewhere = test::moved(survey, turn, {1234.5, -987.25});
        expect_same_plan(survey, plan, elsewhere, *make_plan(elsewhere), 0.005);
    }
}

INSTANTIATE_TEST_SUITE_P(Kinds, PlanOfEveryKind, testing::ValuesIn(all_field_kinds()), [](const auto& kind) {
    std::string name = to_text(kind.param);
    std::replace(name.begin(), name.end(), ' ', '_');
    return name;
});

TEST(MakePlan, IsTheSameTwice) {
    const Survey survey = test::simulated_survey(7, 140);
    const Plan a = *make_plan(survey);
    const Plan b = *make_plan(survey);
    EXPECT_EQ(a.mounds, b.mounds);
    EXPECT_EQ(chances_of(a), chances_of(b));
}

TEST(MakePlan, OfNoMoundSaysSo) {
    const Plan plan = *make_plan(test::survey_of({}));
    EXPECT_TRUE(plan.systems.empty());
    EXPECT_EQ(plan.estimate.high, 0);
    ASSERT_FALSE(plan.notices.empty());
    EXPECT_NE(plan.notices.front().find("nothing to plan"), std::string::npos);
}

TEST(MakePlan, OfOneMoundIsOneAnimalWithOnePlaceToProbe) {
    const Plan plan = *make_plan(test::survey_of({test::mound_at(3.0, 4.0, 135.0)}));
    ASSERT_EQ(plan.systems.size(), 1U);
    EXPECT_EQ(plan.estimate.low, 1);
    EXPECT_EQ(plan.estimate.high, 1);
    ASSERT_EQ(plan.sets.size(), 1U);
    EXPECT_NEAR(plan.probes.front().axis.degrees(), 315.0, 1e-9);
}

TEST(MakePlan, OfTwoFarMoundsIsTwoAnimalsAndOfTwoOnARunIsOne) {
    EXPECT_EQ(make_plan(test::survey_of({test::mound_at(0, 0, 0.0), test::mound_at(300, 0, 0.0)}))->systems.size(), 2U);
    EXPECT_EQ(make_plan(test::straight_run(2))->estimate.low, 1);
}

TEST(MakePlan, OfARowAlongOneRunIsOneAnimal) {
    const Plan plan = *make_plan(test::straight_run(12));
    EXPECT_EQ(plan.systems.size(), 1U);
    EXPECT_EQ(plan.runs.size(), 11U);
    // a mound may be passed by a run that goes on to the next
    EXPECT_NEAR(plan.systems.front().run_length.value(), 22.0, 2.5);
}

TEST(MakePlan, OfMarksAllInOnePlaceEndsWithAWarning) {
    const Plan plan = *make_plan(test::survey_of(std::vector<Mound>(200, test::mound_at(8, 9, 45.0))));
    EXPECT_GE(plan.systems.size(), 1U);
    EXPECT_TRUE(std::any_of(plan.notices.begin(), plan.notices.end(),
                            [](const std::string& notice) { return notice.find("one place") != std::string::npos; }));
}

TEST(MakePlan, WithoutAnyFanStillFindsSystemsAndSaysWhatItRestsOn) {
    Survey survey = test::simulated_survey(12, 100);
    for (Mound& mound : survey.mounds) mound.fan.reset();
    const Plan plan = *make_plan(survey);
    EXPECT_GE(plan.systems.size(), 1U);
    for (const ProbeSite& site : plan.probes) EXPECT_EQ(site.key.kind, ProbeKind::between_mounds);
    EXPECT_TRUE(std::any_of(plan.notices.begin(), plan.notices.end(),
                            [](const std::string& notice) { return notice.find("fan bearing") != std::string::npos; }));
}

TEST(MakePlan, OfTwentyThousandMoundsEnds) {
    const Survey survey = test::simulated_survey(3, 20000);
    const Plan plan = *make_plan(survey);
    EXPECT_GT(plan.systems.size(), 100U);
}

TEST(MakePlan, OfTwentyThousandMarksInOneHeapEnds) {
    std::vector<Mound> heap;
    for (int i = 0; i < 20000; ++i) heap.push_back(test::mound_at(0.001 * (i % 7), 0.001 * (i % 11), i % 360));
    EXPECT_GE(make_plan(test::survey_of(heap))->systems.size(), 1U);
}

TEST(MakePlan, StopsWhenAsked) {
    std::stop_source stop;
    Progress progress{stop.get_token(), [&](double share, std::string_view) {
                          if (share > 0.2) stop.request_stop();
                      }};
    EXPECT_FALSE(make_plan(test::simulated_survey(5, 300), {}, progress).has_value());
}

TEST(MakePlan, NoRunCrossesABarrier) {
    Survey survey = test::straight_run(12);
    survey.ground.barriers.push_back({"ditch", {{{11.0, -50.0}, {11.0, 50.0}}}});
    const Plan plan = *make_plan(survey);
    EXPECT_GE(plan.systems.size(), 2U);
    for (const MainRun& run : plan.runs)
        EXPECT_EQ(survey.mounds[run.from_mound].plug.east_m < 11.0, survey.mounds[run.to_mound].plug.east_m < 11.0);
}

TEST(MakePlan, SetsNothingInAKeepClearArea) {
    Survey survey = test::straight_run(12);
    const KeepClearArea yard{"yard", "children play here", KeepClearKind::play_area,
                             Polygon{Ring{{{-1.0, -5.0}, {14.0, -5.0}, {14.0, 5.0}, {-1.0, 5.0}}}, {}}};
    survey.ground.keep_clear.push_back(yard);
    const Plan plan = *make_plan(survey);
    EXPECT_FALSE(plan.sets.empty());
    for (const SetPoint& set : plan.sets) EXPECT_FALSE(contains(yard.area, plan.probes[set.probe].middle));
}

TEST(Decisions, ADroppedSetStaysListedAndGivesWayToAnother) {
    Survey survey = test::straight_run(12);
    const Plan before = *make_plan(survey);
    ASSERT_EQ(before.sets.size(), 2U);
    const ProbeKey dropped = before.probes[before.sets[0].probe].key;
    decide(survey, {dropped, SetChoice::dropped, {}});
    const Plan after = *make_plan(survey);
    EXPECT_EQ(after.revision, survey.revision);
    ASSERT_EQ(after.sets.size(), 3U);
    EXPECT_EQ(after.probes[after.sets[0].probe].key, dropped) << "numbers already told stay";
    EXPECT_EQ(after.sets[0].choice, SetChoice::dropped);
    EXPECT_EQ(after.probes[after.sets[1].probe].key, before.probes[before.sets[1].probe].key);
    EXPECT_EQ(after.sets[2].choice, SetChoice::proposed);
    EXPECT_EQ(after.sets[0].visit_order, 3) << "dropped sets come last";
}

TEST(Decisions, AMovedSetIsTapedWhereThePersonPutItWithTheChanceOfThatPlace) {
    Survey survey = test::straight_run(12);
    const Plan before = *make_plan(survey);
    const ProbeSite site = before.probes[before.sets[0].probe];
    decide(survey, {site.key, SetChoice::moved, LadderPlace{site.ladder.along + Metres::of(0.5), Metres::of(0.1)}});
    const Plan after = *make_plan(survey);
    const ProbeSite moved = after.probes[after.sets[0].probe];
    EXPECT_EQ(moved.key, site.key);
    EXPECT_NEAR(moved.ladder.along.value(), site.ladder.along.value() + 0.5, 1e-12);
    EXPECT_LT(moved.hit.value(), site.hit.value() - 0.3) << "half a metre past the run there is little to find";
}

TEST(Decisions, UndecidedAgainIsAsIfNeverDecided) {
    Survey survey = test::simulated_survey(19, 90);
    const Plan before = *make_plan(survey);
    const ProbeKey key = before.probes[before.sets[0].probe].key;
    decide(survey, {key, SetChoice::dropped, {}});
    decide(survey, {key, SetChoice::proposed, {}});
    EXPECT_EQ(sets_of(*make_plan(survey)), sets_of(before));
}

TEST(Instruction, IsToldRelativeToMarksOnTheGroundInTheUnitsAskedFor) {
    const Survey survey = test::straight_run(3);
    const Plan plan = *make_plan(survey);
    const auto plug =
        std::find_if(plan.probes.begin(), plan.probes.end(), [](const ProbeSite& site) { return !site.to_mound; });
    ASSERT_NE(plug, plan.probes.end());
    const std::string feet = instruction(*plug, survey, LengthUnits::feet_and_inches);
    EXPECT_NE(feet.find("plug of " + plug->key.from_mound), std::string::npos) << feet;
    EXPECT_NE(feet.find(" in "), std::string::npos) << feet;
    EXPECT_NE(instruction(*plug, survey, LengthUnits::metres).find(" cm"), std::string::npos);
    const auto between = std::find_if(plan.probes.begin(), plan.probes.end(),
                                      [](const ProbeSite& site) { return site.to_mound.has_value(); });
    ASSERT_NE(between, plan.probes.end());
    EXPECT_NE(instruction(*between, survey, LengthUnits::metres).find("to the plug of " + between->key.to_mound),
              std::string::npos);
}

}  // namespace
}  // namespace plugside
