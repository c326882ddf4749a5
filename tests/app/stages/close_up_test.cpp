#include "app/stages/close_up.h"

#include <QSignalSpy>
#include <cmath>

#include "tests/app/application.h"
#include "tests/app/example_plan.h"

namespace plugside {
namespace {

class CloseUpTest : public OnScreen {
protected:
    CloseUpTest() : close_up_(choices_) {
        const ExampleField example = example_field();
        const ProbeSite& site = example.plan.probes[1];
        close_up_.resize(320, 240);
        close_up_.show_scene(close_up_scene(example.field, example.plan, site), {site.ladder.along, site.ladder.across},
                             false);
        close_up_.show();
    }

    Choices choices_;
    CloseUp close_up_;
};

TEST_F(CloseUpTest, ArrowKeysShiftTheLadderByOneTapeUnitAndFiveWithShift) {
    QSignalSpy accepted(&close_up_, &CloseUp::move_accepted);
    close_up_.begin_move();
    QTest::keyClick(&close_up_, Qt::Key_Up);
    QTest::keyClick(&close_up_, Qt::Key_Right);
    QTest::keyClick(&close_up_, Qt::Key_Right, Qt::ShiftModifier);
    EXPECT_NEAR(close_up_.place().along.value(), 0.35 + 0.0254, 1e-12);
    EXPECT_NEAR(close_up_.place().across.value(), 6.0 * 0.0254, 1e-12);
    QTest::keyClick(&close_up_, Qt::Key_Down);
    QTest::keyClick(&close_up_, Qt::Key_Return);
    ASSERT_EQ(accepted.count(), 1);
    EXPECT_FALSE(close_up_.moving());
    const auto place = accepted.front().front().value<LadderPlace>();
    EXPECT_NEAR(place.along.value(), 0.35, 1e-12);
    EXPECT_NEAR(place.across.value(), 6.0 * 0.0254, 1e-12);
}

TEST_F(CloseUpTest, InMetresTheTapeUnitIsTwoCentimetres) {
    choices_.use(LengthUnits::metres);
    close_up_.begin_move();
    QTest::keyClick(&close_up_, Qt::Key_Left);
    EXPECT_NEAR(close_up_.place().across.value(), -0.02, 1e-12);
}

TEST_F(CloseUpTest, EscapeGivesUpAndTheLadderIsWhereItWas) {
    QSignalSpy accepted(&close_up_, &CloseUp::move_accepted);
    QSignalSpy given_up(&close_up_, &CloseUp::move_given_up);
    close_up_.begin_move();
    QTest::keyClick(&close_up_, Qt::Key_Up);
    QTest::keyClick(&close_up_, Qt::Key_Escape);
    EXPECT_EQ(accepted.count(), 0);
    EXPECT_EQ(given_up.count(), 1);
    EXPECT_NEAR(close_up_.place().along.value(), 0.35, 1e-12);
}

TEST_F(CloseUpTest, DraggingSetsTheLadderDownOnAMarkOfTheTape) {
    close_up_.begin_move();
    QTest::mousePress(&close_up_, Qt::LeftButton, {}, {160, 120});
    QTest::mouseMove(&close_up_, {160, 90});
    QTest::mouseRelease(&close_up_, Qt::LeftButton, {}, {160, 90});
    const double inches = (close_up_.place().along - Metres::of(0.35)).inches();
    EXPECT_GT(inches, 0.5);
    EXPECT_NEAR(inches, std::round(inches), 1e-9);
}

TEST_F(CloseUpTest, OnThePlugSideTheFanLiesBehindThePersonAndTheLadderBeforeThem) {
    const ExampleField example = example_field();
    for (const ProbeSite& site : example.plan.probes) {
        const CloseUpScene scene = close_up_scene(example.field, example.plan, site);
        ASSERT_TRUE(scene.from.turn_degrees.has_value());
        EXPECT_NEAR(std::abs(*scene.from.turn_degrees), 180.0, 1e-9);
        EXPECT_GT(scene.planned.along.value(), 0.0);
        EXPECT_NEAR(scene.run_band_m, 1.645 * 0.08, 1e-12);
    }
    // nothing is moved unless moving was begun
    QTest::keyClick(&close_up_, Qt::Key_Up);
    EXPECT_NEAR(close_up_.place().along.value(), 0.35, 1e-12);
}

}  // namespace
}  // namespace plugside
