#include "app/drawing/ground_pen.h"

#include <gtest/gtest.h>

namespace plugside {
namespace {

constexpr Metres reach = Metres::of(0.5);

void click(GroundPen& pen, const Ground& ground, LocalPoint at) {
    pen.hover(ground, at, reach);
    pen.press();
}

TEST(GroundPen, draws_an_area_that_a_click_on_its_first_corner_closes) {
    GroundPen pen;
    pen.take(Stroke::boundary);
    for (const LocalPoint corner : {LocalPoint{0, 0}, LocalPoint{10, 0}, LocalPoint{10, 10}, LocalPoint{0, 10}})
        click(pen, {}, corner);
    pen.hover({}, {0.3, 0.2}, reach);
    EXPECT_TRUE(pen.closes());
    EXPECT_TRUE(pen.press());
    const auto ground = pen.finish({});
    ASSERT_TRUE(ground.has_value());
    EXPECT_EQ(area_m2(ground->boundary), 100.0);
    EXPECT_FALSE(pen.stroke());
}

TEST(GroundPen, reads_the_tape_while_it_draws) {
    GroundPen pen;
    pen.take(Stroke::keep_clear);
    click(pen, {}, {0, 0});
    click(pen, {}, {0, 3});
    pen.hover({}, {4, 3}, reach);
    const PenReading reading = pen.reading();
    EXPECT_DOUBLE_EQ(reading.leg->value(), 4.0);
    EXPECT_DOUBLE_EQ(reading.bearing->degrees(), 90.0);
    EXPECT_DOUBLE_EQ(reading.line.value(), 7.0);
    EXPECT_DOUBLE_EQ(reading.area_m2, 6.0);
}

TEST(GroundPen, snaps_to_a_corner_before_an_edge_and_to_nothing_out_of_reach) {
    const Ground ground = *with_shape({}, GroundKind::boundary, {{0, 0}, {10, 0}, {10, 10}, {0, 10}});
    GroundPen pen;
    pen.take(Stroke::barrier);
    pen.hover(ground, {9.7, 0.1}, reach);
    EXPECT_EQ(pen.tip(), (LocalPoint{10, 0}));
    pen.hover(ground, {5, 0.4}, reach);
    EXPECT_EQ(pen.tip(), (LocalPoint{5, 0}));
    EXPECT_TRUE(pen.snapped());
    pen.hover(ground, {5, 2}, reach);
    EXPECT_EQ(pen.tip(), (LocalPoint{5, 2}));
    EXPECT_FALSE(pen.snapped());
}

TEST(GroundPen, takes_legs_of_exact_length_and_bearing) {
    GroundPen pen;
    pen.take(Stroke::boundary);
    EXPECT_FALSE(pen.leg({Metres::of(10), Bearing::degrees(0)}));
    click(pen, {}, {0, 0});
    for (const double bearing : {0.0, 90.0, 180.0}) EXPECT_TRUE(pen.leg({Metres::of(10), Bearing::degrees(bearing)}));
    EXPECT_NEAR(area_m2(pen.finish({})->boundary), 100.0, 1e-9);
}

TEST(GroundPen, takes_corners_back_and_says_what_is_missing) {
    GroundPen pen;
    pen.take(Stroke::untreated);
    click(pen, {}, {0, 0});
    click(pen, {}, {5, 0});
    pen.take_corner_back();
    EXPECT_EQ(pen.corners().size(), 1U);
    EXPECT_NE(pen.finish({}).error().find("three corners"), std::string::npos);
    EXPECT_TRUE(pen.stroke().has_value()) << "the pen stays in hand";
}

TEST(GroundPen, a_gap_is_done_with_one_click) {
    GroundPen pen;
    pen.take(Stroke::gate);
    pen.hover({}, {3, 4}, reach);
    EXPECT_TRUE(pen.press());
    EXPECT_EQ(pen.finish({})->gates.front().at, (LocalPoint{3, 4}));
}

TEST(GroundPen, holes_and_splits_find_the_area_they_mean) {
    Ground ground = *with_shape({}, GroundKind::boundary, {{0, 0}, {100, 0}, {100, 100}, {0, 100}});
    ground = *with_shape(ground, GroundKind::keep_clear, {{40, 40}, {60, 40}, {60, 60}, {40, 60}});
    GroundPen pen;
    pen.take(Stroke::hole);
    for (const LocalPoint corner : {LocalPoint{10, 10}, LocalPoint{20, 10}, LocalPoint{20, 20}}) click(pen, ground, corner);
    const Ground holed = *pen.finish(ground);
    EXPECT_NEAR(area_m2(holed.boundary), 9950.0, 1e-6);
    pen.take(Stroke::split);
    click(pen, ground, {50, 35});
    click(pen, ground, {50, 65});
    const Ground split = *pen.finish(ground);
    EXPECT_EQ(split.keep_clear.size(), 2U);
    EXPECT_EQ(split.boundary.parts.size(), 1U);
    pen.take(Stroke::split);
    click(pen, ground, {70, 70});
    click(pen, ground, {75, 70});
    EXPECT_FALSE(pen.finish(ground).has_value());
}

}  // namespace
}  // namespace plugside
