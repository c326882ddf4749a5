#include "app/canvas/view_transform.h"

#include <gtest/gtest.h>

#include <cmath>
#include <random>

namespace plugside {
namespace {

constexpr int cases = 2000;

class Draw {
public:
    explicit Draw(unsigned seed) : generator_(seed) {}
    double between(double low, double high) { return std::uniform_real_distribution<double>(low, high)(generator_); }
    LocalPoint place() { return {between(-5000.0, 5000.0), between(-5000.0, 5000.0)}; }
    ViewTransform view() {
        const double up = between(-1.0, 1.0) < 0.0 ? 0.0 : between(0.0, 360.0);
        return {place(), std::exp(between(std::log(0.01), std::log(400.0))), QSizeF(between(200, 2000), between(200, 1500)), up};
    }

private:
    std::mt19937 generator_;
};

TEST(ViewTransform, APlaceComesBackFromTheScreenWhereItWas) {
    Draw draw(11);
    for (int i = 0; i < cases; ++i) {
        const ViewTransform view = draw.view();
        const LocalPoint place = draw.place();
        const LocalPoint back = view.to_local(view.to_screen(place));
        EXPECT_NEAR(back.east_m, place.east_m, 1e-8);
        EXPECT_NEAR(back.north_m, place.north_m, 1e-8);
    }
}

TEST(ViewTransform, ZoomingLeavesTheGroundUnderTheCursorWhereItIs) {
    Draw draw(12);
    for (int i = 0; i < cases; ++i) {
        const ViewTransform view = draw.view();
        const QPointF cursor(draw.between(0.0, view.size().width()), draw.between(0.0, view.size().height()));
        const ViewTransform zoomed = view.zoomed(draw.between(0.3, 3.0), cursor);
        EXPECT_LT(distance_m(zoomed.to_local(cursor), view.to_local(cursor)), 1e-7);
    }
}

TEST(ViewTransform, DraggingMovesTheGroundWithTheHand) {
    Draw draw(13);
    for (int i = 0; i < cases; ++i) {
        const ViewTransform view = draw.view();
        const LocalPoint held = draw.place();
        const QPointF by(draw.between(-400.0, 400.0), draw.between(-400.0, 400.0));
        const QPointF moved = view.panned(by).to_screen(held) - view.to_screen(held);
        EXPECT_NEAR(moved.x(), by.x(), 1e-4);
        EXPECT_NEAR(moved.y(), by.y(), 1e-4);
    }
}

TEST(ViewTransform, AnOlderPictureIsPlacedWhereItsGroundIsSeenNow) {
    Draw draw(14);
    for (int i = 0; i < cases; ++i) {
        const ViewTransform drawn = draw.view();
        ViewTransform now = drawn.zoomed(draw.between(0.5, 2.0), {10.0, 20.0}).panned({31.0, -17.0});
        if (i % 3 == 0) now = now.turned_to(draw.between(0.0, 360.0));
        const LocalPoint place = drawn.to_local({draw.between(0.0, 300.0), draw.between(0.0, 300.0)});
        const QPointF placed = now.placing(drawn).map(drawn.to_screen(place));
        EXPECT_NEAR(placed.x(), now.to_screen(place).x(), 1e-6);
        EXPECT_NEAR(placed.y(), now.to_screen(place).y(), 1e-6);
    }
}

TEST(ViewTransform, NorthIsUpAndEastIsRight) {
    const ViewTransform view({0.0, 0.0}, 10.0, {400.0, 300.0});
    EXPECT_EQ(view.to_screen({0.0, 0.0}), QPointF(200.0, 150.0));
    EXPECT_EQ(view.to_screen({1.0, 0.0}), QPointF(210.0, 150.0));
    EXPECT_EQ(view.to_screen({0.0, 1.0}), QPointF(200.0, 140.0));
    EXPECT_DOUBLE_EQ(view.bearing_of_screen_step({0.0, -5.0})->degrees(), 0.0);
    EXPECT_DOUBLE_EQ(view.bearing_of_screen_step({5.0, 0.0})->degrees(), 90.0);
    EXPECT_DOUBLE_EQ(view.bearing_of_screen_step({0.0, 5.0})->degrees(), 180.0);
    EXPECT_FALSE(view.bearing_of_screen_step({0.0, 0.0}).has_value());
}

TEST(ViewTransform, TurnedToTheEastEastIsUpAndNorthIsLeft) {
    const ViewTransform view({0.0, 0.0}, 10.0, {400.0, 300.0}, 90.0);
    const QPointF north = view.to_screen({0.0, 1.0}), east = view.to_screen({1.0, 0.0});
    EXPECT_NEAR(north.x(), 190.0, 1e-9);
    EXPECT_NEAR(north.y(), 150.0, 1e-9);
    EXPECT_NEAR(east.x(), 200.0, 1e-9);
    EXPECT_NEAR(east.y(), 140.0, 1e-9);
    EXPECT_NEAR(view.on_screen(Bearing::degrees(90.0)).degrees(), 0.0, 1e-9);
    EXPECT_NEAR(view.bearing_of_screen_step({0.0, -5.0})->degrees(), 90.0, 1e-9);
    EXPECT_TRUE(view.ground().meets(ViewTransform({0.0, 0.0}, 10.0, {2.0, 2.0}).ground()));
    EXPECT_NEAR(view.ground().width().value(), 30.0, 1e-9);
    EXPECT_NEAR(view.ground().height().value(), 40.0, 1e-9);
}

TEST(ViewTransform, FittingShowsAllOfTheBoxAndSinglePlacesAtAReadableScale) {
    GroundBox box;
    box.add({0.0, 0.0});
    box.add({200.0, 100.0});
    for (const double up : {0.0, 30.0, 90.0, 200.0}) {
        const ViewTransform view = ViewTransform::fitting(box, {800.0, 600.0}, 40.0, up);
        for (const LocalPoint corner : {LocalPoint{0.0, 0.0}, LocalPoint{200.0, 100.0}})
            EXPECT_TRUE(view.screen().adjusted(39.0, 39.0, -39.0, -39.0).contains(view.to_screen(corner))) << up;
    }
    GroundBox single;
    single.add({5.0, 5.0});
    EXPECT_NEAR(ViewTransform::fitting(single, {800.0, 600.0}, 0.0).pixels_per_metre(), 20.0, 1e-9);
    EXPECT_GT(ViewTransform::fitting(GroundBox{}, {800.0, 600.0}, 40.0).pixels_per_metre(), 1.0);
}

}  // namespace
}  // namespace plugside
