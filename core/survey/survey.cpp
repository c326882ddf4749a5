#include "core/survey/survey.h"

#include <algorithm>

namespace plugside {

std::optional<SetDecision> decision_on(const Survey& survey, const ProbeKey& probe) {
    const auto found = std::find_if(survey.decisions.begin(), survey.decisions.end(),
                                    [&](const SetDecision& decision) { return decision.probe == probe; });
    if (found == survey.decisions.end()) return std::nullopt;
    return *found;
}

void decide(Survey& survey, SetDecision decision) {
    std::erase_if(survey.decisions, [&](const SetDecision& earlier) { return earlier.probe == decision.probe; });
    if (decision.choice != SetChoice::proposed) survey.decisions.push_back(std::move(decision));
    ++survey.revision;
}

std::optional<std::string> why_not_used(const Survey& survey, const Mound& mound) {
    if (mound.set_aside_because) return mound.set_aside_because;
    switch (mound.kind) {
        case SignKind::gopher_mound:
        case SignKind::surface_plug: break;
        case SignKind::mole: return "a mole's sign";
        case SignKind::ground_squirrel: return "a ground squirrel's sign";
        case SignKind::vole: return "a vole's sign";
        case SignKind::other: return "marked as something other than a gopher's mound";
    }
    const bool told_otherwise = std::any_of(survey.known.begin(), survey.known.end(), [&](const KnownFact& fact) {
        return fact.kind == FactKind::not_a_gopher && !fact.marks.empty() && fact.marks.front() == mound.name;
    });
    if (told_otherwise) return "told not to be a gopher's";
    if (!survey.ground.boundary.empty() && !contains(survey.ground.boundary, mound.plug)) return outside_the_field;
    return std::nullopt;
}

}  // namespace plugside
