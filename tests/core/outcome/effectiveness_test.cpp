#include "core/outcome/effectiveness.h"

#include <gtest/gtest.h>

namespace plugside {
namespace {

// Counts of mounds in a field trial in Nevada hay (twelve plots of 2 acres): treated plots changed by -40, -78 and -69 %,
// the check by +24 %. The reductions are our arithmetic on the published changes.
TEST(Effectiveness, henderson_tilton_gives_the_reductions_of_the_nevada_trial) {
    const BeforeAfter check{100.0, 124.0};
    EXPECT_NEAR(100.0 * henderson_tilton_reduction({100.0, 60.0}, check).value(), 51.6, 0.05);
    EXPECT_NEAR(100.0 * henderson_tilton_reduction({100.0, 22.0}, check).value(), 82.3, 0.05);
    EXPECT_NEAR(100.0 * henderson_tilton_reduction({100.0, 31.0}, check).value(), 75.0, 0.05);
    EXPECT_LT(henderson_tilton_reduction({100.0, 60.0}, check).value(), trial_pass_mark);
    EXPECT_GT(henderson_tilton_reduction({100.0, 31.0}, check).value(), trial_pass_mark);
}

// Abbott 1925: 50 % alive in the check, 2 % in the treated.
TEST(Effectiveness, abbott_gives_ninety_six_of_a_hundred) { EXPECT_NEAR(abbott_reduction(2.0, 50.0).value(), 0.96, 1e-15); }

TEST(Effectiveness, an_untreated_piece_that_did_not_change_leaves_the_raw_reduction) {
    EXPECT_DOUBLE_EQ(henderson_tilton_reduction({80, 20}, {55, 55}).value(), raw_reduction({80, 20}).value());
    EXPECT_DOUBLE_EQ(raw_reduction({80, 20}).value(), 0.75);
}

TEST(Effectiveness, more_than_before_is_a_negative_reduction) {
    EXPECT_DOUBLE_EQ(raw_reduction({10, 15}).value(), -0.5);
    EXPECT_LT(abbott_reduction(3.0, 2.0).value(), 0.0);
}

TEST(Effectiveness, nothing_to_compare_with_gives_no_figure) {
    EXPECT_FALSE(raw_reduction({0, 0}));
    EXPECT_FALSE(abbott_reduction(0, 0));
    EXPECT_FALSE(henderson_tilton_reduction({0, 3}, {5, 5}));
    EXPECT_FALSE(henderson_tilton_reduction({5, 3}, {5, 0}));
}

TEST(Effectiveness, none_left_is_a_reduction_of_one) {
    EXPECT_DOUBLE_EQ(raw_reduction({12, 0}).value(), 1.0);
    EXPECT_DOUBLE_EQ(henderson_tilton_reduction({12, 0}, {9, 11}).value(), 1.0);
}

}  // namespace
}  // namespace plugside
