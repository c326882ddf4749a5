#include <QSignalSpy>
#include <QTest>
#include <algorithm>
#include <random>

#include "app/session/field_session.h"
#include "app/stages/findings_view.h"
#include "tests/app/application.h"
#include "tests/app/example_plan.h"

namespace plugside {
namespace {

// The example field with its first marks pressed a second time three seconds later.
FieldSurvey field_with_second_presses(std::size_t presses) {
    FieldSurvey field = example_field().field;
    auto& mounds = field.survey.mounds;
    for (std::size_t i = 0; i < mounds.size(); ++i)
        mounds[i].time = UtcTime{std::chrono::seconds(1744290000 + 40 * static_cast<long long>(i))};
    for (std::size_t i = 0; i < presses; ++i) {
        Mound again = mounds[i];
        again.name += " again";
        again.plug = again.plug + LocalVector{0.03, -0.02};
        again.time = *again.time + std::chrono::seconds(3);
        mounds.push_back(again);
    }
    return field;
}

class AnswersTest : public OnScreen {
protected:
    void open(std::size_t presses) {
        session_.adopt(field_with_second_presses(presses), {});
        ASSERT_TRUE(QTest::qWaitFor([&] { return session_.findings() != nullptr; }, 120000));
    }
    [[nodiscard]] std::vector<Finding> doubles() const {
        std::vector<Finding> found;
        for (const Finding& finding : *session_.findings())
            if (finding.kind == FindingKind::double_mark) found.push_back(finding);
        return found;
    }
    [[nodiscard]] std::size_t set_aside() const {
        const auto& mounds = session_.field()->survey.mounds;
        return static_cast<std::size_t>(std::count_if(
            mounds.begin(), mounds.end(), [](const Mound& mound) { return mound.set_aside_because.has_value(); }));
    }

    FieldSession session_;
    Choices choices_;
};

TEST_F(AnswersTest, AnAcceptedFindingChangesTheMarksAndUndoneTheyAreAsRead) {
    open(3);
    const auto read = session_.field()->survey.mounds;
    const auto found = doubles();
    ASSERT_EQ(found.size(), 3U);
    session_.answer({found.front()}, Answer::accepted);
    EXPECT_EQ(set_aside(), 1U);
    EXPECT_TRUE(session_.answered(found.front().id));
    EXPECT_TRUE(session_.not_handed_out());
    session_.history().undo();
    EXPECT_EQ(session_.field()->survey.mounds, read);
    EXPECT_FALSE(session_.answered(found.front().id));
    session_.history().redo();
    EXPECT_EQ(set_aside(), 1U);
}

TEST_F(AnswersTest, ManyAreAnsweredInOneActOfTheHistory) {
    open(5);
    session_.answer(doubles(), Answer::accepted);
    EXPECT_EQ(set_aside(), 5U);
    EXPECT_EQ(session_.history().count(), 1);
    session_.history().undo();
    EXPECT_EQ(set_aside(), 0U);
}

TEST_F(AnswersTest, AnythingAnsweredAndUndoneInAnyOrderComesBackToWhatWasRead) {
    open(6);
    const auto read = session_.field()->survey;
    const auto found = *session_.findings();
    ASSERT_FALSE(found.empty());
    std::mt19937 generator(7);
    for (int step = 0; step < 40; ++step)
        session_.answer({found[generator() % found.size()]}, generator() % 3 == 0 ? Answer::refused : Answer::accepted);
    const auto answered = session_.field()->survey;
    while (session_.history().canUndo()) session_.history().undo();
    EXPECT_EQ(session_.field()->survey.mounds, read.mounds);
    EXPECT_EQ(session_.field()->survey.answers, read.answers);
    while (session_.history().canRedo()) session_.history().redo();
    EXPECT_EQ(session_.field()->survey.mounds, answered.mounds);
    EXPECT_EQ(session_.field()->survey.answers, answered.answers);
}

TEST_F(AnswersTest, TheViewGoesOnToTheNextFindingAfterAnAnswerAndTakesAllAlikeAtOnce) {
    open(4);
    FindingsView view(session_, choices_);
    const std::size_t all = view.open_findings();
    ASSERT_GE(all, 4U);
    ASSERT_NE(view.at_hand(), nullptr);
    const std::string first = view.at_hand()->id;
    view.refuse();
    EXPECT_EQ(view.open_findings(), all - 1);
    ASSERT_NE(view.at_hand(), nullptr);
    EXPECT_NE(view.at_hand()->id, first);
    while (view.at_hand()->kind != FindingKind::double_mark) view.next();
    const Probability sure = view.at_hand()->sure;
    view.accept_all_alike();
    for (const Finding& finding : doubles())
        if (finding.sure >= sure) {
            EXPECT_TRUE(session_.answered(finding.id)) << finding.id;
        }
}

TEST_F(AnswersTest, AFindingWithoutAMendCanOnlyBeRefused) {
    open(1);
    Finding only_to_look_at = session_.findings()->front();
    only_to_look_at.mend.reset();
    session_.answer({only_to_look_at}, Answer::accepted);
    EXPECT_FALSE(session_.answered(only_to_look_at.id));
    session_.answer({only_to_look_at}, Answer::refused);
    EXPECT_TRUE(session_.answered(only_to_look_at.id));
}

}  // namespace
}  // namespace plugside
