// The tape, the glass and the turned map in the window, by mouse and by keys alone.
#include "app/window/main_window.h"
#include "tests/app/application.h"

namespace plugside {
namespace {

class MapHand : public OnScreen {
protected:
    void SetUp() override {
        const std::filesystem::path sample = std::filesystem::path(PLUGSIDE_SOURCE_DIR) / "sample-projects" / "creek-meadow";
        window_.open_files({sample / "walk.gpx"});
        ASSERT_TRUE(QTest::qWaitFor([&] { return window_.session().plan_is_current(); }, 120000));
        window_.resize(1280, 800);
        window_.show();
        window_.activateWindow();
        ASSERT_TRUE(QTest::qWaitForWindowActive(&window_));
    }
    void press(Qt::Key key, Qt::KeyboardModifiers modifiers = {}) {
        QWidget* focus = QApplication::focusWidget();
        QTest::keyClick(focus ? focus : &window_, key, modifiers);
    }
    void click(QPoint at) {
        QTest::mouseMove(&window_.map(), at);
        QTest::mouseClick(&window_.map(), Qt::LeftButton, {}, at, 600);
    }

    MainWindow window_;
};

TEST_F(MapHand, TheTapeReadsWhatLiesBetweenTwoPlacesOnTheGround) {
    window_.choices().use(LengthUnits::metres);
    press(Qt::Key_Comma);
    ASSERT_EQ(window_.map().tool(), &window_.tape());
    const ViewTransform view = window_.map().view();
    click({60, 700});
    QTest::mouseMove(&window_.map(), QPoint(160, 700));
    ASSERT_EQ(window_.tape().places().size(), 1U);
    const auto& frame = window_.session().field()->frame;
    const LocalPoint from = view.to_local({60.0, 700.0}), to = view.to_local({160.0, 700.0});
    EXPECT_NEAR(distance_m(window_.tape().places()[0], from), 0.0, 1e-9);
    const QString words = window_.tape().reading_words();
    EXPECT_TRUE(words.startsWith(QString::fromStdString(tape_reading(Metres::of(distance_m(from, to)), LengthUnits::metres))))
        << words.toStdString();
    const long bearing = std::lround(frame.true_bearing(*Bearing::along(to - from), from).degrees());
    EXPECT_TRUE(words.contains(QStringLiteral("%1°").arg(bearing))) << words.toStdString();
    press(Qt::Key_Escape);
    EXPECT_EQ(window_.map().tool(), nullptr);
    EXPECT_TRUE(window_.tape().places().empty());
    EXPECT_EQ(window_.session().history().count(), 0);
}

TEST_F(MapHand, TheTapeIsLaidByKeysAloneAndTheStepsToolComesBack) {
    press(Qt::Key_2);
    MapTool* drawing = window_.map().tool();
    press(Qt::Key_Comma);
    press(Qt::Key_Space);
    for (int i = 0; i < 5; ++i) press(Qt::Key_Right);
    press(Qt::Key_Space);
    press(Qt::Key_Up);
    ASSERT_EQ(window_.tape().places().size(), 2U);
    EXPECT_TRUE(window_.tape().reading_words().contains(QStringLiteral("in all"))) << window_.tape().reading_words().toStdString();
    press(Qt::Key_Backspace);
    EXPECT_EQ(window_.tape().places().size(), 1U);
    press(Qt::Key_Comma);
    EXPECT_EQ(window_.map().tool(), drawing);
}

TEST_F(MapHand, TheTapeSnapsToAPlug) {
    press(Qt::Key_Comma);
    const LocalPoint plug = window_.session().field()->survey.mounds[20].plug;
    const QPointF at = window_.map().view().to_screen(plug);
    click(at.toPoint());
    ASSERT_EQ(window_.tape().places().size(), 1U);
    const auto nearest = window_.map().plug_near(window_.map().view().to_local(QPointF(at.toPoint())), Metres::of(50.0));
    ASSERT_TRUE(nearest);
    EXPECT_EQ(window_.tape().places()[0], *nearest);
}

TEST_F(MapHand, TheMapTurnsToTheWayWalkedAndBack) {
    const LocalPoint middle = window_.map().view().to_local(window_.map().view().screen().center());
    press(Qt::Key_Period);
    const double up = window_.map().view().up_degrees();
    EXPECT_NE(up, 0.0);
    EXPECT_NEAR(distance_m(window_.map().view().to_local(window_.map().view().screen().center()), middle), 0.0, 1e-6);
    press(Qt::Key_Period);
    EXPECT_EQ(window_.map().view().up_degrees(), 0.0);
}

TEST_F(MapHand, AltAndAnArrowGoToTheNextMarkThatWay) {
    press(Qt::Key_M, Qt::ControlModifier);
    press(Qt::Key_Space);
    const auto& mounds = window_.session().field()->survey.mounds;
    for (const Qt::Key key : {Qt::Key_Right, Qt::Key_Up, Qt::Key_Left, Qt::Key_Down}) {
        ASSERT_TRUE(window_.choices().mound());
        const LocalPoint from = mounds[*window_.choices().mound()].plug;
        press(key, Qt::AltModifier);
        const LocalVector way = mounds[*window_.choices().mound()].plug - from;
        if (way == LocalVector{}) continue;  // nothing lies that way
        const double ahead = key == Qt::Key_Right ? way.east_m : key == Qt::Key_Left ? -way.east_m
                             : key == Qt::Key_Up  ? way.north_m
                                                  : -way.north_m;
        EXPECT_GE(ahead, 0.7 * way.length_m());
    }
}

TEST_F(MapHand, TheGlassShowsTheGroundUnderTheCursorLarger) {
    const LocalPoint plug = window_.session().field()->survey.mounds[20].plug;
    const QPoint at = window_.map().view().to_screen(plug).toPoint();
    QTest::mouseMove(&window_.map(), at);
    ASSERT_TRUE(QTest::qWaitFor([&] { return window_.session().looked_back() && window_.map().settled(); }, 120000));
    window_.map().grab();
    ASSERT_TRUE(QTest::qWaitFor([&] { return window_.map().settled(); }, 120000));
    const QImage before = window_.map().grab().toImage();
    press(Qt::Key_Q);
    const QImage with = window_.map().grab().toImage();
    int changed = 0;
    for (int y = 0; y < with.height(); ++y)
        for (int x = 0; x < with.width(); ++x) {
            if (with.pixel(x, y) == before.pixel(x, y)) continue;
            ++changed;
            ASSERT_LE(std::hypot(x - at.x(), y - at.y()), 260.0);  // the glass, or the note beside the mark
        }
    EXPECT_GT(changed, 500);
    press(Qt::Key_Escape);
    EXPECT_FALSE(window_.map().magnifies());
}

}  // namespace
}  // namespace plugside
