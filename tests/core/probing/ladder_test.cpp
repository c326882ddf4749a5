#include "core/probing/ladder.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <numbers>
#include <random>

#include "core/units/display.h"
#include "tests/core/probing/rows.h"

namespace plugside {
namespace {

using test::normal_row;
using test::tunnel;

TEST(Ladder, RungsGoFromTheMiddleOutwards) {
    const auto rungs = rungs_of(Metres::of(0.10), Metres::of(0.05));
    ASSERT_EQ(rungs.size(), 5U);
    const double wanted[] = {0.0, -0.05, 0.05, -0.10, 0.10};
    for (std::size_t i = 0; i < rungs.size(); ++i) EXPECT_NEAR(rungs[i].value(), wanted[i], 1e-12);
}

TEST(Ladder, PromisesWhatManyTrialsGiveWhenNobodyKnowsTheTunnelsWidth) {
    for (const double step : {0.05, 0.057, 0.07}) {
        const RowChance row = normal_row(0.30, 0.12, 0.9);
        const auto rungs = rungs_of(Metres::of(0.25), Metres::of(step));
        const LadderPromise promise = promise_of(row, Metres::of(0.31), rungs, tunnel);
        std::mt19937_64 random(8);
        std::normal_distribution<double> normal(0.30, 0.12);
        std::uniform_real_distribution<double> uniform;
        std::uniform_real_distribution<double> width(TunnelSpan::least, TunnelSpan::most);
        double hits = 0.0;
        double pushed = 0.0;
        const int trials = 200000;
        for (int i = 0; i < trials; ++i) {
            const bool there = uniform(random) < 0.9;
            const double run = normal(random);
            const double reach = 0.5 * tunnel.value() * width(random);
            bool hit = false;
            for (const Metres rung : rungs) {
                pushed += 1.0;
                hit = there && std::abs(0.31 + rung.value() - run) <= reach;
                if (hit) break;
            }
            hits += hit ? 1.0 : 0.0;
        }
        EXPECT_NEAR(promise.hit.value(), hits / trials, 0.006) << step;
        EXPECT_NEAR(promise.expected_rungs, pushed / trials, 0.03) << step;
    }
}

TEST(Ladder, NoOtherRowIsWorthMore) {
    for (const double sd : {0.03, 0.1, 0.2}) {
        RowChanceMaker maker(-0.2, 1.2);
        std::mt19937_64 random(5);
        std::gamma_distribution<double> skewed(1.0 / (sd * sd * 9.0), sd * sd * 3.0);  // mean a third of a metre
        for (int i = 0; i < 20000; ++i) maker.add(skewed(random), 1.0, 1.0);
        maker.close_group(0.9);
        const RowChance row = maker.made();
        const LadderOptions options;
        const PlacedRow placed = place_row(row, tunnel, options);
        EXPECT_NEAR(placed.middle.value() * 100.0, std::round(placed.middle.value() * 100.0), 1e-9) << "what a tape reads";
        const LadderPromise promise = promise_of(row, placed.middle, rungs_of(placed.half_length, placed.step), tunnel);
        EXPECT_NEAR(promise.hit.value(), placed.promise.hit.value(), 1e-9)
            << "the ladder as told is the one that was judged";
        EXPECT_NEAR(promise.expected_rungs, placed.promise.expected_rungs, 1e-9);
        for (const Metres step : options.steps)
            for (int middle = 10; middle <= 60; ++middle)
                for (int k = 0; k <= 10; ++k) {
                    const auto other = promise_of(row, Metres::of(0.01 * middle), rungs_of(step * k, step), tunnel);
                    EXPECT_LE(other.hit.value() - options.price * other.expected_rungs, placed.worth + 0.004)
                        << sd << ' ' << middle << ' ' << step.value() << ' ' << k;
                }
    }
}

TEST(Ladder, IsNoLongerThanItTakesToFindEnough) {
    const RowChance row = normal_row(0.3, 0.1, 1.0);
    LadderOptions options;
    options.price = 0.01;
    const PlacedRow longest = place_row(row, tunnel, options);
    options.enough = 0.9;
    const PlacedRow enough = place_row(row, tunnel, options);
    EXPECT_LT(enough.half_length, longest.half_length);
    EXPECT_GE(enough.promise.hit.value(), 0.9);
}

TEST(Ladder, ARunThatIsSurelyAtTheMiddleTakesOneRung) {
    RowChance row;
    row.first_m = 0.3;
    row.chance = {1.0F};
    const LadderPromise promise = promise_of(row, Metres::of(0.3), rungs_of(Metres::of(0.1), Metres::of(0.05)), tunnel);
    EXPECT_NEAR(promise.hit.value(), 1.0, 1e-9);
    EXPECT_NEAR(promise.expected_rungs, 1.0, 1e-9);
}

TEST(Ladder, ASlantedRunIsMetFromFartherAlongTheRow) {
    RowChance row = normal_row(0.3, 0.2, 1.0);
    const auto rungs = rungs_of(Metres::of(0.14), Metres::of(0.07));
    const double square = promise_of(row, Metres::of(0.3), rungs, tunnel).hit.value();
    row.slant = 1.2;
    EXPECT_GT(promise_of(row, Metres::of(0.3), rungs, tunnel).hit.value(), square + 0.02);
}

TEST(Ladder, KeepsItsPromiseWhenItsStepsAreReadOffEitherTape) {
    const RowChance row = normal_row(0.29, 0.1, 1.0);
    const PlacedRow placed = place_row(row, tunnel, {.price = 0.1, .enough = 0.985});
    const auto read = [](Metres length, double unit_m) { return Metres::of(std::round(length.value() / unit_m) * unit_m); };
    const auto promise = [&](Metres middle, Metres step) {
        auto rungs = rungs_of(placed.half_length, placed.step);
        for (Metres& rung : rungs) rung = rung / placed.step * step;
        return promise_of(row, middle, rungs, tunnel);
    };
    const LadderPromise told = promise(placed.middle, placed.step);
    // middles to whole inches or centimetres, steps to quarter inches or millimetres
    for (const LadderPromise& as_read : {promise(read(placed.middle, 0.0254), read(placed.step, 0.0254 / 4.0)),
                                         promise(read(placed.middle, 0.01), read(placed.step, 0.001))}) {
        EXPECT_NEAR(as_read.hit.value(), told.hit.value(), 0.01);
        EXPECT_NEAR(as_read.expected_rungs, told.expected_rungs, 0.15);
    }
}

}  // namespace
}  // namespace plugside
