#include "core/sets/material.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <numeric>
#include <random>

#include "core/plan/make_plan.h"
#include "core/sets/planned_use.h"
#include "tests/core/sets/work_situations.h"
#include "tests/core/surveys.h"

namespace plugside {
namespace {

using test::calm_situation;
using test::Situation;
using test::the_morning;

// `sets` sets of one field, each with its own ladder of `rungs` holes that finds the run with `hit`, evenly along its rungs.
Situation field_of_sets(const std::string& method, std::size_t sets, std::size_t rungs, double hit) {
    Situation made = calm_situation(method);
    ProbeSite site = made.plan.probes[0];
    site.rungs.assign(rungs, Metres::of(0.0));
    site.hit = Probability::of(hit);
    made.plan.probes.clear();
    made.plan.sets.clear();
    for (std::size_t i = 0; i < sets; ++i) {
        site.key.from_mound = "M" + std::to_string(i);
        made.plan.probes.push_back(site);
        SetPoint set;
        set.probe = i;
        made.plan.sets.push_back(set);
    }
    return made;
}

Load load_of(const Situation& s, const LoadOptions& options = {}) {
    return what_to_load(s.survey, s.work, s.plan, the_morning, options);
}

const LoadLine* line_of(const Load& load, std::optional<LoadItem> item) {
    const auto found =
        std::find_if(load.lines.begin(), load.lines.end(), [&](const LoadLine& line) { return line.item == item; });
    return found == load.lines.end() ? nullptr : &*found;
}

TEST(Material, of_traps_counts_every_piece_with_its_reserve) {
    const Load load = load_of(field_of_sets("paired-traps", 15, 3, 0.9));
    EXPECT_EQ(load.sets, 15);
    EXPECT_EQ(line_of(load, LoadItem::trap)->needed, 30.0);
    EXPECT_EQ(line_of(load, LoadItem::trap)->with_reserve, 33.0);
    EXPECT_EQ(line_of(load, LoadItem::trap)->sentence, "traps: 30, 33 with the reserve.");
    EXPECT_EQ(line_of(load, LoadItem::stake)->with_reserve, 33.0);
    EXPECT_EQ(line_of(load, LoadItem::flag)->with_reserve, 33.0);
    EXPECT_EQ(line_of(load, LoadItem::wire_m)->needed, 30.0);
    EXPECT_EQ(line_of(load, LoadItem::gloves_pair)->needed, 1.0);
    EXPECT_EQ(line_of(load, std::nullopt), nullptr);
    EXPECT_TRUE(load.notices.empty());
}

TEST(Material, brings_covers_and_signs_where_anyone_may_come) {
    Situation s = field_of_sets("paired-traps", 4, 3, 0.9);
    EXPECT_EQ(line_of(load_of(s), LoadItem::cover), nullptr);
    EXPECT_EQ(line_of(load_of(s), LoadItem::sign), nullptr);
    s.work.conditions.children = {};
    EXPECT_EQ(line_of(load_of(s), LoadItem::cover)->needed, 4.0);
    EXPECT_EQ(line_of(load_of(s), LoadItem::sign)->needed, 4.0);
}

TEST(Material, leaves_out_what_was_dropped_and_takes_each_sets_own_method) {
    Situation s = field_of_sets("paired-traps", 3, 3, 0.9);
    choose_method(s.work, s.plan.probes[1].key, "trap-in-lateral");
    decide(s.survey, {s.plan.probes[2].key, SetChoice::dropped, {}});
    EXPECT_EQ(line_of(load_of(s), LoadItem::trap)->needed, 3.0);
    LoadOptions kept_only;
    kept_only.with_proposed = false;
    EXPECT_EQ(load_of(s, kept_only).sets, 0);
    decide(s.survey, {s.plan.probes[1].key, SetChoice::kept, {}});
    EXPECT_EQ(line_of(load_of(s, kept_only), LoadItem::trap)->needed, 1.0);
    s.work.method.clear();
    EXPECT_EQ(load_of(s).without_method, 1);
    EXPECT_EQ(load_of(s).notices.size(), 1U);
}

// 12 placements of a teaspoon (4.92892 mL) at .8 g/mL: 47.3 g; a tenth more 52.05 g = 1.836 oz.
TEST(Material, of_bait_is_weighed_only_with_a_label) {
    Situation s = field_of_sets("bait-probe-hole", 12, 3, 0.9);
    const Load load = load_of(s);
    const LoadLine* bait = line_of(load, std::nullopt);
    ASSERT_NE(bait, nullptr);
    EXPECT_NEAR(bait->amount->value, 13.2, 1e-9);
    EXPECT_NE(bait->sentence.find("52 g (1.84 oz)"), std::string::npos) << bait->sentence;
    s.work.dose = Quantity{1.5, AmountUnit::teaspoons};
    EXPECT_EQ(line_of(load_of(s), std::nullopt), nullptr) << "beyond the label";
    EXPECT_EQ(load_of(s).notices.size(), 1U);
    s.work.dose.reset();
    EXPECT_EQ(line_of(load_of(s), std::nullopt), nullptr);
    s.work.label = {};
    s.work.dose = Quantity{1.0, AmountUnit::teaspoons};
    EXPECT_EQ(line_of(load_of(s), std::nullopt), nullptr);
    EXPECT_NE(load_of(s).notices.at(0).find("No label"), std::string::npos);
}

TEST(Material, of_tablets_is_counted_in_whole_ones) {
    const Load load = load_of(field_of_sets("fumigant", 7, 3, 0.9));
    EXPECT_EQ(line_of(load, std::nullopt)->needed, 14.0);
    EXPECT_EQ(line_of(load, std::nullopt)->amount, (Quantity{16.0, AmountUnit::tablets}));
}

// A ladder of three rungs that finds the run at each with chance .3, else after three holes: 1, 2, 3 holes with .3, .3, .4.
TEST(WorkTime, counts_holes_until_one_finds_the_run) {
    const Situation s = field_of_sets("paired-traps", 1, 3, 0.9);
    const std::vector<double> holes = holes_pushed(s.plan.probes[0], Metres::of(0.064));
    ASSERT_EQ(holes.size(), 3U);
    EXPECT_NEAR(holes[0], 0.3, 1e-12);
    EXPECT_NEAR(holes[1], 0.3, 1e-12);
    EXPECT_NEAR(holes[2], 0.4, 1e-12);
    const WorkTime time = load_of(s).time;
    EXPECT_NEAR(time.holes, 2.1, 1e-12);
    EXPECT_NEAR(time.minutes, 12.0 + 0.5 * 2.1, 1e-12);
    EXPECT_EQ(time.holes_low, 1);
    EXPECT_EQ(time.holes_high, 3);
    EXPECT_FALSE(time.assumption.empty());
}

TEST(WorkTime, of_a_ladder_made_by_the_plan_is_what_the_ladder_promises) {
    const Survey survey = test::straight_run(12);
    const std::optional<Plan> plan = make_plan(survey);
    ASSERT_TRUE(plan.has_value());
    int tried = 0;
    for (const ProbeSite& site : plan->probes) {
        if (site.rungs.size() < 2 || site.along_row.presence() <= 0.0) continue;
        const std::vector<double> holes = holes_pushed(site, PlanOptions{}.tunnel_diameter);
        EXPECT_NEAR(std::accumulate(holes.begin(), holes.end(), 0.0), 1.0, 1e-6);
        double expected = 0.0;
        for (std::size_t i = 0; i < holes.size(); ++i) expected += holes[i] * static_cast<double>(i + 1);
        EXPECT_NEAR(expected, site.expected_rungs, 1e-6);
        ++tried;
    }
    EXPECT_GT(tried, 5);
}

// Beside drawing the work ten thousand times.
TEST(WorkTime, interval_holds_nine_in_ten_of_drawn_days) {
    const Situation s = field_of_sets("trap-in-lateral", 40, 9, 0.95);
    const WorkTime time = load_of(s).time;
    const std::vector<double> chance = holes_pushed(s.plan.probes[0], Metres::of(0.064));
    std::mt19937_64 random(3);
    std::discrete_distribution<int> holes(chance.begin(), chance.end());
    const SetMinutes of_set = built_in_method("trap-in-lateral")->minutes;
    std::normal_distribution<double> minutes(of_set.mean, of_set.sd);
    int below = 0;
    int above = 0;
    double sum = 0.0;
    constexpr int days = 10000;
    for (int day = 0; day < days; ++day) {
        double total = 0.0;
        for (int set = 0; set < 40; ++set) total += 0.5 * (holes(random) + 1) + minutes(random);
        sum += total;
        if (total < time.low) ++below;
        if (total > time.high) ++above;
    }
    EXPECT_NEAR(sum / days, time.minutes, 1.0);
    EXPECT_NEAR(static_cast<double>(below) / days, 0.05, 0.01);
    EXPECT_NEAR(static_cast<double>(above) / days, 0.05, 0.01);
}

TEST(WorkTime, of_no_set_is_none) {
    Situation s = calm_situation("paired-traps");
    s.plan.sets.clear();
    const Load load = load_of(s);
    EXPECT_EQ(load.sets, 0);
    EXPECT_TRUE(load.lines.empty());
    EXPECT_EQ(load.time.minutes, 0.0);
}

TEST(PlannedUse, tells_placements_spacing_area_and_distances_of_what_gets_bait) {
    Situation s = field_of_sets("bait-probe-hole", 3, 3, 0.9);
    s.plan.probes[1].middle = {13, 4};  // 5 m from the others
    s.draw(KeepClearKind::building, 20.0);
    s.draw(KeepClearKind::well, 12.0);
    const PlannedUse use = planned_use(s.survey, s.work, s.plan, the_morning);
    EXPECT_EQ(use.placements_of_system, (std::vector<int>{3}));
    EXPECT_NEAR(use.nearest_placements->value(), 0.0, 1e-12);
    s.plan.sets.pop_back();
    EXPECT_NEAR(planned_use(s.survey, s.work, s.plan, the_morning).nearest_placements->value(), 5.0, 1e-12);
    EXPECT_EQ(use.area_m2, 40000.0);
    EXPECT_NEAR(use.nearest_building->value(), 20.0 - 1.6448536 * 0.5, 1e-6);
    EXPECT_NEAR(use.nearest_water->value(), 12.0 - 1.6448536 * 0.5, 1e-6);
    EXPECT_EQ(use.crop, "alfalfa");
    s.work.method = "paired-traps";
    EXPECT_TRUE(planned_use(s.survey, s.work, s.plan, the_morning).placements_of_system.empty());
}

}  // namespace
}  // namespace plugside
