#include "core/sets/visits.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <map>
#include <set>

#include "core/plan/make_plan.h"
#include "core/walking/visiting_order.h"
#include "core/walking/walking_ways.h"
#include "tests/core/surveys.h"

namespace plugside {
namespace {

std::vector<ProbeKey> keys_in_walking_order(const Plan& plan) {
    std::map<int, ProbeKey> by_visit;
    for (const SetPoint& set : plan.sets)
        if (set.choice != SetChoice::dropped) by_visit.emplace(set.visit_order, plan.probes[set.probe].key);
    std::vector<ProbeKey> keys;
    for (const auto& [visit, key] : by_visit) keys.push_back(key);
    return keys;
}

bool holds(const std::vector<ProbeKey>& keys, const ProbeKey& key) {
    return std::find(keys.begin(), keys.end(), key) != keys.end();
}

TEST(Visits, the_order_of_the_other_sets_stays_when_one_is_dropped_though_another_stands_in_for_it) {
    const Survey survey = test::simulated_survey(11, 90);
    const Plan before = *make_plan(survey);
    const std::vector<ProbeKey> keys = keys_in_walking_order(before);
    ASSERT_GT(keys.size(), 8U);
    std::size_t unchanged = 0;
    for (std::size_t i = 0; i < keys.size(); i += 2) {
        Survey dropped = survey;
        decide(dropped, {keys[i], SetChoice::dropped, {}});
        std::vector<ProbeKey> after = keys_in_walking_order(*make_plan(dropped));
        std::erase_if(after, [&](const ProbeKey& key) { return !holds(keys, key); });
        std::vector<ProbeKey> rest = keys;
        std::erase(rest, keys[i]);
        if (after == rest) ++unchanged;
    }
    EXPECT_GE(unchanged + 1, (keys.size() + 1) / 2) << "one may save more than a twentieth of the way";
}

// A ditch along the middle of the marks with a gate at its end: how often the order crosses from side to side.
TEST(Visits, go_through_the_gate_of_a_ditch_as_few_times_as_can_be) {
    Survey survey = test::simulated_survey(11, 90);
    double middle = 0.0;
    for (const Mound& mound : survey.mounds) middle += mound.plug.east_m / static_cast<double>(survey.mounds.size());
    survey.ground.barriers = {{"ditch", {{{middle, -500}, {middle, 500}}}}};
    survey.ground.gates = {{"plank", {middle, -400}, Metres::of(2.0)}};
    const Plan plan = *make_plan(survey);
    std::map<int, bool> west;
    for (const SetPoint& set : plan.sets) west[set.visit_order] = plan.probes[set.probe].middle.east_m < middle;
    int changes = 0;
    for (auto it = std::next(west.begin()); it != west.end(); ++it) changes += it->second == std::prev(it)->second ? 0 : 1;
    EXPECT_EQ(changes, 1);
    for (const std::string& notice : plan.notices) EXPECT_EQ(notice.find("No gate is drawn"), std::string::npos) << notice;
}

TEST(Visits, sets_that_no_way_leads_to_are_named_and_still_have_their_place_in_the_order) {
    Survey survey = test::simulated_survey(11, 90);
    const LocalPoint begin = survey.walks.at(0).segments.at(0).front().at;
    const LocalPoint corner =
        std::max_element(survey.mounds.begin(), survey.mounds.end(), [&](const Mound& a, const Mound& b) {
            return distance_m(begin, a.plug) < distance_m(begin, b.plug);
        })->plug;
    const double half = 15.0;
    Polygon barn{{{corner + LocalVector{-half, -half}, corner + LocalVector{half, -half}, corner + LocalVector{half, half},
                   corner + LocalVector{-half, half}}},
                 {}};
    barn.outer.vertices.push_back(barn.outer.vertices.front());
    survey.ground.barriers = {{"wall", {barn.outer.vertices}}};
    const Plan plan = *make_plan(survey);
    std::string expected;
    std::set<int> visits;
    for (const SetPoint& set : plan.sets) {
        visits.insert(set.visit_order);
        if (contains(barn, plan.probes[set.probe].middle))
            expected += (expected.empty() ? "" : ", ") + std::to_string(set.rank);
    }
    ASSERT_FALSE(expected.empty());
    EXPECT_EQ(visits.size(), plan.sets.size());
    EXPECT_EQ(*visits.rbegin(), static_cast<int>(plan.sets.size()));
    const bool named = std::any_of(plan.notices.begin(), plan.notices.end(), [&](const std::string& notice) {
        return notice.find("No gate is drawn on the way to set") == 0 && notice.find(" " + expected + ":") != std::string::npos;
    });
    EXPECT_TRUE(named) << expected;
}

TEST(Visits, a_walk_that_began_outside_the_boundary_cuts_nothing_off) {
    Survey survey = test::simulated_survey(11, 60);
    double low = 1e9;
    double high = -1e9;
    for (const Mound& mound : survey.mounds)
        for (const double x : {mound.plug.east_m, mound.plug.north_m}) {
            low = std::min(low, x - 10.0);
            high = std::max(high, x + 10.0);
        }
    survey.ground.boundary.parts = {{{{{low, low}, {high, low}, {high, high}, {low, high}}}, {}}};
    survey.walks.at(0).segments = {{TrackPoint{{low - 30.0, low}, std::nullopt}, TrackPoint{{low, low}, std::nullopt}}};
    const Plan plan = *make_plan(survey);
    for (const std::string& notice : plan.notices) EXPECT_EQ(notice.find("No gate is drawn"), std::string::npos) << notice;
}

}  // namespace
}  // namespace plugside
