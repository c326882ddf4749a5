#include "core/plan/plan_nearby.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <set>

#include "tests/core/surveys.h"

namespace plugside {
namespace {

Survey without_tracks(Survey survey) {
    survey.walks.resize(1);
    survey.walks.front().segments.clear();
    for (Mound& mound : survey.mounds) mound.walk = 0;
    return survey;
}

std::size_t a_usable_mark(const Survey& survey, std::size_t from) {
    while (why_not_used(survey, survey.mounds[from])) ++from;
    return from;
}

std::set<std::size_t> with(const Plan& whole, std::size_t mound) {
    const auto& mounds = whole.systems[*whole.mounds[mound].system].mounds;
    return {mounds.begin(), mounds.end()};
}

std::set<std::size_t> with(const NearbyPlan& nearby, std::size_t mound) {
    const auto at = std::lower_bound(nearby.mounds.begin(), nearby.mounds.end(), mound) - nearby.mounds.begin();
    std::set<std::size_t> mounds;
    for (const std::size_t other : nearby.plan.systems[*nearby.plan.mounds[static_cast<std::size_t>(at)].system].mounds)
        mounds.insert(nearby.mounds[other]);
    return mounds;
}

class PlanNearby : public testing::TestWithParam<FieldKind> {};

TEST_P(PlanNearby, mostly_puts_a_moved_mound_where_the_whole_plan_puts_it) {
    Survey survey = without_tracks(test::simulated_survey(91, 200, GetParam()));
    double shared = 0.0;
    double either = 0.0;
    for (std::size_t k = 0; k < 8; ++k) {
        const std::size_t mound = a_usable_mark(survey, k * survey.mounds.size() / 8);
        const LocalPoint before = survey.mounds[mound].plug;
        survey.mounds[mound].plug = before + LocalVector{0.7, -0.4};
        const auto nearby = plan_nearby(survey, {before, survey.mounds[mound].plug});
        ASSERT_TRUE(nearby.has_value());
        EXPECT_TRUE(nearby->plan.first_look);
        const auto here = with(*nearby, mound);
        const auto whole = with(*make_plan(survey), mound);
        for (const std::size_t other : here) shared += whole.contains(other) ? 1.0 : 0.0;
        either += static_cast<double>(std::max(here.size(), whole.size()));
    }
    EXPECT_GE(shared / either, 0.5);  // crowded growth and food tree .6, the others above .7
}

TEST_P(PlanNearby, does_not_depend_on_marks_farther_away_than_it_looks) {
    const Survey survey = without_tracks(test::simulated_survey(92, 300, GetParam()));
    const std::size_t mound = a_usable_mark(survey, 0);
    const LocalPoint at = survey.mounds[mound].plug;
    const auto nearby = plan_nearby(survey, {at});
    Survey less = survey;
    std::set<std::string> names;
    for (const std::size_t i : nearby->mounds) names.insert(survey.mounds[i].name);
    std::erase_if(less.mounds, [&](const Mound& other) { return !names.contains(other.name); });
    const auto again = plan_nearby(less, {at});
    ASSERT_EQ(again->plan.systems.size(), nearby->plan.systems.size());
    EXPECT_EQ(again->plan.mounds, nearby->plan.mounds);
    ASSERT_EQ(again->plan.probes.size(), nearby->plan.probes.size());
    for (std::size_t p = 0; p < again->plan.probes.size(); ++p) {
        EXPECT_EQ(again->plan.probes[p].key, nearby->plan.probes[p].key);
        EXPECT_EQ(again->plan.probes[p].hit.value(), nearby->plan.probes[p].hit.value());
    }
}

TEST_P(PlanNearby, numbers_what_it_holds_without_gaps) {
    const Survey survey = without_tracks(test::simulated_survey(93, 300, GetParam()));
    const auto nearby = plan_nearby(survey, {survey.mounds[a_usable_mark(survey, 10)].plug});
    const Plan& plan = nearby->plan;
    ASSERT_EQ(plan.mounds.size(), nearby->mounds.size());
    EXPECT_TRUE(std::is_sorted(nearby->mounds.begin(), nearby->mounds.end()));
    std::vector<std::size_t> mounds(plan.systems.size(), 0);
    for (const MoundInPlan& mound : plan.mounds)
        if (mound.system) ++mounds.at(*mound.system);
    for (std::size_t s = 0; s < mounds.size(); ++s) EXPECT_EQ(mounds[s], plan.systems[s].mounds.size());
    for (const MainRun& run : plan.runs) {
        EXPECT_EQ(plan.mounds.at(run.from_mound).system, run.system);
        EXPECT_EQ(plan.mounds.at(run.to_mound).system, run.system);
    }
    EXPECT_FALSE(plan.sets.empty());
    for (const SetPoint& set : plan.sets) {
        const ProbeSite& probe = plan.probes.at(set.probe);
        EXPECT_LT(probe.system, plan.systems.size());
        EXPECT_EQ(probe.key.from_mound, survey.mounds[nearby->mounds.at(probe.from_mound)].name);
    }
}

INSTANTIATE_TEST_SUITE_P(Kinds, PlanNearby, testing::ValuesIn(all_field_kinds()), [](const auto& kind) {
    std::string name = to_text(kind.param);
    std::replace(name.begin(), name.end(), ' ', '_');
    return name;
});

TEST(PlanNearbyAtItsEnds, holds_a_small_survey_whole) {
    const Survey survey = test::straight_run(12);
    const auto nearby = plan_nearby(survey, {survey.mounds.front().plug});
    EXPECT_EQ(nearby->mounds.size(), 12U);
    std::size_t in_systems = 0;
    for (const BurrowSystem& system : nearby->plan.systems) in_systems += system.mounds.size();
    EXPECT_EQ(in_systems, 12U);
}

TEST(PlanNearbyAtItsEnds, is_empty_where_nothing_is_touched_or_usable) {
    EXPECT_TRUE(plan_nearby(test::straight_run(5), {})->mounds.empty());
    Survey moles = test::straight_run(5);
    for (Mound& mound : moles.mounds) mound.kind = SignKind::mole;
    EXPECT_TRUE(plan_nearby(moles, {{0.0, 0.0}})->plan.systems.empty());
}

TEST(PlanNearbyAtItsEnds, ends_when_stopped) {
    std::stop_source stop;
    stop.request_stop();
    EXPECT_FALSE(plan_nearby(test::straight_run(12), {{0.0, 0.0}}, {}, {}, {stop.get_token(), {}}).has_value());
}

TEST(PlanNearbyAtItsEnds, leaves_out_what_was_said_of_marks_beyond) {
    Survey survey = without_tracks(test::simulated_survey(94, 300));
    const std::size_t here = a_usable_mark(survey, 0);
    const auto far = std::max_element(survey.mounds.begin(), survey.mounds.end(), [&](const Mound& a, const Mound& b) {
        return distance_m(a.plug, survey.mounds[here].plug) < distance_m(b.plug, survey.mounds[here].plug);
    });
    survey.known.push_back({FactKind::different_systems, {survey.mounds[here].name, far->name}, {}, {}, {}, {}});
    EXPECT_FALSE(plan_nearby(survey, {survey.mounds[here].plug})->plan.systems.empty());
}

}  // namespace
}  // namespace plugside
