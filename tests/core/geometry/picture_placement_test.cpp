#include "core/geometry/picture_placement.h"

#include <gtest/gtest.h>
#include <rapidcheck.h>

#include <cmath>
#include <numbers>

#include "core/simulation/random.h"

namespace plugside {
namespace {

PicturePlacement drawn_placement(Random& random, bool similarity) {
    const double turn = random.uniform(0.0, 2.0 * std::numbers::pi);
    const double size = random.log_uniform(0.01, 5.0);
    PicturePlacement placement;
    placement.corner = {random.uniform(-5000.0, 5000.0), random.uniform(-5000.0, 5000.0)};
    placement.per_column = {size * std::cos(turn), size * std::sin(turn)};
    placement.per_row = {size * std::sin(turn), -size * std::cos(turn)};
    if (!similarity) {
        placement.per_row = placement.per_row * random.uniform(0.6, 1.6);
        placement.per_row = placement.per_row + placement.per_column * random.uniform(-0.5, 0.5);
    }
    return placement;
}

std::vector<PlacementPair> drawn_pairs(Random& random, const PicturePlacement& placement, std::size_t count,
                                       double error_m) {
    std::vector<PlacementPair> pairs;
    for (std::size_t i = 0; i < count; ++i) {  // about a circle: never on one line
        const double at =
            (static_cast<double>(i) + random.uniform(0.0, 0.4)) * 2.0 * std::numbers::pi / static_cast<double>(count);
        const PicturePixel pixel{2000.0 + random.uniform(800.0, 1500.0) * std::cos(at),
                                 1500.0 + random.uniform(800.0, 1400.0) * std::sin(at)};
        const LocalVector error{random.normal(0.0, error_m), random.normal(0.0, error_m)};
        pairs.push_back({pixel, placement.to_ground(pixel) + error});
    }
    return pairs;
}

double furthest_m(const PicturePlacement& a, const PicturePlacement& b) {
    double furthest = 0.0;
    for (const PicturePixel corner : {PicturePixel{0, 0}, {4000, 0}, {0, 3000}, {4000, 3000}})
        furthest = std::max(furthest, distance_m(a.to_ground(corner), b.to_ground(corner)));
    return furthest;
}

TEST(PicturePlacement, of_pairs_without_error_is_the_placement_they_were_made_with) {
    EXPECT_TRUE(rc::check("known placements come back", [] {
        Random random(*rc::gen::arbitrary<std::uint64_t>());
        const auto count = *rc::gen::inRange<std::size_t>(2, 12);
        const bool similarity = count == 2 || random.chance(0.3);
        const PicturePlacement truth = drawn_placement(random, similarity);
        const auto pairs = drawn_pairs(random, truth, count, 0.0);
        const auto fit = similarity ? fit_placement(pairs, PlacementKind::similarity) : fit_placement(pairs);
        RC_ASSERT(fit.has_value());
        RC_ASSERT(furthest_m(fit->placement, truth) < 1e-6);
        RC_ASSERT(fit->residuals_m.size() == count);
        RC_ASSERT(!fit->worst.has_value());
        RC_ASSERT(fit->placement.mirrored() == false);
        const auto back = fit->placement.to_pixel(fit->placement.to_ground({123.25, 456.75}));
        RC_ASSERT(back.has_value() && std::abs(back->column - 123.25) < 1e-5 && std::abs(back->row - 456.75) < 1e-5);
    }));
}

TEST(PicturePlacement, moves_with_its_ground_and_does_not_hear_of_the_pairs_order) {
    EXPECT_TRUE(rc::check("shift and order", [] {
        Random random(*rc::gen::arbitrary<std::uint64_t>());
        const auto count = *rc::gen::inRange<std::size_t>(3, 10);
        auto pairs = drawn_pairs(random, drawn_placement(random, false), count, 0.3);
        const auto fit = fit_placement(pairs);
        RC_ASSERT(fit.has_value());
        const LocalVector shift{random.uniform(-1e4, 1e4), random.uniform(-1e4, 1e4)};
        std::reverse(pairs.begin(), pairs.end());
        for (PlacementPair& pair : pairs) pair.ground = pair.ground + shift;
        const auto moved = fit_placement(pairs);
        RC_ASSERT(moved.has_value());
        PicturePlacement expected = fit->placement;
        expected.corner = expected.corner + shift;
        RC_ASSERT(furthest_m(moved->placement, expected) < 1e-6);
        for (std::size_t i = 0; i < count; ++i)
            RC_ASSERT(std::abs(moved->residuals_m[count - 1 - i] - fit->residuals_m[i]) < 1e-6);
    }));
}

TEST(PicturePlacement, leaves_residuals_that_no_small_change_makes_smaller) {
    EXPECT_TRUE(rc::check("least squares", [] {
        Random random(*rc::gen::arbitrary<std::uint64_t>());
        const auto pairs = drawn_pairs(random, drawn_placement(random, false), 7, 0.5);
        const auto fit = fit_placement(pairs);
        RC_ASSERT(fit.has_value());
        const auto squares = [&](const PicturePlacement& placement) {
            double sum = 0.0;
            for (const PlacementPair& pair : pairs) {
                const double left = distance_m(placement.to_ground(pair.pixel), pair.ground);
                sum += left * left;
            }
            return sum;
        };
        const double least = squares(fit->placement);
        for (const double by : {-1e-3, 1e-3}) {
            PicturePlacement other = fit->placement;
            other.corner.east_m += by;
            RC_ASSERT(squares(other) >= least);
            other = fit->placement;
            other.per_column.north_m += by * 1e-3;
            RC_ASSERT(squares(other) >= least);
            other = fit->placement;
            other.per_row.east_m += by * 1e-3;
            RC_ASSERT(squares(other) >= least);
        }
    }));
}

TEST(PicturePlacement, tells_a_standard_error_near_the_error_that_was_made) {
    Random random(11);
    double squares = 0.0;
    constexpr int trials = 400;
    for (int i = 0; i < trials; ++i) {
        const auto fit = fit_placement(drawn_pairs(random, drawn_placement(random, false), 8, 0.25));
        ASSERT_TRUE(fit && fit->standard_error_m);
        squares += *fit->standard_error_m * *fit->standard_error_m;
    }
    EXPECT_NEAR(std::sqrt(squares / trials), 0.25, 0.01);
}

TEST(PicturePlacement, names_the_pair_that_was_clicked_wrongly) {
    Random random(12);
    for (int i = 0; i < 200; ++i) {
        auto pairs = drawn_pairs(random, drawn_placement(random, false), 6, 0.02);
        const std::size_t wrong = random.below(pairs.size());
        pairs[wrong].ground = pairs[wrong].ground + LocalVector{3.0, -2.0};
        const auto fit = fit_placement(pairs);
        ASSERT_TRUE(fit.has_value());
        EXPECT_EQ(fit->worst, wrong) << i;
    }
}

TEST(PicturePlacement, names_no_worst_pair_where_all_of_them_show_alike) {
    Random random(13);
    for (const std::size_t count : {std::size_t{3}, std::size_t{4}}) {
        const auto fit = fit_placement(drawn_pairs(random, drawn_placement(random, false), count, 1.0));
        ASSERT_TRUE(fit.has_value());
        EXPECT_EQ(fit->worst, std::nullopt);
        EXPECT_EQ(fit->standard_error_m.has_value(), count == 4);
    }
}

TEST(PicturePlacement, says_why_pairs_do_not_place_a_picture) {
    const auto code = [](const std::vector<PlacementPair>& pairs) {
        const auto fit = fit_placement(pairs);
        return fit ? std::string() : sentence(fit.error());
    };
    EXPECT_EQ(code({}), "0 pairs given; at least 2 are needed.");
    EXPECT_EQ(code({{{1, 1}, {0, 0}}}), "1 pair given; at least 2 are needed.");
    EXPECT_NE(code({{{1, 1}, {0, 0}}, {{1.1, 1}, {5, 0}}}).find("same spot of the picture"), std::string::npos);
    EXPECT_NE(code({{{1, 1}, {5, 0}}, {{90, 1}, {5, 0}}}).find("same spot of the ground"), std::string::npos);
    EXPECT_NE(code({{{0, 0}, {0, 0}}, {{100, 100}, {5, 5}}, {{200, 200.5}, {3, 12}}}).find("one line of the picture"),
              std::string::npos);
    EXPECT_NE(code({{{0, 0}, {0, 0}}, {{100, 100}, {5, 5}}, {{0, 200}, {9, 9}}}).find("one line on the ground"),
              std::string::npos);
    EXPECT_EQ(code({{{0, 0}, {0, 0}}, {{100, NAN}, {5, 5}}}), "A pair's place is not a number.");
}

TEST(PicturePlacement, tells_that_it_turns_the_picture_over) {
    const auto fit = fit_placement({{{0, 0}, {0, 0}}, {{100, 0}, {10, 0}}, {{0, 100}, {0, 10}}});
    ASSERT_TRUE(fit.has_value());
    EXPECT_TRUE(fit->placement.mirrored());
    EXPECT_FALSE((PicturePlacement{{}, {0, 0}, {0, 0}}).to_pixel({1, 1}).has_value());
}

}  // namespace
}  // namespace plugside
