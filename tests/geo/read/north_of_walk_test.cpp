#include "geo/read/north_of_walk.h"

#include <gtest/gtest.h>

#include "geo/frame/declination.h"
#include "geo/read/numbers.h"

namespace plugside {
namespace {

const GeographicPoint place{-120.5, 38.25};

Mound mound(const std::string& name, const std::string& note, std::optional<double> fan, std::size_t walk = 0) {
    Mound mound;
    mound.name = name;
    mound.note = note;
    if (fan) mound.fan = Bearing::degrees(*fan);
    mound.time = parse_utc_time("2026-06-01T10:00:00Z");
    mound.walk = walk;
    return mound;
}

Survey survey() {
    Survey survey;
    survey.walks = {{"walk 1", "a.gpx", {}}, {"walk 2", "b.gpx", {}}};
    survey.mounds = {mound("M1", "fan 100", 100.0),        mound("M2", "fan 135T", 135.0),
                     mound("M3", "fan 80M", 92.7),         mound("M4", "fan at 3 o'clock", 45.0),
                     mound("M5", "crushed", std::nullopt), mound("M6", "SE", 135.0),
                     mound("M7", "fan 100", 100.0, 1)};
    return survey;
}

double fan_of(const Survey& survey, const std::string& name) {
    for (const Mound& mound : survey.mounds)
        if (mound.name == name) return mound.fan.value().degrees();
    ADD_FAILURE() << name;
    return -1.0;
}

const LocalFrame frame = LocalFrame::centred_on(place);
const double declination = *declination_degrees(place, *parse_utc_time("2026-06-01T10:00:00Z"));

TEST(NorthOfWalk, turns_the_bare_bearings_of_a_walk_told_to_be_magnetic_and_no_others) {
    Survey told = survey();
    ASSERT_TRUE(tell_north(told, 0, frame, North::magnetic_north).has_value());
    EXPECT_EQ(told.walks[0].bearings_from, North::magnetic_north);
    EXPECT_GT(told.revision, survey().revision);
    EXPECT_NEAR(fan_of(told, "M1"), 100.0 + declination, 1e-6);
    EXPECT_NEAR(fan_of(told, "M6"), 135.0 + declination, 1e-6);
    EXPECT_EQ(fan_of(told, "M2"), 135.0);
    EXPECT_EQ(fan_of(told, "M3"), 92.7);
    EXPECT_EQ(fan_of(told, "M4"), 45.0);
    EXPECT_EQ(fan_of(told, "M7"), 100.0);
    ASSERT_TRUE(told.mounds[0].recorded.has_value());
    EXPECT_EQ(told.mounds[0].recorded->fan->degrees(), 100.0);
}

TEST(NorthOfWalk, is_turned_once_and_back) {
    Survey told = survey();
    for (int i = 0; i < 2; ++i) ASSERT_TRUE(tell_north(told, 0, frame, North::magnetic_north).has_value());
    EXPECT_NEAR(fan_of(told, "M1"), 100.0 + declination, 1e-6);
    ASSERT_TRUE(tell_north(told, 0, frame, North::true_north).has_value());
    EXPECT_EQ(told.mounds, survey().mounds);
    EXPECT_TRUE(told.answers.empty());
}

// A plan handed out holds turned fans.
TEST(NorthOfWalk, can_be_told_otherwise_where_the_fans_came_in_turned) {
    Survey told = survey();
    told.walks[0].bearings_from = North::magnetic_north;
    ASSERT_TRUE(tell_north(told, 0, frame, North::magnetic_north).has_value());
    EXPECT_EQ(fan_of(told, "M1"), 100.0);
    ASSERT_TRUE(tell_north(told, 0, frame, North::true_north).has_value());
    EXPECT_NEAR(fan_of(told, "M1"), 100.0 - declination, 1e-6);
    ASSERT_TRUE(tell_north(told, 0, frame, North::magnetic_north).has_value());
    EXPECT_EQ(fan_of(told, "M1"), 100.0);
}

TEST(NorthOfWalk, leaves_a_fan_that_a_person_corrected) {
    Survey told = survey();
    Mend mend;
    mend.kind = MendKind::fan;
    mend.marks = {"M1"};
    mend.fan = Bearing::degrees(30.0);
    answer_finding(told, {own_mend_id(MendKind::fan, "M1"), Answer::accepted, mend});
    ASSERT_TRUE(tell_north(told, 0, frame, North::magnetic_north).has_value());
    EXPECT_EQ(fan_of(told, "M1"), 30.0);
}

TEST(NorthOfWalk, is_refused_for_years_that_the_model_does_not_know_and_changes_nothing) {
    Survey old = survey();
    for (Mound& mound : old.mounds) mound.time = parse_utc_time("2018-06-01T10:00:00Z");
    const Survey before = old;
    const auto told = tell_north(old, 0, frame, North::magnetic_north);
    ASSERT_FALSE(told.has_value());
    EXPECT_NE(sentence(told.error()).find("walk 1: found the year 2018.4"), std::string::npos) << sentence(told.error());
    EXPECT_EQ(old, before);
}

TEST(NorthOfWalk, says_what_it_turns) {
    const auto turn = turn_of_magnetic_walk(survey(), 0, frame);
    ASSERT_TRUE(turn.has_value() && turn->has_value());
    EXPECT_EQ((*turn)->mend.marks, (std::vector<std::string>{"M1", "M6"}));
    EXPECT_EQ((*turn)->sentence.rfind("The fans of 2 marks are turned by 12.", 0), 0U) << (*turn)->sentence;
    Survey none = survey();
    none.mounds.resize(0);
    EXPECT_FALSE(turn_of_magnetic_walk(none, 0, frame)->has_value());
}

TEST(NorthOfWalk, has_words_for_files) {
    for (const North north : {North::not_told, North::true_north, North::magnetic_north})
        EXPECT_EQ(north_from_text(to_text(north)), north);
    EXPECT_FALSE(north_from_text("grid").has_value());
}

}  // namespace
}  // namespace plugside
