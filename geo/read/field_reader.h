// Files in, one survey out: walks (GPX) and ground (GeoPackage, GeoJSON), or a plan handed out before (GeoPackage).
//
// Kind of file: judged by content, not by name. GPX is read with an XML parser of its own; vector layers through GDAL with
//          only the drivers in use registered and an allowed list at every open; nothing is ever fetched from a network, and
//          names that start with /vsi or hold :// or < are refused.
// Layers:  field_boundaries, barriers, keep_clear_areas (with or without the rest of a handed-out plan). A plan handed out
//          before also gives back its walks, mounds and the decisions on its sets.
// Plane:   centred on the marks' box (else the tracks', else the ground's). Marks and ground more than 50 km from the middle
//          of the field, or within a degree of a pole, refuse the files; such stretches of track are left out, with a finding.
// Title:   the first file's own, else the first file's name without its ending.
// Order:   walks get ids "walk 1", "walk 2" in the order given; a mark name used twice gets " (2)", with a finding.
// Errors:  the first refusal, with file, line or feature, found, expected; nothing partial is returned.
// Limits:  files over 512 MiB (GeoJSON 64 MiB), more than 2,000,000 marks or 20,000,000 track points are refused.
// Cost:    linear; progress and stop are honoured.
#pragma once

#include <filesystem>
#include <tl/expected.hpp>
#include <vector>

#include "core/plan/progress.h"
#include "core/survey/refusal.h"
#include "geo/read/field_survey.h"

namespace plugside {

[[nodiscard]] tl::expected<FieldSurvey, Refusal> read_field(const std::vector<std::filesystem::path>& files,
                                                            const Progress& progress = {});

}  // namespace plugside
