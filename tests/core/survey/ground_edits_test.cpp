#include "core/survey/ground_edits.h"

#include <gtest/gtest.h>
#include <rapidcheck.h>

#include <cmath>
#include <numbers>

namespace plugside {
namespace {

std::vector<LocalPoint> square(double west, double south, double side) {
    return {{west, south}, {west + side, south}, {west + side, south + side}, {west, south + side}};
}

Ground made(EditedGround edited) {
    EXPECT_TRUE(edited.has_value()) << (edited ? "" : edited.error());
    return edited.value_or(Ground{});
}

Ground field() { return made(with_shape({}, GroundKind::boundary, square(0, 0, 100))); }

constexpr GroundShape first_boundary{GroundKind::boundary, 0};

TEST(GroundEdits, shapes_are_added_last_of_their_kind) {
    Ground ground = field();
    ground = made(with_shape(ground, GroundKind::barrier, {{0, 50}, {100, 50}}));
    ground = made(with_shape(ground, GroundKind::crossing, {{20, 50}}));
    ground = made(with_shape(ground, GroundKind::gate, {{40, 50}}));
    ground = made(with_shape(ground, GroundKind::keep_clear, square(10, 10, 5)));
    ground = made(with_shape(ground, GroundKind::untreated, square(60, 60, 20)));
    EXPECT_EQ(shapes_of(ground).size(), 6U);
    EXPECT_EQ(ground.crossings.front().at, (LocalPoint{20, 50}));
    EXPECT_EQ(area_m2(area_of(ground, {GroundKind::untreated, 0})), 400.0);
}

TEST(GroundEdits, too_few_corners_are_refused_with_a_sentence) {
    EXPECT_NE(with_shape({}, GroundKind::boundary, {{0, 0}, {1, 1}}).error().find("three corners"), std::string::npos);
    EXPECT_NE(with_shape({}, GroundKind::barrier, {{0, 0}, {0, 0}}).error().find("two corners"), std::string::npos);
    EXPECT_FALSE(with_shape({}, GroundKind::gate, {}).has_value());
}

TEST(GroundEdits, a_double_click_and_a_closing_click_leave_no_corner_twice) {
    auto drawn = square(0, 0, 10);
    drawn.push_back(drawn.back());
    drawn.push_back(drawn.front());
    EXPECT_EQ(made(with_shape({}, GroundKind::boundary, drawn)).boundary.parts.front().outer.vertices.size(), 4U);
}

TEST(GroundEdits, corners_move_come_and_go) {
    Ground ground = field();
    ground = made(corner_added(ground, {first_boundary, 0, 3}, {0, 50}));
    EXPECT_EQ(ground.boundary.parts[0].outer.vertices.size(), 5U);
    EXPECT_EQ(ground.boundary.parts[0].outer.vertices[4], (LocalPoint{0, 50}));
    ground = made(corner_moved(ground, {first_boundary, 0, 4}, {-10, 50}));
    EXPECT_EQ(area_m2(ground.boundary), 10500.0);
    EXPECT_EQ(made(corner_removed(ground, {first_boundary, 0, 4})), field());
}

TEST(GroundEdits, the_last_three_corners_of_an_area_and_two_of_a_line_stay) {
    Ground ground = made(corner_removed(field(), {first_boundary, 0, 0}));
    EXPECT_NE(corner_removed(ground, {first_boundary, 0, 0}).error().find("remove it whole"), std::string::npos);
    ground = made(with_shape({}, GroundKind::barrier, {{0, 0}, {1, 0}}));
    EXPECT_FALSE(corner_removed(ground, {{GroundKind::barrier, 0}, 0, 0}).has_value());
}

TEST(GroundEdits, a_hole_is_cut_and_goes_with_its_last_corners) {
    Ground ground = made(with_hole(field(), first_boundary, square(10, 10, 10)));
    EXPECT_EQ(area_m2(ground.boundary), 9900.0);
    EXPECT_EQ(rings_of(ground, first_boundary), 2U);
    ground = made(corner_removed(ground, {first_boundary, 1, 0}));
    EXPECT_EQ(made(corner_removed(ground, {first_boundary, 1, 0})).boundary.parts[0].holes.size(), 0U);
    EXPECT_NE(with_hole(field(), first_boundary, square(200, 200, 5)).error().find("outside"), std::string::npos);
    EXPECT_NE(with_hole(field(), first_boundary, square(-10, -10, 200)).error().find("whole"), std::string::npos);
}

TEST(GroundEdits, a_line_from_edge_to_edge_splits_an_area_and_joining_gives_it_back) {
    const Ground split = made(split_along(field(), first_boundary, {{-5, 30}, {105, 30}}));
    ASSERT_EQ(split.boundary.parts.size(), 2U);
    EXPECT_NEAR(area_m2(split.boundary.parts[0]), 7000.0, 1e-6);
    EXPECT_NEAR(area_m2(split.boundary.parts[1]), 3000.0, 1e-6);
    const Ground whole = made(joined(split, first_boundary, {GroundKind::boundary, 1}));
    ASSERT_EQ(whole.boundary.parts.size(), 1U);
    EXPECT_NEAR(area_m2(whole.boundary), 10000.0, 1e-6);
    EXPECT_NE(split_along(field(), first_boundary, {{10, 30}, {20, 30}}).error().find("edge to edge"), std::string::npos);
}

TEST(GroundEdits, the_parts_of_a_split_keep_clear_area_keep_its_words) {
    Ground ground = made(with_shape({}, GroundKind::keep_clear, square(0, 0, 10)));
    ground =
        made(with_words(ground, {GroundKind::keep_clear, 0}, {"well house", "drinking water", KeepClearKind::well, {}}));
    ground = made(split_along(ground, {GroundKind::keep_clear, 0}, {{5, -1}, {5, 11}}));
    ASSERT_EQ(ground.keep_clear.size(), 2U);
    for (const KeepClearArea& area : ground.keep_clear) {
        EXPECT_EQ(area.name, "well house");
        EXPECT_EQ(area.kind, KeepClearKind::well);
    }
}

TEST(GroundEdits, a_barrier_is_split_at_a_place_and_joined_at_common_ends) {
    Ground ground = made(with_shape({}, GroundKind::barrier, {{0, 0}, {10, 0}, {10, 10}}));
    ground = made(split_along(ground, {GroundKind::barrier, 0}, {{4, 1}}));
    ASSERT_EQ(ground.barriers.size(), 2U);
    EXPECT_EQ(ground.barriers[0].line, (Polyline{{{0, 0}, {4, 0}}}));
    EXPECT_EQ(ground.barriers[1].line, (Polyline{{{4, 0}, {10, 0}, {10, 10}}}));
    ground = made(joined(ground, {GroundKind::barrier, 1}, {GroundKind::barrier, 0}));
    ASSERT_EQ(ground.barriers.size(), 1U);
    EXPECT_NEAR(length(ground.barriers[0].line).value(), 20.0, 1e-9);
    ground = made(with_shape(ground, GroundKind::barrier, {{50, 50}, {60, 50}}));
    EXPECT_NE(joined(ground, {GroundKind::barrier, 0}, {GroundKind::barrier, 1}).error().find("one place"),
              std::string::npos);
    EXPECT_FALSE(joined(ground, {GroundKind::barrier, 0}, {GroundKind::barrier, 0}).has_value());
}

TEST(GroundEdits, an_outline_that_crosses_itself_is_told_and_mended_only_when_asked) {
    const Ground ground = made(with_shape({}, GroundKind::boundary, {{0, 0}, {10, 10}, {10, 0}, {0, 10}}));
    const auto faults = faults_of(ground);
    ASSERT_EQ(faults.size(), 1U);
    EXPECT_NEAR(distance_m(faults[0].at, {5, 5}), 0.0, 1e-9);
    EXPECT_EQ(faults[0].sentence, "In this boundary the outline crosses itself.");
    const Ground whole = made(mended(ground, first_boundary));
    EXPECT_EQ(whole.boundary.parts.size(), 2U);
    EXPECT_NEAR(area_m2(whole.boundary), 50.0, 1e-9);
    EXPECT_TRUE(faults_of(whole).empty());
    EXPECT_TRUE(faults_of(field()).empty());
}

TEST(GroundEdits, a_band_covers_half_a_width_to_each_side) {
    const Ground ground = made(with_band({}, GroundKind::keep_clear, {{0, 0}, {100, 0}}, Metres::of(4.0)));
    EXPECT_NEAR(area_m2(ground.keep_clear.at(0).area), 400.0 + std::numbers::pi * 4.0, 0.1);
    EXPECT_FALSE(with_band({}, GroundKind::barrier, {{0, 0}, {1, 0}}, Metres::of(1.0)).has_value());
}

TEST(GroundEdits, the_hand_takes_the_nearest_corner_then_edge_then_the_smallest_area) {
    Ground ground = made(with_shape(field(), GroundKind::keep_clear, square(40, 40, 10)));
    EXPECT_EQ(nearest_corner(ground, {41, 40.5}, Metres::of(2))->corner.shape.kind, GroundKind::keep_clear);
    EXPECT_FALSE(nearest_corner(ground, {20, 20}, Metres::of(2)));
    EXPECT_EQ(nearest_edge(ground, {100.5, 70}, Metres::of(1))->at, (LocalPoint{100, 70}));
    EXPECT_EQ(shape_at(ground, {45, 45}, Metres::of(1))->kind, GroundKind::keep_clear);
    EXPECT_EQ(shape_at(ground, {70, 70}, Metres::of(1))->kind, GroundKind::boundary);
    EXPECT_FALSE(shape_at(ground, {170, 70}, Metres::of(1)));
}

TEST(GroundEdits, any_row_of_acts_gives_a_ground_whose_shapes_can_all_be_taken_hold_of) {
    EXPECT_TRUE(rc::check([] {
        Ground ground;
        const auto place = [] { return LocalPoint{1.0 * *rc::gen::inRange(0, 40), 1.0 * *rc::gen::inRange(0, 40)}; };
        const auto corners = [&] {
            std::vector<LocalPoint> drawn;
            for (int i = *rc::gen::inRange(0, 7); i > 0; --i) drawn.push_back(place());
            return drawn;
        };
        for (int act = *rc::gen::inRange(1, 25); act > 0; --act) {
            const Ground before = ground;
            const auto shapes = shapes_of(ground);
            const auto shape = [&] { return shapes[*rc::gen::inRange<std::size_t>(0, shapes.size())]; };
            EditedGround edited = ground;
            const int what = *rc::gen::inRange(0, 9);
            const auto kind = static_cast<GroundKind>(*rc::gen::inRange(0, 6));
            if (what == 0 || shapes.empty())
                edited = with_shape(ground, kind, corners());
            else if (what == 1)
                edited = without_shape(ground, shape());
            else if (what == 2)
                edited = split_along(ground, shape(), corners());
            else if (what == 3)
                edited = joined(ground, shape(), shape());
            else if (what == 4)
                edited = with_hole(ground, shape(), corners());
            else if (what == 5)
                edited = with_band(ground, kind, corners(), Metres::of(*rc::gen::inRange(0, 4)));
            else if (what == 6)
                edited = mended(ground, shape());
            else {
                const GroundShape of = shape();
                const std::size_t ring = *rc::gen::inRange<std::size_t>(0, rings_of(ground, of));
                const std::size_t corner = *rc::gen::inRange<std::size_t>(0, corners_of(ground, of, ring).size());
                edited = what == 7 ? corner_moved(ground, {of, ring, corner}, place())
                                   : corner_removed(ground, {of, ring, corner});
            }
            RC_ASSERT(ground == before);
            if (edited)
                ground = *edited;
            else
                RC_ASSERT(edited.error().ends_with("."));
            for (const GroundShape one : shapes_of(ground))
                for (std::size_t ring = 0; ring < rings_of(ground, one); ++ring)
                    RC_ASSERT(corners_of(ground, one, ring).size() >= (is_place(one.kind)  ? 1U
                                                                       : is_area(one.kind) ? 3U
                                                                                           : 2U));
        }
    }));
}

}  // namespace
}  // namespace plugside
