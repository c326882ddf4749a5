#include "core/walking/shared_work.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <numeric>
#include <set>

#include "core/walking/walking_ways.h"
#include "tests/core/walking/walking_fields.h"

namespace plugside {
namespace {

using Order = std::vector<std::size_t>;

std::vector<LocalPoint> scattered(std::size_t count, std::uint64_t seed, double side_m = 300.0) {
    std::mt19937_64 random(seed);
    return test::random_places(count, side_m, random);
}

WorkOptions from_the_gate() {
    WorkOptions options;
    options.start = options.end = LocalPoint{0, 0};
    return options;
}

void expect_each_place_once(const SharedWork& work, std::size_t count) {
    Order all = work.cut_off;
    all.insert(all.end(), work.too_long.begin(), work.too_long.end());
    for (const WorkDay& day : work.days) {
        EXPECT_FALSE(day.places.empty());
        all.insert(all.end(), day.places.begin(), day.places.end());
    }
    std::sort(all.begin(), all.end());
    Order expected(count);
    std::iota(expected.begin(), expected.end(), std::size_t{0});
    EXPECT_EQ(all, expected);
}

double minutes_of(const std::vector<LocalPoint>& places, const Order& order, LocalPoint gate, double minutes_each) {
    if (order.empty()) return 0.0;
    double metres = distance_m(gate, places[order.front()]) + distance_m(places[order.back()], gate);
    for (std::size_t i = 1; i < order.size(); ++i) metres += distance_m(places[order[i - 1]], places[order[i]]);
    return metres / 60.0 + minutes_each * static_cast<double>(order.size());
}

// Every order, cut at every place.
double least_longest_of_two(const std::vector<LocalPoint>& places, LocalPoint gate, double minutes_each) {
    Order order(places.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    double best = INFINITY;
    do {
        for (std::size_t cut = 0; cut <= order.size(); ++cut) {
            const auto middle = order.begin() + static_cast<std::ptrdiff_t>(cut);
            best = std::min(best, std::max(minutes_of(places, {order.begin(), middle}, gate, minutes_each),
                                           minutes_of(places, {middle, order.end()}, gate, minutes_each)));
        }
    } while (std::next_permutation(order.begin(), order.end()));
    return best;
}

TEST(SharedWork, two_people_are_done_hardly_later_than_with_the_best_of_all_ways_to_share) {
    double sum_found = 0.0;
    double sum_best = 0.0;
    for (std::uint64_t seed = 1; seed <= 25; ++seed) {
        const std::vector<LocalPoint> places = scattered(7, seed);
        WorkOptions options = from_the_gate();
        options.people = 2;
        const SharedWork work = share_work(places, std::vector<double>(7, 3.0), options);
        expect_each_place_once(work, 7);
        const double best = least_longest_of_two(places, {0, 0}, 3.0);
        EXPECT_GE(work.longest_minutes, best - 1e-9) << "seed " << seed;
        EXPECT_LE(work.longest_minutes, 1.10 * best) << "seed " << seed;
        sum_found += work.longest_minutes;
        sum_best += best;
    }
    EXPECT_LE(sum_found, 1.02 * sum_best);
}

TEST(SharedWork, the_days_of_four_people_are_about_equally_long_and_told_as_they_are) {
    const std::vector<LocalPoint> places = scattered(120, 2);
    WorkOptions options = from_the_gate();
    options.people = 4;
    const SharedWork work = share_work(places, std::vector<double>(120, 6.0), options);
    expect_each_place_once(work, 120);
    ASSERT_EQ(work.days.size(), 4U);
    for (const WorkDay& day : work.days) {
        EXPECT_NEAR(day.minutes, minutes_of(places, day.places, {0, 0}, 6.0), 1e-9);
        EXPECT_GT(day.minutes, 0.93 * work.longest_minutes);
        EXPECT_LE(day.minutes, work.longest_minutes);
    }
}

TEST(SharedWork, no_day_is_longer_than_is_said_and_there_is_none_too_many) {
    const std::vector<LocalPoint> places = scattered(60, 3);
    WorkOptions options = from_the_gate();
    options.people = 2;
    options.minutes_a_day = 90.0;
    const SharedWork work = share_work(places, std::vector<double>(60, 10.0), options);
    expect_each_place_once(work, 60);
    EXPECT_LE(work.longest_minutes, 90.0 + 1e-9);
    EXPECT_GE(work.day_count, 4U) << "600 minutes at the places alone are more than three days of two";
    EXPECT_LE(work.day_count, 5U);
}

TEST(SharedWork, who_carries_material_for_few_goes_back_to_the_vehicle_where_that_costs_least) {
    std::vector<LocalPoint> row;
    for (int i = 1; i <= 6; ++i) row.push_back({10.0 * i, 0.0});
    WorkOptions options = from_the_gate();
    options.carry = 4;
    options.minutes_to_load = 5.0;
    const SharedWork work = share_work(row, std::vector<double>(6, 1.0), options);
    ASSERT_EQ(work.days.size(), 1U);
    ASSERT_EQ(work.days[0].loads_before.size(), 1U);
    EXPECT_NEAR(work.days[0].way.value(), 120.0 + 40.0, 1e-9) << "two near ones on one load, four far ones on the other";
    EXPECT_NEAR(work.days[0].minutes, 160.0 / 60.0 + 6.0 + 5.0, 1e-9);
    options.vehicle = LocalPoint{35, 0};
    EXPECT_NEAR(share_work(row, std::vector<double>(6, 1.0), options).days[0].way.value(), 120.0, 1e-9)
        << "it stands on the way";
}

TEST(SharedWork, a_person_begins_where_they_wish) {
    const std::vector<LocalPoint> places = scattered(40, 8);
    WorkOptions options;
    options.people = 2;
    options.start = LocalPoint{0, 0};
    options.wished_start = {std::nullopt, LocalPoint{300, 300}};
    const SharedWork work = share_work(places, std::vector<double>(40, 2.0), options);
    ASSERT_EQ(work.days.size(), 2U);
    for (const WorkDay& day : work.days) {
        double sum = distance_m(day.person == 0 ? LocalPoint{0, 0} : LocalPoint{300, 300}, places[day.places.front()]);
        for (std::size_t i = 1; i < day.places.size(); ++i)
            sum += distance_m(places[day.places[i - 1]], places[day.places[i]]);
        EXPECT_NEAR(day.way.value(), sum, 1e-6);
    }
    WorkOptions both_at_the_gate = options;
    both_at_the_gate.wished_start.clear();
    EXPECT_LE(work.longest_minutes,
              1.02 * share_work(places, std::vector<double>(40, 2.0), both_at_the_gate).longest_minutes);
}

TEST(SharedWork, places_that_no_way_leads_to_and_those_that_take_more_than_a_day_are_named) {
    Ground ground;
    ground.keep_clear = {{"barn", "", KeepClearKind::building, {{{{50, 50}, {70, 50}, {70, 70}, {50, 70}}}, {}}}};
    const WalkingWays ways(ground);
    WorkOptions options = from_the_gate();
    options.ways = &ways;
    options.minutes_a_day = 60.0;
    const SharedWork work = share_work({{10, 10}, {60, 60}, {20, 90}, {30, 5}}, {5.0, 5.0, 59.0, 5.0}, options);
    expect_each_place_once(work, 4);
    EXPECT_EQ(work.cut_off, (Order{1}));
    EXPECT_EQ(work.too_long, (Order{2}));
}

TEST(SharedWork, no_place_one_place_one_spot_and_more_people_than_places_do_no_harm) {
    WorkOptions options = from_the_gate();
    options.people = 3;
    EXPECT_TRUE(share_work({}, {}, options).days.empty());
    EXPECT_EQ(share_work({{5, 5}}, {1.0}, options).days.size(), 1U);
    options.carry = 1;
    expect_each_place_once(share_work(std::vector<LocalPoint>(9, LocalPoint{5, 5}), std::vector<double>(9, 1.0), options),
                           9);
    options.start = options.end = std::nullopt;
    expect_each_place_once(share_work(scattered(9, 1), std::vector<double>(9, 1.0), options), 9);
}

TEST(SharedWork, tells_better_and_better_sharings_the_last_of_which_it_gives) {
    const std::vector<LocalPoint> places = scattered(80, 5);
    for (const std::size_t people : {1U, 3U}) {
        WorkOptions options = from_the_gate();
        options.people = people;
        std::vector<double> told;
        options.better = [&](const SharedWork& work) {
            expect_each_place_once(work, places.size());
            told.push_back(work.longest_minutes);
        };
        const SharedWork work = share_work(places, std::vector<double>(80, 5.0), options);
        ASSERT_GT(told.size(), 1U) << people;
        EXPECT_TRUE(std::is_sorted(told.rbegin(), told.rend())) << people;
        EXPECT_NEAR(told.back(), work.longest_minutes, 1e-9) << people;
        options.rough = true;
        options.better = nullptr;
        EXPECT_LE(work.longest_minutes, share_work(places, std::vector<double>(80, 5.0), options).longest_minutes);
    }
}

TEST(SharedWork, is_kept_when_a_place_goes_and_a_new_one_is_put_in_where_it_adds_least) {
    std::vector<LocalPoint> places = scattered(40, 8);
    WorkOptions options = from_the_gate();
    options.people = 2;
    const SharedWork before = share_work(places, std::vector<double>(40, 5.0), options);
    std::vector<WorkDay> without = before.days;
    const std::size_t gone = without[1].places[4];
    std::erase(without[1].places, gone);
    // as an earlier order without it, it is put back where it stood or where that adds no more
    const SharedWork again = keep_shares(places, std::vector<double>(40, 5.0), without, options);
    expect_each_place_once(again, places.size());
    EXPECT_LE(again.days[0].minutes + again.days[1].minutes, before.days[0].minutes + before.days[1].minutes + 1e-9);
    for (std::size_t d = 0; d < 2; ++d) {
        Order rest = again.days[d].places;
        std::erase(rest, gone);
        EXPECT_EQ(rest, without[d].places);
    }
    const SharedWork full = keep_shares({{10, 0}, {20, 0}}, {30.0, 30.0}, {WorkDay{0, 0, {0}, {}, {}, 0.0}}, [] {
        WorkOptions alone = from_the_gate();
        alone.minutes_a_day = 40.0;
        return alone;
    }());
    ASSERT_EQ(full.days.size(), 2U) << "no room for it: one day more";
    EXPECT_EQ(full.days[1].day, 1U);
}

TEST(SharedWork, fetches_more_by_the_pieces_that_places_take) {
    const std::vector<LocalPoint> places{{100, 0}, {110, 0}, {120, 0}, {130, 0}};
    WorkOptions options = from_the_gate();
    options.carry = 4;
    options.load_at = {2, 2, 2, 2};
    const SharedWork pairs = share_work(places, std::vector<double>(4, 5.0), options);
    ASSERT_EQ(pairs.days.size(), 1U);
    EXPECT_EQ(pairs.days[0].loads_before.size(), 1U) << "eight pieces, four at a time";
    options.load_at = {1, 1, 1, 1};
    EXPECT_TRUE(share_work(places, std::vector<double>(4, 5.0), options).days[0].loads_before.empty());
    options.load_at = {9, 1, 1, 1};
    const SharedWork heavy = share_work(places, std::vector<double>(4, 5.0), options);
    expect_each_place_once(heavy, 4);
    EXPECT_EQ(heavy.days[0].loads_before.size(), 1U) << "what takes more than a load has one of its own";
}

}  // namespace
}  // namespace plugside
