// Files in, one survey out: walks (GPX, tables, photographs), ground and layers (GeoPackage, GeoJSON, KML, Shapefile,
// FlatGeobuf), or a plan handed out before (GeoPackage).
//
// Choices: how a table's columns and a farm's layers are read, where a person changed the guess (table.h, gis_layers.h);
// files
//          without a choice are read by the guess. A refusal with Code::needs_reference_system is answered by a choice.
// Faults:  coordinates that were written down wrong are found before the plane is chosen (coordinate_faults.h); such marks
//          are set aside where the mend would have them, and each fault is a Finding of FieldSurvey::of_reading.
// Again:   `add_to_field` adds what is new in the files to a field that is open: a mark of the same walk's source, name,
// time
//          and place to a centimetre is there already, so is the same stretch of track and the same piece of ground. The
//          field's plane, decisions, answers and known facts stay; what the files add to decisions never replaces one. Pure:
//          the field given is not changed. Where nothing is new, nothing but the findings differs.
//
// Kind of file: judged by content, not by name. GPX is read with an XML parser of its own; vector layers through GDAL with
//          only the drivers in use registered and an allowed list at every open; nothing is ever fetched from a network, and
//          names that start with /vsi or hold :// or < are refused.
// Layers:  field_boundaries, barriers, keep_clear_areas (with or without the rest of a handed-out plan). A plan handed out
//          before also gives back its walks, mounds and the decisions on its sets.
// Plane:   centred on the marks' box (else the tracks', else the ground's). Marks and ground more than 50 km from the middle
//          of the field, or within a degree of a pole, refuse the files; such stretches of track are left out, with a
//          finding.
// Title:   the first file's own, else the first file's name without its ending.
// Order:   walks get ids "walk 1", "walk 2" in the order given; a mark name used twice gets " (2)", with a finding.
// Errors:  the first refusal, with file, line or feature, found, expected; nothing partial is returned.
// Limits:  files over 512 MiB (GeoJSON 64 MiB), more than 2,000,000 marks or 20,000,000 track points are refused.
// Cost:    linear; progress and stop are honoured.
#pragma once

#include <filesystem>
#include <map>
#include <optional>
#include <tl/expected.hpp>
#include <vector>

#include "core/plan/progress.h"
#include "core/survey/refusal.h"
#include "geo/frame/local_frame.h"
#include "geo/read/field_survey.h"
#include "geo/read/gis_layers.h"
#include "geo/read/table.h"

namespace plugside {

struct ReadChoices {
    std::map<std::filesystem::path, TableGuess> tables;  // by the file as it was given
    std::map<std::filesystem::path, std::vector<LayerGuess>> layers;
    std::optional<LocalFrame> plane;  // of a field whose files are read anew: stays where all of them are in its reach
};

[[nodiscard]] tl::expected<FieldSurvey, Refusal> read_field(const std::vector<std::filesystem::path>& files,
                                                            const ReadChoices& choices, const Progress& progress = {});
[[nodiscard]] tl::expected<FieldSurvey, Refusal> read_field(const std::vector<std::filesystem::path>& files,
                                                            const Progress& progress = {});

[[nodiscard]] tl::expected<FieldSurvey, Refusal> add_to_field(const FieldSurvey& field,
                                                              const std::vector<std::filesystem::path>& files,
                                                              const ReadChoices& choices = {},
                                                              const Progress& progress = {});

}  // namespace plugside
