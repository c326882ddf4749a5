#include "core/mending/double_marks.h"

#include <gtest/gtest.h>

#include "tests/core/mending/planted_walks.h"
#include "tests/core/surveys.h"

namespace plugside {
namespace {

UtcTime at_second(double seconds) {
    return UtcTime{std::chrono::milliseconds{1744290000000 + std::llround(seconds * 1000.0)}};
}

// Mounds 2 m apart, one every 20 s.
Survey timed_run(std::size_t mounds) {
    Survey survey = test::straight_run(mounds);
    for (std::size_t i = 0; i < mounds; ++i) survey.mounds[i].time = at_second(20.0 * static_cast<double>(i));
    return survey;
}

Mound again(const Survey& survey, std::size_t of, double seconds_later, double east_m, const std::string& name) {
    Mound mark = survey.mounds[of];
    mark.name = name;
    mark.time = *mark.time + std::chrono::milliseconds(std::llround(1000.0 * seconds_later));
    mark.plug.east_m += east_m;
    return mark;
}

std::vector<std::set<std::string>> groups_in(const Survey& survey, const PlaceError& usual = {}) {
    const WalkMarks walk = walk_marks(survey, usual);
    std::vector<std::set<std::string>> names;
    for (const MarkGroup& group : double_marks(survey, walk)) {
        names.emplace_back();
        for (const std::size_t mark : group.marks) names.back().insert(survey.mounds[walk.marks[mark].mound].name);
    }
    return names;
}

TEST(DoubleMarks, ASecondPressWithinSecondsIsOneMound) {
    Survey survey = timed_run(20);
    survey.mounds.push_back(again(survey, 7, 4.0, 0.4, "X1"));
    EXPECT_EQ(groups_in(survey), (std::vector<std::set<std::string>>{{"M8", "X1"}}));
}

TEST(DoubleMarks, ThreeMarksOfOneMoundAreOneGroupAndTheFirstWithAFanStands) {
    Survey survey = timed_run(20);
    survey.mounds.push_back(again(survey, 7, 3.0, 0.3, "X1"));
    survey.mounds.push_back(again(survey, 7, 6.0, -0.2, "X2"));
    survey.mounds[7].fan.reset();
    const WalkMarks walk = walk_marks(survey);
    const auto groups = double_marks(survey, walk);
    ASSERT_EQ(groups.size(), 1U);
    ASSERT_EQ(groups.front().marks.size(), 3U);
    EXPECT_EQ(survey.mounds[walk.marks[groups.front().marks.front()].mound].name, "X1");
    EXPECT_NEAR(groups.front().mean.at.east_m, survey.mounds[7].plug.east_m + 0.1 / 3.0, 1e-9);
}

TEST(DoubleMarks, NeighboursAtTheWalksOwnPaceAreNot) { EXPECT_TRUE(groups_in(timed_run(40)).empty()); }

TEST(DoubleMarks, AMoundMetAgainIsToldByAReceiverThatHardlyDrifts) {
    Survey survey = timed_run(20);
    survey.mounds.push_back(again(survey, 7, 500.0, 0.05, "X1"));
    EXPECT_EQ(groups_in(survey, {0.1, 0.05, 600.0}), (std::vector<std::set<std::string>>{{"M8", "X1"}}));
    // with an ordinary one another mound is as likely
    for (Mound& mound : survey.mounds) mound.shared_sd.reset();
    EXPECT_TRUE(groups_in(survey).empty());
}

TEST(DoubleMarks, NothingIsSaidOfFewerThanTwoMarks) {
    EXPECT_TRUE(groups_in({}).empty());
    EXPECT_TRUE(groups_in(timed_run(1)).empty());
}

TEST(DoubleMarks, MarksWithoutATimeAreJudgedByPlaceAndFan) {
    Survey survey = timed_run(20);
    survey.mounds.push_back(again(survey, 7, 0.0, 0.02, "X1"));
    for (Mound& mound : survey.mounds) mound.time.reset();
    EXPECT_EQ(groups_in(survey, {0.1, 0.1, 600.0}), (std::vector<std::set<std::string>>{{"M8", "X1"}}));
}

// Of mounds met again minutes later, with a receiver that has drifted by a share of the mounds' spacing by then.
struct Met {
    double found = 0.0, planted = 0.0, falsely = 0.0, marks = 0.0;
};
Met met_again(double drift_in_spacings) {
    Met met;
    for (std::size_t number = 0; number < 14; ++number) {
        SimulatedField field = test::field_number(number, 100);
        Random random(77, number);
        const double spacing_m = walk_marks(field.survey).spacing_m;
        const double sd_m = drift_in_spacings * spacing_m / std::sqrt(2.0);
        const Receiver receiver{0.3 * sd_m, 0.954 * sd_m, 100.0};
        record_with(field, receiver, random);
        FaultsToPlant wanted;
        wanted.pressed_twice = wanted.reversed = 0.0;
        wanted.jumped_marks = wanted.frozen_stretches = wanted.marks_outside = 0;
        const PlantedFaults planted = plant_faults(field, wanted, random);
        const auto groups = groups_in(field.survey, {receiver.own_sd_m, receiver.shared_sd_m, receiver.shared_memory_s});
        std::set<std::set<std::string>> right;
        for (const MarkedAgain& mark : planted.met_again) right.insert({mark.mark, mark.first});
        for (const auto& group : groups) (right.contains(group) ? met.found : met.falsely) += 1.0;
        met.planted += static_cast<double>(right.size());
        met.marks += static_cast<double>(field.survey.mounds.size());
    }
    return met;
}

TEST(DoubleMarks, MoundsMetAgainAreFoundWhereTheReceiverHasDriftedByATenthOfTheSpacing) {
    const Met met = met_again(0.1);
    EXPECT_GE(met.found, 0.95 * met.planted) << met.found << " of " << met.planted;
    EXPECT_LT(met.falsely, 0.01 * met.marks) << met.falsely;
}

TEST(DoubleMarks, WhereItHasDriftedByHalfASpacingFewAreAccused) {
    const Met met = met_again(0.5);
    EXPECT_LT(met.falsely, 0.01 * met.marks) << met.falsely;
}

}  // namespace
}  // namespace plugside
