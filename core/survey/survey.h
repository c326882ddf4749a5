// Everything a person brought home and decided: the only thing that is edited. A plan is always computed from it.
//
// revision:  grows with every edit; a plan carries the revision it was made from, so that a stale one is known as such.
// walks, mounds: Mound::walk indexes walks. Mound names are unique.
// decisions: at most one a probe key.
// A Survey is a value: copying it is how background work gets its own.
#pragma once

#include <cstdint>
#include <optional>
#include <vector>

#include "core/survey/decision.h"
#include "core/survey/ground.h"
#include "core/survey/held_work.h"
#include "core/survey/known_fact.h"
#include "core/survey/mend.h"
#include "core/survey/mound.h"
#include "core/survey/note_rule.h"
#include "core/survey/walk.h"
#include "core/words/words.h"

namespace plugside {

struct Survey {
    std::uint64_t revision = 0;
    std::vector<Walk> walks;
    std::vector<Mound> mounds;
    Ground ground;
    std::vector<SetDecision> decisions;
    std::vector<KnownFact> known;      // what a person said of the systems, in the order said
    std::vector<MendAnswer> answers;   // to findings, and a person's own mends; at most one a finding; see put_right
    std::vector<NoteRule> note_rules;  // corrections of how notes are read, in the order made
    HeldWork work;                     // how the work is done; the plan does not depend on it
    friend bool operator==(const Survey&, const Survey&) = default;
};

// The decision on a probe site, or nothing. O(decisions).
[[nodiscard]] std::optional<SetDecision> decision_on(const Survey& survey, const ProbeKey& probe);

// Puts `decision` in place of an earlier one on the same site (SetChoice::proposed removes it) and raises the revision.
void decide(Survey& survey, SetDecision decision);

// The reason of why_not_used that follows from the ground alone and changes with it.
inline constexpr const char* outside_the_field = Words::later("outside the field boundary");

// Why a mound takes no part in the inference, or nothing when it does. In English, as files keep it; `reason_shown` is
// what a person reads: "a mole's sign", "outside the field boundary", ... O(boundary vertices).
[[nodiscard]] std::optional<std::string> why_not_used(const Survey& survey, const Mound& mound);
// A reason of why_not_used or of Mound::set_aside_because in the language at hand; one that a person wrote, as it is.
[[nodiscard]] std::string reason_shown(const std::string& reason);

}  // namespace plugside
