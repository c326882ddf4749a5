// The usual cautions, as rules with a stable id. They say what speaks against a plan or what must be in hand first; they
// never say that a method is allowed: the label, local rules and a licensed applicator decide.
//
// Texts stand in resources/cautions.en.tsv (id, weight, sentence, reason, source, tag) and are built into the library.
// `cautions_for` judges the rules that geometry decides and adds those that hold at every set of its method.
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

[[nodiscard]] const std::vector<Caution>& all_cautions();

// Nothing when there is none of that id.
[[nodiscard]] const Caution* find_caution(const std::string& id);

// Ids of the cautions to show with a set at `probe` of `plan`, weightiest first. O(keep-clear vertices + run vertices).
[[nodiscard]] std::vector<std::string> cautions_for(const Survey& survey, const Plan& plan, const ProbeSite& probe);

}  // namespace plugside
