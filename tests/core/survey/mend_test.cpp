#include "core/survey/mend.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include "core/survey/finding.h"
#include "core/survey/survey.h"

namespace plugside {
namespace {

Survey three_marks() {
    Survey survey;
    for (int i = 0; i < 3; ++i) {
        Mound mound;
        mound.name = "M" + std::to_string(i + 1);
        mound.plug = {2.0 * i, 1.0};
        mound.fan = Bearing::degrees(90.0 * i);
        survey.mounds.push_back(mound);
    }
    return survey;
}

Mend mend_of(MendKind kind, std::vector<std::string> marks) {
    Mend mend;
    mend.kind = kind;
    mend.marks = std::move(marks);
    mend.to = {{9.0, 9.0}, {8.0, 8.0}};
    mend.fan = Bearing::degrees(200.0);
    mend.turn_degrees = -12.0;
    mend.sign = SignKind::mole;
    mend.freshness = Freshness::crushed;
    mend.because = "marked by mistake";
    return mend;
}

TEST(Mend, TwoMarksOfOneMoundBecomeOneAndTheOtherIsSetAside) {
    Survey survey = three_marks();
    answer_finding(survey, {"double mark: M1, M2", Answer::accepted, mend_of(MendKind::one_mound, {"M1", "M2"})});
    EXPECT_EQ(survey.mounds[0].plug, (LocalPoint{9.0, 9.0}));
    EXPECT_EQ(why_not_used(survey, survey.mounds[0]), std::nullopt);
    EXPECT_EQ(why_not_used(survey, survey.mounds[1]), "the same mound as M1");
    EXPECT_EQ(survey.mounds[1].recorded->plug, survey.mounds[1].plug) << "nothing recorded is lost";
    EXPECT_EQ(survey.revision, 1U);
}

TEST(Mend, AMoundThatTwoMarksMakeIsPlacedBetterAndTakingItBackRestoresTheError) {
    Survey survey = three_marks();
    Mend one = mend_of(MendKind::one_mound, {"M1", "M2"});
    one.position_sd = Metres::of(0.3);
    answer_finding(survey, {"double mark: M1, M2", Answer::accepted, one});
    EXPECT_EQ(survey.mounds[0].position_sd, Metres::of(0.3));
    EXPECT_EQ(survey.mounds[0].recorded->position_sd, Metres::of(0.5));
    EXPECT_EQ(survey.mounds[1].position_sd, Metres::of(0.5));
    take_answer_back(survey, "double mark: M1, M2");
    EXPECT_EQ(survey.mounds, three_marks().mounds);
}

TEST(Mend, ARefusedMendChangesNothingAndClosesTheFinding) {
    Survey survey = three_marks();
    const auto before = survey.mounds;
    answer_finding(survey, {"reversed bearing: M2", Answer::refused, mend_of(MendKind::fan, {"M2"})});
    EXPECT_EQ(survey.mounds, before);
    ASSERT_NE(answer_to(survey, "reversed bearing: M2"), nullptr);
    EXPECT_EQ(answer_to(survey, "reversed bearing: M2")->answer, Answer::refused);
}

TEST(Mend, FansAreTurnedSetAndTakenAway) {
    Survey survey = three_marks();
    answer_finding(survey, {"a", Answer::accepted, mend_of(MendKind::turn_fans, {"M1", "M2", "M3"})});
    EXPECT_DOUBLE_EQ(survey.mounds[0].fan->degrees(), 348.0);
    EXPECT_DOUBLE_EQ(survey.mounds[2].fan->degrees(), 168.0);
    Mend none = mend_of(MendKind::fan, {"M3"});
    none.fan.reset();
    answer_finding(survey, {"b", Answer::accepted, none});
    EXPECT_EQ(survey.mounds[2].fan, std::nullopt);
    EXPECT_DOUBLE_EQ(survey.mounds[2].recorded->fan->degrees(), 180.0);
}

TEST(Mend, AMarkThatTheSurveyDoesNotHaveIsPassedOver) {
    Survey survey = three_marks();
    const auto before = survey.mounds;
    answer_finding(survey, {"x", Answer::accepted, mend_of(MendKind::set_aside, {"Q9"})});
    EXPECT_EQ(survey.mounds, before);
}

TEST(Mend, WordsOfKindsAnswersAndFindingsCanBeReadBack) {
    for (const MendKind kind : {MendKind::set_aside, MendKind::take_back, MendKind::one_mound, MendKind::move, MendKind::fan,
                                MendKind::turn_fans, MendKind::sign, MendKind::freshness})
        EXPECT_EQ(mend_kind_from_text(to_text(kind)), kind);
    for (const Answer answer : {Answer::accepted, Answer::refused}) EXPECT_EQ(answer_from_text(to_text(answer)), answer);
    for (int kind = 0; kind <= static_cast<int>(FindingKind::compass_offset); ++kind)
        EXPECT_EQ(finding_kind_from_text(to_text(static_cast<FindingKind>(kind))), static_cast<FindingKind>(kind));
    EXPECT_EQ(finding_id(FindingKind::double_mark, {"M014", "M012"}), "double mark: M014, M012");
    EXPECT_EQ(mend_kind_from_text("repair"), std::nullopt);
}

RC_GTEST_PROP(Mend, AnswersTakenBackInAnyOrderLeaveTheMarksAsRecorded, ()) {
    Survey survey = three_marks();
    const auto recorded = survey.mounds;
    const auto steps =
        *rc::gen::container<std::vector<std::pair<int, int>>>(rc::gen::pair(rc::gen::inRange(0, 8), rc::gen::inRange(0, 8)));
    for (const auto& [kind, marks] : steps) {
        std::vector<std::string> names;
        for (int i = 0; i < 3; ++i)
            if ((marks >> i & 1) != 0) names.push_back("M" + std::to_string(i + 1));
        answer_finding(survey, {std::to_string(kind), Answer::accepted, mend_of(static_cast<MendKind>(kind), names)});
        Survey again = survey;
        put_right(again);
        RC_ASSERT(again == survey);
    }
    while (!survey.answers.empty())
        take_answer_back(survey, survey.answers[*rc::gen::inRange<std::size_t>(0, survey.answers.size())].finding);
    RC_ASSERT(survey.mounds == recorded);
}

}  // namespace
}  // namespace plugside
