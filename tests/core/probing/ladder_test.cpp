#include "core/probing/ladder.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <numbers>
#include <random>

#include "core/runs/take_off.h"

namespace plugside {
namespace {

const Metres tunnel = Metres::of(0.064);

TEST(Ladder, RungsGoFromTheMiddleOutwards) {
    const auto rungs = rungs_of(Metres::of(0.10), Metres::of(0.05));
    ASSERT_EQ(rungs.size(), 5U);
    const double wanted[] = {0.0, -0.05, 0.05, -0.10, 0.10};
    for (std::size_t i = 0; i < rungs.size(); ++i) EXPECT_NEAR(rungs[i].value(), wanted[i], 1e-12);
}

TEST(Ladder, PromisesWhatAThousandTrialsGive) {
    const RunOffset offset{{{0.7, 0.30, 0.08}, {0.3, 0.36, 0.20}}, 0.9};
    const auto rungs = rungs_of(Metres::of(0.25), Metres::of(0.05));
    const Metres middle = Metres::of(0.31);
    const LadderPromise promise = promise_of(offset, middle, rungs, tunnel);
    std::mt19937_64 random(8);
    std::normal_distribution<double> normal;
    std::uniform_real_distribution<double> uniform;
    int hits = 0;
    double pushed = 0.0;
    const int trials = 200000;
    for (int i = 0; i < trials; ++i) {
        const bool there = uniform(random) < offset.presence;
        const RunOffset::Part& part = offset.parts[uniform(random) < 0.7 ? 0 : 1];
        const double run = part.mean_m + part.sd_m * normal(random);
        int holes = 0;
        bool hit = false;
        for (const Metres rung : rungs) {
            ++holes;
            hit = there && std::abs(middle.value() + rung.value() - run) <= 0.5 * tunnel.value();
            if (hit) break;
        }
        hits += hit;
        pushed += holes;
    }
    EXPECT_NEAR(promise.hit.value(), hits / static_cast<double>(trials), 0.004);
    EXPECT_NEAR(promise.expected_rungs, pushed / trials, 0.02);
}

TEST(Ladder, APlacedRowHasNoGapsAndReachesItsShare) {
    for (const double sd : {0.03, 0.1, 0.2}) {
        const RunOffset offset{{{1.0, 0.283, sd}}, 0.8};
        const PlacedRow row = place_row(offset, tunnel);
        EXPECT_LE(row.step, tunnel) << "a step wider than the tunnel lets it slip through";
        EXPECT_NEAR(row.middle.value() * 100.0, std::round(row.middle.value() * 100.0), 1e-9) << "what a tape reads";
        const LadderPromise promise = promise_of(offset, row.middle, rungs_of(row.half_length, row.step), tunnel);
        EXPECT_GE(promise.hit.value(), 0.96 * 0.8);
        EXPECT_LE(promise.hit.value(), 0.8);
    }
}

TEST(Ladder, ARunThatIsSurelyAtTheMiddleTakesOneRung) {
    const LadderPromise promise =
        promise_of({{{1.0, 0.3, 0.001}}, 1.0}, Metres::of(0.3), rungs_of(Metres::of(0.1), Metres::of(0.05)), tunnel);
    EXPECT_NEAR(promise.hit.value(), 1.0, 1e-9);
    EXPECT_NEAR(promise.expected_rungs, 1.0, 1e-9);
}

TEST(RunOffset, PlugSideAgreesWithTrialsOfTheGeometry) {
    const PlanOptions options;
    const RunOffset offset = plug_side_offset(options, Metres::of(0.1));
    double weights = 0.0;
    for (const auto& part : offset.parts) weights += part.weight;
    EXPECT_NEAR(weights, 1.0, 1e-9);
    std::mt19937_64 random(21);
    std::normal_distribution<double> normal;
    const LateralLength lateral = lateral_length(options);
    const double degrees = std::numbers::pi / 180.0;
    std::vector<double> met;
    for (int i = 0; i < 200000; ++i) {
        const double length = lateral.mean_m + lateral.sd_m * normal(random);
        const double stray = 12.0 * degrees * normal(random);
        const double lean = 18.0 * degrees * normal(random);
        // junction in (along, across); the run through it, square to the lateral but for its lean
        const double along = length * std::cos(stray), across = length * std::sin(stray);
        const double run_along = -std::sin(stray + lean), run_across = std::cos(stray + lean);
        met.push_back(along + run_along / run_across * (0.1 - across));
    }
    std::sort(met.begin(), met.end());
    for (const double share : {0.1, 0.25, 0.5, 0.75, 0.9})
        EXPECT_NEAR(offset.below(met[static_cast<std::size_t>(share * 200000)]), share, 0.02) << share;
}

TEST(RunOffset, BetweenTwoMoundsLiesOnTheSideOfTheirPlugs) {
    const PlanOptions options;
    const Metres length = Metres::of(2.0);
    // both fans point to the left of the tape, so both plugs' laterals lead to the right
    const EndOfStretch left{-90.0, 15.0};
    const RunOffset right = between_offset(left, left, length, Metres::of(1.0), 1.0, options);
    EXPECT_GT(right.mean_m(), 0.15);
    const EndOfStretch other{90.0, 15.0};
    EXPECT_NEAR(between_offset(left, other, length, Metres::of(1.0), 1.0, options).mean_m(), 0.0, 1e-9);
    EXPECT_GT(between_offset({}, {}, length, Metres::of(1.0), 1.0, options).sd_m(), right.sd_m());
    EXPECT_NEAR(between_offset(left, left, length, Metres::of(1.0), 0.4, options).below(99.0), 0.4, 1e-9);
}

}  // namespace
}  // namespace plugside
