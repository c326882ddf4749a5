#include "geo/write/set_words.h"

#include <algorithm>

#include "core/probing/instruction.h"
#include "core/sets/cautions.h"
#include "core/words/words.h"

namespace plugside {

namespace {

std::string stops_of(const SetPoint& set) {
    std::string text;
    for (const std::string& id : set.cautions) {
        const Caution* caution = find_caution(id);
        if (caution != nullptr && caution->weight == CautionWeight::stop)
            text += " " + Words::tell("STOP: {1}", {caution->sentence});
    }
    return text;
}

}  // namespace

std::string set_name(const SetPoint& set, const Plan& plan) {
    std::string name = set.visit_order < 10 ? "S0" : "S";
    return name.append(std::to_string(set.visit_order))
        .append(" ")
        .append(plan.systems[plan.probes[set.probe].system].letter);
}

std::vector<const SetPoint*> sets_to_visit(const Plan& plan) {
    std::vector<const SetPoint*> sets;
    for (const SetPoint& set : plan.sets)
        if (set.choice != SetChoice::dropped) sets.push_back(&set);
    std::stable_sort(sets.begin(), sets.end(),
                     [](const SetPoint* a, const SetPoint* b) { return a->visit_order < b->visit_order; });
    return sets;
}

std::string set_words(const SetPoint& set, const Survey& survey, const Plan& plan, LengthUnits units) {
    return instruction(plan.probes[set.probe], survey, units) + stops_of(set);
}

std::string chance_words(const SetPoint& set, const Plan& plan) {
    return Words::tell("chance of a hit {1} in 100", {std::to_string(plan.probes[set.probe].hit.in_100())});
}

}  // namespace plugside
