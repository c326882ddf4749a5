#include <gtest/gtest.h>

#include <algorithm>
#include <set>

#include "core/plan/make_plan.h"
#include "core/simulation/plan_score.h"
#include "tests/core/surveys.h"

namespace plugside {
namespace {

struct Made {
    std::vector<Plan> first;
    std::optional<Plan> whole;
};

Made made_with_first_look(const Survey& survey, const Progress& progress = {}) {
    Made made;
    made.whole = make_plan(survey, {}, progress, {{}, [&](Plan plan) { made.first.push_back(std::move(plan)); }});
    return made;
}

double agreement(const Plan& a, const Plan& b) {
    std::vector<std::size_t> in_a, in_b;
    for (std::size_t i = 0; i < a.mounds.size(); ++i)
        if (a.mounds[i].system && b.mounds[i].system) {
            in_a.push_back(*a.mounds[i].system);
            in_b.push_back(*b.mounds[i].system);
        }
    return adjusted_rand_index(in_a, in_b);
}

class FirstLook : public testing::TestWithParam<FieldKind> {};

TEST_P(FirstLook, HasTheShapeOfAPlanSaysWhatItIsAndMostlyAgreesWithTheWhole) {
    const Survey survey = test::simulated_survey(81, 250, GetParam());
    const Made made = made_with_first_look(survey);
    ASSERT_EQ(made.first.size(), 1U);
    const Plan& first = made.first.front();
    EXPECT_TRUE(first.first_look);
    EXPECT_FALSE(made.whole->first_look);
    EXPECT_NE(first.notices.front().find("first look"), std::string::npos);
    EXPECT_EQ(first.revision, survey.revision);
    EXPECT_EQ(first.mounds.size(), survey.mounds.size());
    EXPECT_FALSE(first.runs.empty());
    EXPECT_GE(first.sets.size(), first.systems.size());
    for (const BurrowSystem& system : first.systems) EXPECT_FALSE(system.outline.empty());
    for (const SetPoint& set : first.sets) EXPECT_FALSE(set.cautions.empty());
    std::set<int> visits;
    for (const SetPoint& set : first.sets) visits.insert(set.visit_order);
    EXPECT_EQ(visits.size(), first.sets.size());
    EXPECT_GE(agreement(first, *made.whole), 0.7);
}

TEST_P(FirstLook, ChangesNothingOfTheWholePlan) {
    const Survey survey = test::simulated_survey(82, 120, GetParam());
    const Plan alone = *make_plan(survey);
    const Plan after = *made_with_first_look(survey).whole;
    EXPECT_EQ(alone.mounds, after.mounds);
    EXPECT_EQ(alone.notices, after.notices);
    ASSERT_EQ(alone.probes.size(), after.probes.size());
    for (std::size_t p = 0; p < alone.probes.size(); ++p) {
        EXPECT_EQ(alone.probes[p].key, after.probes[p].key);
        EXPECT_EQ(alone.probes[p].hit.value(), after.probes[p].hit.value());
    }
}

INSTANTIATE_TEST_SUITE_P(Kinds, FirstLook, testing::ValuesIn(all_field_kinds()), [](const auto& kind) {
    std::string name = to_text(kind.param);
    std::replace(name.begin(), name.end(), ' ', '_');
    return name;
});

TEST(FirstLookOf, NoMoundIsNotShown) { EXPECT_TRUE(made_with_first_look(test::survey_of({})).first.empty()); }

TEST(FirstLookOf, AFieldWithoutFansHasPlacesBetweenMounds) {
    Survey survey = test::straight_run(8);
    for (Mound& mound : survey.mounds) mound.fan.reset();
    const Made made = made_with_first_look(survey);
    ASSERT_EQ(made.first.size(), 1U);
    EXPECT_FALSE(made.first.front().probes.empty());
}

TEST(FirstLookOf, ADecidedFieldShowsTheDecisions) {
    Survey survey = test::straight_run(12);
    const Plan before = *make_plan(survey);
    const auto between =
        std::find_if(before.probes.begin(), before.probes.end(), [](const auto& site) { return site.to_mound; });
    ASSERT_NE(between, before.probes.end());
    decide(survey, {between->key, SetChoice::kept, {}});
    decide(survey, {before.probes[before.sets[0].probe].key, SetChoice::dropped, {}});
    const Plan first = made_with_first_look(survey).first.front();
    const auto choice_on = [&](const ProbeKey& key) {
        for (const SetPoint& set : first.sets)
            if (first.probes[set.probe].key == key) return set.choice;
        return SetChoice::proposed;
    };
    EXPECT_EQ(choice_on(between->key), SetChoice::kept);
    EXPECT_EQ(choice_on(before.probes[before.sets[0].probe].key), SetChoice::dropped);
}

TEST(FirstLookOf, AFieldOfWhichSomethingIsKnownObeysIt) {
    Survey survey = test::straight_run(12);
    KnownFact apart;
    apart.kind = FactKind::different_systems;
    apart.marks = {"M5", "M6"};
    survey.known.push_back(apart);
    KnownFact joined;
    joined.kind = FactKind::same_system;
    joined.marks = {"M1", "M9"};
    survey.known.push_back(joined);
    const Made made = made_with_first_look(survey);
    for (const Plan& plan : {made.first.front(), *made.whole}) {
        EXPECT_NE(plan.mounds[4].system, plan.mounds[5].system);
        EXPECT_EQ(plan.mounds[0].system, plan.mounds[8].system);
    }
}

TEST(FirstLookOf, StoppedWorkIsNotShown) {
    std::stop_source stop;
    stop.request_stop();
    const Made made = made_with_first_look(test::simulated_survey(5, 200), {stop.get_token(), {}});
    EXPECT_TRUE(made.first.empty());
    EXPECT_FALSE(made.whole.has_value());
}

TEST(FirstLookOf, ALargeFieldIsCoarse) {
    const Made made = made_with_first_look(test::simulated_survey(6, 8000));
    ASSERT_EQ(made.first.size(), 1U);
    EXPECT_TRUE(made.first.front().coarse);
    EXPECT_TRUE(made.first.front().first_look);
    EXPECT_FALSE(made.whole->coarse);
}

}  // namespace
}  // namespace plugside
