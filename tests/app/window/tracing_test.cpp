// Lines that are there already become the ground's: traced whole or in part, by mouse and by keys; a band about a line.
#include "app/window/main_window.h"
#include "core/geometry/polyline.h"
#include "tests/app/application.h"
#include "tests/geo/temporary_folder.h"

namespace plugside {
namespace {

using testing_support::TemporaryFolder;

class Tracing : public OnScreen {
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
        const LocalFrame& frame = window_.session().field()->frame;
        const auto coordinates = [&](const std::vector<LocalPoint>& line) {
            std::string text;
            for (const LocalPoint place : line) {
                const GeographicPoint at = frame.to_geographic(place);
                char pair[80];
                std::snprintf(pair, sizeof pair, "%s[%.9f,%.9f]", text.empty() ? "" : ",", at.longitude_degrees,
                              at.latitude_degrees);
                text += pair;
            }
            return text;
        };
        const std::string farm =
            R"({"type":"FeatureCollection","features":[{"type":"Feature","properties":{"name":"ditch"},"geometry":{"type":"LineString","coordinates":[)" +
            coordinates({{-60, 0}, {0, 0}, {60, 0}}) +
            R"(]}},{"type":"Feature","properties":{"name":"yard"},"geometry":{"type":"Polygon","coordinates":[[)" +
            coordinates({{-50, 20}, {50, 20}, {50, 60}, {-50, 60}, {-50, 20}}) + "],[" +
            coordinates({{-10, 30}, {10, 30}, {10, 40}, {-10, 40}, {-10, 30}}) + "]]}}]}";
        layer_ = folder_.file("farm.geojson", farm);
    }
    static bool wait_for(const std::function<bool()>& done) { return QTest::qWaitFor(done, 120000); }
    void press(Qt::Key key, Qt::KeyboardModifiers modifiers = {}) {
        QWidget* focus = QApplication::focusWidget();
        QTest::keyClick(focus ? focus : &window_, key, modifiers);
    }
    void click(LocalPoint at) {
        const QPoint pixel = window_.map().view().to_screen(at).toPoint();
        QTest::mouseMove(&window_.map(), pixel);
        QTest::mouseClick(&window_.map(), Qt::LeftButton, {}, pixel, 600);
    }
    void trace_layer() {
        press(Qt::Key_R);
        ASSERT_TRUE(window_.tracing().active());
        const std::size_t tracks = window_.tracing().lines().size();
        window_.tracing().open(layer_);
        ASSERT_TRUE(wait_for([&] { return window_.tracing().lines().size() == tracks + 2; }));
    }
    const Ground& ground() { return window_.session().field()->survey.ground; }

