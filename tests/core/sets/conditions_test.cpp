#include "core/sets/conditions.h"

#include <gtest/gtest.h>

#include <set>

#include "core/sets/water_table.h"
#include "tests/core/sets/work_situations.h"

namespace plugside {
namespace {

using std::chrono::hours;
using test::the_day;
using test::the_morning;
using test::told;

TEST(Conditions, take_not_known_for_a_full_answer_and_nothing_for_one_not_yet_given) {
    Conditions conditions;
    EXPECT_FALSE(is_answered(conditions, Question::frost));
    conditions.frost = {std::nullopt, the_morning};
    EXPECT_TRUE(is_answered(conditions, Question::frost));
    EXPECT_EQ(answered_at(conditions, Question::frost), the_morning);
    EXPECT_EQ(current(conditions.frost, conditions, Question::frost, the_morning), std::nullopt);
    EXPECT_FALSE(is_questioned(Conditions{}, Question::frost, the_morning));
}

TEST(Conditions, question_yesterdays_weather_and_believe_last_weeks_visitors) {
    const Conditions conditions = test::calm_conditions();
    EXPECT_TRUE(questioned(conditions, the_morning).empty());
    EXPECT_TRUE(questioned(conditions, the_morning + hours(24)).empty());
    const auto names = [&](UtcTime now) {
        const std::vector<Question> old = questioned(conditions, now);
        return std::set<Question>(old.begin(), old.end());
    };
    EXPECT_EQ(names(the_morning + hours(25)),
              (std::set<Question>{Question::soil_moisture, Question::rain_due, Question::irrigation_due,
                                  Question::soil_temperature, Question::frost}));
    EXPECT_TRUE(names(the_morning + hours(7 * 24 + 1)).contains(Question::children));
    EXPECT_FALSE(names(the_morning + hours(7 * 24 + 1)).contains(Question::wildlife));
    EXPECT_FALSE(names(the_morning + hours(400 * 24)).contains(Question::soil_texture)) << "soil stays what it is";
    EXPECT_EQ(current(conditions.rain_due, conditions, Question::rain_due, the_morning + hours(25)), std::nullopt);
    EXPECT_EQ(conditions.rain_due.value, false) << "what was said stays";
}

TEST(Conditions, question_an_answer_without_a_time_or_from_days_ahead) {
    Conditions conditions;
    conditions.rain_due.value = false;
    EXPECT_TRUE(is_questioned(conditions, Question::rain_due, the_morning));
    conditions.rain_due.at = the_morning + hours(48);
    EXPECT_TRUE(is_questioned(conditions, Question::rain_due, the_morning));
    conditions.rain_due.at = the_morning + hours(2);
    EXPECT_FALSE(is_questioned(conditions, Question::rain_due, the_morning)) << "clocks differ by hours";
}

TEST(Conditions, take_water_from_the_table_where_it_reaches_and_from_the_plain_answer_else) {
    Conditions conditions;
    EXPECT_EQ(rain_is_due(conditions, the_morning), std::nullopt);
    conditions.rain_due = told(false);
    EXPECT_EQ(rain_is_due(conditions, the_morning), false);
    std::vector<WaterDay> days;
    for (int ahead = 0; ahead <= days_ahead; ++ahead)
        days.push_back({the_day + std::chrono::days(ahead), 0.0, std::nullopt});
    days[3].rain_mm = 2.5;
    conditions.water_days = told(days);
    EXPECT_EQ(rain_is_due(conditions, the_morning), true);
    EXPECT_EQ(irrigation_is_due(conditions, the_morning), std::nullopt) << "the table says nothing of irrigation";
    days[3].rain_mm = 0.0;
    conditions.water_days = told(days);
    conditions.rain_due = told(true);
    EXPECT_EQ(rain_is_due(conditions, the_morning), false) << "the whole table stands before the plain answer";
    days.pop_back();
    conditions.water_days = told(days);
    EXPECT_EQ(rain_is_due(conditions, the_morning), true) << "the table does not reach far enough";
    conditions.water_days = told(days, the_morning - hours(25));
    conditions.rain_due = {};
    EXPECT_EQ(rain_is_due(conditions, the_morning), std::nullopt) << "yesterday's table";
}

TEST(Conditions, count_visitors_until_the_day_they_leave) {
    Conditions conditions;
    EXPECT_EQ(come_here(conditions, Question::stock, the_morning), std::nullopt);
    conditions.stock = told(Visits{true, {}, the_day, "until noon"});
    EXPECT_EQ(come_here(conditions, Question::stock, the_morning), true);
    conditions.stock.value->until = the_day - std::chrono::days(1);
    EXPECT_EQ(come_here(conditions, Question::stock, the_morning), false);
    conditions.stock.value->come = false;
    EXPECT_EQ(come_here(conditions, Question::stock, the_morning), false);
}

TEST(Conditions, take_a_building_for_lived_in_until_someone_said_otherwise) {
    Conditions conditions;
    EXPECT_TRUE(may_be_lived_in(conditions, "Barn", the_morning));
    conditions.buildings = {{"Barn", told(false), ""}, {"", told(false), ""}};
    EXPECT_FALSE(may_be_lived_in(conditions, "Barn", the_morning));
    EXPECT_TRUE(may_be_lived_in(conditions, "House", the_morning));
    EXPECT_TRUE(may_be_lived_in(conditions, "", the_morning)) << "one without a name cannot be told from others";
    conditions.buildings[0].lived_in.value = true;
    EXPECT_TRUE(may_be_lived_in(conditions, "Barn", the_morning));
}

TEST(Conditions, have_a_question_and_a_word_for_each_answer) {
    std::set<std::string> words;
    for (const Question question : all_questions()) {
        EXPECT_TRUE(words.insert(to_text(question)).second);
        EXPECT_EQ(question_from_text(to_text(question)), question);
        EXPECT_EQ(asked_as(question).back(), '?');
    }
    EXPECT_EQ(words.size(), 28U);
    EXPECT_EQ(question_from_text("colour"), std::nullopt);
    EXPECT_EQ(answer_shown(to_text(SiteUse::orchard_or_vineyard)), "orchard or vineyard");
    EXPECT_EQ(answer_shown("no such word"), "no such word");
    for (const WildlifeAnswer value :
         {WildlifeAnswer::awaited, WildlifeAnswer::none_known, WildlifeAnswer::known_here, WildlifeAnswer::terms_named})
        EXPECT_EQ(wildlife_answer_from_text(to_text(value)), value);
    for (const UtilitiesCall value : {UtilitiesCall::not_called, UtilitiesCall::awaited, UtilitiesCall::marked})
        EXPECT_EQ(utilities_call_from_text(to_text(value)), value);
    for (const PropertyUse value :
         {PropertyUse::home, PropertyUse::school, PropertyUse::school_athletic_field, PropertyUse::nursing_home,
          PropertyUse::day_care, PropertyUse::hospital, PropertyUse::none_of_these})
        EXPECT_EQ(property_use_from_text(to_text(value)), value);
}

TEST(WaterTable, is_read_as_it_is_pasted_in_either_language_and_unit) {
    const auto first = [](const std::string& text, LengthUnits units) {
        const WaterTable table = water_table(text, units);
        EXPECT_TRUE(table.problems.empty()) << sentence(table.problems.front());
        return table.days.empty() ? WaterDay{} : table.days.front();
    };
    const WaterDay wet{the_day, 5.0, 0.0};
    for (const char* text :
         {"2025-04-10\t5\t0", "2025-04-10;5,0;0", "2025-04-10, 5, 0", "2025-04-10 5 mm 0", "2025-04-10 | 5 mm | 0 mm",
          "date\train\tirrigation\n2025-04-10\t5\t0", "riego\tfecha\tlluvia (mm)\r\n0\t2025-04-10\t5\r\n"})
        EXPECT_EQ(first(text, LengthUnits::metres), wet) << text;
    // 1 in = 25.4 mm
    EXPECT_NEAR(*first("2025-04-10 0.2", LengthUnits::feet_and_inches).rain_mm, 5.08, 1e-12);
    EXPECT_NEAR(*first("2025-04-10 0.2 in", LengthUnits::metres).rain_mm, 5.08, 1e-12);
    EXPECT_NEAR(*first("date;rain (in)\n2025-04-10;0.2", LengthUnits::metres).rain_mm, 5.08, 1e-12);
    EXPECT_EQ(first("2025-04-10 0.2", LengthUnits::metres).irrigation_mm, std::nullopt);
    EXPECT_EQ(first("2025-04-10;-;3", LengthUnits::metres), (WaterDay{the_day, std::nullopt, 3.0}));
}

TEST(WaterTable, reads_days_with_slashes_where_one_reading_alone_is_left) {
    WaterTable table = water_table("4/10/2025 5\n4/13/2025 0\n", LengthUnits::metres);
    ASSERT_EQ(table.days.size(), 2U);
    EXPECT_EQ(table.days[0].day, the_day);
    table = water_table("13/4/2025 0\n10/4/2025 5\n", LengthUnits::metres);
    ASSERT_EQ(table.days.size(), 2U);
    EXPECT_EQ(table.days[0].day, the_day) << "in order of days";
    table = water_table("4/10/2025 5\n4/11/2025 0\n", LengthUnits::metres);
    EXPECT_TRUE(table.days.empty());
    ASSERT_EQ(table.problems.size(), 2U);
    EXPECT_NE(sentence(table.problems[0]).find("line 1: found \"4/10/2025\""), std::string::npos)
        << sentence(table.problems[0]);
}

TEST(WaterTable, names_the_line_that_it_cannot_read_and_takes_the_others) {
    const WaterTable table =
        water_table("2025-04-10 5 0\n\nnext week 3\n2025-04-11 -2 0\n2025-04-12 much1\n2025-04-10 4 0\n2025-04-13 1 1\n",
                    LengthUnits::metres);
    EXPECT_EQ(table.days.size(), 2U);
    ASSERT_EQ(table.problems.size(), 4U);
    EXPECT_EQ(table.problems[0].place, "line 3");
    EXPECT_EQ(table.problems[1].place, "line 4");
    EXPECT_EQ(table.problems[2].place, "line 5");
    EXPECT_EQ(table.problems[3].place, "line 6") << "the same day again";
    EXPECT_TRUE(water_table("", LengthUnits::metres).days.empty());
}

}  // namespace
}  // namespace plugside
