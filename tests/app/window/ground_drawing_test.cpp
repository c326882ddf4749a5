// The Ground step in the window: shapes drawn, moved, named, removed and taken back, by mouse and by keys alone.
#include "app/window/main_window.h"
#include "tests/app/application.h"

namespace plugside {
namespace {

class GroundDrawing : public OnScreen {
protected:
    void SetUp() override {
        const std::filesystem::path sample = std::filesystem::path(PLUGSIDE_SOURCE_DIR) / "sample-projects" / "creek-meadow";
        window_.open_files({sample / "walk.gpx"});
        ASSERT_TRUE(wait_for([&] { return window_.session().plan_is_current(); }));
        window_.resize(1280, 800);
        window_.show();
        window_.activateWindow();
        ASSERT_TRUE(QTest::qWaitForWindowActive(&window_));
        press(Qt::Key_2);
        ASSERT_EQ(window_.choices().step(), Step::ground);
    }
    static bool wait_for(const std::function<bool()>& done) { return QTest::qWaitFor(done, 120000); }
    void press(Qt::Key key, Qt::KeyboardModifiers modifiers = {}) {
        QWidget* focus = QApplication::focusWidget();
        QTest::keyClick(focus ? focus : &window_, key, modifiers);
    }
    // Clicks far enough apart that two are never a double click.
    void click(QPoint at) {
        QTest::mouseMove(&window_.map(), at);
        QTest::mouseClick(&window_.map(), Qt::LeftButton, {}, at, 600);
    }
    const Ground& ground() { return window_.session().field()->survey.ground; }

