// The usual cautions, as rules with a stable id. They say what speaks against a plan or what must be in hand first; they
// never say that a method is allowed: the label, local rules and a licensed applicator decide.
//
// Texts stand in resources/cautions.en.tsv and cautions.es.tsv (id, weight, sentence, reason, source, tag) and are built into
// the library.
// `cautions_for` judges those that the map decides and adds those that hold at every set, whatever is put in the ground: the
// same with every method. What hangs on the method, the conditions and the label is judged by core/sets/caution_rules.h.
//
// Distances: a building, a well or a play area counts as near when any run, take-off or plug of the whole inferred system may
//             lie within 100 ft (30.48 m) of it: federal label text of phosphide burrow fumigants, for buildings; for the others
//             our assumption. "May": with a chance above 1 in 20, see system_reach.h. A utility, or the edge of any area,
//             counts as near a probe row within 4.9 m, a handheld's error under open sky (GPS.gov [memory]).
// Notes:      what the walker noted of people, pets, stock or wildlife counts for every set of that mark's system, and for
//             those within the same 100 ft of the mark: our assumption.
// Degenerate input: a keep-clear area without area is as far as its edges are; a plan without runs is judged by its plugs.
#pragma once

#include <string>
#include <vector>

#include "core/plan/plan.h"

namespace plugside {

struct Caution {
    std::string id;
    CautionWeight weight = CautionWeight::mind;
    std::string sentence;
    std::string reason;
    std::string source;
    std::string tag;  // "read", "second-hand", "memory", "practice", "ours"
};

// In the language at hand (core/words), or in "en" or "es": the same ids and weights in the same order.
[[nodiscard]] const std::vector<Caution>& all_cautions();
[[nodiscard]] const std::vector<Caution>& all_cautions(const std::string& language);

// Nothing when there is none of that id. In the language at hand.
[[nodiscard]] const Caution* find_caution(const std::string& id);

// Whether it is shown with every set, wherever that is.
[[nodiscard]] bool holds_at_every_set(const std::string& id);

// Ids of the cautions to show with a set at `probe` of `plan`, weightiest first, what the map decides before what always
// holds. `plan` was made from `survey`. O(runs + vertices of the system's runs x vertices of the keep-clear areas).
[[nodiscard]] std::vector<std::string> cautions_for(const Survey& survey, const Plan& plan, const ProbeSite& probe);

}  // namespace plugside
