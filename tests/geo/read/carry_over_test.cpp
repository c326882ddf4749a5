#include "geo/read/carry_over.h"

#include <gtest/gtest.h>

#include "geo/read/field_reader.h"
#include "geo/read/north_of_walk.h"
#include "geo/read/note_corrections.h"
#include "tests/geo/temporary_folder.h"

namespace plugside {
namespace {

using namespace testing_support;

const std::string table =
    "id,label,lat,lon,fan,soil\n"
    "1,A1,41.00010,-104.90010,90,180\n"
    "2,A2,41.00020,-104.90020,,270\n"
    "3,A3,41.00030,-104.90030,120,0\n";

class CarryOver : public testing::Test {
protected:
    FieldSurvey read(const std::vector<ColumnRole>& roles, std::optional<LocalFrame> plane = std::nullopt) {
        auto guess = guess_table(file_);
        EXPECT_TRUE(guess);
        guess->roles = roles;
        ReadChoices choices;
        choices.tables[file_] = *guess;
        choices.plane = std::move(plane);
        auto field = read_field({file_}, choices);
        EXPECT_TRUE(field) << (field ? "" : sentence(field.error()));
        return field.value_or(FieldSurvey{});
    }
    static constexpr ColumnRole none = ColumnRole::none, name = ColumnRole::name, lat = ColumnRole::latitude,
                                lon = ColumnRole::longitude, fan = ColumnRole::fan_bearing;
    TemporaryFolder folder_;
    std::filesystem::path file_ = folder_.file("marks.csv", table);
};

TEST_F(CarryOver, NamesFollowTheirMarksByPlace) {
    FieldSurvey before = read({name, none, lat, lon, fan, none});
    decide(before.survey, {{ProbeKind::between_mounds, "1", "3"}, SetChoice::kept, std::nullopt});
    before.survey.known.push_back({FactKind::same_system, {"1", "2"}, {}, {}, "", {}});
    answer_finding(
        before.survey,
        {"double mark: 2, 3", Answer::accepted, {MendKind::set_aside, {"2"}, {}, {}, 0.0, {}, {}, "stepped on", {}}});
    FieldSurvey again = read({none, name, lat, lon, fan, none}, before.frame);
    const CarriedOver carried = carry_over(before, again);
    EXPECT_EQ(carried.without_mark, 0U);
    EXPECT_FALSE(carried.as_before);
    EXPECT_EQ(again.survey.decisions.at(0).probe, (ProbeKey{ProbeKind::between_mounds, "A1", "A3"}));
    EXPECT_EQ(again.survey.known.at(0).marks, (std::vector<std::string>{"A1", "A2"}));
    EXPECT_EQ(again.survey.answers.at(0).finding, "double mark: A2, A3");
    EXPECT_EQ(again.survey.mounds.at(1).set_aside_because, "stepped on");
    EXPECT_GT(again.survey.revision, before.survey.revision);
}

TEST_F(CarryOver, TheSameReadingIsAsBeforeOnTheSamePlane) {
    FieldSurvey before = read({name, none, lat, lon, fan, none});
    decide(before.survey, {{ProbeKind::plug_side, "1", ""}, SetChoice::dropped, std::nullopt});
    FieldSurvey again = read({name, none, lat, lon, none, fan}, before.frame);
    EXPECT_TRUE(carry_over(before, again).as_before);
    EXPECT_EQ(again.survey.decisions, before.survey.decisions);
    EXPECT_TRUE(again.survey.mounds.at(1).fan.has_value());
}

TEST_F(CarryOver, WhatAMendSaysOfAPlaceMovesWithItsMark) {
    FieldSurvey before = read({name, none, lat, lon, fan, none});
    const LocalPoint there = before.survey.mounds[0].plug + LocalVector{2.0, 1.0};
    answer_finding(
        before.survey,
        {own_mend_id(MendKind::move, "1"), Answer::accepted, {MendKind::move, {"1"}, {there}, {}, 0.0, {}, {}, "", {}}});
    FieldSurvey again = read({name, none, lat, lon, fan, none}, LocalFrame::centred_on({-104.8, 41.1}));
    const CarriedOver carried = carry_over(before, again);
    EXPECT_FALSE(carried.as_before);
    const GeographicPoint was = before.frame.to_geographic(before.survey.mounds[0].plug);
    const GeographicPoint now = again.frame.to_geographic(again.survey.mounds[0].plug);
    EXPECT_NEAR(now.longitude_degrees, was.longitude_degrees, 3e-8);
    EXPECT_NEAR(now.latitude_degrees, was.latitude_degrees, 3e-8);
}

TEST_F(CarryOver, WhatWasSaidOfAMarkThatIsGoneWaits) {
    FieldSurvey before = read({name, none, lat, lon, fan, none});
    decide(before.survey, {{ProbeKind::plug_side, "gone", ""}, SetChoice::kept, std::nullopt});
    FieldSurvey again = read({name, none, lat, lon, fan, none}, before.frame);
    EXPECT_EQ(carry_over(before, again).without_mark, 1U);
    EXPECT_EQ(again.survey.decisions, before.survey.decisions);
}

TEST_F(CarryOver, CorrectionsOfNotesAreObeyedAnewByTheNotesReadNow) {
    file_ = folder_.file("noted.csv",
                         "id,label,lat,lon,fan,soil\n"
                         "1,gr,41.00010,-104.90010,90,180\n"
                         "2,gr,41.00020,-104.90020,,zz\n");
    FieldSurvey before = read({name, ColumnRole::note, lat, lon, fan, none});
    use_note_rules(before.survey, before.frame, {{"walk 1", "gr", "mole"}, {"walk 1", "zz", "fresh", "2"}});
    ASSERT_EQ(before.survey.mounds.at(0).kind, SignKind::mole);
    FieldSurvey again = read({none, name, lat, lon, fan, ColumnRole::note}, before.frame);
    carry_over(before, again);
    ASSERT_EQ(again.survey.note_rules.size(), 2U);
    EXPECT_EQ(again.survey.note_rules[0], before.survey.note_rules[0]);
    EXPECT_EQ(again.survey.note_rules[1].mark, again.survey.mounds.at(1).name);
    EXPECT_EQ(again.survey.mounds.at(0).kind, SignKind::gopher_mound);
    EXPECT_EQ(again.survey.mounds.at(1).freshness, Freshness::fresh);
    EXPECT_EQ(again.survey.answers.size(), 1U);
}

TEST_F(CarryOver, NorthIsToldAnewOfTheFansThatAreReadNow) {
    FieldSurvey before = read({name, none, lat, lon, fan, none});
    ASSERT_TRUE(tell_north(before.survey, 0, before.frame, North::magnetic_north));
    FieldSurvey again = read({name, none, lat, lon, none, fan}, before.frame);
    const Bearing bare = *again.survey.mounds.at(1).fan;
    carry_over(before, again);
    EXPECT_EQ(again.survey.walks.at(0).bearings_from, North::magnetic_north);
    ASSERT_EQ(again.survey.answers.size(), 1U);
    EXPECT_EQ(again.survey.answers[0].mend.marks.size(), 3U);
    EXPECT_EQ(again.survey.mounds.at(1).fan->degrees(), bare.turned(again.survey.answers[0].mend.turn_degrees).degrees());
    EXPECT_NE(again.survey.answers[0].mend.turn_degrees, 0.0);
}

}  // namespace
}  // namespace plugside