    MainWindow window_;
};

TEST_F(GroundDrawing, ABoundaryOfEightCornersTakesTenActs) {
    const QList<QPoint> corners{{100, 200}, {200, 120}, {350, 110}, {480, 180},
                                {500, 320}, {400, 450}, {220, 460}, {120, 360}};
    int acts = 1;
    press(Qt::Key_B);
    for (const QPoint corner : corners) {
        click(corner);
        ++acts;
    }
    QTest::mouseDClick(&window_.map(), Qt::LeftButton, {}, corners.back());
    ++acts;
    ASSERT_EQ(ground().boundary.parts.size(), 1U);
    EXPECT_EQ(ground().boundary.parts[0].outer.vertices.size(), 8U);
    EXPECT_LE(acts, 12);
    press(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_TRUE(ground().boundary.empty());
    press(Qt::Key_Y, Qt::ControlModifier);
    EXPECT_EQ(ground().boundary.parts.size(), 1U);
}

TEST_F(GroundDrawing, EdgesAreDrawnByKeysAlone) {
    press(Qt::Key_B);
    press(Qt::Key_Space);
    for (int i = 0; i < 10; ++i) press(Qt::Key_Right);
    press(Qt::Key_Space);
    for (int i = 0; i < 10; ++i) press(Qt::Key_Down);
    press(Qt::Key_Space);
    press(Qt::Key_Return);
    ASSERT_EQ(ground().boundary.parts.size(), 1U);
    const double side = window_.map().view().ground_length(80.0).value();
    EXPECT_NEAR(area_m2(ground().boundary), 0.5 * side * side, 1e-6);
}

TEST_F(GroundDrawing, AnEdgeOfOneMetreIsDrawnInOneMetre) {
    press(Qt::Key_D);
    press(Qt::Key_Space);
    press(Qt::Key_N);
    QTest::keyClicks(QApplication::focusWidget(), QStringLiteral("1 m 90"));
    press(Qt::Key_Return);
    window_.map().setFocus();
    press(Qt::Key_Return);
    ASSERT_EQ(ground().barriers.size(), 1U);
    EXPECT_NEAR(length(ground().barriers[0].line).value(), 1.0, 1e-9);
    EXPECT_NEAR(Bearing::along(ground().barriers[0].line.vertices[1] - ground().barriers[0].line.vertices[0])->degrees(),
                90.0, 1e-6);
}

TEST_F(GroundDrawing, ACornerIsDraggedAndAnEdgeGivesANewOne) {
    press(Qt::Key_K);
    for (const QPoint corner : {QPoint(200, 200), QPoint(300, 200), QPoint(300, 300)}) click(corner);
    press(Qt::Key_Return);
    ASSERT_EQ(ground().keep_clear.size(), 1U);
    const auto drag = [&](QPoint from, QPoint to) {
        QTest::mousePress(&window_.map(), Qt::LeftButton, {}, from);
        QTest::mouseMove(&window_.map(), to);
        QTest::mouseRelease(&window_.map(), Qt::LeftButton, {}, to);
    };
    drag({300, 300}, {260, 320});
    EXPECT_NEAR(distance_m(ground().keep_clear[0].area.outer.vertices[2], window_.map().view().to_local({260, 320})), 0.0,
                1e-6);
    drag({250, 200}, {250, 160});
    EXPECT_EQ(ground().keep_clear[0].area.outer.vertices.size(), 4U);
    press(Qt::Key_Delete);
    EXPECT_EQ(ground().keep_clear[0].area.outer.vertices.size(), 3U) << "the corner in hand goes, not the shape";
    window_.drawing().pick(GroundShape{GroundKind::keep_clear, 0});
    press(Qt::Key_Delete);
    EXPECT_TRUE(ground().keep_clear.empty());
    for (int i = 0; i < 5; ++i) press(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(ground(), Ground{});
}

TEST_F(GroundDrawing, WhatCannotBeDoneIsSaidInASentence) {
    press(Qt::Key_B);
    click({200, 200});
    press(Qt::Key_Return);
    EXPECT_TRUE(ground().boundary.empty());
    EXPECT_NE(window_.slip().notice().indexOf(QStringLiteral("three corners")), -1);
}

TEST_F(GroundDrawing, ABarrierIsLookedAtWhileItIsDrawnAndNoRunOfTheLookCrossesIt) {
    NearbyPreview& preview = window_.drawing().preview();
    press(Qt::Key_D);
    click({420, 60});
    QTest::mouseMove(&window_.map(), QPoint(420, 660));
    ASSERT_TRUE(wait_for([&] { return preview.picture() && preview.picture()->asked == preview.asked(); }));
    const auto picture = preview.picture();
    EXPECT_TRUE(picture->plan.first_look);
    ASSERT_FALSE(picture->plan.systems.empty());
    const LocalPoint north_end = window_.map().view().to_local({420, 60});
    const LocalPoint south_end = window_.map().view().to_local({420, 660});
    ASSERT_FALSE(picture->plan.runs.empty());
    for (const MainRun& run : picture->plan.runs) {
        const LocalPoint from = picture->plan.mounds[run.from_mound].take_off;
        const LocalPoint to = picture->plan.mounds[run.to_mound].take_off;
        if ((from.east_m < north_end.east_m) == (to.east_m < north_end.east_m)) continue;
        const double share = (north_end.east_m - from.east_m) / (to.east_m - from.east_m);
        const double crossing_north_m = from.north_m + share * (to.north_m - from.north_m);
        EXPECT_FALSE(crossing_north_m < north_end.north_m && crossing_north_m > south_end.north_m);
    }
    EXPECT_TRUE(ground().barriers.empty()) << "only looked at";
    EXPECT_TRUE(window_.session().plan_is_current());
    press(Qt::Key_Escape);
    EXPECT_EQ(preview.picture(), nullptr);
}

TEST_F(GroundDrawing, APlanThatWasMadeBeforeTheGroundChangedIsNotCurrent) {
    press(Qt::Key_D);
    click({200, 200});
    click({400, 400});
    press(Qt::Key_Return);
    EXPECT_FALSE(window_.session().plan_is_current());
    EXPECT_TRUE(wait_for([&] { return window_.session().plan_is_current(); }));
}

}  // namespace
}  // namespace plugside
