#include "core/sets/label_limits.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <limits>

#include "tests/core/sets/work_situations.h"

namespace plugside {
namespace {

using test::the_day;

// Figures made up; none is a product's.
LabelLimits made_up_label() {
    LabelLimits label;
    label.ingredient = Ingredient::zinc_phosphide;
    label.registration = "000-000";
    label.placement_least = Quantity{0.5, AmountUnit::teaspoons};
    label.placement_most = Quantity{1.0, AmountUnit::teaspoons};
    label.placements_a_system_most = 3;
    label.placement_spacing_least = Metres::from_feet(10.0);
    label.area_most = AreaRate{{1.0, AmountUnit::pounds}, AreaUnit::acre};
    label.season_most = AreaRate{{1.0, AmountUnit::pounds}, AreaUnit::acre};
    label.treatments_a_season_most = 2;
    label.interval_days_least = 30;
    label.building_distance = Metres::from_feet(100.0);
    label.water_distance = Metres::of(15.0);
    label.grams_per_millilitre = 0.8;
    label.sites = {"Alfalfa", "Orchards"};
    label.checked_on = the_day;
    label.good_until = the_day + std::chrono::days(10);
    return label;
}

PlannedUse use_within() {
    PlannedUse use;
    use.day = the_day;
    use.per_placement = Quantity{1.0, AmountUnit::teaspoons};
    use.placements_of_system = {2, 3, 1};
    use.nearest_placements = Metres::of(4.0);
    use.area_m2 = 4046.8564224;
    use.nearest_building = Metres::of(31.0);
    use.nearest_water = Metres::of(15.0);
    use.crop = "  alfalfa ";
    return use;
}

LabelCheck check(const LabelLimits& label, const PlannedUse& use, const std::string& id,
                 const std::vector<Application>& season = {}) {
    for (const LabelCheck& each : compare(label, use, season, LengthUnits::metres))
        if (each.id == id) return each;
    ADD_FAILURE() << "no check " << id;
    return {};
}

bool has(const std::string& sentence, const std::string& part) { return sentence.find(part) != std::string::npos; }

TEST(Label, figures_that_are_kept_are_shown_each_with_both_numbers) {
    const auto checks = compare(made_up_label(), use_within(), {}, LengthUnits::feet_and_inches);
    EXPECT_EQ(checks.size(), 12U);
    for (const LabelCheck& each : checks) EXPECT_EQ(each.outcome, Compared::kept) << each.id << ": " << each.sentence;
    const auto sentence = [&](const std::string& id) {
        return std::find_if(checks.begin(), checks.end(), [&](const LabelCheck& each) { return each.id == id; })->sentence;
    };
    EXPECT_EQ(sentence("placement-most"), "One placement gets 1 teaspoon; the label names 1 teaspoon at most.");
    // 6 placements of a teaspoon of 4.92892 mL at .8 g/mL: 23.659 g = .052158 lb on one acre
    EXPECT_EQ(sentence("area-most"),
              "This treatment puts 0.0522 lb on 1.0 acres, 0.0522 lb per acre; the label names 1 lb per acre at most.");
    EXPECT_EQ(sentence("building-distance"),
              "A treated system may come within 102 ft of a building; the label names 100 ft at least.");
}

TEST(Label, is_gone_beyond_where_one_number_is_past_the_other) {
    const LabelLimits label = made_up_label();
    PlannedUse use = use_within();
    use.per_placement = Quantity{4.0, AmountUnit::grams};  // a teaspoon weighs 3.94 g
    EXPECT_EQ(check(label, use, "placement-most").outcome, Compared::exceeded);
    EXPECT_TRUE(has(check(label, use, "placement-most").sentence, "4 g (1.01 teaspoons)"));
    use.per_placement = Quantity{3.9, AmountUnit::grams};
    EXPECT_EQ(check(label, use, "placement-most").outcome, Compared::kept);
    use.per_placement = Quantity{0.05, AmountUnit::ounces};  // 1.417 g, half a teaspoon is 1.97 g
    EXPECT_EQ(check(label, use, "placement-least").outcome, Compared::exceeded);
    use = use_within();
    use.placements_of_system = {4};
    EXPECT_EQ(check(label, use, "placements-a-system").outcome, Compared::exceeded);
    use = use_within();
    use.nearest_placements = Metres::of(3.0);
    EXPECT_EQ(check(label, use, "spacing").outcome, Compared::exceeded);
    use = use_within();
    use.area_m2 = 200.0;  // 23.66 g on 200 m2 is 1.055 lb per acre
    EXPECT_EQ(check(label, use, "area-most").outcome, Compared::exceeded);
    EXPECT_TRUE(has(check(label, use, "area-most").sentence, "1.06 lb per acre")) << check(label, use, "area-most").sentence;
    use = use_within();
    use.nearest_building = Metres::of(30.0);
    use.nearest_water = Metres::of(14.9);
    use.crop = "tulips";
    for (const char* id : {"building-distance", "water-distance", "site"})
        EXPECT_EQ(check(label, use, id).outcome, Compared::exceeded) << id;
    use.day = the_day + std::chrono::days(11);
    EXPECT_EQ(check(label, use, "good-until").outcome, Compared::exceeded);
    use.day = the_day + std::chrono::days(366);
    EXPECT_EQ(check(label, use, "checked-on").outcome, Compared::exceeded);
}

// On an acre: 400 g in the spring, 23.7 g now: .934 lb; 440 g: 1.02 lb. 1 lb = 453.59237 g.
TEST(Label, counts_the_season_so_far_in_its_own_unit) {
    const LabelLimits label = made_up_label();
    const PlannedUse use = use_within();
    Application spring{the_day - std::chrono::days(40), {400.0, AmountUnit::grams}, 4046.86, {}, "000-000"};
    EXPECT_EQ(check(label, use, "season-most", {spring}).outcome, Compared::kept);
    EXPECT_TRUE(has(check(label, use, "season-most", {spring}).sentence, "0.934 lb"))
        << check(label, use, "season-most", {spring}).sentence;
    spring.amount.value = 440.0;
    EXPECT_EQ(check(label, use, "season-most", {spring}).outcome, Compared::exceeded);
    spring.registration = "999-999";
    EXPECT_EQ(check(label, use, "season-most", {spring}).outcome, Compared::kept) << "another label's";
    spring.registration.clear();
    spring.ingredient = Ingredient::strychnine;
    EXPECT_EQ(check(label, use, "season-most", {spring}).outcome, Compared::kept) << "another ingredient's";
    spring.ingredient.reset();
    spring.amount = {3.0, AmountUnit::tablets};
    EXPECT_EQ(check(label, use, "season-most", {spring}).outcome, Compared::not_known);
}

TEST(Label, counts_treatments_by_day_and_the_days_between_them) {
    const LabelLimits label = made_up_label();
    const PlannedUse use = use_within();
    const auto on = [](int days_ago) {
        return Application{the_day - std::chrono::days(days_ago), {1.0, AmountUnit::grams}, 100.0, {}, ""};
    };
    EXPECT_EQ(check(label, use, "treatments", {on(60), on(60)}).outcome, Compared::kept);
    EXPECT_EQ(check(label, use, "treatments", {on(60), on(40)}).outcome, Compared::exceeded);
    EXPECT_EQ(check(label, use, "interval", {on(60), on(30)}).outcome, Compared::kept);
    EXPECT_EQ(check(label, use, "interval", {on(60), on(29)}).outcome, Compared::exceeded);
    EXPECT_EQ(check(label, use, "interval", {on(40), on(0)}).outcome, Compared::kept)
        << "the same day is the same treatment";
    const auto first = compare(label, use, {}, LengthUnits::metres);
    EXPECT_TRUE(std::none_of(first.begin(), first.end(), [](const LabelCheck& each) { return each.id == "interval"; }));
}

TEST(Label, that_nobody_typed_gives_no_amount_and_says_so) {
    const auto checks = compare({}, use_within(), {}, LengthUnits::metres);
    ASSERT_EQ(checks.size(), 1U);
    EXPECT_EQ(checks[0].outcome, Compared::not_known);
    EXPECT_TRUE(has(checks[0].sentence, "No label"));
    EXPECT_FALSE(is_given({}));
    EXPECT_TRUE(is_given(made_up_label()));
}

TEST(Label, says_what_is_wanting_for_a_comparison) {
    LabelLimits label = made_up_label();
    label.grams_per_millilitre.reset();
    PlannedUse use = use_within();
    EXPECT_EQ(check(label, use, "placement-most").outcome, Compared::kept) << "spoons against spoons need no weight";
    EXPECT_EQ(check(label, use, "area-most").outcome, Compared::not_known);
    use.per_placement = Quantity{4.0, AmountUnit::grams};
    EXPECT_EQ(check(label, use, "placement-most").outcome, Compared::not_known);
    use.per_placement = Quantity{4.0, AmountUnit::tablets};
    EXPECT_TRUE(has(check(label, use, "placement-most").sentence, "not of one kind"));
    use.per_placement.reset();
    EXPECT_EQ(check(label, use, "placement").outcome, Compared::not_known);
    use = use_within();
    use.area_m2.reset();
    EXPECT_EQ(check(made_up_label(), use, "area-most").outcome, Compared::not_known);
    use.crop.reset();
    EXPECT_EQ(check(made_up_label(), use, "site").outcome, Compared::not_known);
    label.checked_on.reset();
    EXPECT_EQ(check(label, use, "checked-on").outcome, Compared::not_known);
    label.placement_most.reset();
    EXPECT_EQ(check(label, use, "placement-most").outcome, Compared::not_known);
}

TEST(Label, figures_that_cannot_be_are_named) {
    EXPECT_TRUE(what_is_wrong(made_up_label()).empty());
    LabelLimits label = made_up_label();
    label.placement_most->value = 0.0;
    label.area_most->amount.value = -1.0;
    label.season_most->amount.value = std::numeric_limits<double>::infinity();
    label.placements_a_system_most = 0;
    label.interval_days_least = -1;
    label.re_entry_hours = -0.5;
    label.grams_per_millilitre = 0.0;
    label.building_distance = Metres::of(-3.0);
    EXPECT_EQ(what_is_wrong(label).size(), 9U) << "eight figures, and the least amount above the most";
    label = made_up_label();
    label.placement_least = Quantity{6.0, AmountUnit::grams};
    ASSERT_EQ(what_is_wrong(label).size(), 1U);
    label.placement_least = Quantity{1.0, AmountUnit::tablets};
    ASSERT_EQ(what_is_wrong(label).size(), 1U);
}

// A teaspoon of 3.943 g: three releases of 1.3 g, two of 1.5 g, none of 4 g.
TEST(Label, releases_of_a_dispensing_probe_keep_within_the_amount_a_placement) {
    const LabelLimits label = made_up_label();
    EXPECT_EQ(releases_a_placement(label, 1.3), 3);
    EXPECT_EQ(releases_a_placement(label, 1.5), 2);
    EXPECT_EQ(releases_a_placement(label, 4.0), std::nullopt);
    EXPECT_EQ(releases_a_placement(label, 0.0), std::nullopt);
    EXPECT_EQ(releases_a_placement({}, 1.0), std::nullopt);
    LabelLimits even;
    even.placement_most = Quantity{6.0, AmountUnit::grams};
    EXPECT_EQ(releases_a_placement(even, 1.2), 5) << "6 / 1.2 is five, whatever rounding makes of it";
}

TEST(Days, are_read_as_they_are_written_and_only_so) {
    EXPECT_EQ(day_shown(the_day), "2025-04-10");
    EXPECT_EQ(day_from_text("2025-04-10"), the_day);
    EXPECT_EQ(day_from_text("2024-02-29").has_value(), true);
    for (const char* text : {"2025-02-29", "2025-13-01", "2025-4-10", "10-04-2025", "", "2025-04-1x", "2025/04/10"})
        EXPECT_EQ(day_from_text(text), std::nullopt) << text;
}

TEST(Label, words_of_files_are_read_back) {
    for (const Ingredient each :
         {Ingredient::zinc_phosphide, Ingredient::strychnine, Ingredient::anticoagulant, Ingredient::aluminium_phosphide,
          Ingredient::magnesium_phosphide, Ingredient::smoke_cartridge, Ingredient::other}) {
        EXPECT_EQ(ingredient_from_text(to_text(each)), each);
        EXPECT_FALSE(ingredient_shown(each).empty());
    }
    EXPECT_EQ(ingredient_from_text("sugar"), std::nullopt);
}

}  // namespace
}  // namespace plugside
