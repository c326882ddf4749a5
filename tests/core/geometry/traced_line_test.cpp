#include "core/geometry/traced_line.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <cmath>

#include "core/geometry/polyline.h"

namespace plugside {
namespace {

const TracedLine open_line{{{0, 0}, {10, 0}, {10, 10}}, false};
const TracedLine square{{{0, 0}, {10, 0}, {10, 10}, {0, 10}}, true};

PlaceOnLine at(const TracedLine& line, LocalPoint place) { return *nearest_on(line, place); }

TEST(TracedLine, HasNoPlaceWithoutVerticesAndOneOfOne) {
    EXPECT_FALSE(nearest_on({}, {1.0, 2.0}));
    const auto place = nearest_on({{{3.0, 4.0}}, false}, {0.0, 0.0});
    ASSERT_TRUE(place);
    EXPECT_EQ(place->at, (LocalPoint{3.0, 4.0}));
    EXPECT_DOUBLE_EQ(place->away_m, 5.0);
}

TEST(TracedLine, IsFollowedFromPlaceToPlaceWithTheVerticesBetween) {
    EXPECT_EQ(between(open_line, at(open_line, {2, 1}), at(open_line, {11, 4})),
              (std::vector<LocalPoint>{{2, 0}, {10, 0}, {10, 4}}));
    EXPECT_EQ(between(open_line, at(open_line, {11, 4}), at(open_line, {2, 1})),
              (std::vector<LocalPoint>{{10, 4}, {10, 0}, {2, 0}}));
    EXPECT_EQ(between(open_line, at(open_line, {2, 1}), at(open_line, {7, 1})), (std::vector<LocalPoint>{{2, 0}, {7, 0}}));
}

TEST(TracedLine, GoesTheShorterWayRoundARingOrTheOther) {
    const PlaceOnLine from = at(square, {0, 3});  // on the edge that closes it
    const PlaceOnLine to = at(square, {4, 0});
    EXPECT_EQ(between(square, from, to), (std::vector<LocalPoint>{{0, 3}, {0, 0}, {4, 0}}));
    EXPECT_EQ(between(square, from, to, true), (std::vector<LocalPoint>{{0, 3}, {0, 10}, {10, 10}, {10, 0}, {4, 0}}));
}

TEST(TracedLine, DoesNotRepeatAVertexThatAPlaceLiesOn) {
    EXPECT_EQ(between(open_line, at(open_line, {0, 0}), at(open_line, {10, 0})), (std::vector<LocalPoint>{{0, 0}, {10, 0}}));
    EXPECT_EQ(between(open_line, at(open_line, {10, 0}), at(open_line, {10, 10})),
              (std::vector<LocalPoint>{{10, 0}, {10, 10}}));
}

RC_GTEST_PROP(TracedLine, BothWaysRoundARingMakeItsWholeLength, ()) {
    const int corners = *rc::gen::inRange(3, 12);
    TracedLine ring{{}, true};
    for (int i = 0; i < corners; ++i) {
        const double turn = 6.283185307179586 * i / corners;
        const double radius = 5.0 + *rc::gen::inRange(0, 1000) / 100.0;
        ring.vertices.push_back({radius * std::sin(turn), radius * std::cos(turn)});
    }
    const auto any = [] {
        return LocalPoint{*rc::gen::inRange(-2000, 2000) / 100.0, *rc::gen::inRange(-2000, 2000) / 100.0};
    };
    const PlaceOnLine from = at(ring, any());
    const PlaceOnLine to = at(ring, any());
    auto closed = ring.vertices;
    closed.push_back(closed.front());
    const double whole = length(Polyline{closed}).value();
    const double one = length(Polyline{between(ring, from, to)}).value();
    const double other = length(Polyline{between(ring, from, to, true)}).value();
    RC_ASSERT(one <= other + 1e-9);
    RC_ASSERT(std::abs(one + other - whole) < 1e-9 || (from.at == to.at && one < 1e-9));
}

RC_GTEST_PROP(TracedLine, HasNoNearerPlaceThanTheNearest, ()) {
    TracedLine line{{}, *rc::gen::arbitrary<bool>()};
    for (int i = *rc::gen::inRange(2, 9); i > 0; --i)
        line.vertices.push_back({*rc::gen::inRange(-50, 50) * 1.0, *rc::gen::inRange(-50, 50) * 1.0});
    const LocalPoint place{*rc::gen::inRange(-60, 60) * 1.0, *rc::gen::inRange(-60, 60) * 1.0};
    auto as_polyline = line.vertices;
    if (line.closed) as_polyline.push_back(as_polyline.front());
    RC_ASSERT(std::abs(nearest_on(line, place)->away_m - distance(place, Polyline{as_polyline})->value()) < 1e-9);
}

}  // namespace
}  // namespace plugside
