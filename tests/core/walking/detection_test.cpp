#include "core/walking/detection.h"

#include <gtest/gtest.h>

namespace plugside {
namespace {

// Eighteen birds beside a line of 100 m: Thompson, Sampling, as worked in Penn State STAT 506, lessons 13.2 and 13.4.
std::vector<Metres> worked_example() {
    std::vector<Metres> distances;
    for (const double x : {0, 0, 1, 3, 7, 11, 11, 12, 15, 15, 18, 19, 21, 23, 28, 33, 34, 44})
        distances.push_back(Metres::of(x));
    return distances;
}

TEST(Detection, half_normal_gives_the_printed_width_and_density) {
    const DensityEstimate estimate = half_normal_density(worked_example(), Metres::of(100)).value();
    EXPECT_NEAR(estimate.effective_half_width->value(), 25.61, 0.005);
    EXPECT_NEAR(estimate.per_square_metre, 0.003514, 5e-7);
    EXPECT_NEAR(estimate.per_hectare(), 35.1, 0.05);
    EXPECT_EQ(estimate.detections, 18U);
    EXPECT_TRUE(estimate.few);
}

// The page prints 0.055: a misprint; 18 / (2 x 100 x 16.39) = 0.00549 is our arithmetic.
TEST(Detection, negative_exponential_gives_the_printed_width) {
    const DensityEstimate estimate = negative_exponential_density(worked_example(), Metres::of(100)).value();
    EXPECT_NEAR(estimate.effective_half_width->value(), 16.39, 0.005);
    EXPECT_NEAR(estimate.per_square_metre, 0.00549, 5e-6);
}

TEST(Detection, a_strip_of_twenty_metres_to_each_side_holds_twelve) {
    const DensityEstimate estimate = strip_density(worked_example(), Metres::of(100), Metres::of(20));
    EXPECT_EQ(estimate.detections, 12U);
    EXPECT_NEAR(estimate.per_square_metre, 0.0030, 1e-15);
}

// 150 wooden stakes on 1,000 x 40 m (37.5 a hectare), 68 seen, f(0) = 0.1148 a metre: Burnham, Anderson & Laake 1980;
// Buckland et al. 2001 [memory].
TEST(Detection, the_wooden_stakes_give_thirty_nine_a_hectare) {
    const DensityEstimate estimate = density_from_curve(68, 0.1148, Metres::of(1000));
    EXPECT_NEAR(estimate.per_hectare(), 39.0, 0.05);
    EXPECT_FALSE(estimate.few);
}

TEST(Detection, no_detection_is_a_density_of_nought_without_a_width) {
    for (const auto& estimate :
         {half_normal_density({}, Metres::of(50)), negative_exponential_density({}, Metres::of(50))}) {
        ASSERT_TRUE(estimate);
        EXPECT_EQ(estimate->per_square_metre, 0.0);
        EXPECT_FALSE(estimate->effective_half_width);
        EXPECT_TRUE(estimate->few);
    }
    EXPECT_EQ(strip_density({Metres::of(9)}, Metres::of(50), Metres::of(5)).per_square_metre, 0.0);
}

TEST(Detection, signs_that_all_lie_on_the_line_tell_nothing_of_a_curve) {
    const std::vector<Metres> on_the_line(5, Metres::of(0));
    EXPECT_FALSE(half_normal_density(on_the_line, Metres::of(50)));
    EXPECT_FALSE(negative_exponential_density(on_the_line, Metres::of(50)));
    EXPECT_DOUBLE_EQ(strip_density(on_the_line, Metres::of(50), Metres::of(2)).per_square_metre, 5.0 / 200.0);
}

TEST(Detection, twice_the_scale_is_a_quarter_of_the_density) {
    std::vector<Metres> twice = worked_example();
    for (Metres& x : twice) x = x * 2.0;
    EXPECT_NEAR(half_normal_density(twice, Metres::of(200))->per_square_metre,
                half_normal_density(worked_example(), Metres::of(100))->per_square_metre / 4.0, 1e-15);
}

}  // namespace
}  // namespace plugside
