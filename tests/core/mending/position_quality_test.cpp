#include "core/mending/position_quality.h"

#include <gtest/gtest.h>

#include <cmath>

namespace plugside {
namespace {

PlacedMark mark_at(double east_m, double seconds, std::size_t walk = 0, PlaceError error = {}) {
    return {{east_m, 0.0}, error, UtcTime{std::chrono::milliseconds{std::llround(seconds * 1000.0)}}, walk};
}

TEST(PositionQuality, RelativeErrorGrowsFromTheOwnPartsToTheWholeWithTime) {
    const PlacedMark first = mark_at(0.0, 0.0);
    EXPECT_NEAR(relative_sd_m(first, mark_at(3.0, 0.0)), std::sqrt(2.0 * 0.16), 1e-12);
    EXPECT_NEAR(relative_sd_m(first, mark_at(3.0, 600.0)), std::sqrt(2.0 * 0.16 + 2.0 * 2.25 * (1.0 - std::exp(-1.0))),
                1e-12);
    EXPECT_NEAR(relative_sd_m(first, mark_at(3.0, 1e6)), std::sqrt(2.0 * 0.16 + 2.0 * 2.25), 1e-9);
    EXPECT_NEAR(relative_sd_m(first, mark_at(3.0, -600.0)), relative_sd_m(first, mark_at(3.0, 600.0)), 1e-12);
}

TEST(PositionQuality, TwoWalkersShareNothing) {
    EXPECT_NEAR(relative_sd_m(mark_at(0.0, 0.0, 0), mark_at(0.0, 0.0, 1)), std::sqrt(2.0 * 0.16 + 2.0 * 2.25), 1e-12);
}

TEST(PositionQuality, WithoutATimeOneMemoryIsTakenToHavePassed) {
    PlacedMark timeless = mark_at(0.0, 0.0);
    timeless.time.reset();
    EXPECT_NEAR(relative_sd_m(timeless, mark_at(0.0, 5.0)), relative_sd_m(mark_at(0.0, 0.0), mark_at(0.0, 600.0)), 1e-12);
}

// 60 averaged fixes brought 7.3 m to 4.4 m (RMSE95) under Douglas firs: 0.60, far from 1 / sqrt(60) = 0.13 (trade facts,
// section 6).
TEST(PositionQuality, AveragingLessensTheErrorByMuchLessThanTheRootOfTheNumber) {
    std::vector<PlacedMark> fixes;
    for (int i = 0; i < 60; ++i) fixes.push_back(mark_at(0.0, i));
    const double one = std::hypot(PlaceError{}.own_m, PlaceError{}.shared_m);
    const double share = mean_place(fixes).sd_m / one;
    EXPECT_GT(share, 1.0 / std::sqrt(60.0));
    EXPECT_GE(share, 4.4 / 7.3);
    EXPECT_LT(share, 1.0);
}

TEST(PositionQuality, TheMeanLeansToTheBetterMark) {
    const MeanPlace mean = mean_place({mark_at(0.0, 0.0, 0, {0.5, 0.0, 600.0}), mark_at(1.0, 10.0, 0, {1.0, 0.0, 600.0})});
    EXPECT_NEAR(mean.at.east_m, 0.2, 1e-12);
    EXPECT_NEAR(mean.sd_m, std::sqrt(0.2), 1e-12);
}

// The mean of n equal, independent errors: sd / sqrt(n); what they share stays out of it.
TEST(PositionQuality, AveragingLessensTheOwnPartByTheRootOfTheNumber) {
    for (const int marks : {1, 2, 3, 9}) {
        std::vector<PlacedMark> fixes;
        for (int i = 0; i < marks; ++i) fixes.push_back(mark_at(0.1 * i, 10.0 * i, 0, {0.6, 2.0, 600.0}));
        EXPECT_NEAR(mean_place(fixes).own_sd_m, 0.6 / std::sqrt(static_cast<double>(marks)), 1e-12);
    }
}

TEST(PositionQuality, AMarkOfWhichSomethingIsKnownKeepsItsOwnPart) {
    Mound mound;
    EXPECT_EQ(place_error_of(mound), PlaceError{});
    mound.position_sd = Metres::of(1.2);
    EXPECT_EQ(place_error_of(mound).own_m, 1.2);
    EXPECT_EQ(place_error_of(mound).shared_m, 1.5);
}

}  // namespace
}  // namespace plugside
