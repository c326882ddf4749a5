#include "core/survey/survey.h"

#include <algorithm>

#include "core/words/words.h"

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
        case SignKind::mole: return Words::later("a mole's sign");
        case SignKind::ground_squirrel: return Words::later("a ground squirrel's sign");
        case SignKind::vole: return Words::later("a vole's sign");
        case SignKind::other: return Words::later("marked as something other than a gopher's mound");
    }
    const bool told_otherwise = std::any_of(survey.known.begin(), survey.known.end(), [&](const KnownFact& fact) {
        return fact.kind == FactKind::not_a_gopher && !fact.marks.empty() && fact.marks.front() == mound.name;
    });
    if (told_otherwise) return Words::later("told not to be a gopher's");
    if (!survey.ground.boundary.empty() && !contains(survey.ground.boundary, mound.plug)) return outside_the_field;
    return std::nullopt;
}

std::string reason_shown(const std::string& reason) {
    const std::string same = same_mound_as("");
    if (reason.size() > same.size() && reason.compare(0, same.size(), same) == 0)
        return Words::tell("the same mound as {1}", {reason.substr(same.size())});
    return Words::shown(reason);
}

}  // namespace plugside
