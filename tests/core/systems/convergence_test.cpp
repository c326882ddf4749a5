#include "core/systems/convergence.h"

#include <gtest/gtest.h>

#include <cmath>

#include "core/simulation/random.h"

namespace plugside {
namespace {

// Each draw is rho times the one before plus noise; variance 1.
ChainDraws streams(std::size_t chains, std::size_t draws, double rho, std::uint64_t seed) {
    ChainDraws all(chains);
    for (std::size_t c = 0; c < chains; ++c) {
        Random random(seed, c);
        double x = random.normal(0.0, 1.0);
        for (std::size_t t = 0; t < draws; ++t) {
            x = rho * x + std::sqrt(1.0 - rho * rho) * random.normal(0.0, 1.0);
            all[c].push_back(x);
        }
    }
    return all;
}

TEST(Convergence, StreamsOfKnownAutocorrelationAreWorthWhatTheoryHasIt) {
    // draws (1 - rho) / (1 + rho) for a first-order autoregression, any textbook of time series
    for (const double rho : {0.0, 0.3, 0.6, 0.9}) {
        const double expected = 4.0 * 10000.0 * (1.0 - rho) / (1.0 + rho);
        EXPECT_NEAR(effective_sample_size(streams(4, 10000, rho, 3)) / expected, 1.0, 0.12) << rho;
        EXPECT_LT(split_r_hat(streams(4, 10000, rho, 3)), 1.01) << rho;
    }
}

TEST(Convergence, AlternatingStreamsAreWorthMoreThanTheirDrawsButNotWithoutBound) {
    const double size = effective_sample_size(streams(4, 5000, -0.5, 8));
    EXPECT_GT(size, 40000.0) << "20,000 draws x 3 by theory";
    EXPECT_LE(size, 20000.0 * std::log10(20000.0) + 1e-6);
}

TEST(Convergence, ChainsApartFromOneAnotherAreSeen) {
    ChainDraws chains = streams(3, 1000, 0.2, 5);
    for (double& x : chains[1]) x += 3.0;
    // means 0, 3, 0: variance between chains 3, so R-hat is about the root of 1 + 3 x (6 / 5) / (3 / 2)
    EXPECT_NEAR(split_r_hat(chains), std::sqrt(1.0 + 2.4), 0.1);
    EXPECT_LT(effective_sample_size(chains), 20.0);
}

TEST(Convergence, AChainThatDriftsIsSeenInItsHalves) {
    ChainDraws chains = streams(3, 1000, 0.0, 6);
    for (auto& chain : chains)
        for (std::size_t t = 0; t < chain.size(); ++t) chain[t] += 4.0 * static_cast<double>(t) / 1000.0;
    EXPECT_GT(split_r_hat(chains), 1.2);
}

TEST(Convergence, TheScaleAndTheMiddleOfTheValuesDoNotMatter) {
    ChainDraws chains = streams(3, 500, 0.5, 7);
    const double r_hat = split_r_hat(chains);
    const double size = effective_sample_size(chains);
    for (auto& chain : chains)
        for (double& x : chain) x = 1000.0 * x - 50.0;
    EXPECT_NEAR(split_r_hat(chains), r_hat, 1e-9);
    EXPECT_NEAR(effective_sample_size(chains), size, 1e-6 * size);
}

TEST(Convergence, StandingStillIsFineTogetherAndNotApart) {
    EXPECT_EQ(split_r_hat({{2.0, 2.0, 2.0, 2.0}, {2.0, 2.0, 2.0, 2.0}}), 1.0);
    EXPECT_EQ(effective_sample_size({{2.0, 2.0, 2.0, 2.0}, {2.0, 2.0, 2.0, 2.0}}), 8.0);
    EXPECT_TRUE(std::isinf(split_r_hat({{2.0, 2.0, 2.0, 2.0}, {3.0, 3.0, 3.0, 3.0}})));
    EXPECT_EQ(effective_sample_size({{2.0, 2.0, 2.0, 2.0}, {3.0, 3.0, 3.0, 3.0}}), 2.0);
}

TEST(Convergence, TooFewDrawsSayNothing) {
    EXPECT_EQ(split_r_hat({}), 1.0);
    EXPECT_EQ(effective_sample_size({}), 0.0);
    EXPECT_EQ(effective_sample_size({{1.0, 2.0, 3.0}}), 0.0);
}

}  // namespace
}  // namespace plugside
