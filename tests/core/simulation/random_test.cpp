#include "core/simulation/random.h"

#include <gtest/gtest.h>

#include <cmath>
#include <functional>
#include <numbers>
#include <vector>

namespace plugside {
namespace {

struct Moments {
    double mean = 0.0;
    double variance = 0.0;
};

constexpr int draws = 200000;

Moments moments_of(const std::function<double(Random&)>& draw) {
    Random random(20250410);
    double sum = 0.0;
    double squares = 0.0;
    for (int i = 0; i < draws; ++i) {
        const double x = draw(random);
        sum += x;
        squares += x * x;
    }
    const double mean = sum / draws;
    return {mean, squares / draws - mean * mean};
}

// Five standard errors of a mean over `draws` numbers of this standard deviation.
double five_errors(double sd) { return 5.0 * sd / std::sqrt(static_cast<double>(draws)); }

TEST(Random, GivesTheReferenceSequenceOfItsGenerator) {
    // xoshiro256** from the state 1, 2, 3, 4: first outputs of Blackman and Vigna's C code [memory]
    Random random = Random::from_state({1, 2, 3, 4});
    EXPECT_EQ(random.bits(), 11520u);
    EXPECT_EQ(random.bits(), 0u);
    EXPECT_EQ(random.bits(), 1509978240u);
    EXPECT_EQ(random.bits(), 1215971899390074240u);
}

TEST(Random, RepeatsItselfForTheSameSeedAndStreamOnly) {
    Random a(7, 1);
    Random b(7, 1);
    Random other_stream(7, 2);
    Random other_seed(8, 1);
    const std::uint64_t first = a.bits();
    EXPECT_EQ(first, b.bits());
    EXPECT_NE(first, other_stream.bits());
    EXPECT_NE(first, other_seed.bits());
}

TEST(Random, UniformNumbersFillTheUnitIntervalEvenly) {
    const Moments m = moments_of([](Random& random) { return random.uniform(); });
    EXPECT_NEAR(m.mean, 0.5, five_errors(std::sqrt(1.0 / 12.0)));
    EXPECT_NEAR(m.variance, 1.0 / 12.0, 0.001);
}

TEST(Random, ChoosesAmongAFewWithoutFavour) {
    Random random(3);
    std::vector<int> counts(6, 0);
    for (int i = 0; i < 60000; ++i) ++counts.at(random.below(6));
    double chi_square = 0.0;
    for (const int count : counts) chi_square += std::pow(count - 10000.0, 2) / 10000.0;
    EXPECT_LT(chi_square, 20.5);  // 0.999 quantile of chi-square with 5 degrees of freedom, standard table
}

TEST(Random, NormalAndLogNormalNumbersHaveTheirMoments) {
    const Moments normal = moments_of([](Random& random) { return random.normal(3.0, 2.0); });
    EXPECT_NEAR(normal.mean, 3.0, five_errors(2.0));
    EXPECT_NEAR(normal.variance, 4.0, 0.08);
    const Moments logs = moments_of([](Random& random) { return std::log(random.log_normal(12.0, 0.5)); });
    EXPECT_NEAR(logs.mean, std::log(12.0), five_errors(0.5));
    EXPECT_NEAR(logs.variance, 0.25, 0.005);
}

TEST(Random, GammaNumbersHaveTheirMomentsAboveAndBelowShapeOne) {
    for (const double shape : {0.4, 1.0, 4.3}) {
        const Moments m = moments_of([shape](Random& random) { return random.gamma(shape, 2.0); });
        EXPECT_NEAR(m.mean, 2.0 * shape, five_errors(2.0 * std::sqrt(shape))) << shape;
        EXPECT_NEAR(m.variance / (4.0 * shape), 1.0, 0.06) << shape;
    }
    const Moments about = moments_of([](Random& random) { return random.gamma_about(2.0, 0.45); });
    EXPECT_NEAR(about.mean, 2.0, five_errors(0.9));
    EXPECT_NEAR(std::sqrt(about.variance) / about.mean, 0.45, 0.01);
}

TEST(Random, PoissonCountsHaveEqualMeanAndVarianceAlsoWhenLarge) {
    for (const double mean : {0.0, 0.7, 6.0, 65.0}) {
        const Moments m = moments_of([mean](Random& random) { return static_cast<double>(random.poisson(mean)); });
        EXPECT_NEAR(m.mean, mean, five_errors(std::sqrt(mean)) + 1e-12) << mean;
        EXPECT_NEAR(m.variance, mean, 0.03 * mean + 1e-12) << mean;
    }
}

TEST(Random, BearingsScatterAboutTheirMeanWithTheirConcentration) {
    // mean resultant length I1(k) / I0(k): 0.893 at concentration 5 (Mardia & Jupp 2000, appendix table [memory])
    const double radians = std::numbers::pi / 180.0;
    const Moments cosines =
        moments_of([&](Random& random) { return std::cos((random.von_mises_degrees(350.0, 5.0) - 350.0) * radians); });
    EXPECT_NEAR(cosines.mean, 0.893, 0.002);
    const Moments sines =
        moments_of([&](Random& random) { return std::sin((random.von_mises_degrees(350.0, 5.0) - 350.0) * radians); });
    EXPECT_NEAR(sines.mean, 0.0, five_errors(0.42));
    const Moments without =
        moments_of([&](Random& random) { return std::cos(random.von_mises_degrees(0.0, 0.0) * radians); });
    EXPECT_NEAR(without.mean, 0.0, five_errors(0.71));
}

}  // namespace
}  // namespace plugside
