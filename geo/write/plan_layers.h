// The layers of what follows from a survey: burrow_systems, main_runs, probe_points, set_points, unwalked_areas, rounds,
// system_alternatives, survey_summary. The columns are those of the layer table; ids are index + 1, probabilities 0..1, lengths metres.
//
// main_runs.sd_m is the corridor's widest standard deviation along the run.
// probe_points.instruction is the only value that follows the user's units.
// system_alternatives.kind: "one animal" (system_id and other_system_id), "two animals" (system_id; mounds: the smaller part of the
// likeliest split) or "doubtful mound" (mounds: the one; system_id where it is put; other_system_id where it may well belong, which
// is what probability says; nothing where no other system is likely). probability_kept: that the mound belongs where it is put.
// rounds is there for the checks of the sets and is empty in a plan that has just been made.
// Cost: linear.
#pragma once

#include "core/plan/plan.h"
#include "core/units/display.h"
#include "geo/read/field_survey.h"
#include "geo/write/layer_content.h"

namespace plugside {

[[nodiscard]] LayerContent system_layer(const Plan& plan, const LocalFrame& frame);
[[nodiscard]] LayerContent run_layer(const Survey& survey, const Plan& plan, const LocalFrame& frame);
[[nodiscard]] LayerContent probe_layer(const Survey& survey, const Plan& plan, const LocalFrame& frame, LengthUnits units);
[[nodiscard]] LayerContent set_layer(const Plan& plan, const LocalFrame& frame);
[[nodiscard]] LayerContent alternative_layer(const Survey& survey, const Plan& plan);
// A row a part, with its area_m2: unwalked_areas, walked_areas.
[[nodiscard]] LayerContent area_layer(const char* name, const MultiPolygon& area, const LocalFrame& frame);
[[nodiscard]] LayerContent round_layer();
[[nodiscard]] LayerContent summary_layer(const FieldSurvey& field, const Plan& plan);

}  // namespace plugside
