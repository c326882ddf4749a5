#include "core/simulation/rank_histogram.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numeric>

namespace plugside {
namespace {

TEST(ChiSquareTail, GivesTheCriticalValuesOfThePublishedTable) {
    // NIST/SEMATECH e-Handbook of Statistical Methods, section 1.3.6.7.4, upper-tail critical values
    struct Row {
        std::size_t degrees;
        double statistic;
        double tail;
    };
    for (const Row row :
         {Row{1, 3.841, 0.05}, Row{10, 18.307, 0.05}, Row{10, 23.209, 0.01}, Row{19, 30.144, 0.05}, Row{100, 124.342, 0.05}})
        EXPECT_NEAR(chi_square_tail(row.statistic, row.degrees), row.tail, 2e-5) << row.degrees;
    EXPECT_EQ(chi_square_tail(0.0, 4), 1.0);
}

// Ranks of a normal mean with a normal prior, one number read: the posterior is normal about half the reading, variance one
// half.
RankHistogram ranks_of_normal_mean(double spread_factor, double bias, std::uint64_t seed) {
    constexpr std::size_t draws = 63;
    Random random(seed);
    RankHistogram histogram(draws, 16);
    for (int round = 0; round < 4000; ++round) {
        const double mean = random.normal(0.0, 1.0);
        const double reading = random.normal(mean, 1.0);
        std::vector<double> drawn(draws);
        for (double& draw : drawn) draw = random.normal(0.5 * reading + bias, spread_factor * std::sqrt(0.5));
        histogram.add(rank_among(mean, drawn, random));
    }
    return histogram;
}

TEST(RankHistogram, IsEvenForTheRightPosteriorAndUnevenForANarrowAWideOrABiasedOne) {
    EXPECT_GT(ranks_of_normal_mean(1.0, 0.0, 11).evenness().p_value, 0.01);
    EXPECT_GT(ranks_of_normal_mean(1.0, 0.0, 12).evenness().p_value, 0.01);
    const RankHistogram narrow = ranks_of_normal_mean(0.8, 0.0, 11);
    EXPECT_LT(narrow.evenness().p_value, 1e-6);
    EXPECT_GT(narrow.counts().front(), narrow.counts()[8]);
    const RankHistogram wide = ranks_of_normal_mean(1.25, 0.0, 11);
    EXPECT_LT(wide.evenness().p_value, 1e-6);
    EXPECT_LT(wide.counts().front(), wide.counts()[8]);
    EXPECT_LT(ranks_of_normal_mean(1.0, 0.1, 11).evenness().p_value, 1e-6);
}

TEST(RankHistogram, ThePValuesOfEvenRanksAreEvenThemselves) {
    Random random(7);
    int below_tenth = 0;
    for (int round = 0; round < 1000; ++round) {
        RankHistogram histogram(9, 10);
        for (int i = 0; i < 200; ++i) histogram.add(random.below(10));
        below_tenth += histogram.evenness().p_value < 0.1 ? 1 : 0;
    }
    EXPECT_GT(below_tenth, 70);  // 100 expected, standard deviation 9.5
    EXPECT_LT(below_tenth, 130);
}

TEST(RankHistogram, BinsThatDoNotDivideTheRanksExpectTheirShare) {
    RankHistogram histogram(10, 4);  // 11 ranks
    for (std::size_t rank = 0; rank <= 10; ++rank) histogram.add(rank);
    double expected = 0.0;
    for (std::size_t bin = 0; bin < 4; ++bin) {
        EXPECT_EQ(static_cast<double>(histogram.counts()[bin]), histogram.expected(bin)) << bin;
        expected += histogram.expected(bin);
    }
    EXPECT_EQ(expected, 11.0);
    EXPECT_EQ(histogram.evenness().statistic, 0.0);
    EXPECT_EQ(histogram.evenness().p_value, 1.0);
}

TEST(RankHistogram, TheStatisticIsPearsons) {
    RankHistogram histogram(1, 2);
    for (int i = 0; i < 70; ++i) histogram.add(0);
    for (int i = 0; i < 30; ++i) histogram.add(1);
    EXPECT_NEAR(histogram.evenness().statistic, 2.0 * 20.0 * 20.0 / 50.0, 1e-12);
    EXPECT_EQ(histogram.evenness().degrees, 1u);
}

TEST(RankAmong, CountsWhatIsLessAndSharesTies) {
    Random random(1);
    EXPECT_EQ(rank_among(2.5, {1.0, 2.0, 3.0, 4.0}, random), 2u);
    EXPECT_EQ(rank_among(0.0, {1.0, 2.0}, random), 0u);
    EXPECT_EQ(rank_among(9.0, {1.0, 2.0}, random), 2u);
    EXPECT_EQ(rank_among(9.0, {}, random), 0u);
    std::vector<int> times(4, 0);
    for (int i = 0; i < 4000; ++i) ++times.at(rank_among(2.0, {1.0, 2.0, 2.0, 5.0}, random));
    EXPECT_EQ(times[0], 0);
    for (const std::size_t rank : {1u, 2u, 3u}) EXPECT_NEAR(times[rank], 4000.0 / 3.0, 150.0);
}

TEST(RankHistogram, HandlesNoRankAndOneBin) {
    EXPECT_EQ(RankHistogram(20, 5).evenness().p_value, 1.0);
    RankHistogram one(20, 1);
    one.add(3);
    EXPECT_EQ(one.evenness().p_value, 1.0);
    EXPECT_EQ(RankHistogram(3, 50).counts().size(), 4u);
}

}  // namespace
}  // namespace plugside
