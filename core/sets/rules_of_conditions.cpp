// Rules that hang on what a person answered, and on the method.
#include <array>

#include "core/sets/rule_case.h"
#include "core/words/words.h"

namespace plugside {

namespace {

constexpr double cold_c = (40.0 - 32.0) / 1.8;  // 40 F: federal label text of 2018

// Of what is put down: not known where the label is one for something else (label-for-method), nor where its words name what was not chosen.
std::optional<Ingredient> ingredient_of(const RuleCase& situation) {
    const LabelLimits& label = situation.label;
    if (!label.ingredient || (situation.method && is_for(*label.ingredient, situation.method->stuff) == Ternary(false)))
        return std::nullopt;
    return *label.ingredient == Ingredient::other && words_name_one(label) ? std::nullopt : label.ingredient;
}

Ternary is_ingredient(const RuleCase& situation, Ingredient which) {
    const auto ingredient = ingredient_of(situation);
    return ingredient ? Ternary(*ingredient == which) : std::nullopt;
}

Ternary is_phosphide_gas(const RuleCase& situation) {
    return either(is_ingredient(situation, Ingredient::aluminium_phosphide),
                  is_ingredient(situation, Ingredient::magnesium_phosphide));
}

// Who of the four comes here.
struct Reached {
    Ternary anyone;
    const char* who = nullptr;  // a sentence, where someone does
    std::vector<Question> ask;
};

Reached who_comes(const RuleCase& situation) {
    struct Visitor {
        Question whose;
        const char* come;
    };
    constexpr std::array<Visitor, 4> visitors{{{Question::children, Words::later("Children come here.")},
                                               {Question::public_visits, Words::later("Other people come here.")},
                                               {Question::pets, Words::later("Pets come here.")},
                                               {Question::stock, Words::later("Stock comes here.")}}};
    Reached reached;
    reached.anyone = false;
    for (const Visitor& visitor : visitors) {
        const Ternary comes = come_here(situation.conditions, visitor.whose, situation.now);
        reached.anyone = either(reached.anyone, comes);
        if (!comes) reached.ask.push_back(visitor.whose);
        if (comes == Ternary(true) && reached.who == nullptr) reached.who = visitor.come;
    }
    return reached;
}

Ruling protected_species(const RuleCase& situation) {
    const auto answer = situation.answer(situation.conditions.wildlife, Question::wildlife);
    if (!answer) return not_known(situation, {Question::wildlife});
    switch (*answer) {
        case WildlifeAnswer::awaited:
            return it_holds(Words::tell("The wildlife agency was asked and has not answered yet."));
        case WildlifeAnswer::known_here: return it_holds(Words::tell("A protected animal is known here."));
        case WildlifeAnswer::none_known: return it_does_not(Words::tell("The wildlife agency knows of none here."));
        case WildlifeAnswer::terms_named: break;
    }
    return it_does_not(Words::tell("The wildlife agency has named its terms."));
}

Ruling protected_known(const RuleCase& situation) {
    const auto answer = situation.answer(situation.conditions.wildlife, Question::wildlife);
    if (!answer || *answer == WildlifeAnswer::awaited) return not_known(situation, {Question::wildlife});
    if (*answer == WildlifeAnswer::known_here) return it_holds(Words::tell("A protected animal is known here."));
    return protected_species(situation);
}

Ruling protected_terms(const RuleCase& situation) {
    const auto answer = situation.answer(situation.conditions.wildlife, Question::wildlife);
    if (!answer || *answer == WildlifeAnswer::awaited) return not_known(situation, {Question::wildlife});
    if (*answer == WildlifeAnswer::terms_named) return it_holds(Words::tell("The wildlife agency has named its terms."));
    return it_does_not(Words::tell("The wildlife agency has named no terms."));
}

Ruling people_and_animals(const RuleCase& situation) {
    const Reached reached = who_comes(situation);
    if (reached.anyone == Ternary(true)) return it_holds(Words::shown(reached.who));
    if (!reached.anyone) return not_known(situation, reached.ask);
    return it_does_not(Words::tell("Neither people nor pets nor stock were said to come here."));
}

Ruling open_set(const RuleCase& situation) {
    if (!situation.method) return not_known(situation, {Question::method});
    const HoleCover cover = cover_or_open(*situation.method, situation.conditions, situation.now);
    if (cover.cover) return it_does_not(cover.reason);
    const Reached reached = who_comes(situation);
    if (reached.anyone == Ternary(true)) return it_holds(cover.reason + " " + Words::shown(reached.who));
    if (!reached.anyone) return not_known(situation, reached.ask);
    return it_does_not(Words::tell("Neither people nor pets nor stock were said to come here."));
}

Ruling kill_trap_law(const RuleCase& situation) {
    const Ternary trap = situation.sets(Stuff::trap);
    if (trap == Ternary(false)) return not_concerned(situation);
    const auto law_read = situation.answer(situation.conditions.trap_law_read, Question::trap_law_read);
    if (law_read == Ternary(true)) return it_does_not(Words::tell("The law on traps was read."));
    if (!trap) return not_known(situation, {Question::method});
    if (!law_read) return not_known(situation, {Question::trap_law_read});
    return it_holds(Words::tell("The law on traps has not been read yet."));
}

Ruling check_too_rare(const RuleCase& situation) {
    const Ternary trap = situation.sets(Stuff::trap);
    if (trap == Ternary(false)) return not_concerned(situation);
    if (!trap) return not_known(situation, {Question::method});
    if (!situation.method->check_every_hours) return it_holds(Words::tell("The method names no time between two checks."));
    const std::string hours = figure(*situation.method->check_every_hours);
    if (*situation.method->check_every_hours > 24.0)
        return it_holds(Words::tell("The method checks its traps every {1} hours.", {hours}));
    return it_does_not(Words::tell("The method checks its traps every {1} hours.", {hours}));
}

Ruling utilities_ask(const RuleCase& situation) {
    const auto call = situation.answer(situation.conditions.utilities, Question::utilities);
    if (!call) return not_known(situation, {Question::utilities});
    if (*call == UtilitiesCall::marked) return it_does_not(Words::tell("The lines were marked out."));
    if (*call == UtilitiesCall::awaited)
        return it_holds(Words::tell("The one-call service was called, and the lines are not marked yet."));
    return it_holds(Words::tell("The one-call service has not been called."));
}

Ruling zinc_phosphide_wet(const RuleCase& situation) {
    const Ternary bait = situation.sets(Stuff::bait);
    if (bait == Ternary(false)) return not_concerned(situation);
    const Ternary zinc = is_ingredient(situation, Ingredient::zinc_phosphide);
    if (zinc == Ternary(false)) return it_does_not(Words::tell("The label's ingredient is another one."));
    const auto moisture = situation.answer(situation.conditions.soil_moisture, Question::soil_moisture);
    const Ternary wet = moisture ? Ternary(*moisture == SoilMoisture::wet) : std::nullopt;
    const Ternary rain = rain_is_due(situation.conditions, situation.now);
    const Ternary irrigation = irrigation_is_due(situation.conditions, situation.now);
    const Ternary damp = either(wet, either(rain, irrigation));
    if (damp == Ternary(false))
        return it_does_not(Words::tell("The soil is not wet, and neither rain nor irrigation is due."));
    std::vector<Question> ask;
    if (!bait) ask.push_back(Question::method);
    if (!zinc) ask.push_back(Question::ingredient);
    if (!damp) {
        if (!wet) ask.push_back(Question::soil_moisture);
        if (!rain) ask.push_back(Question::rain_due);
        if (!irrigation) ask.push_back(Question::irrigation_due);
    }
    if (!ask.empty()) return not_known(situation, ask);
    if (wet == Ternary(true)) return it_holds(Words::tell("The soil is wet."));
    return it_holds(rain == Ternary(true) ? Words::tell("Rain is due in the next three days.")
                                          : Words::tell("Irrigation is due in the next three days."));
}

Ruling bait_surface(const RuleCase& situation) {
    const Ternary bait = situation.sets(Stuff::bait);
    if (bait == Ternary(false)) return not_concerned(situation);
    if (!bait) return not_known(situation, {Question::method});
    if (!situation.method->placement) return not_known(situation, {Question::placement});
    if (*situation.method->placement == Placement::on_surface)
        return it_holds(Words::tell("This method puts bait on the surface."));
    return it_does_not(Words::tell("This method puts bait below the ground."));
}

Ruling bait_spills(const RuleCase& situation) {
    const Ternary bait = situation.sets(Stuff::bait);
    if (!bait) return not_known(situation, {Question::method});
    return *bait ? it_holds(Words::tell("This method sets bait.")) : not_concerned(situation);
}

// Bait, and strychnine, with what the pesticide office said.
Ruling strychnine_ruling(const RuleCase& situation, Ternary against, const std::string& because,
                         const std::string& otherwise) {
    const Ternary bait = situation.sets(Stuff::bait);
    if (bait == Ternary(false)) return not_concerned(situation);
    const Ternary strychnine = is_ingredient(situation, Ingredient::strychnine);
    if (strychnine == Ternary(false)) return it_does_not(Words::tell("The label's ingredient is another one."));
    if (against == Ternary(false)) return it_does_not(otherwise);
    std::vector<Question> ask;
    if (!bait) ask.push_back(Question::method);
    if (!strychnine) ask.push_back(Question::ingredient);
    if (!against) ask.push_back(Question::pesticide_office);
    return ask.empty() ? it_holds(because) : not_known(situation, ask);
}

Ruling strychnine(const RuleCase& situation) {
    const auto office = situation.answer(situation.conditions.pesticide_office, Question::pesticide_office);
    const Ternary against = office ? Ternary(*office != OfficeAnswer::terms_named) : std::nullopt;
    return strychnine_ruling(situation, against,
                             office == std::optional(OfficeAnswer::withdrawn)
                                 ? Words::tell("The pesticide office says that it is withdrawn or banned here.")
                                 : Words::tell("The pesticide office has not been asked."),
                             Words::tell("The pesticide office has named its terms."));
}

Ruling strychnine_withdrawn(const RuleCase& situation) {
    const auto office = situation.answer(situation.conditions.pesticide_office, Question::pesticide_office);
    const Ternary against =
        !office || *office == OfficeAnswer::not_asked ? std::nullopt : Ternary(*office == OfficeAnswer::withdrawn);
    return strychnine_ruling(situation, against,
                             Words::tell("The pesticide office says that it is withdrawn or banned here."),
                             Words::tell("The pesticide office has named its terms."));
}

// A phosphide fumigant, and what else must be so.
Ruling phosphide_ruling(const RuleCase& situation, Ternary against, Question decides, const std::string& because,
                        const std::string& otherwise) {
    const Ternary fumigant = situation.sets(Stuff::fumigant);
    if (fumigant == Ternary(false)) return not_concerned(situation);
    const Ternary phosphide = is_phosphide_gas(situation);
    if (phosphide == Ternary(false)) return it_does_not(Words::tell("The label's ingredient is another one."));
    if (against == Ternary(false)) return it_does_not(otherwise);
    std::vector<Question> ask;
    if (!fumigant) ask.push_back(Question::method);
    if (!phosphide) ask.push_back(Question::ingredient);
    if (!against) ask.push_back(decides);
    return ask.empty() ? it_holds(because) : not_known(situation, ask);
}

Ruling fumigant_licence(const RuleCase& situation) {
    return phosphide_ruling(situation, negated(licence_holds(situation)), Question::licence,
                            Words::tell("No applicator's licence is held, or it has run out."),
                            Words::tell("A licence is held that has not run out."));
}

Ruling fumigant_plan(const RuleCase& situation) {
    return phosphide_ruling(situation,
                            negated(situation.answer(situation.conditions.fumigation_plan, Question::fumigation_plan)),
                            Question::fumigation_plan, Words::tell("The management plan is not in hand."),
                            Words::tell("The management plan is in hand."));
}

Ruling fumigant_property(const RuleCase& situation) {
    const auto property = situation.answer(situation.conditions.property, Question::property);
    Ternary against;
    Question decides = Question::property;
    if (property && !property->empty()) {
        against = property->contains(PropertyUse::home) || property->contains(PropertyUse::nursing_home) ||
                  property->contains(PropertyUse::day_care) || property->contains(PropertyUse::hospital);
        if (!*against && property->contains(PropertyUse::school)) {
            against = true;
            if (property->contains(PropertyUse::school_athletic_field)) {
                // athletic fields are apart: is this one?
                const auto use = situation.answer(situation.conditions.site_use, Question::site_use);
                against = use ? Ternary(*use != SiteUse::sports_field) : std::nullopt;
                decides = Question::site_use;
            }
        }
    }
    return phosphide_ruling(situation, against, decides,
                            Words::tell("A home, school, nursing home, day care or hospital stands on the property."),
                            Words::tell("None of these stands on the property, athletic fields of schools apart."));
}

Ruling fumigant_soil(const RuleCase& situation) {
    const Ternary fumigant = situation.sets(Stuff::fumigant);
    if (fumigant == Ternary(false)) return not_concerned(situation);
    const Conditions& said = situation.conditions;
    const auto warmth = situation.answer(said.soil_temperature_c, Question::soil_temperature);
    const auto moisture = situation.answer(said.soil_moisture, Question::soil_moisture);
    const auto texture = situation.answer(said.soil_texture, Question::soil_texture);
    const Ternary cracks = situation.answer(said.soil_cracks, Question::soil_cracks);
    const Ternary cold = warmth ? Ternary(*warmth < cold_c - 1e-9) : std::nullopt;
    const Ternary dry = moisture ? Ternary(*moisture == SoilMoisture::dry) : std::nullopt;
    const Ternary sandy = texture ? Ternary(*texture == SoilTexture::sand_or_loose) : std::nullopt;
    const Ternary leaks = both(dry, either(sandy, cracks));
    const Ternary against = either(cold, leaks);
    if (against == Ternary(false))
        return it_does_not(Words::tell("The soil is warm enough, and not both dry and loose or cracked."));
    std::vector<Question> ask;
    if (!fumigant) ask.push_back(Question::method);
    if (!against) {
        if (!cold) ask.push_back(Question::soil_temperature);
        if (!leaks && !dry) ask.push_back(Question::soil_moisture);
        if (!leaks && !sandy) ask.push_back(Question::soil_texture);
        if (!leaks && !cracks) ask.push_back(Question::soil_cracks);
    }
    if (!ask.empty()) return not_known(situation, ask);
    if (cold == Ternary(true))
        return it_holds(Words::tell("The soil has {1} °C ({2} °F), less than 4.4 °C (40 °F).",
                                    {figure(*warmth), figure(*warmth * 1.8 + 32.0)}));
    return it_holds(Words::tell("The soil is dry, and loose or cracked."));
}

Ruling method_place(const RuleCase& situation) {
    if (!situation.method) return not_known(situation, {Question::method});
    if (situation.method->serves && *situation.method->serves != situation.site.key.kind)
        return it_holds(
            *situation.method->serves == ProbeKind::plug_side
                ? Words::tell("The method wants the lateral of a mound; this place lies between mounds.")
                : Words::tell("The method wants the run between mounds; this place is on the plug side of one."));
    return it_does_not(Words::tell("The place is of the kind that the method wants."));
}

Ruling neighbours(const RuleCase& situation) {
    const auto told = situation.answer(situation.conditions.neighbours_told, Question::neighbours_told);
    if (!told) return not_known(situation, {Question::neighbours_told});
    return *told ? it_does_not(Words::tell("The neighbours were told."))
                 : it_holds(Words::tell("The neighbours have not been told."));
}

Ruling frozen_ground(const RuleCase& situation) {
    const auto frost = situation.answer(situation.conditions.frost, Question::frost);
    if (!frost) return not_known(situation, {Question::frost});
    return *frost ? it_holds(Words::tell("The ground is frozen.")) : it_does_not(Words::tell("The ground is not frozen."));
}

Ruling always(const RuleCase&) { return it_holds(Words::tell("This holds at every set.")); }

}  // namespace

const std::vector<CautionRule>& rules_of_conditions() {
    static const std::vector<CautionRule> rules{{"protected-species", protected_species},
                                                {"people-and-animals", people_and_animals},
                                                {"kill-trap-law", kill_trap_law},
                                                {"label-decides", always},
                                                {"utilities-ask", utilities_ask},
                                                {"check-daily", always},
                                                {"zinc-phosphide-wet", zinc_phosphide_wet},
                                                {"bait-surface", bait_surface},
                                                {"strychnine", strychnine},
                                                {"fumigant-licence", fumigant_licence},
                                                {"fumigant-property", fumigant_property},
                                                {"fumigant-soil", fumigant_soil},
                                                {"fumigant-plan", fumigant_plan},
                                                {"protected-known", protected_known},
                                                {"protected-terms", protected_terms},
                                                {"open-set", open_set},
                                                {"bait-spills", bait_spills},
                                                {"strychnine-withdrawn", strychnine_withdrawn},
                                                {"method-place", method_place},
                                                {"check-too-rare", check_too_rare},
                                                {"neighbours", neighbours},
                                                {"frozen-ground", frozen_ground}};
    return rules;
}

}  // namespace plugside
