#include "core/mending/earlier_walk.h"

#include <gtest/gtest.h>

#include <cstdio>
#include <map>

#include "core/mending/drift_filter.h"
#include "tests/core/mending/planted_walks.h"

namespace plugside {
namespace {

struct Tally {
    double found = 0.0, planted = 0.0, wrong = 0.0, later = 0.0;
};

Tally fourteen_fields(const Receiver& receiver, double marked_later) {
    Tally tally;
    for (std::size_t number = 0; number < 14; ++number) {
        SimulatedField field = test::field_number(number, 100);
        Random random(77, number);
        record_with(field, receiver, random);
        FaultsToPlant wanted;
        wanted.marked_later = marked_later;
        wanted.later_receiver = receiver;
        const PlantedFaults planted = plant_faults(field, wanted, random);
        std::map<std::string, std::string> mound_of;
        for (const auto& list : {planted.marked_later, planted.pressed_twice, planted.met_again})
            for (const MarkedAgain& mark : list) mound_of[mark.mark] = mark.first;
        const WalkMarks walk = walk_marks(field.survey, {receiver.own_sd_m, receiver.shared_sd_m, receiver.shared_memory_s});
        for (const MarkedBefore& match : marked_before(field.survey, walk)) {
            const std::string& later = field.survey.mounds[walk.marks[match.later].mound].name;
            const std::string& earlier = field.survey.mounds[walk.marks[match.earlier].mound].name;
            const bool same =
                mound_of.contains(later) && mound_of[later] == (mound_of.contains(earlier) ? mound_of[earlier] : earlier);
            (same ? tally.found : tally.wrong) += 1.0;
        }
        tally.planted += static_cast<double>(planted.marked_later.size());
    }
    std::printf("marked on an earlier walk: %.0f of %.0f, wrongly %.0f\n", tally.found, tally.planted, tally.wrong);
    return tally;
}

TEST(EarlierWalk, MostMoundsMarkedAgainAreMatchedWhereReceiversDriftSlowly) {
    const Tally tally = fourteen_fields({0.1, 2.0, 1500.0}, 0.9);
    EXPECT_GE(tally.found, 0.75 * tally.planted);
    EXPECT_LT(tally.wrong, 0.03 * tally.planted);
}

TEST(EarlierWalk, NearlyAllAreMatchedWithGoodReceivers) {
    const Tally tally = fourteen_fields({0.1, 0.5, 1500.0}, 0.9);
    EXPECT_GE(tally.found, 0.9 * tally.planted);
    EXPECT_LT(tally.wrong, 0.02 * tally.planted);
}

TEST(EarlierWalk, AFastDriftLeavesFewMatchesAndFewWrongOnes) {
    const Tally tally = fourteen_fields({0.6, 3.0, 240.0}, 0.6);
    EXPECT_LT(tally.wrong, 0.03 * tally.planted);
}

TEST(EarlierWalk, MarksOfOtherGroundAreNotMatched) {
    for (std::size_t number = 0; number < 7; ++number) {
        SimulatedField field = test::field_number(number, 100);
        const SimulatedField other = test::field_number(number + 7, 300);
        const std::size_t next = field.survey.walks.size();
        field.survey.walks.push_back({"later", "later.gpx", {}});
        std::size_t later = 0;
        for (Mound mark : other.survey.mounds) {
            mark.walk = next;
            mark.name = "L" + std::to_string(later++);
            if (mark.time) *mark.time += std::chrono::hours(240);
            field.survey.mounds.push_back(mark);
        }
        const auto matches = marked_before(field.survey, walk_marks(field.survey));
        EXPECT_LE(matches.size(), later / 50) << number;
    }
}

TEST(EarlierWalk, OneVisitHasNoEarlierOne) {
    const SimulatedField field = test::field_number(4, 100);
    EXPECT_TRUE(marked_before(field.survey, walk_marks(field.survey)).empty());
}

TEST(DriftFilter, AnOffsetThatManyMarksAgreeOnIsTakenAndAStrayCandidateIsNot) {
    std::vector<DriftStep> steps;
    for (int k = 0; k < 20; ++k) {
        DriftStep step{k == 0 ? 0.0 : 20.0, 0.3, {}};
        step.candidates.push_back({static_cast<std::size_t>(k), {2.4, -1.2}, 5.0});
        step.candidates.push_back({static_cast<std::size_t>(100 + k), {0.37 * k - 3.0, 4.0 - 0.5 * k}, 5.0});
        steps.push_back(step);
    }
    const auto rests = follow_drift(steps, {2.0, 1500.0, 0.8});
    ASSERT_EQ(rests.size(), steps.size());
    for (std::size_t k = 0; k < rests.size(); ++k) {
        EXPECT_GT(rests[k][0].chance, 0.8) << k;
        EXPECT_NEAR(rests[k][0].offset.east_m, 2.4, 0.3);
        EXPECT_NEAR(rests[k][0].offset.north_m, -1.2, 0.3);
        EXPECT_LE(rests[k][0].chance + rests[k][1].chance, 1.0 + 1e-9);
    }
}

}  // namespace
}  // namespace plugside
