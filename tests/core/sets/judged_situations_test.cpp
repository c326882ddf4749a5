// The situations of judged_situations.h.
#include "tests/core/sets/judged_situations.h"

#include <gtest/gtest.h>

#include <functional>
#include <map>
#include <set>
#include <sstream>

#include "tests/core/sets/work_situations.h"

namespace plugside {
namespace {

using test::Situation;
using test::the_day;
using test::the_morning;
using test::told;

void make_own(Situation& s, const std::function<void(Method&)>& change) {
    Method own = own_variant(*find_method(s.work, s.work.method), 1, "my way");
    change(own);
    s.work.own_methods = {own};
    s.work.method = own.id;
}

void table_of_days(Situation& s, double rain_on_the_second) {
    std::vector<WaterDay> days;
    for (int ahead = 0; ahead <= days_ahead; ++ahead)
        days.push_back({the_day + std::chrono::days(ahead), ahead == 2 ? rain_on_the_second : 0.0, 0.0});
    s.work.conditions.water_days = told(days);
}

using Change = std::function<void(Situation&)>;

std::map<std::string, Change> weather_and_soil() {
    return {
        {"wet", [](Situation& s) { s.work.conditions.soil_moisture = told(SoilMoisture::wet); }},
        {"dry", [](Situation& s) { s.work.conditions.soil_moisture = told(SoilMoisture::dry); }},
        {"rain", [](Situation& s) { s.work.conditions.rain_due = told(true); }},
        {"rain?",
         [](Situation& s) {
             s.work.conditions.rain_due = {std::nullopt, the_morning};
         }},
        {"rain-old", [](Situation& s) { s.work.conditions.rain_due = told(false, the_morning - std::chrono::hours(48)); }},
        {"irrigation", [](Situation& s) { s.work.conditions.irrigation_due = told(true); }},
        {"table-wet", [](Situation& s) { table_of_days(s, 4.0); }},
        {"table-dry", [](Situation& s) { table_of_days(s, 0.0); }},
        {"cold", [](Situation& s) { s.work.conditions.soil_temperature_c = told(4.0); }},
        {"warmth?", [](Situation& s) { s.work.conditions.soil_temperature_c = {}; }},
        {"sand", [](Situation& s) { s.work.conditions.soil_texture = told(SoilTexture::sand_or_loose); }},
        {"clay", [](Situation& s) { s.work.conditions.soil_texture = told(SoilTexture::clay); }},
        {"cracks", [](Situation& s) { s.work.conditions.soil_cracks = told(true); }},
    };
}

std::map<std::string, Change> label_and_papers() {
    return {
        {"zinc", [](Situation& s) { s.work.label.ingredient = Ingredient::zinc_phosphide; }},
        {"strychnine", [](Situation& s) { s.work.label.ingredient = Ingredient::strychnine; }},
        {"magnesium", [](Situation& s) { s.work.label.ingredient = Ingredient::magnesium_phosphide; }},
        {"cartridge",
         [](Situation& s) {
             s.work.label.ingredient = Ingredient::smoke_cartridge;
             s.work.label.restricted_use = false;
             s.work.label.placement_most = Quantity{1.0, AmountUnit::cartridges};
             s.work.dose = s.work.label.placement_most;
         }},
        {"aluminium", [](Situation& s) { s.work.label.ingredient = Ingredient::aluminium_phosphide; }},
        {"other-phosphide",
         [](Situation& s) {
             s.work.label.ingredient = Ingredient::other;
             s.work.label.ingredient_words = "Aluminum PHOSPHIDE 55 %";
         }},
        {"ingredient?", [](Situation& s) { s.work.label.ingredient.reset(); }},
        {"restricted", [](Situation& s) { s.work.label.restricted_use = true; }},
        {"no-label", [](Situation& s) { s.work.label = {}; }},
        {"spoon-gloves",
         [](Situation& s) {
             s.work.label.protection = {{"spoon with a long handle", "gloves"}};
         }},
        {"no-licence", [](Situation& s) { s.work.licence = told(Licence{}); }},
        {"licence-out", [](Situation& s) { s.work.licence.value->valid_until = the_day - std::chrono::days(7); }},
        {"licence?", [](Situation& s) { s.work.licence = {}; }},
        {"no-plan", [](Situation& s) { s.work.conditions.fumigation_plan = told(false); }},
        {"plan?", [](Situation& s) { s.work.conditions.fumigation_plan = {}; }},
        {"office-not-asked", [](Situation& s) { s.work.conditions.pesticide_office = told(OfficeAnswer::not_asked); }},
        {"office-withdrawn", [](Situation& s) { s.work.conditions.pesticide_office = told(OfficeAnswer::withdrawn); }},
        {"office?", [](Situation& s) { s.work.conditions.pesticide_office = {}; }},
        {"law-unread", [](Situation& s) { s.work.conditions.trap_law_read = told(false); }},
        {"on-surface", [](Situation& s) { make_own(s, [](Method& m) { m.placement = Placement::on_surface; }); }},
        {"placement?", [](Situation& s) { make_own(s, [](Method& m) { m.placement.reset(); }); }},
        {"open", [](Situation& s) { make_own(s, [](Method& m) { m.cover = CoverRule::always_open; }); }},
    };
}

void property(Situation& s, std::set<PropertyUse> uses) { s.work.conditions.property = told(std::move(uses)); }

std::map<std::string, Change> places_and_people() {
    const auto building = [](double north_m) {
        return [north_m](Situation& s) { s.draw(KeepClearKind::building, north_m, "Shed"); };
    };
    return {
        {"building20", building(20.0)},
        {"building31", building(31.0)},
        {"building32", building(32.0)},
        {"building36", building(36.0)},
        {"vague", [](Situation& s) { s.plan.runs[0].sd_m[1] = 4.0; }},
        {"long",
         [](Situation& s) {
             s.plan.runs[0].line = {{{0, 0}, {300, 0}, {600, 0}}};
         }},
        {"building-far",
         [](Situation& s) {
             s.survey.ground.keep_clear.push_back(
                 {"House", "", KeepClearKind::building, {{{{578, 20}, {582, 20}, {582, 24}, {578, 24}}}, {}}});
         }},
        {"empty",
         [](Situation& s) {
             s.work.conditions.buildings = {{"Shed", told(false), "tools"}};
         }},
        {"empty?",
         [](Situation& s) {
             s.work.conditions.buildings = {{"Shed", {std::nullopt, the_morning}, ""}};
         }},
        {"not-all-drawn", [](Situation& s) { s.work.conditions.buildings_drawn = told(false); }},
        {"line4", [](Situation& s) { s.draw(KeepClearKind::utility, 4.0, "Gas"); }},
        {"not-called", [](Situation& s) { s.work.conditions.utilities = told(UtilitiesCall::not_called); }},
        {"home", [](Situation& s) { property(s, {PropertyUse::home}); }},
        {"school", [](Situation& s) { property(s, {PropertyUse::school}); }},
        {"school-and-field",
         [](Situation& s) {
             property(s, {PropertyUse::school, PropertyUse::school_athletic_field});
         }},
        {"day-care-and-field",
         [](Situation& s) {
             property(s, {PropertyUse::day_care, PropertyUse::school_athletic_field});
         }},
        {"property?",
         [](Situation& s) {
             s.work.conditions.property = {std::nullopt, the_morning};
         }},
        {"lawn", [](Situation& s) { s.work.conditions.site_use = told(SiteUse::lawn); }},
        {"sports", [](Situation& s) { s.work.conditions.site_use = told(SiteUse::sports_field); }},
        {"use?", [](Situation& s) { s.work.conditions.site_use = {}; }},
        {"children",
         [](Situation& s) {
             s.work.conditions.children = told(Visits{true, {}, {}, "school days 8 to 3"});
         }},
        {"pets",
         [](Situation& s) {
             s.work.conditions.pets = told(Visits{true, {}, {}, ""});
         }},
        {"stock-left",
         [](Situation& s) {
             s.work.conditions.stock = told(Visits{true, {}, the_day - std::chrono::days(1), ""});
         }},
        {"protected", [](Situation& s) { s.work.conditions.wildlife = told(WildlifeAnswer::known_here); }},
        {"agency-awaited", [](Situation& s) { s.work.conditions.wildlife = told(WildlifeAnswer::awaited); }},
    };
}

std::map<std::string, Change> change_by_word() {
    std::map<std::string, Change> all = weather_and_soil();
    all.merge(label_and_papers());
    all.merge(places_and_people());
    return all;
}

std::string ids_that(const JudgedSet& judged, const std::function<bool(const Judgement&)>& test) {
    static const std::set<std::string> of_every_set{"label-decides", "check-daily", "bait-spills"};
    std::string ids;
    for (const Judgement& each : judged.judgements)
        if (test(each) && !of_every_set.contains(each.caution)) ids += (ids.empty() ? "" : " ") + each.caution;
    return ids;
}

TEST(JudgedSituations, come_out_as_the_facts_of_the_trade_have_them) {
    const auto changes = change_by_word();
    std::set<std::string> used;
    for (const test::JudgedByHand& by_hand : test::judged_by_hand) {
        SCOPED_TRACE(std::string(by_hand.what) + ": " + by_hand.why);
        Situation situation = test::calm_situation(by_hand.method);
        std::istringstream words(by_hand.changes);
        for (std::string word; words >> word;) {
            ASSERT_TRUE(changes.contains(word)) << word;
            changes.at(word)(situation);
            used.insert(word);
        }
        const JudgedSet judged = situation.judged();
        const auto holding = [&](CautionWeight weight) {
            return ids_that(judged,
                            [&](const Judgement& each) { return each.weight == weight && each.verdict == Verdict::holds; });
        };
        EXPECT_EQ(holding(CautionWeight::stop), by_hand.stops);
        EXPECT_EQ(holding(CautionWeight::hold_back), by_hand.holds_back);
        EXPECT_EQ(holding(CautionWeight::mind), by_hand.minds);
        EXPECT_EQ(ids_that(judged, [](const Judgement& each) { return each.verdict == Verdict::not_known; }),
                  by_hand.not_known);
    }
    EXPECT_EQ(used.size(), changes.size()) << "every word is used by some situation";
}

}  // namespace
}  // namespace plugside
