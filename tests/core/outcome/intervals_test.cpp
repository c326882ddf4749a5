#include "core/outcome/intervals.h"

#include <gtest/gtest.h>

#include <boost/math/distributions/binomial.hpp>
#include <cmath>
#include <vector>

namespace plugside {
namespace {

struct PrintedShare {
    Share share;
    double level;
    Interval printed;
    double tolerance;  // half a unit of the last printed digit
};

// Newcombe 1998, Statistics in Medicine 17:857-872, table I, method 3 (score, no continuity correction).
TEST(Intervals, wilson_gives_the_printed_table_of_newcombe) {
    const std::vector<PrintedShare> table{{{81, 263}, 0.95, {0.2553, 0.3662}, 5.1e-5},
                                          {{15, 148}, 0.95, {0.0624, 0.1605}, 5.1e-5},
                                          {{0, 20}, 0.95, {0.0, 0.1611}, 5.1e-5},
                                          {{1, 29}, 0.95, {0.0061, 0.1718}, 5.1e-5}};
    for (const PrintedShare& row : table) {
        const Interval interval = wilson_interval(row.share, row.level);
        EXPECT_NEAR(interval.low, row.printed.low, row.tolerance) << row.share.successes << "/" << row.share.trials;
        EXPECT_NEAR(interval.high, row.printed.high, row.tolerance) << row.share.successes << "/" << row.share.trials;
    }
}

// Rows 1-4: Newcombe 1998, table I, method 5 ("exact"). Row 5: NIST/SEMATECH e-Handbook of Statistical Methods,
// section 7.2.4.1 (exact interval, 4 of 20 at 90 %).
TEST(Intervals, clopper_pearson_gives_the_printed_tables_of_newcombe_and_nist) {
    const std::vector<PrintedShare> table{{{81, 263}, 0.95, {0.2527, 0.3676}, 5.1e-5},
                                          {{15, 148}, 0.95, {0.0578, 0.1617}, 5.1e-5},
                                          {{0, 20}, 0.95, {0.0, 0.1684}, 5.1e-5},
                                          {{1, 29}, 0.95, {0.0009, 0.1776}, 5.1e-5},
                                          {{4, 20}, 0.90, {0.071354, 0.401028}, 1.0e-6}};
    for (const PrintedShare& row : table) {
        const Interval interval = clopper_pearson_interval(row.share, row.level);
        EXPECT_NEAR(interval.low, row.printed.low, row.tolerance) << row.share.successes << "/" << row.share.trials;
        EXPECT_NEAR(interval.high, row.printed.high, row.tolerance) << row.share.successes << "/" << row.share.trials;
    }
}

// Newcombe 1998, Statistics in Medicine 17:873-890, table II (a), method 10.
TEST(Intervals, newcombes_difference_gives_his_printed_example) {
    const Interval interval = newcombe_difference_interval({56, 70}, {48, 80});
    EXPECT_NEAR(interval.low, 0.0524, 5.1e-5);
    EXPECT_NEAR(interval.high, 0.3339, 5.1e-5);
    const Interval reversed = newcombe_difference_interval({48, 80}, {56, 70});
    EXPECT_NEAR(reversed.low, -interval.high, 1e-15);
    EXPECT_NEAR(reversed.high, -interval.low, 1e-15);
}

// Garwood 1936, Biometrika 28:437-442: exact limits of a Poisson mean.
TEST(Intervals, garwood_gives_the_printed_limits_of_a_count) {
    EXPECT_NEAR(garwood_interval(0).low, 0.0, 0.0);
    EXPECT_NEAR(garwood_interval(0).high, 3.689, 5.1e-4);
    EXPECT_NEAR(garwood_interval(1).low, 0.025, 5.1e-4);
    EXPECT_NEAR(garwood_interval(1).high, 5.572, 5.1e-4);
    EXPECT_NEAR(garwood_interval(10).low, 4.795, 5.1e-4);
    EXPECT_NEAR(garwood_interval(10).high, 18.390, 5.1e-4);
}

TEST(Intervals, none_and_all_of_the_trials_end_at_nought_and_one) {
    for (const long trials : {1L, 2L, 20L, 100000L}) {
        EXPECT_EQ(wilson_interval({0, trials}).low, 0.0);
        EXPECT_EQ(wilson_interval({trials, trials}).high, 1.0);
        EXPECT_EQ(clopper_pearson_interval({0, trials}).low, 0.0);
        EXPECT_EQ(clopper_pearson_interval({trials, trials}).high, 1.0);
    }
}

TEST(Intervals, successes_and_failures_mirror_each_other) {
    for (const Share share : {Share{0, 7}, Share{3, 7}, Share{12, 40}, Share{39, 40}}) {
        const Share failures{share.trials - share.successes, share.trials};
        EXPECT_NEAR(wilson_interval(share).low, 1.0 - wilson_interval(failures).high, 1e-12);
        EXPECT_NEAR(clopper_pearson_interval(share).low, 1.0 - clopper_pearson_interval(failures).high, 1e-12);
    }
}

// What the exact interval promises: for every true share it covers at least its level.
TEST(Intervals, clopper_pearson_covers_at_least_its_level_and_wilson_nearly_so) {
    const int trials = 25;
    double wilson_sum = 0.0;
    int shares = 0;
    for (double p = 0.02; p < 0.99; p += 0.01, ++shares) {
        const boost::math::binomial binomial(trials, p);
        double exact = 0.0;
        double wilson = 0.0;
        for (int k = 0; k <= trials; ++k) {
            const double chance = boost::math::pdf(binomial, k);
            const Interval a = clopper_pearson_interval({k, trials});
            const Interval b = wilson_interval({k, trials});
            if (a.low <= p && p <= a.high) exact += chance;
            if (b.low <= p && p <= b.high) wilson += chance;
        }
        EXPECT_GE(exact, 0.95 - 1e-12) << "true share " << p;
        wilson_sum += wilson;
    }
    EXPECT_NEAR(wilson_sum / shares, 0.95, 0.01);
}

}  // namespace
}  // namespace plugside
