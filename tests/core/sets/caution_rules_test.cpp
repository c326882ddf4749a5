#include "core/sets/caution_rules.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <functional>
#include <map>
#include <regex>
#include <set>

#include "tests/core/sets/work_situations.h"

namespace plugside {
namespace {

using test::calm_situation;
using test::Situation;
using test::the_day;
using test::the_morning;
using test::told;

using Change = std::function<void(Situation&)>;

const Change nothing = [](Situation&) {};
const Change no_method = [](Situation& s) { s.work.method.clear(); };
Change method(const std::string& id) {
    return [id](Situation& s) { s = calm_situation(id); };
}

template <typename T>
Change answer(Told<T> Conditions::*member, T value) {
    return [member, value](Situation& s) { s.work.conditions.*member = told(value); };
}
template <typename T>
Change not_answered(Told<T> Conditions::*member) {
    return [member](Situation& s) { s.work.conditions.*member = Told<T>{std::nullopt, the_morning}; };
}
Change drawn(KeepClearKind kind, double north_m) {
    return [kind, north_m](Situation& s) { s.draw(kind, north_m); };
}
Change label(const std::function<void(LabelLimits&)>& change) {
    return [change](Situation& s) { change(s.work.label); };
}
Change ingredient(std::optional<Ingredient> which) {
    return label([which](LabelLimits& l) { l.ingredient = which; });
}
Change all(const std::vector<Change>& changes) {
    return [changes](Situation& s) {
        for (const Change& change : changes) change(s);
    };
}

// One rule in three cases, each a change of a calm situation of `of`.
struct RuleRow {
    const char* caution;
    const char* of;
    Change holds;
    Change does_not_hold;
    Change not_known;
};

std::vector<RuleRow> rows_of_the_map_and_soil() {
    const Visits coming{true, {}, {}, ""};
    return {
        {"building", "fumigant", drawn(KeepClearKind::building, 31.30), drawn(KeepClearKind::building, 31.31),
         not_answered(&Conditions::buildings_drawn)},
        {"utility", "paired-traps",
         all({drawn(KeepClearKind::utility, 4.0), answer(&Conditions::utilities, UtilitiesCall::awaited)}),
         drawn(KeepClearKind::utility, 4.0),
         all({drawn(KeepClearKind::utility, 4.0), not_answered(&Conditions::utilities)})},
        {"well", "bait-probe-hole", drawn(KeepClearKind::well, 31.30), drawn(KeepClearKind::well, 31.31),
         not_answered(&Conditions::water_near)},
        {"play-area", "paired-traps", drawn(KeepClearKind::play_area, 31.30), drawn(KeepClearKind::play_area, 31.31),
         not_answered(&Conditions::children)},
        {"zinc-phosphide-wet", "bait-probe-hole",
         all({ingredient(Ingredient::zinc_phosphide), answer(&Conditions::rain_due, true)}),
         ingredient(Ingredient::zinc_phosphide),
         all({ingredient(Ingredient::zinc_phosphide), not_answered(&Conditions::soil_moisture)})},
        {"fumigant-soil", "fumigant", answer(&Conditions::soil_temperature_c, 4.4),
         answer(&Conditions::soil_temperature_c, 4.5), not_answered(&Conditions::soil_temperature_c)},
        {"frozen-ground", "paired-traps", answer(&Conditions::frost, true), nothing, not_answered(&Conditions::frost)},
        {"people-and-animals", "paired-traps", answer(&Conditions::pets, coming), nothing, not_answered(&Conditions::stock)},
        {"utilities-ask", "paired-traps", answer(&Conditions::utilities, UtilitiesCall::not_called), nothing,
         not_answered(&Conditions::utilities)},
        {"neighbours", "paired-traps", answer(&Conditions::neighbours_told, false), nothing,
         not_answered(&Conditions::neighbours_told)},
        {"kill-trap-law", "trap-in-lateral", answer(&Conditions::trap_law_read, false), nothing,
         not_answered(&Conditions::trap_law_read)},
        {"protected-species", "paired-traps", answer(&Conditions::wildlife, WildlifeAnswer::awaited), nothing,
         not_answered(&Conditions::wildlife)},
        {"protected-known", "paired-traps", answer(&Conditions::wildlife, WildlifeAnswer::known_here), nothing,
         answer(&Conditions::wildlife, WildlifeAnswer::awaited)},
        {"protected-terms", "paired-traps", answer(&Conditions::wildlife, WildlifeAnswer::terms_named), nothing,
         not_answered(&Conditions::wildlife)},
    };
}

Change own_method(const std::function<void(Method&)>& change) {
    return [change](Situation& s) {
        Method own = own_variant(*find_method(s.work, s.work.method), 1, "my way");
        change(own);
        s.work.own_methods = {own};
        s.work.method = own.id;
    };
}

std::vector<RuleRow> rows_of_method_and_label() {
    const Visits coming{true, {}, {}, ""};
    const Change open = own_method([](Method& m) { m.cover = CoverRule::always_open; });
    return {
        {"bait-surface", "bait-probe-hole", own_method([](Method& m) { m.placement = Placement::on_surface; }), nothing,
         own_method([](Method& m) { m.placement.reset(); })},
        {"bait-spills", "bait-probe-hole", nothing, method("paired-traps"), no_method},
        {"strychnine", "bait-probe-hole",
         all({ingredient(Ingredient::strychnine), answer(&Conditions::pesticide_office, OfficeAnswer::not_asked)}),
         ingredient(Ingredient::strychnine),
         all({ingredient(Ingredient::strychnine), not_answered(&Conditions::pesticide_office)})},
        {"strychnine-withdrawn", "bait-probe-hole",
         all({ingredient(Ingredient::strychnine), answer(&Conditions::pesticide_office, OfficeAnswer::withdrawn)}),
         ingredient(Ingredient::strychnine),
         all({ingredient(Ingredient::strychnine), answer(&Conditions::pesticide_office, OfficeAnswer::not_asked)})},
        {"fumigant-licence", "fumigant",
         [](Situation& s) { s.work.licence.value->valid_until = the_day - std::chrono::days(1); }, nothing,
         [](Situation& s) { s.work.licence = {}; }},
        {"fumigant-plan", "fumigant", answer(&Conditions::fumigation_plan, false), nothing,
         not_answered(&Conditions::fumigation_plan)},
        {"fumigant-property", "fumigant", answer(&Conditions::property, std::set<PropertyUse>{PropertyUse::day_care}),
         nothing, not_answered(&Conditions::property)},
        {"open-set", "paired-traps", all({open, answer(&Conditions::children, coming)}), open,
         all({open, not_answered(&Conditions::children)})},
        {"method-place", "trap-in-lateral", [](Situation& s) { s.plan.probes[0].key.kind = ProbeKind::between_mounds; },
         nothing, no_method},
        {"check-too-rare", "paired-traps", own_method([](Method& m) { m.check_every_hours = 48.0; }), nothing, no_method},
        {"tool-gloves", "bait-probe-hole", label([](LabelLimits& l) { l.protection.clear(); }), nothing,
         label([](LabelLimits& l) { l = {}; })},
        {"restricted-licence", "bait-probe-hole",
         all({label([](LabelLimits& l) { l.restricted_use = true; }),
              [](Situation& s) { s.work.licence = told(Licence{}); }}),
         nothing, all({label([](LabelLimits& l) { l.restricted_use = true; }), [](Situation& s) { s.work.licence = {}; }})},
        {"label-missing", "bait-probe-hole", label([](LabelLimits& l) { l = {}; }), nothing,
         all({label([](LabelLimits& l) { l = {}; }), no_method})},
        {"label-for-method", "fumigant", ingredient(Ingredient::zinc_phosphide), nothing, ingredient(std::nullopt)},
        {"label-exceeded", "bait-probe-hole",
         [](Situation& s) {
             s.work.dose = Quantity{1.1, AmountUnit::teaspoons};
         },
         nothing, [](Situation& s) { s.work.dose.reset(); }},
        {"label-distance", "bait-probe-hole", drawn(KeepClearKind::building, 10.8), drawn(KeepClearKind::building, 10.9),
         not_answered(&Conditions::buildings_drawn)},
        {"label-site", "bait-probe-hole", answer(&Conditions::crop, std::string("tulips")), nothing,
         not_answered(&Conditions::crop)},
        {"label-old", "bait-probe-hole", label([](LabelLimits& l) { l.good_until = the_day - std::chrono::days(1); }),
         nothing, label([](LabelLimits& l) { l.checked_on.reset(); })},
        {"label-re-entry", "fumigant", label([](LabelLimits& l) { l.re_entry_hours = 4.0; }), nothing,
         label([](LabelLimits& l) { l.re_entry_hours.reset(); })},
    };
}

// Decided by what is drawn or noted alone, whatever nobody answered: they hold or do not.
std::vector<RuleRow> rows_without_a_question() {
    const auto noted = [](MentionCategory category) { return [category](Situation& s) { s.note(category, "words"); }; };
    return {
        {"inside-keep-clear", "paired-traps", drawn(KeepClearKind::other, 0.05), drawn(KeepClearKind::other, 0.07), nullptr},
        {"near-keep-clear", "paired-traps", drawn(KeepClearKind::other, 4.95), drawn(KeepClearKind::other, 4.97), nullptr},
        {"noted-people", "paired-traps", noted(MentionCategory::people), noted(MentionCategory::pets), nullptr},
        {"noted-pets", "paired-traps", noted(MentionCategory::pets), noted(MentionCategory::stock), nullptr},
        {"noted-stock", "paired-traps", noted(MentionCategory::stock), noted(MentionCategory::wildlife), nullptr},
        {"noted-wildlife", "paired-traps", noted(MentionCategory::wildlife), noted(MentionCategory::people), nullptr},
    };
}

const std::set<std::string> always_hold{"label-decides", "check-daily"};

std::vector<RuleRow> all_rows() {
    std::vector<RuleRow> rows = rows_of_the_map_and_soil();
    for (const auto& more : {rows_of_method_and_label(), rows_without_a_question()})
        rows.insert(rows.end(), more.begin(), more.end());
    return rows;
}

Judgement judged(const RuleRow& row, const Change& change) {
    Situation situation = calm_situation(row.of);
    change(situation);
    return situation.judgement(row.caution);
}

TEST(CautionRules, hold_do_not_hold_and_are_not_known_each_in_its_case) {
    for (const RuleRow& row : all_rows()) {
        SCOPED_TRACE(row.caution);
        const Judgement holds = judged(row, row.holds);
        EXPECT_EQ(holds.verdict, Verdict::holds) << holds.because;
        EXPECT_TRUE(holds.ask.empty());
        EXPECT_FALSE(holds.because.empty());
        const Judgement not_so = judged(row, row.does_not_hold);
        EXPECT_EQ(not_so.verdict, Verdict::does_not_hold) << not_so.because;
        EXPECT_FALSE(not_so.because.empty());
        if (!row.not_known) continue;
        const Judgement open = judged(row, row.not_known);
        EXPECT_EQ(open.verdict, Verdict::not_known) << open.because;
        EXPECT_FALSE(open.ask.empty());
        EXPECT_FALSE(open.because.empty());
    }
}

TEST(CautionRules, are_one_for_every_row_of_the_table_and_each_is_tried) {
    std::set<std::string> tried = always_hold;
    for (const RuleRow& row : all_rows()) EXPECT_TRUE(tried.insert(row.caution).second) << row.caution;
    const JudgedSet judged = calm_situation("paired-traps").judged();
    ASSERT_EQ(judged.judgements.size(), all_cautions("en").size());
    for (std::size_t i = 0; i < judged.judgements.size(); ++i) {
        const Caution& caution = all_cautions("en")[i];
        EXPECT_EQ(judged.judgements[i].caution, caution.id);
        EXPECT_EQ(judged.judgements[i].weight, caution.weight);
        EXPECT_EQ(tried.count(caution.id), 1U) << caution.id << " is not tried";
    }
    EXPECT_EQ(tried.size(), all_cautions("en").size());
}

TEST(CautionRules, that_the_map_decides_ask_nobody_anything) {
    for (const RuleRow& row : rows_without_a_question()) {
        Situation situation = calm_situation(row.of);
        situation.work = {};
        EXPECT_EQ(situation.judgement(row.caution).verdict, Verdict::does_not_hold) << row.caution;
        row.holds(situation);
        EXPECT_EQ(situation.judgement(row.caution).verdict, Verdict::holds) << row.caution;
    }
    for (const std::string& id : always_hold) EXPECT_EQ(calm_situation("fumigant").judgement(id).verdict, Verdict::holds);
}

TEST(CautionRules, say_nothing_against_a_calm_situation_but_what_always_holds) {
    for (const std::string& id : built_in_method_ids()) {
        const JudgedSet judged = calm_situation(id).judged();
        EXPECT_FALSE(judged.stopped()) << id;
        EXPECT_FALSE(judged.held_back()) << id;
        EXPECT_TRUE(judged.asks().empty()) << id;
        for (const Judgement* shown : judged.shown())
            EXPECT_TRUE(always_hold.contains(shown->caution) || shown->caution == "bait-spills")
                << id << ": " << shown->caution;
    }
}

TEST(CautionRules, ask_and_stop_nothing_where_nothing_was_answered) {
    for (const std::string& id : built_in_method_ids()) {
        Situation situation = calm_situation(id);
        situation.work.conditions = {};
        situation.work.licence = {};
        const JudgedSet judged = situation.judged();
        EXPECT_FALSE(judged.stopped()) << id;
        EXPECT_FALSE(judged.asks().empty()) << id;
        for (const Judgement& each : judged.judgements)
            EXPECT_EQ(each.verdict == Verdict::not_known, !each.ask.empty()) << each.caution;
    }
}

TEST(CautionRules, that_hang_on_several_answers_know_as_soon_as_one_decides) {
    Situation wet = calm_situation("bait-probe-hole");
    wet.work.label.ingredient = Ingredient::zinc_phosphide;
    wet.work.conditions.rain_due = {};
    wet.work.conditions.irrigation_due = {};
    Judgement judgement = wet.judgement("zinc-phosphide-wet");
    EXPECT_EQ(judgement.ask, (std::vector<Question>{Question::rain_due, Question::irrigation_due}));
    wet.work.conditions.soil_moisture = told(SoilMoisture::wet);
    EXPECT_EQ(wet.judgement("zinc-phosphide-wet").verdict, Verdict::holds);
    wet.work.label.ingredient = Ingredient::anticoagulant;
    EXPECT_EQ(wet.judgement("zinc-phosphide-wet").verdict, Verdict::does_not_hold);
}

TEST(CautionRules, do_not_believe_an_answer_past_its_age_and_say_so) {
    Situation situation = calm_situation("bait-probe-hole");
    situation.work.label.ingredient = Ingredient::zinc_phosphide;
    const UtcTime tomorrow = the_morning + std::chrono::hours(25);
    EXPECT_EQ(situation.judgement("zinc-phosphide-wet").verdict, Verdict::does_not_hold);
    const Judgement later = situation.judgement("zinc-phosphide-wet", tomorrow);
    EXPECT_EQ(later.verdict, Verdict::not_known);
    EXPECT_NE(later.because.find("2025-04-10"), std::string::npos) << later.because;
    EXPECT_NE(later.because.find("too old"), std::string::npos) << later.because;
}

TEST(CautionRules, let_a_hold_back_be_signed_and_a_stop_not) {
    Situation situation = calm_situation("paired-traps");
    situation.work.conditions.pets = told(Visits{true, {}, {}, ""});
    EXPECT_TRUE(situation.judged().held_back());
    const ProbeKey place = situation.plan.probes[0].key;
    SignedOverride entry{"people-and-animals", "paired-traps", place, "A. Nobody", "fenced off, and covered", the_morning};
    EXPECT_EQ(sign(situation.work, entry), std::nullopt);
    EXPECT_FALSE(situation.judged().held_back());
    EXPECT_EQ(situation.judgement("people-and-animals").signed_off->name, "A. Nobody");
    EXPECT_EQ(situation.judgement("people-and-animals").verdict, Verdict::holds) << "it is still shown";
    // another method, or another place, is another matter
    situation.work.method = "trap-in-lateral";
    EXPECT_TRUE(situation.judged().held_back());
    situation.work.method = "paired-traps";
    situation.plan.probes[0].key.from_mound = "M2";
    EXPECT_TRUE(situation.judged().held_back());
    entry.probe.reset();
    EXPECT_EQ(sign(situation.work, entry), std::nullopt);
    EXPECT_FALSE(situation.judged().held_back());
    take_signature_back(situation.work, entry);
    EXPECT_TRUE(situation.judged().held_back());
    for (const Caution& caution : all_cautions()) {
        SignedOverride other = entry;
        other.caution = caution.id;
        WorkOrder work;
        EXPECT_EQ(sign(work, other).has_value(), caution.weight != CautionWeight::hold_back) << caution.id;
        EXPECT_EQ(work.signed_off.size(), caution.weight == CautionWeight::hold_back ? 1U : 0U);
    }
}

TEST(CautionRules, refuse_a_signature_without_a_name_a_reason_or_a_caution) {
    WorkOrder work;
    const SignedOverride good{"well", "bait-probe-hole", {}, "A. Nobody", "asked the water authority", the_morning};
    for (const auto& change : std::vector<std::function<void(SignedOverride&)>>{
             [](SignedOverride& e) { e.name = " "; }, [](SignedOverride& e) { e.reason = "\t"; },
             [](SignedOverride& e) { e.caution = "none such"; }}) {
        SignedOverride wrong = good;
        change(wrong);
        EXPECT_TRUE(sign(work, wrong).has_value());
        EXPECT_TRUE(work.signed_off.empty());
    }
    EXPECT_EQ(sign(work, good), std::nullopt);
    EXPECT_EQ(sign(work, good), std::nullopt);
    EXPECT_EQ(work.signed_off.size(), 1U) << "a later one takes its place";
}

TEST(CautionRules, of_a_whole_plan_leave_out_what_was_dropped_and_take_each_sets_own_method) {
    Situation situation = calm_situation("fumigant");
    ProbeSite other = situation.plan.probes[0];
    other.key.from_mound = "M2";
    situation.plan.probes.push_back(other);
    SetPoint set;
    set.probe = 1;
    situation.plan.sets.push_back(set);
    situation.draw(KeepClearKind::building, 25.0);
    JudgedPlan judged = judge(situation.survey, situation.work, situation.plan, the_morning);
    EXPECT_TRUE(judged.has_stops());
    EXPECT_EQ(judged.stopped(), (std::vector<std::size_t>{0, 1}));
    choose_method(situation.work, other.key, "paired-traps");
    judged = judge(situation.survey, situation.work, situation.plan, the_morning);
    EXPECT_EQ(judged.stopped(), (std::vector<std::size_t>{0}));
    decide(situation.survey, {situation.plan.probes[0].key, SetChoice::dropped, {}});
    judged = judge(situation.survey, situation.work, situation.plan, the_morning);
    ASSERT_EQ(judged.sets.size(), 1U);
    EXPECT_EQ(judged.sets[0].set, 1U);
    EXPECT_FALSE(judged.has_stops());
}

TEST(CautionRules, of_a_building_show_which_part_of_the_system_and_how_likely) {
    Situation situation = calm_situation("fumigant");
    situation.draw(KeepClearKind::building, 25.0, "Barn");
    const Judgement judgement = situation.judgement("building");
    ASSERT_TRUE(judgement.where.has_value());
    EXPECT_EQ(judgement.where->keep_clear, 0U);
    EXPECT_NEAR(judgement.where->apart.value(), 25.0, 1e-6);
    EXPECT_GT(judgement.where->chance.value(), 0.99);
    EXPECT_NE(judgement.because.find("Barn"), std::string::npos);
    // a building that nobody lives in is none, as long as that answer is believed
    situation.work.conditions.buildings = {{"Barn", told(false), "tool shed"}};
    EXPECT_EQ(situation.judgement("building").verdict, Verdict::does_not_hold);
    situation.work.conditions.buildings[0].lived_in.at = the_morning - std::chrono::hours(366 * 24);
    EXPECT_EQ(situation.judgement("building").verdict, Verdict::holds);
}

// Words that would promise something, in either language; "against the law" and "prohibida" speak against.
TEST(CautionRules, never_call_anything_safe_or_allowed_in_either_language) {
    const std::regex english(
        "\\b(safe|safely|safer|safest|harmless|allow(s|ed)?|permit(s|ted)?|legal|lawful|approved|no risk|humane|"
        "non-?toxic)\\b",
        std::regex::icase);
    const std::regex spanish("permit|segur|inofensiv|autorizad[oa] |legal|l.cit|aprobad|sin riesgo|no t.xic",
                             std::regex::icase);
    EXPECT_TRUE(std::regex_search("It is safe.", english));
    EXPECT_TRUE(std::regex_search("Est\u00e1 permitido y es seguro.", spanish));
    for (const Caution& caution : all_cautions("en"))
        for (const std::string& text : {caution.sentence, caution.reason})
            EXPECT_FALSE(std::regex_search(text, english)) << text;
    for (const Caution& caution : all_cautions("es"))
        for (const std::string& text : {caution.sentence, caution.reason})
            EXPECT_FALSE(std::regex_search(text, spanish)) << text;
    for (const Method& method : built_in_methods()) {
        for (const MethodStep& step : method.steps) EXPECT_FALSE(std::regex_search(step.text, english)) << step.text;
        for (const std::string& text :
             {method.name, method.staking, method.flagging, method.closing, method.checking, method.ending})
            EXPECT_FALSE(std::regex_search(text, english)) << text;
    }
    for (const std::string& id : built_in_method_ids())
        for (const Judgement& each : calm_situation(id).judged().judgements)
            EXPECT_FALSE(std::regex_search(each.because, english)) << each.because;
}

}  // namespace
}  // namespace plugside
