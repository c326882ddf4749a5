// Rules that hang on the label as it was typed, and on the licence.
#include <algorithm>

#include "core/sets/rule_case.h"
#include "core/words/words.h"

namespace plugside {

namespace {

const LabelCheck* check_of(const RuleCase& situation, const char* id) {
    const auto found = std::find_if(situation.checks.begin(), situation.checks.end(),
                                    [&](const LabelCheck& check) { return check.id == id; });
    return found == situation.checks.end() ? nullptr : &*found;
}

// Those that have a rule of their own.
bool is_apart(const LabelCheck& check) {
    for (const char* id : {"label", "site", "building-distance", "water-distance", "good-until", "checked-on"})
        if (check.id == id) return true;
    return false;
}

// Nothing where a toxicant is set and there is a label; else the ruling.
std::optional<Ruling> without_label(const RuleCase& situation) {
    const Ternary toxicant = situation.sets_a_toxicant();
    if (toxicant == Ternary(false)) return not_concerned(situation);
    if (!toxicant) return not_known(situation, {Question::method});
    if (!is_given(situation.label)) return not_known(situation, {Question::label});
    return std::nullopt;
}

Ruling label_missing(const RuleCase& situation) {
    const Ternary toxicant = situation.sets_a_toxicant();
    if (toxicant == Ternary(false)) return not_concerned(situation);
    if (is_given(situation.label)) return it_does_not(Words::tell("A label was typed in."));
    return toxicant ? it_holds(Words::tell("No label has been typed in.")) : not_known(situation, {Question::method});
}

Ruling label_for_method(const RuleCase& situation) {
    if (auto ruling = without_label(situation)) return *ruling;
    const auto ingredient = situation.label.ingredient;
    if (!ingredient) return not_known(situation, {Question::ingredient});
    if (is_for(*ingredient, situation.method->stuff) == Ternary(false))
        return situation.method->stuff == Stuff::fumigant
                   ? it_holds(Words::tell("The method puts down a fumigant, and the label's ingredient is a bait."))
                   : it_holds(Words::tell("The method puts down bait, and the label's ingredient is a fumigant."));
    if (*ingredient == Ingredient::other)
        return words_name_one(situation.label)
                   ? not_known(situation, {Question::ingredient})
                   : it_does_not(Words::tell("The label's ingredient is none of those known here: read whether it is for this method."));
    return it_does_not(Words::tell("The label's ingredient goes with the method."));
}

Ruling label_exceeded(const RuleCase& situation) {
    if (auto ruling = without_label(situation)) return *ruling;
    const LabelCheck* open = nullptr;
    for (const LabelCheck& check : situation.checks) {
        if (is_apart(check)) continue;
        if (check.outcome == Compared::exceeded) return it_holds(check.sentence);
        if (check.outcome == Compared::not_known && open == nullptr) open = &check;
    }
    if (open == nullptr) return it_does_not(Words::tell("No figure that was typed from the label is gone beyond."));
    Ruling ruling = not_known(situation, {Question::label});
    ruling.because = Words::tell("Not known: {1}", {open->sentence});
    return ruling;
}

Ruling label_distance(const RuleCase& situation) {
    if (auto ruling = without_label(situation)) return *ruling;
    const LabelLimits& label = situation.label;
    if (!label.building_distance && !label.water_distance) return not_known(situation, {Question::label});
    const auto too_near = [](std::optional<Metres> least, std::optional<Metres> nearest) {
        return least && nearest && *nearest < *least;
    };
    const auto sentence = [](const char* text, Metres nearest, Metres least) {
        return filled(Words::shown(text),
                      {figure(nearest.value()), figure(nearest.feet()), figure(least.value()), figure(least.feet())});
    };
    if (too_near(label.building_distance, situation.around.nearest_building))
        return it_holds(sentence(
            Words::later(
                "This system may come within {1} m ({2} ft) of a building; the label names {3} m ({4} ft) at least."),
            *situation.around.nearest_building, *label.building_distance));
    if (too_near(label.water_distance, situation.around.nearest_water))
        return it_holds(sentence(
            Words::later("This system may come within {1} m ({2} ft) of water; the label names {3} m ({4} ft) at least."),
            *situation.around.nearest_water, *label.water_distance));
    std::vector<Question> ask;
    if (label.building_distance &&
        situation.answer(situation.conditions.buildings_drawn, Question::buildings_drawn) != Ternary(true))
        ask.push_back(Question::buildings_drawn);
    if (label.water_distance && situation.answer(situation.conditions.water_near, Question::water_near) != Ternary(false))
        ask.push_back(Question::water_near);
    if (!ask.empty()) return not_known(situation, ask);
    return it_does_not(Words::tell("The distances that the label names are kept on the map."));
}

Ruling label_site(const RuleCase& situation) {
    if (auto ruling = without_label(situation)) return *ruling;
    const LabelCheck* check = check_of(situation, "site");
    if (check == nullptr) return not_known(situation, {Question::label});
    if (check->outcome == Compared::not_known) return not_known(situation, {Question::crop});
    return check->outcome == Compared::exceeded ? it_holds(check->sentence) : it_does_not(check->sentence);
}

Ruling label_old(const RuleCase& situation) {
    if (auto ruling = without_label(situation)) return *ruling;
    for (const char* id : {"good-until", "checked-on"})
        if (const LabelCheck* check = check_of(situation, id); check != nullptr && check->outcome == Compared::exceeded)
            return it_holds(check->sentence);
    const LabelCheck* checked = check_of(situation, "checked-on");
    if (checked == nullptr || checked->outcome == Compared::not_known) return not_known(situation, {Question::label});
    return it_does_not(checked->sentence);
}

Ruling label_re_entry(const RuleCase& situation) {
    if (auto ruling = without_label(situation)) return *ruling;
    if (!situation.label.re_entry_hours) return not_known(situation, {Question::label});
    if (*situation.label.re_entry_hours > 0.0)
        return it_holds(Words::tell("The label names {1} hours.", {figure(*situation.label.re_entry_hours)}));
    return it_does_not(Words::tell("The label names no such hours."));
}

std::string folded(const std::string& text) {
    std::string lower = text;
    std::transform(lower.begin(), lower.end(), lower.begin(), [](unsigned char letter) {
        return static_cast<char>(letter >= 'A' && letter <= 'Z' ? letter + 32 : letter);
    });
    return lower;
}

Ruling tool_gloves(const RuleCase& situation) {
    if (auto ruling = without_label(situation)) return *ruling;
    for (const Protection& protection : situation.label.protection)
        for (const std::string& tool : situation.method->tools)
            if (folded(protection.tool) == folded(tool) && !protection.worn.empty())
                return it_does_not(Words::tell("The label names for {1}: {2}.", {protection.tool, protection.worn}));
    return it_holds(Words::tell("What the label names for this method's tools was not typed in."));
}

Ruling restricted_licence(const RuleCase& situation) {
    if (auto ruling = without_label(situation)) return *ruling;
    const Ternary held = licence_holds(situation);
    if (situation.label.restricted_use == Ternary(false))
        return it_does_not(Words::tell("The label is not of restricted use."));
    if (held == Ternary(true)) return it_does_not(Words::tell("A licence is held that has not run out."));
    if (!situation.label.restricted_use) return not_known(situation, {Question::label});
    if (!held) return not_known(situation, {Question::licence});
    return it_holds(Words::tell("No applicator's licence is held, or it has run out."));
}

}  // namespace

Ternary licence_holds(const RuleCase& situation) {
    if (!situation.licence) return std::nullopt;
    if (situation.licence->kind == LicenceKind::none) return false;
    if (!situation.licence->valid_until) return std::nullopt;
    return *situation.licence->valid_until >= std::chrono::floor<std::chrono::days>(situation.now);
}

const std::vector<CautionRule>& rules_of_the_label() {
    static const std::vector<CautionRule> rules{
        {"tool-gloves", tool_gloves},       {"restricted-licence", restricted_licence}, {"label-missing", label_missing},
        {"label-for-method", label_for_method},
        {"label-exceeded", label_exceeded}, {"label-distance", label_distance},         {"label-site", label_site},
        {"label-old", label_old},           {"label-re-entry", label_re_entry}};
    return rules;
}

}  // namespace plugside
