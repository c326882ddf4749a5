#include "core/sets/set_choices.h"

#include <map>

namespace plugside {

std::vector<SetChoice> choices_of(const Survey& survey, const Plan& plan) {
    std::map<ProbeKey, SetChoice> decided;
    for (const SetDecision& decision : survey.decisions) decided[decision.probe] = decision.choice;
    std::vector<SetChoice> choices;
    choices.reserve(plan.sets.size());
    for (const SetPoint& set : plan.sets) {
        const auto found = decided.find(plan.probes[set.probe].key);
        choices.push_back(found == decided.end() ? SetChoice::proposed : found->second);
    }
    return choices;
}

void decide_all(Survey& survey, const std::vector<SetDecision>& decisions) {
    if (decisions.empty()) return;
    std::map<ProbeKey, const SetDecision*> wanted;
    for (const SetDecision& decision : decisions) wanted[decision.probe] = &decision;
    std::vector<SetDecision> kept;
    kept.reserve(survey.decisions.size() + decisions.size());
    for (SetDecision& before : survey.decisions)
        if (!wanted.contains(before.probe)) kept.push_back(std::move(before));
    for (const SetDecision& decision : decisions)
        if (wanted[decision.probe] == &decision && decision.choice != SetChoice::proposed) kept.push_back(decision);
    survey.decisions = std::move(kept);
    ++survey.revision;
}

}  // namespace plugside
