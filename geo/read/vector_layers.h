// Ground, and plans handed out before, from the layers of a GeoPackage or GeoJSON file.
//
// Ground:   field_boundaries (polygons), barriers (lines; name), keep_clear_areas (polygons; name, reason, kind). A feature
//           of these without a shape, or with one of another kind, refuses the file: a keep-clear area is never lost in
//           silence.
// Plan:     mounds, walk_tracks, set_points (decisions), set_decisions, survey_summary give the survey back. What was
//           computed (systems, runs, probes, unwalked areas) is computed anew. Where set_points and set_decisions tell two
//           things of one site, set_points counts: it is the layer that a person sees and edits.
// GeoJSON without our layer names: polygons are the boundary and lines are barriers, with a finding that says so.
// Other layers are listed as one finding.
// Errors:   a Refusal with layer and feature. Cost: linear.
#pragma once

#include <filesystem>
#include <tl/expected.hpp>

#include "core/plan/progress.h"
#include "core/survey/refusal.h"
#include "geo/read/geographic_survey.h"
#include "geo/read/input_file.h"

namespace plugside {

[[nodiscard]] tl::expected<GeographicFile, Refusal> read_vector_layers(const std::filesystem::path& file, FileKind kind,
                                                                       const Progress& progress = {});

}  // namespace plugside
