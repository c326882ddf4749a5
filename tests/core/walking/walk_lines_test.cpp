#include "core/walking/walk_lines.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <numbers>

#include "core/geometry/area_operations.h"
#include "core/simulation/burrow_simulator.h"
#include "core/simulation/random.h"
#include "core/walking/way_inside.h"

namespace plugside {
namespace {

Polygon rectangle(double west, double south, double east, double north) {
    return {{{{west, south}, {east, south}, {east, north}, {west, north}}}, {}};
}

Ground field(double width, double height) {
    Ground ground;
    ground.boundary.parts.push_back(rectangle(0, 0, width, height));
    return ground;
}

// Share of the area further than `reach` from every route.
double left_out(const WalkLines& lines, const MultiPolygon& area, double reach_m) {
    std::vector<Polyline> ways;
    for (const WalkRoute& route : lines.routes) ways.push_back(route.way);
    return area_m2(difference(area, buffered(ways, Metres::of(reach_m)))) / area_m2(area);
}

// Steps along a way, a tenth of a metre apart.
std::vector<LocalPoint> steps_of(const Polyline& way) {
    std::vector<LocalPoint> steps;
    for (std::size_t i = 1; i < way.vertices.size(); ++i)
        for (double m = 0.05; m < distance_m(way.vertices[i - 1], way.vertices[i]); m += 0.1)
            steps.push_back(way.vertices[i - 1] + (way.vertices[i] - way.vertices[i - 1]) *
                                                      (m / distance_m(way.vertices[i - 1], way.vertices[i])));
    return steps;
}

TEST(WalkLines, the_spacing_sees_the_share_that_was_chosen) {
    for (const DetectionCurve& curve : {DetectionCurve{CurveShape::half_normal, Metres::of(3.0), 0.0},
                                        DetectionCurve{CurveShape::hazard_rate, Metres::of(3.0), 4.0}})
        for (const double see : {0.5, 0.8, 0.9, 0.97}) {
            const Metres spacing = line_spacing(curve, Probability::of(see));
            EXPECT_NEAR(seen_between_lines(curve, spacing).value(), see, 1e-3);
            // another way: places drawn at random between lines, each line looking for itself
            Random random(4);
            int seen = 0;
            for (int i = 0; i < 20000; ++i) {
                const double x = random.uniform(0.0, spacing.value());
                bool found = false;
                for (int line = -20; line <= 20; ++line)
                    found = random.chance(curve.chance(std::abs(x - line * spacing.value()))) || found;
                seen += found ? 1 : 0;
            }
            EXPECT_NEAR(seen / 20000.0, see, 0.012);
        }
}

TEST(WalkLines, lines_wide_apart_see_their_effective_strip) {
    const DetectionCurve bell{CurveShape::half_normal, Metres::of(2.0), 0.0};
    // closed form: 2 s sqrt(pi/2) / spacing
    EXPECT_NEAR(seen_between_lines(bell, Metres::of(50.0)).value(), 2.0 * 2.0 * std::sqrt(std::numbers::pi / 2.0) / 50.0,
                1e-3);
}

TEST(WalkLines, run_along_the_longer_way_back_and_forth) {
    const WalkLines lines = walk_lines(field(100, 40), {});
    ASSERT_EQ(lines.routes.size(), 1U);
    const WalkRoute& route = lines.routes[0];
    EXPECT_EQ(route.name, "Walk");
    const auto count = static_cast<std::size_t>(std::ceil(40.0 / lines.spacing.value()));
    EXPECT_EQ(route.lines, count);
    EXPECT_EQ(route.way.vertices.size(), 2 * count);
    // count lines of 100 m and the steps between them
    const double step = 40.0 / static_cast<double>(count);
    EXPECT_NEAR(route.length.value(), 100.0 * static_cast<double>(count) + step * static_cast<double>(count - 1), 1e-6);
    EXPECT_NEAR(lines.length.value(), route.length.value(), 1e-9);
    EXPECT_NEAR(route.seconds, route.length.value(), 1e-9);
    EXPECT_LT(left_out(lines, field(100, 40).boundary, 0.5 * step + 0.01), 0.001);
    for (std::size_t i = 0; i + 1 < route.way.vertices.size(); i += 2)
        EXPECT_NEAR(route.way.vertices[i].north_m, route.way.vertices[i + 1].north_m, 1e-9);
}

TEST(WalkLines, keep_clear_of_areas_and_barriers_and_go_round_them) {
    Ground ground = field(100, 60);
    ground.keep_clear.push_back({"house", "people", KeepClearKind::building, rectangle(40, 20, 60, 35)});
    ground.barriers.push_back({"wall", {{{20, -5}, {20, 45}}}});  // open at its northern end
    const WalkLines lines = walk_lines(ground, {});
    ASSERT_EQ(lines.pieces, 1U);
    for (const LocalPoint p : steps_of(lines.routes[0].way)) {
        EXPECT_GT(distance(p, ground.keep_clear[0].area).value(), 0.95);
        EXPECT_GT(distance(p, ground.barriers[0].line)->value(), 0.95);
        EXPECT_TRUE(p.east_m > -0.01 && p.east_m < 100.01 && p.north_m > -0.01 && p.north_m < 60.01);
    }
    const MultiPolygon blocked =
        union_of({{{ground.keep_clear[0].area}}, buffered({ground.barriers[0].line}, Metres::of(1.0))});
    EXPECT_LT(left_out(lines, difference(ground.boundary, blocked), 0.5 * lines.spacing.value() + 1.0), 0.01);
}

TEST(WalkLines, a_barrier_through_the_field_makes_two_routes_and_a_sentence) {
    Ground ground = field(100, 60);
    ground.barriers.push_back({"ditch", {{{-5, 30}, {105, 30}}}});
    const WalkLines lines = walk_lines(ground, {});
    EXPECT_EQ(lines.pieces, 2U);
    ASSERT_EQ(lines.routes.size(), 2U);
    EXPECT_EQ(lines.routes[0].name, "Piece 1");
    EXPECT_EQ(lines.sentences.size(), 1U);
    for (const WalkRoute& route : lines.routes)
        for (const LocalPoint p : steps_of(route.way)) EXPECT_GT(std::abs(p.north_m - 30.0), 0.95);
}

TEST(WalkLines, a_gate_in_the_barrier_joins_the_two_sides) {
    Ground ground = field(60, 40);
    ground.barriers.push_back({"wall", {{{30, -1}, {30, 41}}}});
    ASSERT_EQ(walk_lines(ground, {}, {}).pieces, 2U);
    ground.gates.push_back({"gate", {30, 20}, Metres::of(3.0)});
    const WalkLines lines = walk_lines(ground, {}, {});
    ASSERT_EQ(lines.pieces, 1U);
    EXPECT_TRUE(lines.sentences.empty());
    const auto& way = lines.routes.front().way.vertices;
    for (std::size_t i = 0; i + 1 < way.size(); ++i)
        for (const Barrier& shut : barriers_to_people(ground))
            EXPECT_FALSE(segments_meet(way[i], way[i + 1], shut.line.vertices.front(), shut.line.vertices.back()));
}

TEST(WalkLines, several_walkers_share_the_lines_about_evenly) {
    WalkLineOptions options;
    options.walkers = 3;
    const WalkLines alone = walk_lines(field(200, 100), {});
    const WalkLines shared = walk_lines(field(200, 100), {}, options);
    ASSERT_EQ(shared.routes.size(), 3U);
    std::size_t all = 0;
    for (const WalkRoute& route : shared.routes) {
        all += route.lines;
        EXPECT_NEAR(route.length / alone.length, 1.0 / 3.0, 0.06);
    }
    EXPECT_EQ(all, alone.routes[0].lines);
    EXPECT_EQ(shared.routes[1].name, "Walker 2");
    EXPECT_LT(shared.seconds, 0.4 * alone.seconds);
}

TEST(WalkLines, of_a_part_stay_in_it) {
    const MultiPolygon part{{rectangle(70, 10, 90, 50)}};
    const WalkLines lines = walk_lines(field(100, 60), part);
    ASSERT_EQ(lines.routes.size(), 1U);
    for (const LocalPoint p : lines.routes[0].way.vertices)
        EXPECT_TRUE(p.east_m > 69.99 && p.east_m < 90.01 && p.north_m > 9.99 && p.north_m < 50.01);
    EXPECT_LT(left_out(lines, part, 0.5 * lines.spacing.value() + 0.01), 0.001);
}

TEST(WalkLines, of_no_ground_or_slivers_are_none) {
    EXPECT_TRUE(walk_lines({}, {}).routes.empty());
    EXPECT_TRUE(walk_lines(field(100, 60), {{rectangle(0, 0, 0.4, 60)}}).routes.empty());
}

TEST(WalkLines, of_made_up_fields_stay_inside_and_leave_nothing_out) {
    for (std::uint64_t seed = 70000; seed < 70006; ++seed) {
        SimulationOptions options;
        options.seed = seed;
        options.with_ground = true;
        options.mounds_wanted = 100;
        const Ground ground = simulate_field(options).survey.ground;
        const WalkLines lines = walk_lines(ground, {});
        ASSERT_FALSE(lines.routes.empty());
        Polyline edge{ground.boundary.parts[0].outer.vertices};
        edge.vertices.push_back(edge.vertices.front());
        const MultiPolygon room = buffered({edge}, Metres::of(0.01));
        for (const WalkRoute& route : lines.routes)
            for (const LocalPoint p : steps_of(route.way)) {
                EXPECT_TRUE(contains(ground.boundary, p) || contains(room, p));
                for (const Barrier& barrier : ground.barriers) EXPECT_GT(distance(p, barrier.line)->value(), 0.9);
                for (const KeepClearArea& keep : ground.keep_clear) EXPECT_GT(distance(p, keep.area).value(), 0.9);
            }
        EXPECT_LT(left_out(lines, ground.boundary, 0.5 * lines.spacing.value() + 1.5), 0.03);
    }
}

TEST(WayInside, goes_the_shorter_way_round_a_hole) {
    Polygon area = rectangle(0, 0, 20, 20);
    area.holes.push_back(rectangle(8, 2, 12, 12).outer);
    const std::vector<LocalPoint> way = way_inside(area, {2, 5}, {18, 5});
    ASSERT_EQ(way.size(), 4U);
    EXPECT_EQ(way[1], (LocalPoint{8, 2}));
    EXPECT_EQ(way[2], (LocalPoint{12, 2}));
    EXPECT_TRUE(way_inside(area, {2, 15}, {18, 15}).empty());
}

}  // namespace
}  // namespace plugside
