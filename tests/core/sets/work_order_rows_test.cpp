#include "core/sets/work_order_rows.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <random>

#include "core/survey/survey.h"
#include "tests/core/sets/work_situations.h"

namespace plugside {
namespace {

using test::the_day;
using test::the_morning;
using test::told;

// An order with every member said, texts that are hard to write down among them.
WorkOrder full_order() {
    WorkOrder work;
    work.conditions = test::calm_conditions();
    work.conditions.frost = {std::nullopt, the_morning};
    work.conditions.crop = told(std::string("not-known"));
    work.conditions.property = told(std::set<PropertyUse>{PropertyUse::school, PropertyUse::home});
    work.conditions.water_days =
        told(std::vector<WaterDay>{{the_day, 2.5, std::nullopt}, {the_day + std::chrono::days(1), 0.0, 12.7}});
    work.conditions.children = told(Visits{true, the_day, the_day + std::chrono::days(3), "school days, 8 to 3"});
    work.conditions.buildings = {{"Barn", told(false), "hay"}, {"", {std::nullopt, the_morning}, ""}};
    work.conditions.wildlife_asked = "the agency = \"yes\"\n\tsecond line \\n ";
    work.conditions.utilities_ticket = " 12-3";
    work.method = "own-1";
    const ProbeKey place{ProbeKind::between_mounds, "M1", "M 2"};
    work.set_methods = {{place, "paired-traps"}, {{ProbeKind::plug_side, "#3", ""}, "fumigant"}};
    work.own_methods = {own_variant(*built_in_method("trap-in-lateral"), 1, "my way"),
                        own_variant(*built_in_method("fumigant"), 2, "other")};
    work.own_methods[0].placement.reset();
    work.own_methods[0].cover = CoverRule::always_open;
    work.own_methods[1].placements = 2;
    work.label = test::calm_label(*built_in_method("bait-probe-hole"));
    work.label.ingredient_words = "zinc phosphide 2 %";
    work.label.placement_least = Quantity{1.0 / 3.0, AmountUnit::tablespoons};
    work.label.area_most = AreaRate{{1.5, AmountUnit::pounds}, AreaUnit::acre};
    work.label.season_most = AreaRate{{3.3, AmountUnit::kilograms}, AreaUnit::hectare};
    work.label.placement_spacing_least = Metres::from_feet(10.0);
    work.label.treatments_a_season_most = 2;
    work.label.interval_days_least = 30;
    work.label.good_until = the_day + std::chrono::days(500);
    work.licence = told(Licence{LicenceKind::commercial_applicator, "A. Nobody", "17", the_day});
    work.dose = Quantity{4.2, AmountUnit::grams};
    work.calibration = {{41.5, 42.25}, 20};
    work.signed_off = {{"well", "own-1", place, "A. Nobody", "asked", the_morning},
                       {"strychnine", "", {}, "B. Nobody", "told", the_morning}};
    work.budget = {30, 240.5};
    work.walking = {PlaceInDegrees{38.541234567891, -121.7}, true, PlaceInDegrees{-12.25, 179.0}, 3, 412.5, 24, {}};
    work.walking.kept = {{0, 0, {place, {ProbeKind::plug_side, "M 1:50% \xc3\xb1", ""}}},
                         {2, 1, {{ProbeKind::between_mounds, "a\tb", "line\nbreak\\"}}},
                         {1, 1, {}}};
    return work;
}

std::string told_problems(const WorkReading& reading) {
    std::string text;
    for (const Refusal& problem : reading.problems) text += sentence(problem) + "\n";
    return text;
}

TEST(WorkOrderRows, give_back_the_order_they_were_made_of) {
    EXPECT_TRUE(rows_of({}).empty());
    EXPECT_EQ(work_order_of({}).work, WorkOrder{});
    const WorkOrder work = full_order();
    const WorkReading reading = work_order_of(rows_of(work));
    EXPECT_EQ(told_problems(reading), "");
    EXPECT_EQ(reading.work, work);
    EXPECT_EQ(rows_of(reading.work), rows_of(work));
    const WorkReading from_lines = work_order_of_lines(lines_of(rows_of(work)), "order.txt");
    EXPECT_EQ(told_problems(from_lines), "");
    EXPECT_EQ(from_lines.work, work);
}

TEST(WorkOrderRows, give_back_every_number_to_the_last_bit) {
    std::mt19937_64 random(11);
    std::uniform_real_distribution<double> exponent(-12.0, 12.0);
    for (int i = 0; i < 500; ++i) {
        WorkOrder work;
        work.conditions.soil_temperature_c = {std::pow(10.0, exponent(random)),
                                              UtcTime(std::chrono::milliseconds(random() % 4000000000000ULL))};
        work.budget.minutes = -std::pow(10.0, exponent(random));
        work.label.water_distance = Metres::of(std::pow(10.0, exponent(random)));
        EXPECT_EQ(work_order_of(rows_of(work)).work, work);
    }
}

TEST(WorkOrderRows, of_the_walking_order_name_figures_that_cannot_be) {
    const WorkReading reading = work_order_of_lines(
        "walking.people = 0\nwalking.minutes-a-day = 1441\nwalking.carry = -3\nwalking.start = 91 0\n"
        "walking.tour.1.person = 0\nwalking.tour.1.sets = plug-side:M1:M2\nwalking.end = 38.5 -121.5\n",
        "order.txt");
    WorkOrder work;
    work.walking.end = PlaceInDegrees{38.5, -121.5};
    work.walking.kept.resize(1);
    EXPECT_EQ(reading.work, work);
    const std::string told = told_problems(reading);
    for (const char* row : {"walking.people", "walking.minutes-a-day", "walking.carry", "walking.start", "walking.tour.1.sets"})
        EXPECT_NE(told.find(row), std::string::npos) << row << " in " << told;
    EXPECT_EQ(reading.problems.size(), 5U);
    for (const char* keys : {"plug-side:", "between:M1", "between:M1:", "run:M1", "plug-side:M%2", "plug-side:M%zz", "M1"})
        EXPECT_EQ(work_order_of({{"walking.tour.1.person", "0"}, {"walking.tour.1.sets", keys}}).problems.size(), 1U) << keys;
}

TEST(WorkOrderRows, come_in_any_order) {
    const WorkOrder work = full_order();
    std::vector<WorkRow> rows = rows_of(work);
    std::mt19937_64 random(1);
    std::shuffle(rows.begin(), rows.end(), random);
    EXPECT_EQ(work_order_of(rows).work, work);
}

TEST(WorkOrderRows, that_cannot_be_read_are_named_and_the_others_are_taken) {
    const WorkReading reading = work_order_of_lines(
        "# typed by hand\n"
        "soil-moisture = soaking\n"
        "rain-due=no\n"
        "\n"
        "weather = fine\n"
        "label.placement-most = a spoon\n"
        "label.water-distance = 100 ft\n"
        "just words\n"
        "rain-due = yes\n",
        "conditions.txt", the_morning);
    EXPECT_EQ(reading.work.conditions.rain_due, told(false));
    EXPECT_NEAR(reading.work.label.water_distance->value(), 30.48, 1e-12);
    const std::string problems = told_problems(reading);
    ASSERT_EQ(reading.problems.size(), 5U) << problems;
    for (const char* part : {"line 2, soil-moisture: found \"soaking\"", "line 5, weather", "line 6, label.placement-most",
                             "line 8", "line 9, rain-due: found a second row"})
        EXPECT_NE(problems.find(part), std::string::npos) << part << " in\n" << problems;
}

TEST(WorkOrderRows, of_a_typed_file_take_the_time_they_were_given) {
    const WorkReading reading = work_order_of_lines(
        "frost = not-known\nstock = yes\nwater-days = yes\nwater-days.1 = 2025-04-10 5 -\n", "c", the_morning);
    EXPECT_EQ(told_problems(reading), "");
    EXPECT_EQ(reading.work.conditions.frost, (Told<bool>{std::nullopt, the_morning}));
    EXPECT_EQ(reading.work.conditions.stock.at, the_morning);
    EXPECT_EQ(reading.work.conditions.stock.value->come, true);
    EXPECT_EQ(reading.work.conditions.water_days.value->at(0).rain_mm, 5.0);
}

TEST(WorkOrderRows, of_a_typed_file_may_tell_in_it_when_they_were_given) {
    const UtcTime noon = UtcTime(the_day) + std::chrono::hours(12);
    const WorkReading of_day = work_order_of_lines(
        "frost = no\nstock = yes\nstock.at = 2025-04-01T08:00:00Z\ngiven-at = " + day_shown(the_day) + "\n", "c");
    EXPECT_EQ(told_problems(of_day), "");
    EXPECT_EQ(of_day.work.conditions.frost.at, noon);
    EXPECT_NE(of_day.work.conditions.stock.at, noon);
    EXPECT_EQ(of_day.lines.at("given-at"), "line 4");
    EXPECT_EQ(row_place(of_day.lines, "frost"), "line 1, frost");
    EXPECT_EQ(row_place(of_day.lines, "pets"), "pets");
    const WorkReading of_time = work_order_of_lines("given-at = 2025-04-10T07:30:00Z\nfrost = no\n", "c", the_morning);
    EXPECT_EQ(of_time.work.conditions.frost.at,
              UtcTime(*day_from_text("2025-04-10")) + std::chrono::hours(7) + std::chrono::minutes(30));
    const WorkReading wrong = work_order_of_lines("given-at = Easter\nfrost = no\n", "c");
    EXPECT_EQ(told_problems(wrong), "c, line 1, given-at: found \"Easter\", expected a time as 2025-04-10T12:00:00Z.\n");
    EXPECT_EQ(wrong.work.conditions.frost.at, std::nullopt);
}

TEST(WorkOrderRows, hold_no_name_number_or_reason_once_the_private_ones_are_left_out) {
    std::string left;
    for (const WorkRow& row : rows_of(full_order()))
        if (!is_private(row)) left += row.value + "\n";
    for (const char* secret : {"A. Nobody", "B. Nobody", "17\n", "asked\n", "told\n", "12-3", "second line"})
        EXPECT_EQ(left.find(secret), std::string::npos) << secret;
}

TEST(HeldWork, is_equal_by_what_it_holds_and_copies_without_copying) {
    const HeldWork nothing;
    EXPECT_TRUE(nothing == HeldWork(WorkOrder{}));
    EXPECT_EQ(nothing->method, "");
    const HeldWork full = full_order();
    EXPECT_FALSE(full == nothing);
    EXPECT_TRUE(full == HeldWork(full_order()));
    const HeldWork copy = full;
    EXPECT_EQ(&*copy, &*full);
    EXPECT_EQ(*copy, full_order());
}

TEST(HeldWork, makes_a_survey_another_one_and_goes_with_its_copies) {
    Survey survey;
    EXPECT_EQ(*survey.work, WorkOrder{});
    const Survey before = survey;
    survey.work = full_order();
    EXPECT_FALSE(survey == before);
    const Survey copy = survey;
    EXPECT_TRUE(survey == copy);
    WorkOrder changed = *survey.work;
    changed.method = "fumigant";
    survey.work = changed;
    EXPECT_EQ(copy.work->method, "own-1") << "a copy keeps what it had";
    survey.work = WorkOrder{};
    EXPECT_TRUE(survey == before);
}

TEST(WorkOrder, lets_a_set_be_worked_otherwise_and_takes_that_back) {
    WorkOrder work;
    work.method = "paired-traps";
    const ProbeKey place{ProbeKind::plug_side, "M1", ""};
    EXPECT_EQ(method_at(work, place), "paired-traps");
    choose_method(work, place, "fumigant");
    choose_method(work, place, "trap-in-lateral");
    EXPECT_EQ(method_at(work, place), "trap-in-lateral");
    EXPECT_EQ(work.set_methods.size(), 1U);
    choose_method(work, place, "");
    EXPECT_EQ(method_at(work, place), "paired-traps");
    choose_method(work, place, "paired-traps");
    EXPECT_TRUE(work.set_methods.empty());
    work.own_methods = {own_variant(*built_in_method("fumigant"), 4, "mine")};
    EXPECT_EQ(find_method(work, "own-4")->name, "mine");
    EXPECT_EQ(find_method(work, "own-5"), std::nullopt);
    EXPECT_EQ(find_method(work, "fumigant")->id, "fumigant");
}

}  // namespace
}  // namespace plugside
