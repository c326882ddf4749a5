// A small field with one system and one set, and a work order with every answer given and nothing against it: what rules are tried on.
#pragma once

#include <string>
#include <utility>
#include <vector>

#include "core/sets/caution_rules.h"
#include "core/sets/work_order.h"

namespace plugside::test {

inline constexpr UtcTime the_morning{std::chrono::seconds(1744286400)};  // 2025-04-10 12:00 UTC
inline const CalendarDay the_day = std::chrono::floor<std::chrono::days>(the_morning);

template <typename T>
Told<T> told(T value, UtcTime at = the_morning) {
    return {std::optional<T>(std::move(value)), at};
}

// Everything answered this morning, and nothing of it speaks against a set.
inline Conditions calm_conditions() {
    Conditions calm;
    calm.soil_moisture = told(SoilMoisture::damp);
    calm.rain_due = told(false);
    calm.irrigation_due = told(false);
    calm.soil_temperature_c = told(15.0);
    calm.soil_texture = told(SoilTexture::loam);
    calm.soil_cracks = told(false);
    calm.frost = told(false);
    calm.crop = told(std::string("alfalfa"));
    calm.site_use = told(SiteUse::forage);
    calm.property = told(std::set<PropertyUse>{PropertyUse::none_of_these});
    calm.children = told(Visits{});
    calm.public_visits = told(Visits{});
    calm.pets = told(Visits{});
    calm.stock = told(Visits{});
    calm.buildings_drawn = told(true);
    calm.water_near = told(false);
    calm.wildlife = told(WildlifeAnswer::none_known);
    calm.fumigation_plan = told(true);
    calm.utilities = told(UtilitiesCall::marked);
    calm.neighbours_told = told(true);
    calm.trap_law_read = told(true);
    calm.pesticide_office = told(OfficeAnswer::terms_named);
    return calm;
}

// A label of nobody's product: figures made up for the tests.
inline LabelLimits calm_label(const Method& method) {
    LabelLimits label;
    const bool gas = method.stuff == Stuff::fumigant;
    label.ingredient = gas ? Ingredient::aluminium_phosphide : Ingredient::anticoagulant;
    label.registration = "000-000";
    label.sites = {"Alfalfa", "pasture"};
    label.placement_most = gas ? Quantity{2.0, AmountUnit::tablets} : Quantity{1.0, AmountUnit::teaspoons};
    label.placements_a_system_most = 3;
    label.restricted_use = gas;
    label.re_entry_hours = 0.0;
    for (const std::string& tool : method.tools) label.protection.push_back({tool, "chemical-resistant gloves"});
    label.building_distance = Metres::of(10.0);
    label.water_distance = Metres::of(10.0);
    label.grams_per_millilitre = 0.8;
    label.checked_on = the_day;
    return label;
}

// Two mounds 20 m apart on an east-west run at north 0, of deviation .5 m half way, and a probe row in the middle.
struct Situation {
    Survey survey;
    Plan plan;
    WorkOrder work;

    [[nodiscard]] JudgedSet judged(UtcTime now = the_morning) const { return judge_set(survey, work, plan, 0, now); }
    [[nodiscard]] Judgement judgement(const std::string& caution, UtcTime now = the_morning) const {
        for (const Judgement& each : judged(now).judgements)
            if (each.caution == caution) return each;
        return {};
    }
    // A square of 4 m whose southern edge lies `north_m` north of the run, above its middle.
    void draw(KeepClearKind kind, double north_m, const std::string& name = "the thing") {
        survey.ground.keep_clear.push_back(
            {name, "drawn by hand", kind, {{{{8, north_m}, {12, north_m}, {12, north_m + 4}, {8, north_m + 4}}}, {}}});
    }
    void note(MentionCategory category, const std::string& words) { survey.mounds[1].mentions.push_back({category, words}); }
};

inline Situation calm_situation(const std::string& method) {
    Situation made;
    for (const double east : {0.0, 20.0}) {
        Mound mound;
        mound.name = east == 0.0 ? "M1" : "M2";
        mound.plug = {east, 0.0};
        mound.position_sd = Metres::of(0.2);
        made.survey.mounds.push_back(mound);
        MoundInPlan in_plan;
        in_plan.system = 0;
        in_plan.take_off = mound.plug;
        in_plan.take_off_sd_along = in_plan.take_off_sd_across = Metres::of(0.2);
        made.plan.mounds.push_back(in_plan);
    }
    BurrowSystem system;
    system.letter = "A";
    system.mounds = {0, 1};
    made.plan.systems.push_back(system);
    MainRun run;
    run.to_mound = 1;
    run.line = {{{0, 0}, {10, 0}, {20, 0}}};
    run.sd_m = {0.2, 0.5, 0.2};
    made.plan.runs.push_back(run);
    ProbeSite site;
    const std::optional<Method> chosen = find_method(made.work, method);
    site.key.kind = chosen ? chosen->serves.value_or(ProbeKind::plug_side) : ProbeKind::plug_side;
    site.key.from_mound = "M1";
    site.middle = {10, 0};
    site.rung_places = {{10, 0}, {10, 0.06}, {10, -0.06}};
    site.rungs = {Metres::of(0.0), Metres::of(-0.06), Metres::of(0.06)};
    site.hit = Probability::of(0.9);
    site.expected_rungs = 1.5;
    made.plan.probes.push_back(site);
    SetPoint set;
    set.rank = 1;
    made.plan.sets.push_back(set);
    made.plan.area_field_m2 = 40000.0;
    made.work.conditions = calm_conditions();
    made.work.method = method;
    made.work.licence = told(Licence{LicenceKind::private_applicator, "A. Nobody", "1", the_day + std::chrono::days(100)});
    if (chosen) {
        made.work.label = calm_label(*chosen);
        if (chosen->stuff != Stuff::trap) made.work.dose = made.work.label.placement_most;
    }
    return made;
}

}  // namespace plugside::test
