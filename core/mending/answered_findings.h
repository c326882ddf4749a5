// Every finding about a survey with the answer that a person gave it: for a list that leaves nothing out.
//
// What:    the findings of reading as they were told, then what findings_of finds now; then what was accepted, which
//          findings_of does not tell any more, in the words in which it is found where no answer holds.
// Not in it: a person's own mends; an accepted finding that is found only where other answers hold.
// Order:   of reading first; open and refused ones as findings_of has them; accepted ones last.
// Errors:  nothing when stopped.
// Cost:    as findings_of, twice where anything was accepted.
#pragma once

#include <optional>
#include <vector>

#include "core/mending/findings.h"

namespace plugside {

struct AnsweredFinding {
    Finding finding;
    std::optional<Answer> answer;  // nothing: open
    friend bool operator==(const AnsweredFinding&, const AnsweredFinding&) = default;
};

[[nodiscard]] std::optional<std::vector<AnsweredFinding>> answered_findings(const Survey& survey,
                                                                            const std::vector<Finding>& of_reading,
                                                                            const Progress& progress = {});

}  // namespace plugside
