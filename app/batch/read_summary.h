// What was read and what looks wrong in it, in some lines for a terminal: walks and ground, marks by kind, notes with words that
// were not understood, findings by kind with the first of each in words.
//
// Cost: linear; every note is read once more.
#pragma once

#include <string>
#include <vector>

#include "core/mending/answered_findings.h"
#include "core/units/display.h"
#include "geo/read/field_survey.h"

namespace plugside {

// Findings: `most_a_kind` of each kind are told in words.
[[nodiscard]] std::string read_summary(const FieldSurvey& field, const std::vector<AnsweredFinding>& findings,
                                       std::size_t most_a_kind, LengthUnits units);

}  // namespace plugside
