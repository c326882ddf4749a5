#include "core/simulation/calibration.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

#include "core/simulation/random.h"

namespace plugside {
namespace {

std::vector<Claim> repeated(double chance, int came_true, int all) {
    std::vector<Claim> claims;
    for (int i = 0; i < all; ++i) claims.push_back({chance, i < came_true});
    return claims;
}

std::vector<Claim> joined(std::vector<Claim> a, const std::vector<Claim>& b) {
    a.insert(a.end(), b.begin(), b.end());
    return a;
}

// Chances drawn evenly; each comes true as often as `truly` makes of it.
template <typename Truly>
std::vector<Claim> drawn(std::size_t count, std::uint64_t seed, Truly truly) {
    Random random(seed);
    std::vector<Claim> claims;
    for (std::size_t i = 0; i < count; ++i) {
        const double chance = random.uniform();
        claims.push_back({chance, random.chance(truly(chance))});
    }
    return claims;
}

double sum_of(const ScoreParts& parts) { return parts.reliability - parts.resolution + parts.uncertainty + parts.within; }

TEST(Calibration, GivesTheWorkedExampleOfMurphysPartition) {
    // ours, by hand: five claims of .2 of which one comes true, five of .8 of which three do. Brier (.80 + 1.40) / 10 = .22;
    // reliability .5 * 0 + .5 * .2^2 = .02, resolution .2^2 = .04 about the base .4, uncertainty .4 * .6 = .24
    const Calibration c = calibration_of(joined(repeated(0.2, 1, 5), repeated(0.8, 3, 5)));
    EXPECT_EQ(c.claims, 10u);
    ASSERT_EQ(c.bins.size(), 2u);
    EXPECT_NEAR(c.mean_chance, 0.5, 1e-12);
    EXPECT_NEAR(c.share_true, 0.4, 1e-12);
    EXPECT_NEAR(c.brier.score, 0.22, 1e-12);
    EXPECT_NEAR(c.brier.reliability, 0.02, 1e-12);
    EXPECT_NEAR(c.brier.resolution, 0.04, 1e-12);
    EXPECT_NEAR(c.brier.uncertainty, 0.24, 1e-12);
    EXPECT_NEAR(c.brier.within, 0.0, 1e-12);
    EXPECT_NEAR(c.expected_error, 0.1, 1e-12);
    // the same for the log score: of the claims of .8 a share .6 came true
    const double entropy_of_base = -0.4 * std::log(0.4) - 0.6 * std::log(0.6);
    EXPECT_NEAR(c.log.score, -(1.0 * std::log(0.2) + 4.0 * std::log(0.8) + 3.0 * std::log(0.8) + 2.0 * std::log(0.2)) / 10.0,
                1e-12);
    EXPECT_NEAR(c.log.uncertainty, entropy_of_base, 1e-12);
    EXPECT_NEAR(c.log.reliability, 0.5 * (0.6 * std::log(0.6 / 0.8) + 0.4 * std::log(0.4 / 0.2)), 1e-12);
    EXPECT_NEAR(c.log.within, 0.0, 1e-12);
}

TEST(Calibration, ThePartsSumToTheScoreAlsoWhereBinsHoldManyChances) {
    for (std::uint64_t seed = 1; seed <= 20; ++seed) {
        const auto claims = drawn(37 * seed, seed, [](double chance) { return chance * chance; });
        const Calibration c = calibration_of(claims);
        double brier = 0.0;
        double log = 0.0;
        for (const Claim& claim : claims) {
            const double off = claim.chance - (claim.came_true ? 1.0 : 0.0);
            brier += off * off / static_cast<double>(claims.size());
            const double held = std::clamp(claim.chance, 0.001, 0.999);
            log -= std::log(claim.came_true ? held : 1.0 - held) / static_cast<double>(claims.size());
        }
        EXPECT_NEAR(c.brier.score, brier, 1e-12);
        EXPECT_NEAR(c.log.score, log, 1e-12);
        EXPECT_NEAR(sum_of(c.brier), c.brier.score, 1e-12);
        EXPECT_NEAR(sum_of(c.log), c.log.score, 1e-12);
        for (const ScoreParts& parts : {c.brier, c.log}) {
            EXPECT_GE(parts.reliability, 0.0);
            EXPECT_GE(parts.resolution, 0.0);
            EXPECT_GT(parts.uncertainty, 0.0);
            EXPECT_NE(parts.within, 0.0);
        }
    }
}

TEST(Calibration, PerfectClaimsHaveASmallErrorAndShiftedOnesTheShift) {
    const auto perfect = drawn(100000, 3, [](double chance) { return chance; });
    const Calibration of_perfect = calibration_of(perfect);
    EXPECT_LT(of_perfect.expected_error, 0.01);
    EXPECT_NEAR(of_perfect.expected_error, of_perfect.error_of_perfect_claims, 0.003);
    // what is told as p comes true p - .1 of the time where p > .1, never below: the error is the mean of min(p, .1):
    // .1 * .9 + .1^2 / 2 = .095
    const auto shifted = drawn(200000, 4, [](double chance) { return std::max(0.0, chance - 0.1); });
    EXPECT_NEAR(calibration_of(shifted).expected_error, 0.095, 0.004);
}

TEST(Calibration, TheErrorToExpectOfPerfectClaimsIsWhatManySuchSetsShow) {
    double error = 0.0;
    double expected = 0.0;
    for (std::uint64_t seed = 1; seed <= 200; ++seed) {
        const Calibration c = calibration_of(drawn(400, 100 + seed, [](double chance) { return chance; }));
        error += c.expected_error / 200.0;
        expected += c.error_of_perfect_claims / 200.0;
    }
    EXPECT_NEAR(error, expected, 0.1 * expected);
    EXPECT_GT(expected, 0.02);
}

TEST(EqualCountBins, HoldEqualNumbersAndNeverPartEqualChances) {
    const auto bins = equal_count_bins(drawn(1000, 9, [](double chance) { return chance; }), 10);
    ASSERT_EQ(bins.size(), 10u);
    for (std::size_t i = 0; i < bins.size(); ++i) {
        EXPECT_EQ(bins[i].came_true.trials, 100);
        EXPECT_LE(bins[i].least, bins[i].mean_chance);
        EXPECT_LE(bins[i].mean_chance, bins[i].greatest);
        EXPECT_EQ(bins[i].band, wilson_interval(bins[i].came_true));
        if (i > 0) {
            EXPECT_GT(bins[i].least, bins[i - 1].greatest);
        }
    }
    // three quarters of all claims say 0: they are one bin
    const auto tied = equal_count_bins(joined(repeated(0.0, 3, 75), drawn(25, 2, [](double) { return 0.5; })), 10);
    EXPECT_EQ(tied.front().came_true.trials, 75);
    EXPECT_EQ(tied.front().came_true.successes, 3);
    EXPECT_GT(tied[1].least, 0.0);
    long all = 0;
    for (const ReliabilityBin& bin : tied) all += bin.came_true.trials;
    EXPECT_EQ(all, 100);
}

TEST(EqualCountBins, DoNotDependOnTheOrderOfClaims) {
    auto claims = joined(repeated(0.3, 4, 9), drawn(60, 5, [](double chance) { return chance; }));
    const Calibration one = calibration_of(claims);
    std::reverse(claims.begin(), claims.end());
    const Calibration other = calibration_of(claims);
    EXPECT_EQ(one.brier.score, other.brier.score);
    EXPECT_EQ(one.expected_error, other.expected_error);
    EXPECT_EQ(one.log.within, other.log.within);
}

TEST(Calibration, HandlesNoneOneAndCertainClaims) {
    const Calibration none = calibration_of({});
    EXPECT_EQ(none.claims, 0u);
    EXPECT_TRUE(none.bins.empty());
    EXPECT_EQ(none.brier.score, 0.0);
    const Calibration one = calibration_of({{0.25, true}});
    ASSERT_EQ(one.bins.size(), 1u);
    EXPECT_NEAR(one.brier.score, 0.5625, 1e-12);
    EXPECT_NEAR(one.expected_error, 0.75, 1e-12);
    EXPECT_NEAR(sum_of(one.brier), one.brier.score, 1e-12);
    EXPECT_NEAR(sum_of(one.log), one.log.score, 1e-12);
    // a claim of 0 that comes true costs -log(.001), not an endless sum
    EXPECT_NEAR(calibration_of({{0.0, true}}).log.score, -std::log(0.001), 1e-12);
    const Calibration right = calibration_of(joined(repeated(0.0, 0, 5), repeated(1.0, 5, 5)));
    EXPECT_EQ(right.brier.score, 0.0);
    EXPECT_EQ(right.expected_error, 0.0);
    EXPECT_NEAR(right.brier.resolution, right.brier.uncertainty, 1e-12);
}

}  // namespace
}  // namespace plugside
