#include "core/probing/run_draws.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <numbers>
#include <random>

#include "core/probing/run_directions.h"
#include "core/runs/main_run.h"
#include "tests/core/probing/rows.h"
#include "tests/core/surveys.h"

namespace plugside {
namespace {

constexpr double degrees = std::numbers::pi / 180.0;

double lateral(const PlanOptions& options, double depth_z, double slope_z) {
    const double depth = std::max(0.05, options.depth_mean.value() + options.depth_sd.value() * depth_z);
    return depth / std::tan(std::clamp(options.slope_degrees + options.slope_sd_degrees * slope_z, 20.0, 75.0) * degrees);
}

TEST(RunDraws, PlugSideAgreesWithTrialsOfTheGeometry) {
    const PlanOptions options;
    const RowChance row = plug_side_chance(options, {}, Metres::of(0.1));
    EXPECT_NEAR(row.presence(), 1.0, 1e-3);
    std::mt19937_64 random(21);
    std::normal_distribution<double> normal;
    std::vector<double> met;
    for (int i = 0; i < 200000; ++i) {
        const double length = lateral(options, normal(random), normal(random));
        const double stray = stray_sd_degrees * degrees * normal(random);
        const double run = stray + lean_sd_degrees * degrees * normal(random);
        // junction in (along, across); the run through it, square to the lateral but for its lean
        const double along = length * std::cos(stray), across = length * std::sin(stray);
        met.push_back(along + std::sin(run) / std::cos(run) * (across - 0.1));
    }
    std::sort(met.begin(), met.end());
    for (const double share : {0.1, 0.25, 0.5, 0.75, 0.9})
        EXPECT_NEAR(test::chance_below(row, met[static_cast<std::size_t>(share * 200000)]), share, 0.035) << share;
}

TEST(RunDraws, WhatNeighboursTellNarrowsTheTurnAndNeverReversesIt) {
    const double known = std::hypot(stray_sd_degrees, lean_sd_degrees);
    const RunTurn turn = run_turn_given(30.0, 20.0);
    EXPECT_GT(turn.mean_degrees, 0.0);
    EXPECT_LT(turn.mean_degrees, 30.0);
    EXPECT_LT(turn.sd_degrees, 20.0);
    EXPECT_LT(turn.sd_degrees, known);
    // precisions add up
    EXPECT_NEAR(1.0 / (turn.sd_degrees * turn.sd_degrees), 1.0 / 400.0 + 1.0 / (known * known), 1e-12);
    EXPECT_NEAR(RunTurn{}.sd_degrees, known, 0.01);
    // a run that leans clockwise comes nearer on the right of the axis
    EXPECT_LT(plug_side_chance({}, {25.0, 5.0}, Metres::of(0.3)).mean_m(),
              plug_side_chance({}, {-25.0, 5.0}, Metres::of(0.3)).mean_m() - 0.2);
}

TEST(RunDraws, TheTurnIsSeenFromNeighboursOnTheGround) {
    // mounds on a run to the east; the middle one's fan points to 20 degrees instead of north, so that its run is seen
    // turned
    Survey survey = test::straight_run(3);
    survey.mounds[0].fan.reset();
    survey.mounds[2].fan.reset();
    survey.mounds[1].fan =
        Bearing::degrees(200.0);  // plug 180 straight on: the lateral comes from the north, 20 degrees off
    SystemPosterior posterior;
    posterior.marks = marks_of(survey, {});
    std::vector<std::size_t> at(3);
    for (std::size_t i = 0; i < 3; ++i) at[posterior.marks[i].mound] = i;
    const auto link = [&](std::size_t a, std::size_t b) {
        const auto [low, high] = std::minmax({static_cast<std::uint32_t>(at[a]), static_cast<std::uint32_t>(at[b])});
        posterior.links.push_back({low, high, 2.0, 1, 1});
    };
    link(0, 1);
    link(1, 2);
    posterior.drawn_links = {{0, 1}, {0, 1}};
    const std::vector<RunTurn> turns = run_turns(posterior, {});
    // opposite the fan is 20; square to it to the right 110; the run lies at 90: 20 degrees anticlockwise, of which a share
    // counts
    EXPECT_LT(turns[at[1]].mean_degrees, -4.0);
    EXPECT_GT(turns[at[1]].mean_degrees, -20.0);
    EXPECT_LT(turns[at[1]].sd_degrees, RunTurn{}.sd_degrees);
    posterior.drawn_links.clear();
    EXPECT_EQ(run_turns(posterior, {})[at[1]].mean_degrees, 0.0);
}

Stretch stretch_with(std::optional<double> from, std::optional<double> to, double joined = 1.0) {
    return {{from}, {to}, Metres::of(2.0), 10.0, joined};
}

RowChance row_at(const Stretch& stretch, double along) {
    const StretchDraws draws(stretch, {});
    return draws.across_tape(Metres::of(along));
}

TEST(RunDraws, BetweenTwoMoundsLiesOnTheSideOfTheirPlugs) {
    // both fans point to the left of the tape, so both plugs' laterals lead to the right
    const RowChance right = row_at(stretch_with(-90.0, -90.0), 1.0);
    EXPECT_GT(right.mean_m(), 0.15);
    EXPECT_NEAR(row_at(stretch_with(-90.0, 90.0), 1.0).mean_m(), 0.0, 0.03);
    EXPECT_LT(row_at(stretch_with(90.0, 90.0), 1.0).mean_m(), -0.15);
    EXPECT_GT(row_at(stretch_with({}, {}), 1.0).sd_m(), right.sd_m());
    EXPECT_LT(row_at(stretch_with(-90.0, -90.0), 0.5).sd_m(), right.sd_m()) << "near a plug the run is pinned";
    EXPECT_NEAR(row_at(stretch_with({}, {}, 0.4), 1.0).presence(), 0.4, 0.01)
        << "without fans only the joining run is known";
    const double passes = row_at(stretch_with(-90.0, -90.0, 0.4), 0.5).presence();
    EXPECT_GT(passes, 0.6) << "a mound's own run may pass there although it does not lead to the other";
    EXPECT_LT(passes, 0.8);
}

// The other way round: runs are drawn first, laterals and readings from them, and those trials are kept in which what was
// read is about what the stretch says.
TEST(RunDraws, BetweenTwoMoundsAgreesWithTrialsThatStartFromTheRun) {
    const double wanted_from = -80.0;
    const double wanted_to = 105.0;
    const PlanOptions options;
    const RowChance row = row_at({{wanted_from}, {wanted_to}, Metres::of(2.0), 10.0, 1.0}, 0.6);
    std::mt19937_64 random(4);
    std::normal_distribution<double> normal;
    std::uniform_real_distribution<double> uniform;
    const double usual = 4.0 * bend_share / std::sqrt(0.75 + 0.25 * 2.5 * 2.5);
    double count = 0.0, sum = 0.0, squares = 0.0;
    for (int i = 0; i < 6000000 && count < 1500.0; ++i) {
        const double chord = 1.2 + 1.6 * uniform(random);
        const double bend = usual * (uniform(random) < 0.25 ? 2.5 : 1.0);
        const double arc = bend * normal(random), ess = 0.5 * bend * normal(random);
        const double leave = std::clamp(arc + ess, -1.5, 1.5), arrive = std::clamp(-arc + ess, -1.5, 1.5);
        const double common = normal(random);
        const auto plug = [&](double at, double slope, double& fan) {
            const double depth_z = std::sqrt(0.85) * common + std::sqrt(0.15) * normal(random);
            const double from_plug = std::atan(slope) + (uniform(random) < 0.5 ? 90.0 : -90.0) * degrees +
                                     lean_sd_degrees * degrees * normal(random);
            const double length = lateral(options, depth_z, normal(random));
            fan = from_plug + std::numbers::pi + stray_sd_degrees * degrees * normal(random) +
                  options.fan_sd_degrees * degrees * normal(random);
            return LocalVector{at - length * std::cos(from_plug), -length * std::sin(from_plug)};  // along, across
        };
        double fan_from = 0.0, fan_to = 0.0;
        const LocalVector from = plug(0.0, leave, fan_from), to = plug(chord, arrive, fan_to);
        const LocalVector tape = to - from;
        if (std::abs(tape.length_m() - 2.0) > 0.1) continue;
        const double axis = std::atan2(tape.north_m, tape.east_m);
        const double read = axis + 10.0 * degrees * normal(random);
        const auto off = [&](double fan, double wanted) {
            return std::abs(std::remainder(fan - read - wanted * degrees, 2.0 * std::numbers::pi)) > 8.0 * degrees;
        };
        if (off(fan_from, wanted_from) || off(fan_to, wanted_to)) continue;
        for (double t = -0.3; t < 1.3; t += 0.002) {
            const double h = t < 0.0   ? leave * t
                             : t > 1.0 ? arrive * (t - 1.0)
                                       : leave * t * (1 - t) * (1 - t) - arrive * t * t * (1 - t);
            const LocalVector at{chord * t - from.east_m, chord * h - from.north_m};
            const double along = at.east_m * std::cos(axis) + at.north_m * std::sin(axis);
            if (along < 0.6) continue;
            const double across = -at.east_m * std::sin(axis) + at.north_m * std::cos(axis);
            count += 1.0;
            sum += across;
            squares += across * across;
            break;
        }
    }
    ASSERT_GT(count, 300.0);
    const double mean = sum / count;
    EXPECT_NEAR(row.mean_m(), mean, 0.04);  // with 192 weighted draws the mean is known to about a centimetre and a half
    EXPECT_NEAR(row.sd_m() / std::sqrt(squares / count - mean * mean), 1.0, 0.2);
}

}  // namespace
}  // namespace plugside
