#include "core/walking/steady_order.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "core/walking/walking_ways.h"
#include "tests/core/walking/walking_fields.h"

namespace plugside {
namespace {

using Order = std::vector<std::size_t>;

TEST(SteadyOrder, keeps_the_others_as_they_were_when_any_one_is_dropped_unless_much_is_saved) {
    std::mt19937_64 random(4);
    const std::vector<LocalPoint> places = test::random_places(60, 200.0, random);
    VisitingOptions options;
    options.start = LocalPoint{0, 0};
    const Order before = visiting_order(places, options);
    int kept = 0;
    for (std::size_t gone = 0; gone < places.size(); ++gone) {
        std::vector<LocalPoint> left = places;
        left.erase(left.begin() + static_cast<std::ptrdiff_t>(gone));
        Order earlier;
        for (const std::size_t i : before)
            if (i != gone) earlier.push_back(i > gone ? i - 1 : i);
        const Order after = steady_order(left, earlier, options);
        if (after == earlier) {
            ++kept;
        } else {
            EXPECT_LT(tour_length(left, after, options).value(),
                      (1.0 - usual_least_saving) * tour_length(left, earlier, options).value());
        }
    }
    EXPECT_GE(kept, 58);
}

TEST(SteadyOrder, takes_a_new_order_when_it_saves_more_than_is_said) {
    std::mt19937_64 random(4);
    const std::vector<LocalPoint> places = test::random_places(30, 200.0, random);
    Order as_numbered(places.size());
    for (std::size_t i = 0; i < places.size(); ++i) as_numbered[i] = i;
    EXPECT_EQ(steady_order(places, as_numbered), visiting_order(places));
    EXPECT_EQ(steady_order(places, as_numbered, {}, 0.95), as_numbered);
    EXPECT_EQ(steady_order(places, {}), visiting_order(places));
}

TEST(SteadyOrder, puts_new_places_in_where_they_add_least_around_walls_too) {
    Ground ground;
    ground.barriers = {{"ditch", {{{-5, 1}, {100, 1}}}}};
    const WalkingWays ways(ground);
    VisitingOptions options;
    options.start = LocalPoint{0, 0};
    options.end = LocalPoint{0, 2};
    options.ways = &ways;
    // out on the south of the ditch, back on the north: a place across the ditch from the first is near the end
    const std::vector<LocalPoint> places{{20, 0}, {60, 0}, {90, 0}, {90, 2}, {60, 2}, {20, 2}, {40, 2}, {40, 0}};
    EXPECT_EQ(steady_order(places, {0, 1, 2, 3, 4, 5}, options, 1.0), (Order{0, 7, 1, 2, 3, 4, 6, 5}));
}

TEST(SteadyOrder, few_and_no_places_do_no_harm) {
    EXPECT_TRUE(steady_order({}, {}).empty());
    EXPECT_EQ(steady_order({{1, 1}}, {}), (Order{0}));
    EXPECT_EQ(steady_order({{1, 1}, {2, 2}}, {1}, {}, 1.0).size(), 2U);
}

}  // namespace
}  // namespace plugside
