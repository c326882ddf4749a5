#include "core/probing/rest_of_ladder.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <random>

#include "core/probing/ladder.h"
#include "tests/core/probing/rows.h"

namespace plugside {
namespace {

ProbeSite site_with(const RowChance& row) {
    ProbeSite site;
    site.key = {ProbeKind::plug_side, "M1", ""};
    site.ladder = {Metres::of(0.30), Metres::of(0.0), 0.0, Metres::of(0.2), Metres::of(0.05)};
    site.rungs = rungs_of(site.ladder.half_length, site.ladder.step);
    site.along_row = row;
    return site;
}

ProbeResult miss_at(const ProbeSite& site, double offset_m) {
    return {site.key, {site.ladder.along + Metres::of(offset_m), site.ladder.across}, false, {}};
}

TEST(RestOfLadder, IsTheLadderAsToldBeforeTheFirstHole) {
    const ProbeSite site = site_with(test::normal_row(0.04, 0.1, 0.95));
    const RestOfLadder rest = rest_of_ladder(site, {}, test::tunnel);
    const LadderPromise promise = promise_of(site.along_row, Metres::of(0.0), site.rungs, test::tunnel);
    ASSERT_EQ(rest.rungs.size(), site.rungs.size());
    for (std::size_t i = 0; i < site.rungs.size(); ++i) EXPECT_EQ(rest.rungs[i].offset, site.rungs[i]);
    EXPECT_NEAR(rest.hit.value(), promise.hit.value(), 1e-9);
    EXPECT_NEAR(rest.expected_rungs, promise.expected_rungs, 1e-9);
}

TEST(RestOfLadder, AFoundRunLeavesNothingToPush) {
    const ProbeSite site = site_with(test::normal_row(0.0, 0.1, 1.0));
    ProbeResult found = miss_at(site, 0.05);
    found.found = true;
    const RestOfLadder rest = rest_of_ladder(site, {miss_at(site, 0.0), found}, test::tunnel);
    EXPECT_TRUE(rest.found);
    EXPECT_TRUE(rest.rungs.empty());
}

// Trials: a run and a width of tunnel are drawn, those that a logged hole would have met are thrown away; the next rung is
// the one that meets most of what is left, and so on.
TEST(RestOfLadder, GoesOnWhereTheRunIsMostLikelyGivenTheMisses) {
    const double mean = 0.06, sd = 0.09, presence = 0.95;
    const ProbeSite site = site_with(test::normal_row(mean, sd, presence));
    const std::vector<double> pushed = {0.0, -0.05, 0.08};
    std::vector<ProbeResult> logged;
    for (const double at : pushed) logged.push_back(miss_at(site, at));
    const RestOfLadder rest = rest_of_ladder(site, logged, test::tunnel);
    std::mt19937_64 random(77);
    std::normal_distribution<double> normal(mean, sd);
    std::uniform_real_distribution<double> uniform;
    std::uniform_real_distribution<double> width(TunnelSpan::least, TunnelSpan::most);
    struct Trial {
        double run;
        double reach;
    };
    std::vector<Trial> left;
    double absent = 0.0;
    for (int i = 0; i < 300000; ++i) {
        const Trial trial{normal(random), 0.5 * test::tunnel.value() * width(random)};
        if (uniform(random) >= presence) {
            absent += 1.0;
        } else if (std::none_of(pushed.begin(), pushed.end(),
                                [&](double at) { return std::abs(at - trial.run) <= trial.reach; })) {
            left.push_back(trial);
        }
    }
    ASSERT_EQ(rest.rungs.size(), site.rungs.size() - 2) << "a hole between two rungs takes neither away";
    const double all = static_cast<double>(left.size()) + absent;
    std::vector<Metres> open;
    for (const RungLeft& rung : rest.rungs) open.push_back(rung.offset);
    double misses = all;
    for (const RungLeft& rung : rest.rungs) {
        const auto met_by = [&](Metres at) {
            return static_cast<double>(std::count_if(left.begin(), left.end(), [&](const Trial& trial) {
                return std::abs(at.value() - trial.run) <= trial.reach;
            }));
        };
        double most = 0.0;
        for (const Metres other : open) most = std::max(most, met_by(other));
        const double met = met_by(rung.offset);
        EXPECT_GE(met, most - 0.012 * misses) << "another rung is likelier than " << rung.offset.value();
        EXPECT_NEAR(rung.next.value(), met / misses, 0.012) << rung.offset.value();
        misses -= met;
        std::erase(open, rung.offset);
        std::erase_if(left, [&](const Trial& trial) { return std::abs(rung.offset.value() - trial.run) <= trial.reach; });
    }
    EXPECT_NEAR(rest.hit.value(), 1.0 - misses / all, 0.012);
}

TEST(RestOfLadder, PassesOverHolesOfOtherLaddersAndBesideTheRow) {
    const ProbeSite site = site_with(test::normal_row(0.0, 0.1, 1.0));
    ProbeResult other = miss_at(site, 0.0);
    other.probe.from_mound = "M2";
    ProbeResult beside = miss_at(site, 0.0);
    beside.hole.across = Metres::of(0.10);
    EXPECT_EQ(rest_of_ladder(site, {other, beside}, test::tunnel).rungs.size(), site.rungs.size());
    EXPECT_EQ(rest_of_ladder(site, {miss_at(site, 0.0)}, test::tunnel).rungs.size(), site.rungs.size() - 1);
}

TEST(RestOfLadder, OfARowAcrossTheTapeReadsHolesAcrossIt) {
    ProbeSite site = site_with(test::normal_row(0.0, 0.1, 1.0));
    site.ladder.angle_degrees = 90.0;
    const ProbeResult right{site.key, {site.ladder.along, site.ladder.across + Metres::of(0.05)}, false, {}};
    const RestOfLadder rest = rest_of_ladder(site, {right}, test::tunnel);
    ASSERT_EQ(rest.rungs.size(), site.rungs.size() - 1);
    EXPECT_TRUE(std::none_of(rest.rungs.begin(), rest.rungs.end(),
                             [](const RungLeft& rung) { return std::abs(rung.offset.value() - 0.05) < 1e-9; }));
}

TEST(RestOfLadder, WithNoRungLeftPromisesNothing) {
    ProbeSite site = site_with(test::normal_row(0.0, 0.1, 1.0));
    site.rungs = {Metres::of(0.0)};
    const RestOfLadder rest = rest_of_ladder(site, {miss_at(site, 0.0)}, test::tunnel);
    EXPECT_TRUE(rest.rungs.empty());
    EXPECT_EQ(rest.hit.value(), 0.0);
    EXPECT_EQ(rest.expected_rungs, 0.0);
}

}  // namespace
}  // namespace plugside
