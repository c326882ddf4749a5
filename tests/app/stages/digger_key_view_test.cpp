#include "app/stages/digger_key_view.h"

#include <QSignalSpy>
#include <QTest>
#include <set>

#include "app/stages/digger_picture.h"
#include "tests/app/application.h"
#include "tests/app/example_plan.h"

namespace plugside {
namespace {

class DiggerKeyTest : public OnScreen {
protected:
    DiggerKeyTest() { session_.adopt(example_field().field, {}); }
    [[nodiscard]] const Mound& mark(std::size_t i) const { return session_.field()->survey.mounds[i]; }

    FieldSession session_;
    Choices choices_;
    DiggerKeyView view_{session_, choices_};
};

// Follows every chain of answers to its end; returns how many ends there are.
int follow(DiggerKeyView& view, std::set<std::optional<SignKind>>& ends) {
    const std::size_t answers = digger_key()[*view.question()].answers.size();
    int count = 0;
    for (std::size_t number = 1; number <= answers; ++number) {
        view.answer(static_cast<int>(number));
        if (view.end() != nullptr) {
            ends.insert(view.end()->digger);
            ++count;
        } else {
            count += follow(view, ends);
        }
        view.back();
    }
    return count;
}

TEST_F(DiggerKeyTest, EveryChainOfAnswersEndsAndBackLeadsTheSameWay) {
    view_.ask_about("M001");
    std::set<std::optional<SignKind>> ends;
    EXPECT_EQ(follow(view_, ends), 12);
    EXPECT_EQ(view_.question(), 0U);
    EXPECT_TRUE(ends.contains(std::nullopt));
    for (const SignKind kind :
         {SignKind::gopher_mound, SignKind::surface_plug, SignKind::mole, SignKind::ground_squirrel, SignKind::vole})
        EXPECT_TRUE(ends.contains(kind)) << to_text(kind);
}

TEST_F(DiggerKeyTest, TheKindBecomesTheMarksAndWhatWasRecordedIsKeptAndUndone) {
    const auto before = session_.field()->survey.mounds;
    const QSignalSpy done(&view_, &DiggerKeyView::done);
    view_.ask_about("M001");
    view_.answer(1);  // a heap
    view_.answer(2);  // round
    view_.answer(2);  // its hole in the middle
    ASSERT_NE(view_.end(), nullptr);
    EXPECT_EQ(mark(0).kind, SignKind::gopher_mound) << "nothing is changed before it is taken";
    view_.take();
    EXPECT_EQ(done.count(), 1);
    EXPECT_EQ(mark(0).kind, SignKind::mole);
    ASSERT_TRUE(mark(0).recorded.has_value());
    EXPECT_EQ(mark(0).recorded->kind, SignKind::gopher_mound);
    session_.history().undo();
    EXPECT_EQ(session_.field()->survey.mounds, before);
    session_.history().redo();
    EXPECT_EQ(mark(0).kind, SignKind::mole);
}

TEST_F(DiggerKeyTest, WhatCannotBeToldChangesNothing) {
    const auto before = session_.field()->survey;
    view_.ask_about("M006");
    view_.answer(1);
    view_.answer(3);
    view_.answer(2);
    ASSERT_NE(view_.end(), nullptr);
    EXPECT_FALSE(view_.end()->digger.has_value());
    view_.take();
    EXPECT_EQ(session_.field()->survey, before);
    EXPECT_EQ(session_.history().count(), 0);
}

TEST_F(DiggerKeyTest, TheFindingThatAskedIsAnsweredWithTheSameAct) {
    Finding finding;
    finding.kind = FindingKind::other_digger;
    finding.marks = {"M005"};
    finding.id = finding_id(finding.kind, finding.marks);
    finding.mend = Mend{};
    finding.mend->kind = MendKind::sign;
    finding.mend->marks = finding.marks;
    finding.mend->sign = SignKind::vole;
    session_.tell_digger("M005", SignKind::mole, &finding);
    EXPECT_EQ(mark(4).kind, SignKind::mole);
    EXPECT_EQ(answer_to(session_.field()->survey, finding.id)->answer, Answer::refused);
    session_.history().undo();
    EXPECT_EQ(mark(4).kind, SignKind::gopher_mound);
    EXPECT_FALSE(session_.answered(finding.id));
    session_.tell_digger("M005", SignKind::vole, &finding);
    EXPECT_EQ(mark(4).kind, SignKind::vole);
    EXPECT_EQ(answer_to(session_.field()->survey, finding.id)->answer, Answer::accepted);
    EXPECT_EQ(session_.history().count(), 1);
}

TEST_F(DiggerKeyTest, NoTwoDrawingsAreAlike) {
    std::vector<QImage> drawn;
    for (const Theme theme : {Theme::light, Theme::sunlight})
        for (int i = 0; i <= static_cast<int>(DiggerPicture::flattened); ++i) {
            QImage image(180, 120, QImage::Format_RGB32);
            image.fill(Qt::white);
            QPainter painter(&image);
            draw_digger_picture(painter, QRectF(image.rect()), static_cast<DiggerPicture>(i), style_of(theme));
            painter.end();
            for (const QImage& other : drawn) EXPECT_NE(image, other) << i;
            drawn.push_back(image);
        }
}

}  // namespace
}  // namespace plugside
