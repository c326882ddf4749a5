// Ground, and plans handed out before, from the layers of a GeoPackage or GeoJSON file.
//
// Ground:   field_boundaries (polygons), barriers (lines; name), keep_clear_areas (polygons; name, reason, kind). A feature
//           of these without a shape, or with one of another kind, refuses the file: a keep-clear area is never lost in
//           silence.
// Plan:     mounds, walk_tracks, set_points (decisions), set_decisions, finding_answers, note_rules, findings (of coordinates),
//           survey_summary give the survey back. What was computed (systems, runs, probes, unwalked areas) is computed anew. Where set_points and set_decisions tell two
//           things of one site, set_points counts: it is the layer that a person sees and edits.
// A file without any of these names is a farm's own: gis_layers.h reads it, by a guess of what each layer is.
// Beside ours, other layers are listed as one finding.
// Errors:   a Refusal with layer and feature. Cost: linear.
#pragma once

#include <filesystem>
#include <tl/expected.hpp>

#include "core/plan/progress.h"
#include "core/survey/refusal.h"
#include "geo/read/geographic_survey.h"
#include "geo/read/gis_layers.h"
#include "geo/read/input_file.h"
#include "geo/read/layer_rows.h"

namespace plugside {

// Whether a file of that kind holds layers.
[[nodiscard]] bool is_layer_file(FileKind kind);
// Whether one of them is ours by its name.
[[nodiscard]] bool has_our_layers(const std::vector<ReadLayer>& layers);

[[nodiscard]] tl::expected<GeographicFile, Refusal> read_vector_layers(const std::filesystem::path& file, FileKind kind,
                                                                       const std::vector<LayerGuess>& guesses = {},
                                                                       const Progress& progress = {});

}  // namespace plugside
