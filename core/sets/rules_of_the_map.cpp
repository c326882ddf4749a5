// Rules that hang on where things lie, and on what the walk's notes say.
#include <algorithm>

#include "core/sets/near_set.h"
#include "core/sets/rule_case.h"
#include "core/words/words.h"

namespace plugside {

namespace {

std::string name_of(const KeepClearArea& area) { return area.name.empty() ? Words::tell("without a name") : area.name; }

// The likeliest reason of one kind of area; a building that nobody lives in is none.
const std::pair<const std::size_t, ReachReason>* likeliest(const RuleCase& situation, KeepClearKind kind) {
    const std::pair<const std::size_t, ReachReason>* found = nullptr;
    for (const auto& reason : situation.around.within_100_ft) {
        const KeepClearArea& area = situation.survey.ground.keep_clear[reason.first];
        if (area.kind != kind) continue;
        if (kind == KeepClearKind::building && !may_be_lived_in(situation.conditions, area.name, situation.now)) continue;
        if (found == nullptr || reason.second.chance > found->second.chance) found = &reason;
    }
    return found;
}

Ruling near_ruling(const RuleCase& situation, const std::pair<const std::size_t, ReachReason>& reason) {
    const KeepClearArea& area = situation.survey.ground.keep_clear[reason.first];
    const auto letter = [&](std::size_t system) {
        return system < situation.plan.systems.size() ? situation.plan.systems[system].letter : "?";
    };
    const std::string chance = std::to_string(reason.second.chance.in_100());
    Ruling ruling = it_holds(
        reason.second.system == situation.site.system
            ? Words::tell(
                  "System {1} may come within 100 ft (30 m) of {2}, with a chance of {3} in 100 at its likeliest place.",
                  {letter(situation.site.system), name_of(area), chance})
            : Words::tell("Runs of system {4} that may be of system {1} may come within 100 ft (30 m) of {2}: both with a "
                          "chance of {3} in 100.",
                          {letter(situation.site.system), name_of(area), chance, letter(reason.second.system)}));
    ruling.where = reason.second;
    return ruling;
}

Ruling building(const RuleCase& situation) {
    const Ternary fumigant = situation.sets(Stuff::fumigant);
    if (fumigant == Ternary(false)) return not_concerned(situation);
    if (const auto* reason = likeliest(situation, KeepClearKind::building)) {
        if (fumigant) return near_ruling(situation, *reason);
        Ruling open = not_known(situation, {Question::method});
        open.where = reason->second;
        return open;
    }
    const auto all_drawn = situation.answer(situation.conditions.buildings_drawn, Question::buildings_drawn);
    if (all_drawn != Ternary(true)) return not_known(situation, {Question::buildings_drawn});
    return it_does_not(Words::tell("No building of the map lies within 100 ft (30 m) of where this system may reach."));
}

Ruling well(const RuleCase& situation) {
    const Ternary toxicant = situation.sets_a_toxicant();
    if (toxicant == Ternary(false)) return not_concerned(situation);
    const auto other_water = situation.answer(situation.conditions.water_near, Question::water_near);
    if (const auto* reason = likeliest(situation, KeepClearKind::well))
        return toxicant ? near_ruling(situation, *reason) : not_known(situation, {Question::method});
    if (other_water == Ternary(false))
        return it_does_not(Words::tell(
            "No well of the map lies within 100 ft (30 m) of where this system may reach, and no other water was told of."));
    if (!other_water) return not_known(situation, {Question::water_near});
    if (!toxicant) return not_known(situation, {Question::method});
    return it_holds(Words::tell("A well, spring, pond or ditch was told of that is not on the map."));
}

Ruling play_area(const RuleCase& situation) {
    if (const auto* reason = likeliest(situation, KeepClearKind::play_area)) return near_ruling(situation, *reason);
    if (!come_here(situation.conditions, Question::children, situation.now))
        return not_known(situation, {Question::children});
    return it_does_not(Words::tell("No play area of the map lies within 100 ft (30 m) of where this system may reach."));
}

// The nearest area of the ladder, of one kind where it is given; `at_least` above 0 leaves out those it stands in.
const KeepClearArea* area_near_row(const RuleCase& situation, Metres most, std::optional<KeepClearKind> kind, bool inside) {
    for (const KeepClearArea& area : situation.survey.ground.keep_clear) {
        if (kind && area.kind != *kind) continue;
        const Metres apart = distance_of_row(situation.site, area.area);
        if ((apart <= Metres::of(0.0)) == inside && apart <= most) return &area;
    }
    return nullptr;
}

Ruling inside_keep_clear(const RuleCase& situation) {
    if (const auto* area = area_near_row(situation, Metres::of(0.0), {}, true))
        return it_holds(Words::tell("The probe row reaches into {1}.", {name_of(*area)}));
    return it_does_not(Words::tell("The probe row reaches into no area that is to be kept clear."));
}

Ruling near_keep_clear(const RuleCase& situation) {
    if (const auto* area = area_near_row(situation, near_a_probe, {}, false))
        return it_holds(Words::tell("The edge of {1} lies within 16 ft (5 m) of the probe row.", {name_of(*area)}));
    return it_does_not(Words::tell("No edge of such an area lies within 16 ft (5 m) of the probe row."));
}

Ruling utility(const RuleCase& situation) {
    const auto* line = area_near_row(situation, near_a_probe, KeepClearKind::utility, false);
    if (line == nullptr) line = area_near_row(situation, near_a_probe, KeepClearKind::utility, true);
    if (line == nullptr)
        return it_does_not(Words::tell("No buried line of the map lies within 16 ft (5 m) of the probe row."));
    const auto call = situation.answer(situation.conditions.utilities, Question::utilities);
    if (!call) return not_known(situation, {Question::utilities});
    if (*call == UtilitiesCall::marked) return it_does_not(Words::tell("The lines were marked out."));
    return it_holds(
        Words::tell("{1} lies within 16 ft (5 m) of the probe row, and has not been marked out.", {name_of(*line)}));
}

Ruling noted(const RuleCase& situation, MentionCategory category) {
    for (const std::size_t i : situation.noted) {
        const Mound& mound = situation.survey.mounds[i];
        if (!counts_for(mound, i, situation.plan, situation.site)) continue;
        for (const NoteMention& mention : mound.mentions)
            if (mention.category == category)
                return it_holds(Words::tell("The note of {1} says: {2}.", {mound.name, mention.words}));
    }
    return it_does_not(Words::tell("No note of the walk near this set speaks of it."));
}

Ruling noted_people(const RuleCase& situation) { return noted(situation, MentionCategory::people); }
Ruling noted_pets(const RuleCase& situation) { return noted(situation, MentionCategory::pets); }
Ruling noted_stock(const RuleCase& situation) { return noted(situation, MentionCategory::stock); }
Ruling noted_wildlife(const RuleCase& situation) { return noted(situation, MentionCategory::wildlife); }

}  // namespace

const std::vector<CautionRule>& rules_of_the_map() {
    static const std::vector<CautionRule> rules{{"building", building},         {"inside-keep-clear", inside_keep_clear},
                                                {"utility", utility},           {"well", well},
                                                {"play-area", play_area},       {"near-keep-clear", near_keep_clear},
                                                {"noted-people", noted_people}, {"noted-pets", noted_pets},
                                                {"noted-stock", noted_stock},   {"noted-wildlife", noted_wildlife}};
    return rules;
}

}  // namespace plugside
