// What a plan shows to other programs: the layers of a GeoPackage that have shapes, without what only this program reads back.
//
// Order:   set_points, probe_points, mounds, burrow_systems, main_runs, walk_tracks, field_boundaries, barriers, keep_clear_areas,
//          crossings, gates, untreated_areas, unwalked_areas; all exist, also empty ones.
// Columns: those of the README's layer table, and of a set, for programs that join no layers, also name (as on the handheld,
//          "S07 A"), hit_probability and instruction, with what stops it. Left out: what was recorded before a mend, why a mark
//          was set aside, the times of a track.
// Private: note and picture of a mark and the source of a walk are left out unless asked for.
// Times:   as texts in UTC, "2026-03-01T09:30:00Z": most of these formats have no type for them.
// Texts:   UTF-8 characters that XML may hold; others are dropped.
// Cost:    linear.
#pragma once

#include <vector>

#include "core/plan/plan.h"
#include "core/units/display.h"
#include "geo/read/field_survey.h"
#include "geo/write/layer_content.h"
#include "geo/write/work_layer.h"

namespace plugside {

[[nodiscard]] std::vector<LayerContent> shown_layers(const FieldSurvey& field, const Plan& plan, LengthUnits units,
                                                     PrivateRows private_rows);
// Names, values and times of any layer made fit to be shown as above.
[[nodiscard]] LayerContent with_plain_values(LayerContent layer);

}  // namespace plugside