    TemporaryFolder folder_;
    std::filesystem::path layer_;
    MainWindow window_;
};

TEST_F(Tracing, AWholeLineBecomesABarrierInTwoActsAndIsTakenBack) {
    trace_layer();
    click({-40, 0});
    press(Qt::Key_D);
    ASSERT_EQ(ground().barriers.size(), 1U);
    EXPECT_NEAR(length(ground().barriers[0].line).value(), 120.0, 0.01);
    press(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_TRUE(ground().barriers.empty());
}

TEST_F(Tracing, APieceBetweenTwoPlacesIsAsLongAsThatPiece) {
    trace_layer();
    click({-40, 0});
    click({30, 0});
    EXPECT_FALSE(window_.tracing().is_whole());
    press(Qt::Key_D);
    ASSERT_EQ(ground().barriers.size(), 1U);
    const double pixel_m = 1.0 / window_.map().view().pixels_per_metre();
    EXPECT_NEAR(length(ground().barriers[0].line).value(), 70.0, 2.0 * pixel_m);
    EXPECT_EQ(ground().barriers[0].line.vertices.size(), 3U);
}

TEST_F(Tracing, AnOutlineBecomesTheBoundaryWithItsHole) {
    trace_layer();
    click({-50, 45});
    press(Qt::Key_B);
    ASSERT_EQ(ground().boundary.parts.size(), 1U);
    EXPECT_EQ(ground().boundary.parts[0].holes.size(), 1U);
    EXPECT_NEAR(area_m2(ground().boundary), 100.0 * 40.0 - 20.0 * 10.0, 0.1);
}

TEST_F(Tracing, AnOutlineIsFollowedTheOtherWayRoundByKey) {
    trace_layer();
    click({-50, 45});
    click({-50, 30});
    const double shorter = length(Polyline{window_.tracing().way()}).value();
    press(Qt::Key_I);
    const double longer = length(Polyline{window_.tracing().way()}).value();
    EXPECT_LT(shorter, 20.0);
    EXPECT_NEAR(shorter + longer, 280.0, 0.01);
}

TEST_F(Tracing, ATrackIsTracedByKeysAlone) {
    press(Qt::Key_R);
    ASSERT_FALSE(window_.tracing().lines().empty());
    const auto& track = window_.tracing().lines().front().line.vertices;
    window_.map().setFocus();
    // to where the track begins, from the middle of the map
    const QPointF start = window_.map().view().to_screen(track.front());
    QPointF at = window_.map().view().screen().center();
    const auto go = [&](Qt::Key key, QPointF by, int times) {
        for (int i = 0; i < times; ++i) press(key);
        at += by * times;
    };
    go(start.x() < at.x() ? Qt::Key_Left : Qt::Key_Right, {start.x() < at.x() ? -8.0 : 8.0, 0.0},
       int(std::abs(start.x() - at.x()) / 8.0));
    go(start.y() < at.y() ? Qt::Key_Up : Qt::Key_Down, {0.0, start.y() < at.y() ? -8.0 : 8.0},
       int(std::abs(start.y() - at.y()) / 8.0));
    press(Qt::Key_Space);
    ASSERT_TRUE(window_.tracing().picked());
    press(Qt::Key_D);
    EXPECT_EQ(ground().barriers.size(), 1U);
    press(Qt::Key_Escape);
    EXPECT_FALSE(window_.tracing().active());
}

TEST_F(Tracing, WhatCannotBeReadIsSaidAndNothingIsLost) {
    press(Qt::Key_R);
    window_.tracing().open(folder_.file("no.geojson", "{\"type\":\"nothing\"}"));
    ASSERT_TRUE(wait_for([&] { return !window_.slip().notice().isEmpty(); }));
    EXPECT_TRUE(window_.slip().notice().contains(QStringLiteral("no.geojson"))) << window_.slip().notice().toStdString();
    EXPECT_TRUE(window_.tracing().active());
}

TEST_F(Tracing, ABandAboutALineIsAsWideAsIsTypedAndKeepsItsName) {
    trace_layer();
    click({-40, 0});
    press(Qt::Key_D);
    press(Qt::Key_Escape);
    window_.drawing().pick(GroundShape{GroundKind::barrier, 0});
    window_.drawing().use_words({"north ditch", "", KeepClearKind::other, Metres::of(1.0)});
    window_.choices().use(LengthUnits::metres);
    press(Qt::Key_L);
    QLineEdit& band = window_.slip().ground().band();
    ASSERT_TRUE(band.hasFocus());
    QTest::keyClicks(&band, QStringLiteral("6 m"));
    press(Qt::Key_Return);
    ASSERT_EQ(ground().keep_clear.size(), 1U);
    EXPECT_EQ(ground().keep_clear[0].name, "north ditch");
    // a line of 120 m and a disc of 3 m about its ends, which is drawn with .9984 of its area
    EXPECT_NEAR(area_m2(ground().keep_clear[0].area), 120.0 * 6.0 + 3.14159265 * 9.0 * 0.9984, 0.2);
    EXPECT_EQ(ground().barriers.size(), 1U);
    window_.drawing().pick(GroundShape{GroundKind::barrier, 0});
    press(Qt::Key_L);
    QTest::keyClicks(&band, QStringLiteral("wide"));
    press(Qt::Key_Return);
    EXPECT_TRUE(window_.slip().notice().contains(QStringLiteral("no width")));
    EXPECT_EQ(ground().keep_clear.size(), 1U);
}

}  // namespace
}  // namespace plugside
