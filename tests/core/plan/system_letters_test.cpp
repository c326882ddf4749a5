#include "core/plan/system_letters.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <map>
#include <set>

#include "core/plan/make_plan.h"
#include "tests/core/surveys.h"

namespace plugside {
namespace {

using Groups = std::vector<std::vector<std::size_t>>;

Survey named_mounds(std::size_t count) { return test::survey_of(std::vector<Mound>(count, test::mound_at(0.0, 0.0))); }

std::vector<BurrowSystem> systems_of(const Groups& groups) {
    std::vector<BurrowSystem> systems(groups.size());
    for (std::size_t s = 0; s < groups.size(); ++s) systems[s].mounds = groups[s];
    return systems;
}

// The letters of `after`, in its order, when the plan before had `before`, lettered A, B, C ... in its order.
std::vector<std::string> letters_after(const Groups& before, const Groups& after) {
    const Survey survey = named_mounds(40);
    Plan plan;
    plan.systems = systems_of(before);
    keep_letters({}, survey, plan.systems);
    std::vector<BurrowSystem> systems = systems_of(after);
    keep_letters(letters_of(survey, plan), survey, systems);
    std::vector<std::string> letters;
    for (const BurrowSystem& system : systems) letters.push_back(system.letter);
    return letters;
}

using Letters = std::vector<std::string>;

TEST(SystemLetters, WithoutAnEarlierPlanAreInOrder) {
    std::vector<BurrowSystem> systems(28);
    keep_letters({}, named_mounds(1), systems);
    EXPECT_EQ(systems[0].letter, "A");
    EXPECT_EQ(systems[25].letter, "Z");
    EXPECT_EQ(systems[26].letter, "AA");
    EXPECT_EQ(systems[27].letter, "AB");
}

TEST(SystemLetters, FollowTheSystemsHoweverTheyAreOrdered) {
    EXPECT_EQ(letters_after({{0, 1, 2}, {3, 4}, {5}}, {{5}, {0, 1, 2}, {3, 4}}), (Letters{"C", "A", "B"}));
}

TEST(SystemLetters, OfASystemThatSplitsStayWithItsLargerPartAndTheOtherGetsAnUnusedOne) {
    EXPECT_EQ(letters_after({{0, 1, 2, 3, 4}, {5, 6}}, {{0, 1}, {2, 3, 4}, {5, 6}}), (Letters{"C", "A", "B"}));
    EXPECT_EQ(letters_after({{0, 1, 2, 3, 4, 5}}, {{0, 1}, {2, 3}, {4, 5}}), (Letters{"B", "C", "D"}))
        << "nobody is A any more";
}

TEST(SystemLetters, OfTwoThatBecomeOneAreTheLargersAndTheOtherLetterRests) {
    EXPECT_EQ(letters_after({{0, 1, 2}, {3, 4, 5, 6}}, {{0, 1, 2, 3, 4, 5, 6}, {7}}), (Letters{"B", "C"}));
}

TEST(SystemLetters, AreGivenByTheGreatestOverlapFirst) {
    // both hold half of A; the second also holds more of B than the first
    EXPECT_EQ(letters_after({{0, 1, 2, 3}, {4, 5, 6}}, {{0, 1}, {2, 3, 4, 5, 6}}), (Letters{"A", "B"}));
}

TEST(SystemLetters, AreNotToldByNamesThatSeveralMoundsBear) {
    Survey survey = named_mounds(4);
    for (Mound& mound : survey.mounds) mound.name = "mound";
    Plan plan;
    plan.systems = systems_of({{0, 1}, {2, 3}});
    keep_letters({}, survey, plan.systems);
    EXPECT_TRUE(letters_of(survey, plan).empty());
}

TEST(Counterpart, IsTheLaterSystemThatHoldsMostOfTheEarliersMounds) {
    const auto plan_of = [](const Groups& groups) {
        Plan plan;
        plan.systems = systems_of(groups);
        plan.mounds.resize(8);
        for (std::size_t s = 0; s < groups.size(); ++s)
            for (const std::size_t mound : groups[s]) plan.mounds[mound].system = s;
        return plan;
    };
    const Plan before = plan_of({{0, 1, 2, 3}, {4, 5}, {6}});
    const Plan after = plan_of({{4, 5, 0}, {1, 2, 3}});
    EXPECT_EQ(counterpart(before, 0, after), 1U);
    EXPECT_EQ(counterpart(before, 1, after), 0U);
    EXPECT_EQ(counterpart(before, 2, after), std::nullopt) << "its mound is in no system";
    Plan other = after;
    other.mounds.pop_back();
    EXPECT_EQ(counterpart(before, 0, other), std::nullopt);
}

std::map<std::set<std::size_t>, std::string> letter_of_members(const Plan& plan) {
    std::map<std::set<std::size_t>, std::string> letters;
    for (const BurrowSystem& system : plan.systems) letters[{system.mounds.begin(), system.mounds.end()}] = system.letter;
    return letters;
}

void expect_kept_where_members_are_the_same(const Plan& before, const Plan& after) {
    const auto now = letter_of_members(after);
    std::size_t same = 0;
    for (const auto& [members, letter] : letter_of_members(before)) {
        const auto found = now.find(members);
        if (found == now.end()) continue;
        ++same;
        EXPECT_EQ(found->second, letter);
    }
    EXPECT_GT(2 * same, before.systems.size());
    std::set<std::string> letters;
    for (const BurrowSystem& system : after.systems) EXPECT_TRUE(letters.insert(system.letter).second) << system.letter;
}

TEST(SystemLetters, DoNotChangeWhenAMoundIsNudgedOrABarrierDrawn) {
    for (const FieldKind kind : all_field_kinds()) {
        Survey survey = test::simulated_survey(61, 300, kind);
        const Plan before = *make_plan(survey);
        const SystemLetters letters = letters_of(survey, before);
        Survey nudged = survey;
        nudged.mounds[nudged.mounds.size() / 3].plug =
            nudged.mounds[nudged.mounds.size() / 3].plug + LocalVector{0.03, 0.04};
        expect_kept_where_members_are_the_same(before, *make_plan(nudged, {}, {}, {letters, {}}));
        const auto& largest = before.systems.front().outline.parts.front().outer.vertices;
        survey.ground.barriers.push_back({"ditch", {{largest.front(), largest[largest.size() / 2]}}});
        expect_kept_where_members_are_the_same(before, *make_plan(survey, {}, {}, {letters, {}}));
    }
}

}  // namespace
}  // namespace plugside
