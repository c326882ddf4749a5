#include "core/survey/ground.h"

#include <gtest/gtest.h>
#include <rapidcheck.h>

#include <cmath>

namespace plugside {
namespace {

Ground with_ditch(std::vector<Gap> crossings) {
    Ground ground;
    ground.barriers.push_back({"ditch", {{{0, 0}, {10, 0}, {10, 10}}}});
    ground.crossings = std::move(crossings);
    return ground;
}

double total_m(const std::vector<Barrier>& barriers) {
    double sum = 0.0;
    for (const Barrier& barrier : barriers) sum += length(barrier.line).value();
    return sum;
}

TEST(Ground, a_barrier_without_a_gap_stays_as_it_was_drawn) {
    const Ground ground = with_ditch({});
    EXPECT_EQ(barriers_to_runs(ground), ground.barriers);
    EXPECT_EQ(barriers_to_people(ground), ground.barriers);
}

TEST(Ground, a_crossing_opens_the_barrier_half_a_width_to_each_side) {
    const auto left = barriers_to_runs(with_ditch({{"culvert", {4, 0}, Metres::of(2.0)}}));
    ASSERT_EQ(left.size(), 2U);
    EXPECT_EQ(left[0].name, "ditch");
    EXPECT_NEAR(length(left[0].line).value(), 3.0, 1e-9);
    EXPECT_NEAR(distance_m(left[1].line.vertices.front(), {5, 0}), 0.0, 1e-9);
    EXPECT_NEAR(length(left[1].line).value(), 15.0, 1e-9);
}

TEST(Ground, a_crossing_at_a_corner_opens_both_pieces) {
    const auto left = barriers_to_runs(with_ditch({{"culvert", {10, 0}, Metres::of(4.0)}}));
    ASSERT_EQ(left.size(), 2U);
    EXPECT_NEAR(distance_m(left[0].line.vertices.back(), {8, 0}), 0.0, 1e-9);
    EXPECT_NEAR(distance_m(left[1].line.vertices.front(), {10, 2}), 0.0, 1e-9);
    EXPECT_EQ(left[1].line.vertices.back(), (LocalPoint{10, 10}));
}

TEST(Ground, a_gate_is_for_people_and_a_crossing_for_runs) {
    Ground ground = with_ditch({});
    ground.gates.push_back({"gate", {5, 0}, Metres::of(1.0)});
    EXPECT_EQ(barriers_to_runs(ground), ground.barriers);
    EXPECT_NEAR(total_m(barriers_to_people(ground)), 19.0, 1e-9);
}

TEST(Ground, a_gap_as_wide_as_the_barrier_leaves_nothing) {
    EXPECT_TRUE(barriers_to_runs(with_ditch({{"filled", {5, 5}, Metres::of(40.0)}})).empty());
}

TEST(Ground, gaps_at_random_leave_exactly_the_places_outside_them) {
    EXPECT_TRUE(rc::check([] {
        Ground ground;
        const auto place = [] { return LocalPoint{0.01 * *rc::gen::inRange(0, 3000), 0.01 * *rc::gen::inRange(0, 3000)}; };
        Polyline line;
        for (int i = *rc::gen::inRange(2, 7); i > 0; --i) line.vertices.push_back(place());
        ground.barriers.push_back({"fence", line});
        for (int i = *rc::gen::inRange(0, 4); i > 0; --i)
            ground.crossings.push_back({"gap", place(), Metres::of(0.1 * *rc::gen::inRange(1, 120))});
        const auto left = barriers_to_runs(ground);
        for (std::size_t i = 0; i + 1 < line.vertices.size(); ++i)
            for (double share = 0.005; share < 1.0; share += 0.037) {
                const LocalPoint at = line.vertices[i] + (line.vertices[i + 1] - line.vertices[i]) * share;
                double slack = 1e9;  // to the nearest gap's rim, positive outside
                for (const Gap& gap : ground.crossings)
                    slack = std::min(slack, distance_m(at, gap.at) - 0.5 * gap.width.value());
                double nearest = 1e9;
                for (const Barrier& barrier : left) nearest = std::min(nearest, distance(at, barrier.line)->value());
                if (slack > 0.02) RC_ASSERT(nearest < 0.0101);
                if (slack < -0.02) RC_ASSERT(nearest > 0.0 || left.empty());
            }
    }));
}

TEST(Ground, nothing_is_set_in_keep_clear_areas_and_untreated_pieces) {
    Ground ground;
    const Polygon square{{{{0, 0}, {10, 0}, {10, 10}, {0, 10}}}, {}};
    EXPECT_FALSE(nothing_is_set_at(ground, {5, 5}));
    ground.untreated.parts.push_back(square);
    EXPECT_TRUE(nothing_is_set_at(ground, {5, 5}));
    ground.untreated = {};
    ground.keep_clear.push_back({"well", "drinking water", KeepClearKind::well, square});
    EXPECT_TRUE(nothing_is_set_at(ground, {5, 5}));
    EXPECT_FALSE(nothing_is_set_at(ground, {15, 5}));
}

}  // namespace
}  // namespace plugside
