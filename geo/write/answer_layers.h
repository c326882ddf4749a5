// The layers of what looked wrong in the walks and what a person said to it: findings, finding_answers, note_rules.
//
// findings:        a point each where the finding is; finding_id, kind, marks (a JSON list of names, json_lists.h), found, why,
//                  proposed, probability that the proposal is right, answer ("accepted", "refused" or null). For a person to
//                  look at; read back are only those of coordinates (coordinate_faults.h), which nothing but the file that
//                  was first read can show. All others are judged anew.
// finding_answers: the answers and a person's own mends in the order given: finding_id, answer, mend, marks (JSON list),
//                  to_places (JSON list of longitude and latitude), fan_bearing, turn_degrees, sign, freshness, because,
//                  position_sd_m. With what the layer `mounds` has of recorded places they give back every answer.
// note_rules:      corrections of how notes are read, in the order made: walk_id (null: every walk), words, means, mark (null: every
//                  mark).
// known_facts:     what a person said of systems (Survey::known), in the order said: kind, marks (JSON list), line (JSON list of
//                  longitude and latitude), log_strength, said_by, said_at (seconds since 1970, UTC).
// Cost: linear.
#pragma once

#include <vector>

#include "core/mending/answered_findings.h"
#include "core/survey/survey.h"
#include "geo/frame/local_frame.h"
#include "geo/write/layer_content.h"

namespace plugside {

[[nodiscard]] LayerContent finding_layer(const std::vector<AnsweredFinding>& findings, const LocalFrame& frame);
[[nodiscard]] LayerContent answer_layer(const Survey& survey, const LocalFrame& frame);
[[nodiscard]] LayerContent fact_layer(const Survey& survey, const LocalFrame& frame);
[[nodiscard]] LayerContent note_rule_layer(const Survey& survey);

}  // namespace plugside
