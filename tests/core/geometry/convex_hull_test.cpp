#include "core/geometry/convex_hull.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <random>

#include "core/geometry/polygon.h"

namespace plugside {
namespace {

TEST(ConvexHull, OfASquareWithPlacesInsideAndOnItsSidesIsItsCorners) {
    const std::vector<LocalPoint> hull = convex_hull({{1, 1}, {2, 2}, {0, 2}, {0, 0}, {1, 0}, {2, 0}, {0.5, 1.5}, {0, 0}});
    EXPECT_EQ(hull, (std::vector<LocalPoint>{{0, 0}, {2, 0}, {2, 2}, {0, 2}}));
}

TEST(ConvexHull, OfTooFewPlacesForARingIsThese) {
    EXPECT_TRUE(convex_hull({}).empty());
    EXPECT_EQ(convex_hull({{3, 4}, {3, 4}}).size(), 1U);
    EXPECT_EQ(convex_hull({{0, 0}, {2, 2}, {1, 1}}), (std::vector<LocalPoint>{{0, 0}, {2, 2}}));
}

TEST(ConvexHull, HoldsAllPlacesAndTurnsLeftAtEveryCorner) {
    std::mt19937_64 random(5);
    std::normal_distribution<double> anywhere(0.0, 10.0);
    for (int round = 0; round < 50; ++round) {
        std::vector<LocalPoint> places(3 + static_cast<std::size_t>(random() % 60));
        for (LocalPoint& place : places) place = {anywhere(random), anywhere(random)};
        const std::vector<LocalPoint> hull = convex_hull(places);
        for (std::size_t i = 0; i < hull.size(); ++i) {
            const LocalPoint a = hull[i];
            const LocalPoint b = hull[(i + 1) % hull.size()];
            EXPECT_GT(cross(b - a, hull[(i + 2) % hull.size()] - b), 0.0);
            for (const LocalPoint place : places) EXPECT_GE(cross(b - a, place - a), -1e-9);
        }
    }
}

}  // namespace
}  // namespace plugside
