#include "core/simulation/territories.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

namespace plugside {
namespace {

FieldDomain domain_of(std::uint64_t seed, double area_m2 = 20000.0) {
    Random random(seed);
    DomainOptions options;
    options.area_m2 = area_m2;
    return {options, random};
}

TerritoryOptions options_of(std::size_t animals, double buffer_m, int rounds, Random& random) {
    TerritoryOptions options;
    for (std::size_t i = 0; i < animals; ++i) options.areas_m2.push_back(random.log_normal(200.0, 0.6));
    options.buffer_m = buffer_m;
    options.rounds = rounds;
    return options;
}

double distance_between(const Polygon& a, const Polygon& b) {
    double nearest = 1e9;
    for (const LocalPoint p : a.outer.vertices) nearest = std::min(nearest, distance(p, b).value());
    for (const LocalPoint p : b.outer.vertices) nearest = std::min(nearest, distance(p, a).value());
    return nearest;
}

TEST(Territories, KeepTheBufferFromEachOtherAndTheBerthFromTheBoundary) {
    for (std::uint64_t seed = 1; seed <= 8; ++seed) {
        Random random(seed, 1);
        const FieldDomain domain = domain_of(seed);
        const auto parts = share_out(domain, options_of(60, 3.0, static_cast<int>(seed % 3), random), random);
        ASSERT_GT(parts.size(), 40u);
        for (std::size_t i = 0; i < parts.size(); ++i) {
            for (const LocalPoint corner : parts[i].ground.outer.vertices)
                EXPECT_TRUE(domain.open(LocalPoint{} + (corner - LocalPoint{}) * (1.0 - 1e-9)));
            // convex parts that lie apart are nearest to each other at a corner of one of them
            for (std::size_t j = 0; j < i; ++j)
                EXPECT_GE(distance_between(parts[i].ground, parts[j].ground), 3.0 - 1e-6) << seed << ' ' << i << ' ' << j;
        }
    }
}

TEST(Territories, WithoutABufferShareOutTheWholeOpenField) {
    for (std::uint64_t seed = 1; seed <= 6; ++seed) {
        Random random(seed, 1);
        const FieldDomain domain = domain_of(seed);
        const auto parts = share_out(domain, options_of(50, 0.0, 1, random), random);
        double sum_m2 = 0.0;
        for (const Territory& part : parts) sum_m2 += part.area_m2();
        int open = 0;
        constexpr int tries = 20000;  // the open area by counting places, apart from how the parts are cut
        for (int i = 0; i < tries; ++i)
            open += domain.open(domain.at(random.uniform(-1.1, 1.1) * domain.half_long_m(),
                                          random.uniform(-1.1, 1.1) * domain.half_short_m()))
                        ? 1
                        : 0;
        const double share = static_cast<double>(open) / tries;
        const double box_m2 = 4.84 * domain.half_long_m() * domain.half_short_m();
        const double sd_m2 = box_m2 * std::sqrt(share * (1.0 - share) / tries);
        EXPECT_NEAR(sum_m2, share * box_m2, 4.5 * sd_m2) << seed;
    }
}

TEST(Territories, AnimalsThatWorkMoreGetMoreGround) {
    double product = 0.0;
    double wanted_squares = 0.0;
    double given_squares = 0.0;
    for (std::uint64_t seed = 1; seed <= 6; ++seed) {
        Random random(seed, 1);
        const TerritoryOptions options = options_of(80, 1.0, 1, random);
        const auto parts = share_out(domain_of(seed), options, random);
        double wanted_mean = 0.0;
        double given_mean = 0.0;
        for (const Territory& part : parts) {
            wanted_mean += options.areas_m2[part.animal] / static_cast<double>(parts.size());
            given_mean += part.area_m2() / static_cast<double>(parts.size());
        }
        for (const Territory& part : parts) {
            const double wanted = options.areas_m2[part.animal] / wanted_mean - 1.0;
            const double given = part.area_m2() / given_mean - 1.0;
            product += wanted * given;
            wanted_squares += wanted * wanted;
            given_squares += given * given;
        }
    }
    EXPECT_GT(product / std::sqrt(wanted_squares * given_squares), 0.7);
}

TEST(Territories, OfNoAnimalAreNoneAndOfOneTheWholeField) {
    Random random(1, 1);
    EXPECT_TRUE(share_out(domain_of(1), {}, random).empty());
    const auto one = share_out(domain_of(1), {{150.0}, 2.0, 1}, random);
    ASSERT_EQ(one.size(), 1u);
    EXPECT_GT(one[0].area_m2(), 14000.0);
    EXPECT_LT(one[0].area_m2(), 20000.0);
}

}  // namespace
}  // namespace plugside
