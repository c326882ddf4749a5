#include "core/sets/tours.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <set>

#include "core/plan/make_plan.h"
#include "core/sets/visits.h"
#include "tests/core/surveys.h"

namespace plugside {
namespace {

struct Field {
    Survey survey;
    Plan plan;
};

const Field& field() {
    static const Field one = [] {
        Survey survey = test::simulated_survey(11, 90);
        Plan plan = *make_plan(survey);
        return Field{std::move(survey), std::move(plan)};
    }();
    return one;
}

std::vector<std::size_t> sets_of(const Tours& tours) {
    std::vector<std::size_t> sets;
    for (const Tour& tour : tours.tours) sets.insert(sets.end(), tour.sets.begin(), tour.sets.end());
    return sets;
}

void expect_each_set_once(const Tours& tours, const Plan& plan) {
    std::vector<std::size_t> sets = sets_of(tours);
    for (const auto& more : {tours.cut_off, tours.too_long}) sets.insert(sets.end(), more.begin(), more.end());
    std::sort(sets.begin(), sets.end());
    std::vector<std::size_t> standing;
    for (std::size_t s = 0; s < plan.sets.size(); ++s)
        if (plan.sets[s].choice != SetChoice::dropped) standing.push_back(s);
    EXPECT_EQ(sets, standing);
}

double drawn_metres(const Tour& tour) {
    double sum = 0.0;
    for (const Polyline& stretch : tour.way)
        for (std::size_t i = 1; i < stretch.vertices.size(); ++i)
            sum += distance_m(stretch.vertices[i - 1], stretch.vertices[i]);
    return sum;
}

LocalPoint far_corner() {
    LocalPoint corner{-1e9, -1e9};
    for (const Mound& mound : field().survey.mounds)
        corner = {std::max(corner.east_m, mound.plug.east_m), std::max(corner.north_m, mound.plug.north_m)};
    return corner;
}

TEST(Tours, are_one_tour_in_the_order_of_the_plan_where_nothing_is_wished) {
    const Tours tours = make_tours(field().survey, field().plan, {});
    ASSERT_EQ(tours.tours.size(), 1U);
    EXPECT_TRUE(tours.of_the_plan);
    EXPECT_EQ(tours.start, where_the_walk_began(field().survey));
    expect_each_set_once(tours, field().plan);
    int before = 0;
    for (const std::size_t set : tours.tours[0].sets) {
        EXPECT_GT(field().plan.sets[set].visit_order, before);
        before = field().plan.sets[set].visit_order;
    }
    const Plan same = in_order_of(field().plan, tours);
    for (std::size_t s = 0; s < same.sets.size(); ++s)
        EXPECT_EQ(same.sets[s].visit_order, field().plan.sets[s].visit_order);
}

TEST(Tours, begin_at_the_place_that_was_set_and_come_back_to_it) {
    const LocalPoint vehicle = far_corner();
    TourWishes wishes;
    wishes.start = wishes.end = vehicle;
    std::vector<double> told;
    TourOptions options;
    options.better = [&](const Tours& tours) { told.push_back(tours.length.value()); };
    const Tours tours = make_tours(field().survey, field().plan, wishes, options);
    ASSERT_EQ(tours.tours.size(), 1U);
    expect_each_set_once(tours, field().plan);
    const Tour& tour = tours.tours[0];
    ASSERT_FALSE(tour.way.empty());
    EXPECT_EQ(tour.way.front().vertices.front(), vehicle);
    EXPECT_EQ(tour.way.back().vertices.back(), vehicle);
    EXPECT_NEAR(drawn_metres(tour), tour.length.value(), 1e-6 * tour.length.value());
    ASSERT_FALSE(told.empty()) << "a first usable order at once";
    EXPECT_LE(tours.length.value(), told.front());
    EXPECT_LT(tour.low, tour.minutes);
    EXPECT_GT(tour.high, tour.minutes);
    EXPECT_GT(tour.minutes, tour.length.value() / 60.0) << "at 1 m/s";
}

TEST(Tours, of_two_people_in_short_days_fit_their_days_and_say_what_does_not) {
    TourWishes wishes;
    wishes.start = wishes.end = far_corner();
    wishes.people = 2;
    wishes.minutes_a_day = 45.0;
    const Tours tours = make_tours(field().survey, field().plan, wishes);
    expect_each_set_once(tours, field().plan);
    EXPECT_GE(tours.tours.size(), 2U);
    for (const Tour& tour : tours.tours) {
        EXPECT_LE(tour.minutes, 45.0 + 1e-6);
        EXPECT_LT(tour.person, 2);
        EXPECT_LT(tour.day, tours.days);
    }
    wishes.minutes_a_day = 1.0;
    const Tours none = make_tours(field().survey, field().plan, wishes);
    EXPECT_TRUE(none.tours.empty());
    EXPECT_EQ(none.too_long.size(), sets_of(make_tours(field().survey, field().plan, {})).size());
}

TEST(Tours, go_back_to_the_vehicle_for_more_by_what_sets_take) {
    Survey survey = field().survey;
    TourWishes wishes;
    wishes.start = wishes.end = far_corner();
    wishes.carry = 4;
    const Tours without_method = make_tours(survey, field().plan, wishes);
    WorkOrder work;
    work.method = "paired-traps";
    survey.work = work;
    const Tours pairs = make_tours(survey, field().plan, wishes);
    ASSERT_EQ(pairs.tours.size(), 1U);
    EXPECT_GT(pairs.tours[0].loads_before.size(), without_method.tours[0].loads_before.size())
        << "two traps where a run is set";
    EXPECT_NEAR(drawn_metres(pairs.tours[0]), pairs.tours[0].length.value(), 1e-6 * pairs.length.value());
}

TEST(Tours, keep_the_order_of_the_others_when_a_set_is_dropped) {
    TourWishes wishes;
    wishes.start = far_corner();
    wishes.people = 2;
    const Tours before = make_tours(field().survey, field().plan, wishes);
    TourOptions options;
    options.held = kept_form(field().plan, before);
    const std::size_t gone = before.tours[1].sets[before.tours[1].sets.size() / 2];
    Survey survey = field().survey;
    decide(survey, {field().plan.probes[field().plan.sets[gone].probe].key, SetChoice::dropped, {}});
    const Plan plan = *make_plan(survey);
    for (const bool fixed : {true, false}) {
        options.fixed = fixed;
        const Tours after = make_tours(survey, plan, wishes, options);
        expect_each_set_once(after, plan);
        std::set<ProbeKey> known;
        for (const KeptTour& tour : options.held) known.insert(tour.sets.begin(), tour.sets.end());
        ASSERT_EQ(after.tours.size(), 2U);
        const std::vector<KeptTour> now = kept_form(plan, after);
        for (std::size_t t = 0; t < 2; ++t) {
            std::vector<ProbeKey> kept = options.held[t].sets;
            std::erase(kept, field().plan.probes[field().plan.sets[gone].probe].key);
            std::vector<ProbeKey> rest = now[t].sets;
            std::erase_if(rest, [&](const ProbeKey& key) { return !known.contains(key); });
            EXPECT_EQ(rest, kept) << t << fixed;
        }
        const Plan ordered = in_order_of(plan, after);
        std::set<int> numbers;
        for (const SetPoint& set : ordered.sets) numbers.insert(set.visit_order);
        EXPECT_EQ(numbers.size(), plan.sets.size());
        EXPECT_EQ(ordered.sets[gone].visit_order, static_cast<int>(plan.sets.size())) << "dropped ones last";
    }
}

TEST(Tours, that_were_kept_stay_whatever_might_be_shorter) {
    TourWishes wishes;
    wishes.start = wishes.end = far_corner();
    std::vector<KeptTour> backwards = kept_form(field().plan, make_tours(field().survey, field().plan, wishes));
    std::sort(backwards[0].sets.begin(), backwards[0].sets.end());  // by name: a long way
    TourOptions options;
    options.held = backwards;
    options.fixed = true;
    EXPECT_EQ(kept_form(field().plan, make_tours(field().survey, field().plan, wishes, options)), backwards);
    options.fixed = false;
    EXPECT_NE(kept_form(field().plan, make_tours(field().survey, field().plan, wishes, options)), backwards);
    options.fixed = true;
    options.held[0].sets.push_back(backwards[0].sets.front());
    options.held.push_back({7, 0, {{ProbeKind::plug_side, "nowhere", ""}}});
    EXPECT_EQ(kept_form(field().plan, make_tours(field().survey, field().plan, wishes, options)), backwards)
        << "twice, or of no set: passed over";
}

TEST(Tours, name_sets_that_no_way_leads_to) {
    Survey survey = field().survey;
    const Plan& plan = field().plan;
    const LocalPoint at = plan.probes[plan.sets[0].probe].middle;
    survey.ground.barriers = {{"wall", {{at + LocalVector{-0.2, -0.2}, at + LocalVector{0.2, -0.2}, at + LocalVector{0.2, 0.2},
                                         at + LocalVector{-0.2, 0.2}, at + LocalVector{-0.2, -0.2}}}}};
    const Tours tours = make_tours(survey, plan, {});
    EXPECT_EQ(tours.cut_off, std::vector<std::size_t>{0});
    expect_each_set_once(tours, plan);
    EXPECT_LT(tours.length.value(), 1e5);
    const Plan none{};
    EXPECT_TRUE(make_tours(survey, none, {}).tours.empty());
}

}  // namespace
}  // namespace plugside
