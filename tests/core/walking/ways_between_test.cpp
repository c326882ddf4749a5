#include "core/walking/ways_between.h"

#include <gtest/gtest.h>

#include <cmath>

#include "tests/core/surveys.h"
#include "tests/core/walking/walking_fields.h"

namespace plugside {
namespace {

Polygon rectangle(double west, double south, double east, double north) {
    return {{{{west, south}, {east, south}, {east, north}, {west, north}}}, {}};
}

Ground wall_across(std::vector<Gap> gates = {}) {
    Ground ground;
    ground.barriers = {{"ditch", {{{0, -30}, {0, 40}}}}};
    ground.gates = std::move(gates);
    return ground;
}

double metres(const Ground& ground, LocalPoint from, LocalPoint to, const WalkingWayOptions& options = {}) {
    const WalkingWays ways(ground, options);
    return WaysBetween(ways, {from, to}).metres(0, 1);
}

TEST(WaysBetween, are_the_shortest_of_a_full_visibility_graph_on_two_hundred_random_fields) {
    int bent = 0;
    for (std::uint64_t seed = 1; seed <= 200; ++seed) {
        std::mt19937_64 random(seed);
        Ground ground;
        ground.barriers = test::random_barriers(2 + static_cast<int>(seed % 7), 100.0, random);
        const std::vector<LocalPoint> places = test::random_places(6, 100.0, random);
        const WalkingWays ways(ground);
        WaysBetween between(ways, places);
        const test::FullVisibility full(ground.barriers);
        for (std::size_t a = 0; a < places.size(); ++a)
            for (std::size_t b = a + 1; b < places.size(); ++b) {
                const double found = between.metres(a, b);
                const double exact = full.metres(places[a], places[b]);
                ASSERT_EQ(std::isfinite(found), std::isfinite(exact)) << "seed " << seed << ", " << a << " to " << b;
                if (!std::isfinite(exact)) continue;
                const auto way = between.way(a, b);
                ASSERT_TRUE(way);
                const double berths = 4.0 * WalkingWays::corner_berth_m * static_cast<double>(way->vertices.size() - 2);
                EXPECT_GE(found, exact - 1e-9) << "seed " << seed << ", " << a << " to " << b;
                EXPECT_LE(found, exact + berths + 1e-9) << "seed " << seed << ", " << a << " to " << b;
                if (way->vertices.size() > 2) ++bent;
            }
    }
    EXPECT_GT(bent, 500);
}

TEST(WaysBetween, the_course_is_as_long_as_is_said_and_meets_no_wall) {
    std::mt19937_64 random(8);
    Ground ground;
    ground.barriers = test::random_barriers(12, 100.0, random);
    const WalkingWays ways(ground);
    WaysBetween between(ways, test::random_places(20, 100.0, random));
    for (std::size_t a = 0; a < 20; ++a)
        for (std::size_t b = 0; b < 20; ++b) {
            const auto way = between.way(a, b);
            ASSERT_EQ(way.has_value(), std::isfinite(between.metres(a, b)));
            if (!way) continue;
            EXPECT_NEAR(length(*way).value(), between.metres(a, b), 1e-9);
            EXPECT_EQ(between.metres(a, b), between.metres(b, a));
            for (std::size_t i = 1; i < way->vertices.size(); ++i)
                EXPECT_TRUE(a == b || ways.straight(way->vertices[i - 1], way->vertices[i]));
        }
}

TEST(WaysBetween, where_nothing_stands_in_the_way_it_is_straight) {
    EXPECT_DOUBLE_EQ(metres({}, {0, 0}, {30, 40}), 50.0);
    EXPECT_DOUBLE_EQ(metres(wall_across(), {1, 0}, {31, 40}), 50.0);
    EXPECT_EQ(metres(wall_across(), {5, 5}, {5, 5}), 0.0);
}

TEST(WaysBetween, a_wall_is_gone_around_at_its_nearer_end_and_a_gate_is_gone_through) {
    const double around = std::hypot(10.0, 30.0) + std::hypot(10.0, 30.0);
    EXPECT_NEAR(metres(wall_across(), {-10, 0}, {10, 0}), around, 0.1);
    EXPECT_NEAR(metres(wall_across({{"gate", {0, 10}, Metres::of(2.0)}}), {-10, 0}, {10, 0}), 2.0 * std::hypot(10.0, 9.0),
                0.05);
    EXPECT_DOUBLE_EQ(metres(wall_across({{"gate", {0, 0}, Metres::of(2.0)}}), {-10, 0}, {10, 0}), 20.0);
    Ground culvert = wall_across();
    culvert.crossings = {{"culvert", {0, 0}, Metres::of(4.0)}};
    EXPECT_NEAR(metres(culvert, {-10, 0}, {10, 0}), around, 0.1) << "a crossing is for runs";
}

TEST(WaysBetween, keep_inside_the_boundary_and_around_its_holes) {
    Ground ground;
    ground.boundary.parts = {{{{{0, 0}, {30, 0}, {30, 10}, {10, 10}, {10, 30}, {0, 30}}}, {}}};
    EXPECT_NEAR(metres(ground, {5, 28}, {28, 5}), std::hypot(5.0, 18.0) + std::hypot(18.0, 5.0), 0.05);
    EXPECT_NEAR(metres(ground, {5, 28}, {28, 5}, {.stay_inside = false}), std::hypot(23.0, 23.0), 1e-9);
    ground.boundary.parts = {{{{{0, 0}, {30, 0}, {30, 30}, {0, 30}}}, {{{{10, 5}, {20, 5}, {20, 25}, {10, 25}}}}}};
    EXPECT_NEAR(metres(ground, {5, 8}, {25, 8}), 2.0 * std::hypot(5.0, 3.0) + 10.0, 0.05);
}

TEST(WaysBetween, go_around_buildings_and_through_other_keep_clear_areas_unless_told_otherwise) {
    Ground ground;
    ground.keep_clear = {{"barn", "", KeepClearKind::building, rectangle(-5, -10, 5, 10)}};
    const double around = 2.0 * std::hypot(15.0, 10.0) + 10.0;
    EXPECT_NEAR(metres(ground, {-20, 0}, {20, 0}), around, 0.1);
    EXPECT_EQ(metres(ground, {-20, 0}, {20, 0}, {.keep_clear = KeepClearWalk::through_all}), 40.0);
    ground.keep_clear[0].kind = KeepClearKind::play_area;
    EXPECT_EQ(metres(ground, {-20, 0}, {20, 0}), 40.0);
    EXPECT_NEAR(metres(ground, {-20, 0}, {20, 0}, {.keep_clear = KeepClearWalk::around_all}), around, 0.1);
    ground.gates = {{"west door", {-5, 0}, Metres::of(1.0)}, {"east door", {5, 0}, Metres::of(1.0)}};
    EXPECT_EQ(metres(ground, {-20, 0}, {20, 0}, {.keep_clear = KeepClearWalk::around_all}), 40.0);
}

TEST(WaysBetween, there_is_none_into_a_closed_area_and_groups_say_who_can_meet) {
    Ground ground;
    ground.keep_clear = {{"barn", "", KeepClearKind::building, rectangle(-5, -10, 5, 10)}};
    const WalkingWays ways(ground);
    WaysBetween between(ways, {{-20, 0}, {0, 0}, {20, 0}, {1, 1}});
    EXPECT_TRUE(std::isinf(between.metres(0, 1)));
    EXPECT_FALSE(between.way(0, 1));
    EXPECT_DOUBLE_EQ(between.metres(1, 3), std::sqrt(2.0));
    EXPECT_EQ(between.groups(), (std::vector<std::uint32_t>{0, 1, 0, 1}));
}

TEST(WaysBetween, groups_are_those_of_finite_ways_on_random_fields) {
    for (std::uint64_t seed = 1; seed <= 40; ++seed) {
        std::mt19937_64 random(seed);
        Ground ground;
        ground.barriers = test::random_barriers(25, 100.0, random);
        ground.boundary.parts = {rectangle(0, 0, 100, 100)};
        const WalkingWays ways(ground);
        WaysBetween between(ways, test::random_places(25, 100.0, random));
        const std::vector<std::uint32_t> groups = between.groups();
        for (std::size_t a = 0; a < 25; ++a)
            for (std::size_t b = 0; b < 25; ++b)
                EXPECT_EQ(groups[a] == groups[b], std::isfinite(between.metres(a, b)))
                    << "seed " << seed << ": " << a << ", " << b;
    }
}

TEST(WaysBetween, lines_drawn_not_quite_up_to_one_another_are_closed_and_wider_gaps_are_open) {
    for (const double gap_m : {0.0, 0.01, 0.5}) {
        Ground ground;
        ground.boundary.parts = {rectangle(0, 0, 40, 20)};
        ground.barriers = {{"fence", {{{20, gap_m}, {20, 20 - gap_m}}}}};
        const double found = metres(ground, {10, 10}, {30, 10});
        EXPECT_EQ(std::isfinite(found), gap_m > 0.1) << gap_m;
    }
}

TEST(WaysBetween, a_place_on_a_wall_stands_on_the_side_of_the_others_about_it) {
    const WalkingWays ways(wall_across());
    WaysBetween between(ways, {{0, 0}, {10, 0}, {10, 5}, {-10, 0}});
    EXPECT_NEAR(between.metres(0, 1), 10.0, 0.05);
    EXPECT_GT(between.metres(0, 3), 60.0);
}

TEST(WaysBetween, a_field_that_lies_elsewhere_has_ways_of_the_same_length) {
    std::mt19937_64 random(5);
    Survey survey;
    survey.ground.barriers = test::random_barriers(9, 100.0, random);
    std::vector<LocalPoint> places = test::random_places(12, 100.0, random);
    const WalkingWays here(survey.ground);
    WaysBetween before(here, places);
    const LocalVector step{700, -300};
    for (LocalPoint& place : places) place = test::moved(place, 77.0, step);
    const WalkingWays there(test::moved(survey, 77.0, step).ground);
    WaysBetween after(there, places);
    for (std::size_t a = 0; a < 12; ++a)
        for (std::size_t b = 0; b < a; ++b) EXPECT_NEAR(after.metres(a, b), before.metres(a, b), 1e-6);
}

TEST(WaysBetween, lines_of_very_many_vertices_are_simplified_by_a_length_that_is_told) {
    Ground ground;
    ground.barriers = {{"pond", {}}};
    for (int i = 0; i <= 20000; ++i) {
        const double turn = 2.0 * std::numbers::pi * i / 20000.0;
        ground.barriers[0].line.vertices.push_back({50.0 * std::sin(turn), 50.0 * std::cos(turn)});
    }
    const WalkingWays ways(ground);
    EXPECT_LE(ways.corners().size(), 800U);
    EXPECT_GT(ways.simplified_by().value(), 0.0);
    EXPECT_LT(ways.simplified_by().value(), 0.1);
    const double tangent = std::sqrt(70.0 * 70.0 - 50.0 * 50.0);
    const double arc = std::numbers::pi - 2.0 * std::acos(50.0 / 70.0);
    EXPECT_NEAR(WaysBetween(ways, {{-70, 0}, {70, 0}}).metres(0, 1), 2.0 * tangent + 50.0 * arc, 0.2);
    EXPECT_FALSE(walking_way(ways, {0, 0}, {70, 0}));
}

TEST(WaysBetween, no_place_and_lines_without_extent_do_no_harm) {
    Ground ground;
    ground.barriers = {{"none", {}}, {"one", {{{1, 1}}}}, {"twice", {{{2, 2}, {2, 2}}}}};
    const WalkingWays ways(ground);
    EXPECT_TRUE(ways.open_everywhere());
    EXPECT_TRUE(WaysBetween(ways, {}).groups().empty());
    EXPECT_TRUE(WaysBetween(WalkingWays(wall_across()), {}).groups().empty());
}

TEST(WallCells, a_wall_is_between_two_places_wherever_plain_search_says_so) {
    std::mt19937_64 random(2);
    const std::vector<LocalPoint> ends = test::random_places(400, 300.0, random);
    std::vector<WallPiece> pieces;
    for (std::size_t i = 0; i + 1 < ends.size(); i += 2)
        pieces.push_back({ends[i], ends[i] + (ends[i + 1] - ends[i]) * (i % 3 == 0 ? 0.5 : 0.02)});
    const WallCells cells(pieces);
    std::vector<LocalPoint> places = test::random_places(300, 500.0, random);
    for (std::size_t i = 0; i < 40; ++i) places.push_back(ends[i]);
    int met = 0;
    for (std::size_t a = 0; a < places.size(); ++a)
        for (std::size_t b = a; b < places.size(); b += 7) {
            const bool plain = std::any_of(pieces.begin(), pieces.end(), [&](const WallPiece& piece) {
                return segments_meet(places[a], places[b], piece.from, piece.to);
            });
            EXPECT_EQ(cells.between(places[a], places[b]), plain);
            met += plain ? 1 : 0;
        }
    EXPECT_GT(met, 1000);
}

TEST(WallCells, the_nearest_piece_within_reach_is_that_of_plain_search) {
    std::mt19937_64 random(3);
    const std::vector<LocalPoint> ends = test::random_places(60, 100.0, random);
    std::vector<WallPiece> pieces;
    for (std::size_t i = 0; i + 1 < ends.size(); i += 2) pieces.push_back({ends[i], ends[i + 1]});
    const WallCells cells(pieces);
    for (const LocalPoint place : test::random_places(200, 120.0, random)) {
        double least = 3.0;
        for (const WallPiece& piece : pieces) least = std::min(least, distance_to_segment_m(place, piece.from, piece.to));
        const auto found = cells.nearest(place, 3.0);
        ASSERT_EQ(found.has_value(), least < 3.0);
        if (found) {
            EXPECT_EQ(distance_to_segment_m(place, found->from, found->to), least);
        }
    }
}

}  // namespace
}  // namespace plugside
