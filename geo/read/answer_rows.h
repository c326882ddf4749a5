// Rows of a handed-out plan's layers back into what a person said to findings: recorded marks, answers, corrections of how
// notes are read, findings of coordinates. For geo/read/plan_rows.cpp and vector_layers.cpp alone; layers and columns are those of
// geo/write/survey_layers.h and answer_layers.h.
//
// Lenient: nothing here refuses the file. What cannot be told is a ReadFinding, and nothing of the marks is lost by it:
//   record:  one of which a part is missing or is none (a place off the earth, an unknown kind, a number that is not finite)
//            is taken as the mark stands in its row.
//   answer:  an accepted one whose mend cannot be told is not used, so that its finding is open again; a refused one stays
//            refused. Of two answers to one finding the later counts.
//   rule:    one without words matches nothing and is not used.
//   finding: only those of coordinates are taken; one whose marks cannot be told is not used.
// Files of earlier versions have none of these layers and columns: then there is nothing.
#pragma once

#include <optional>
#include <vector>

#include "geo/read/finding_list.h"
#include "geo/read/geographic_survey.h"
#include "geo/read/layer_rows.h"

namespace plugside {

// `mark`: the same row, read already but for its record.
[[nodiscard]] std::optional<GeographicRecord> record_of(const ReadLayer& mounds, const ReadRow& row,
                                                        const GeographicMark& mark, FindingList& findings);
[[nodiscard]] GeographicRecord record_as_it_stands(const GeographicMark& mark);
[[nodiscard]] std::vector<GeographicAnswer> answers_from(const ReadLayer& finding_answers, FindingList& findings);
[[nodiscard]] std::vector<GeographicRule> rules_from(const ReadLayer& note_rules, FindingList& findings);
// fact: what a person said of systems; one that is not whole (what_is_missing) is not used.
[[nodiscard]] std::vector<GeographicFact> facts_from(const ReadLayer& known_facts, FindingList& findings);
[[nodiscard]] std::vector<GeographicFinding> findings_of_reading(const ReadLayer& layer, FindingList& findings);

}  // namespace plugside
