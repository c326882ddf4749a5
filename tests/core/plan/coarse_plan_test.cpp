#include "core/plan/coarse_plan.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <set>

#include "core/simulation/plan_score.h"
#include "tests/core/surveys.h"

namespace plugside {
namespace {

void expect_sound(const Survey& survey, const Plan& plan) {
    EXPECT_TRUE(plan.coarse);
    std::vector<int> times(survey.mounds.size(), 0);
    std::set<std::string> letters;
    for (std::size_t s = 0; s < plan.systems.size(); ++s) {
        EXPECT_TRUE(letters.insert(plan.systems[s].letter).second);
        EXPECT_FALSE(plan.systems[s].outline.empty());
        EXPECT_TRUE(contains(plan.systems[s].outline, plan.systems[s].label_at));
        for (const std::size_t mound : plan.systems[s].mounds) {
            ++times[mound];
            EXPECT_EQ(plan.mounds[mound].system, s);
        }
    }
    for (std::size_t i = 0; i < times.size(); ++i) ASSERT_EQ(times[i], plan.mounds[i].not_used_because ? 0 : 1);
    EXPECT_LE(plan.estimate.low, plan.estimate.expected);
    EXPECT_GE(plan.estimate.high, plan.estimate.expected);
    EXPECT_TRUE(plan.runs.empty());
    std::set<int> visits;
    for (const SetPoint& set : plan.sets) {
        EXPECT_FALSE(set.cautions.empty());
        visits.insert(set.visit_order);
    }
    EXPECT_EQ(visits.size(), plan.sets.size());
    EXPECT_TRUE(std::any_of(plan.notices.begin(), plan.notices.end(),
                            [](const std::string& notice) { return notice.find("coarse form") != std::string::npos; }));
}

TEST(CoarsePlan, IsMadeOfASurveyTooLargeForTheWhole) {
    const Survey survey = test::simulated_survey(91, 70000);
    ASSERT_GT(survey.mounds.size(), 60000U);
    const Plan plan = *make_plan(survey);
    expect_sound(survey, plan);
    EXPECT_GT(plan.systems.size(), 1000U);
    EXPECT_GE(plan.sets.size(), plan.systems.size());
}

class CoarsePlanOf : public testing::TestWithParam<FieldKind> {};

TEST_P(CoarsePlanOf, EveryKindTellsWhatItCan) {
    const Survey survey = test::simulated_survey(92, 1500, GetParam());
    PlanOptions options;
    options.most_marks_for_whole = 1000;
    const Plan plan = *make_plan(survey, options);
    expect_sound(survey, plan);
    const ProbeSite& site = plan.probes.front();
    const Plan whole = *make_plan(test::survey_of({survey.mounds[site.from_mound]}));
    EXPECT_EQ(site.ladder.along, whole.probes.front().ladder.along) << "the ladder by what one mark tells";
    EXPECT_EQ(site.hit.value(), whole.probes.front().hit.value());
}

TEST_P(CoarsePlanOf, DoesNotChangeWhenMarksAreRenumbered) {
    const Survey survey = test::simulated_survey(93, 400, GetParam());
    Survey turned = survey;
    std::reverse(turned.mounds.begin(), turned.mounds.end());
    const Plan a = make_coarse_plan(survey, {})->plan;
    const Plan b = make_coarse_plan(turned, {})->plan;
    const auto names_of = [](const Survey& of, const Plan& plan) {
        std::set<std::set<std::string>> groups;
        for (const BurrowSystem& system : plan.systems) {
            std::set<std::string> names;
            for (const std::size_t mound : system.mounds) names.insert(of.mounds[mound].name);
            groups.insert(names);
        }
        return groups;
    };
    EXPECT_EQ(names_of(survey, a), names_of(turned, b));
    std::set<ProbeKey> sets_a, sets_b;
    for (const SetPoint& set : a.sets) sets_a.insert(a.probes[set.probe].key);
    for (const SetPoint& set : b.sets) sets_b.insert(b.probes[set.probe].key);
    EXPECT_EQ(sets_a, sets_b);
}

INSTANTIATE_TEST_SUITE_P(Kinds, CoarsePlanOf, testing::ValuesIn(all_field_kinds()), [](const auto& kind) {
    std::string name = to_text(kind.param);
    std::replace(name.begin(), name.end(), ' ', '_');
    return name;
});

TEST(CoarsePlan, KeepsOutOfKeepClearAreasAndObeysDecisions) {
    Survey survey = test::straight_run(12);
    const KeepClearArea yard{"yard", "children play here", KeepClearKind::play_area,
                             Polygon{Ring{{{-1.0, -5.0}, {14.0, -5.0}, {14.0, 5.0}, {-1.0, 5.0}}}, {}}};
    survey.ground.keep_clear.push_back(yard);
    const Plan before = make_coarse_plan(survey, {})->plan;
    ASSERT_FALSE(before.sets.empty());
    for (const SetPoint& set : before.sets) EXPECT_FALSE(contains(yard.area, before.probes[set.probe].middle));
    const ProbeKey dropped = before.probes[before.sets[0].probe].key;
    decide(survey, {dropped, SetChoice::dropped, {}});
    const Plan after = make_coarse_plan(survey, {})->plan;
    ASSERT_EQ(after.sets.size(), before.sets.size() + 1);
    EXPECT_EQ(after.probes[after.sets[0].probe].key, dropped);
    EXPECT_EQ(after.sets[0].choice, SetChoice::dropped);
    EXPECT_EQ(after.sets.back().choice, SetChoice::proposed);
}

TEST(CoarsePlan, OfNoMarkAndStopped) {
    EXPECT_TRUE(make_coarse_plan(test::survey_of({}), {})->plan.systems.empty());
    std::stop_source stop;
    stop.request_stop();
    PlanOptions options;
    options.most_marks_for_whole = 10;
    EXPECT_FALSE(make_plan(test::simulated_survey(5, 100), options, {stop.get_token(), {}}).has_value());
}

}  // namespace
}  // namespace plugside
