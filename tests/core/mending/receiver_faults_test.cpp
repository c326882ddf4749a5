#include "core/mending/receiver_faults.h"

#include <gtest/gtest.h>

#include <set>

#include "core/mending/other_diggers.h"
#include "core/mending/outside_field.h"
#include "core/mending/sentences.h"
#include "core/simulation/random.h"
#include "tests/core/surveys.h"

namespace plugside {
namespace {

UtcTime at_second(int seconds) { return UtcTime{std::chrono::milliseconds{1744290000000 + 1000LL * seconds}}; }

// A walk to the east at 1 m/s with a point every 4 s; a mark every 20 s at the walker's place.
Survey straight_walk(int marks) {
    Survey survey;
    survey.walks.push_back({"walk 1", "walk.gpx", {{}}});
    for (int s = 0; s <= 20 * marks; s += 4) survey.walks[0].segments[0].push_back({{1.0 * s, 0.0}, at_second(s)});
    for (int i = 0; i < marks; ++i) {
        Mound mound = test::mound_at(20.0 * i, 0.3, 0.0);
        mound.name = "M" + std::to_string(i + 1);
        mound.time = at_second(20 * i);
        survey.mounds.push_back(mound);
    }
    return survey;
}

ReceiverFaults faults_in(const Survey& survey) { return receiver_faults(survey, walk_marks(survey)); }

TEST(ReceiverFaults, ACleanWalkHasNone) {
    const ReceiverFaults faults = faults_in(straight_walk(30));
    EXPECT_TRUE(faults.track.empty() && faults.jumped.empty() && faults.far.empty() && faults.frozen.empty());
}

TEST(ReceiverFaults, TwoPointsThatSpringAwayAndBackAreOneJumpOfTheTrack) {
    Survey survey = straight_walk(30);
    auto& points = survey.walks[0].segments[0];
    points[50].at.north_m += 60.0;
    points[51].at.north_m += 61.0;
    const ReceiverFaults faults = faults_in(survey);
    ASSERT_EQ(faults.track.size(), 1U);
    EXPECT_EQ(faults.track[0].begin, 50U);
    EXPECT_EQ(faults.track[0].end, 52U);
    EXPECT_NEAR(faults.track[0].out_m, std::hypot(60.0, 4.0), 1e-9);
}

TEST(ReceiverFaults, ARideToAnotherFieldIsNoJump) {
    Survey survey = straight_walk(30);
    auto& points = survey.walks[0].segments[0];
    for (std::size_t i = 50; i < points.size(); ++i) points[i].at.north_m += 300.0;
    for (std::size_t i = 10; i < survey.mounds.size(); ++i) survey.mounds[i].plug.north_m += 300.0;
    EXPECT_TRUE(faults_in(survey).track.empty());
}

TEST(ReceiverFaults, AMarkOffTheTrackIsPutWhereTheTrackWas) {
    Survey survey = straight_walk(30);
    survey.mounds[12].plug.north_m += 25.0;
    const ReceiverFaults faults = faults_in(survey);
    ASSERT_EQ(faults.jumped.size(), 1U);
    EXPECT_EQ(*faults.jumped[0].should_be, (LocalPoint{240.0, 0.0}));
}

TEST(ReceiverFaults, WithoutATrackAMarkThatNobodyReachesIsAJump) {
    Survey survey = straight_walk(30);
    survey.walks[0].segments.clear();
    survey.mounds[12].plug.north_m += 150.0;
    const ReceiverFaults faults = faults_in(survey);
    ASSERT_EQ(faults.jumped.size(), 1U);
    EXPECT_FALSE(faults.jumped[0].should_be.has_value());
}

TEST(ReceiverFaults, MarksInOnePlaceWhileTheTrackWentOnArePutOnTheTrack) {
    Survey survey = straight_walk(30);
    for (std::size_t i = 11; i < 14; ++i) survey.mounds[i].plug = survey.mounds[10].plug;
    const ReceiverFaults faults = faults_in(survey);
    ASSERT_EQ(faults.frozen.size(), 1U);
    EXPECT_EQ(faults.frozen[0].marks.size(), 4U);
    EXPECT_EQ(faults.frozen[0].seconds, 60.0);
    ASSERT_EQ(faults.frozen[0].should_be.size(), 4U);
    EXPECT_EQ(faults.frozen[0].should_be[3], (LocalPoint{260.0, 0.0}));
    EXPECT_TRUE(faults.jumped.empty());
}

TEST(ReceiverFaults, TwoMarksInOnePlaceAreNotAFrozenReceiver) {
    Survey survey = straight_walk(30);
    survey.walks[0].segments.clear();
    survey.mounds[11].plug = survey.mounds[10].plug;
    EXPECT_TRUE(faults_in(survey).frozen.empty());
}

TEST(ReceiverFaults, AMarkWithoutATimeFarFromTheTrackIsNamed) {
    Survey survey = straight_walk(30);
    for (Mound& mound : survey.mounds) mound.time.reset();
    survey.mounds[4].plug.north_m += 80.0;
    const ReceiverFaults faults = faults_in(survey);
    ASSERT_EQ(faults.far.size(), 1U);
    EXPECT_NEAR(faults.far[0].out_m, 80.3, 1e-6);
}

TEST(OutsideField, AMarkJustOutsideMayStandInsideAndOneFarOutDoesNot) {
    Survey survey = straight_walk(3);
    survey.mounds[0].plug = {5.0, -0.5};
    survey.mounds[1].plug = {5.0, -8.0};
    survey.mounds[2].plug = {5.0, 5.0};
    survey.ground.boundary.parts.push_back({{{{0.0, 0.0}, {10.0, 0.0}, {10.0, 10.0}, {0.0, 10.0}}}, {}});
    const auto outside = outside_field(survey, walk_marks(survey));
    ASSERT_EQ(outside.size(), 2U);
    EXPECT_NEAR(*outside[0].out_m, 0.5, 1e-12);
    EXPECT_EQ(*outside[0].edge, (LocalPoint{5.0, 0.0}));
    EXPECT_GT(outside[0].inside_chance, 0.5);
    EXPECT_LT(outside[1].inside_chance, 0.01);
}

TEST(OutsideField, AgreesWithTheFieldsOwnRuleOnARaggedBoundary) {
    Survey survey;
    Random random(5);
    Ring ring;
    for (int i = 0; i < 400; ++i) {
        const Bearing way = Bearing::degrees(0.9 * i);
        ring.vertices.push_back(LocalPoint{} + way.unit() * random.uniform(40.0, 60.0));
    }
    survey.ground.boundary.parts.push_back({ring, {}});
    for (int i = 0; i < 2000; ++i) {
        survey.mounds.push_back(test::mound_at(random.uniform(-70.0, 70.0), random.uniform(-70.0, 70.0)));
        survey.mounds.back().name = "M" + std::to_string(10000 + i);
    }
    std::set<std::string> named, expected;
    const WalkMarks walk = walk_marks(survey);
    for (const OutsideMark& mark : outside_field(survey, walk))
        named.insert(survey.mounds[walk.marks[mark.mark].mound].name);
    for (const Mound& mound : survey.mounds)
        if (!contains(survey.ground.boundary, mound.plug)) expected.insert(mound.name);
    EXPECT_EQ(named, expected);
}

TEST(OtherDiggers, HillsAStrideApartInALineAreAMoles) {
    Survey survey = straight_walk(20);
    for (int i = 0; i < 4; ++i) {  // 0.6-1 m apart: Dalquest 1948, "about a stride"
        Mound hill = test::mound_at(100.0 + 0.8 * i, 5.0 + 0.1 * i);
        hill.name = "Z" + std::to_string(i);
        hill.time = at_second(5000 + 15 * i);
        survey.mounds.push_back(hill);
    }
    const auto found = other_diggers(survey, walk_marks(survey));
    ASSERT_EQ(found.size(), 1U);
    EXPECT_EQ(found[0].marks.size(), 4U);
    EXPECT_EQ(found[0].kind, SignKind::mole);
}

TEST(OtherDiggers, MoundsWithAFanInALineAreNot) {
    Survey survey = straight_walk(1);
    for (int i = 0; i < 6; ++i) survey.mounds.push_back(test::mound_at(100.0 + 0.8 * i, 5.0, 90.0));
    for (std::size_t i = 0; i < survey.mounds.size(); ++i) survey.mounds[i].name = "M" + std::to_string(i);
    EXPECT_TRUE(other_diggers(survey, walk_marks(survey)).empty());
}

TEST(OtherDiggers, NotesAreReadInBothLanguagesAndDenialsHeeded) {
    EXPECT_EQ(digger_word("Open hole, no soil")->kind, SignKind::ground_squirrel);
    EXPECT_EQ(digger_word("agujero abierto")->kind, SignKind::ground_squirrel);
    EXPECT_EQ(digger_word("rat\xC3\xB3n?")->kind, SignKind::vole);
    EXPECT_EQ(digger_word("on a RIDGE")->kind, SignKind::mole);
    EXPECT_FALSE(digger_word("no open hole").has_value());
    EXPECT_FALSE(digger_word("not a mole").has_value());
    EXPECT_FALSE(digger_word("fan 135 fresh").has_value());
    EXPECT_FALSE(digger_word("").has_value());
    EXPECT_FALSE(digger_word("guacamole").has_value());
}

TEST(Sentences, SayLengthsTimesAndLists) {
    EXPECT_EQ(in_metres(0.44), "0.4 m");
    EXPECT_EQ(in_metres(12.4), "12 m");
    EXPECT_EQ(in_time(20.2), "20 s");
    EXPECT_EQ(in_time(400.0), "7 min");
    EXPECT_EQ(in_time(7200.0), "2 hours");
    EXPECT_EQ(in_time(14.0 * 86400.0), "14 days");
    EXPECT_EQ(in_degrees(1.2), "1 degree");
    EXPECT_EQ(listed({"A"}), "A");
    EXPECT_EQ(listed({"A", "B", "C"}), "A, B and C");
    EXPECT_EQ(listed({"A", "B", "C", "D"}, 3), "A, B and 2 more");
    EXPECT_EQ(time_of_day(at_second(5)), "2025-04-10 13:00:05 UTC");
    EXPECT_EQ(direction_in_words(Bearing::degrees(350.0)), "north");
    EXPECT_EQ(direction_in_words(Bearing::degrees(130.0)), "south-east");
}

}  // namespace
}  // namespace plugside
