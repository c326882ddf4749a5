// A plan as a GeoPackage 1.3 for a farm GIS: every layer and column of the layer table in README.md.
//
// Besides:  set_decisions (attributes: probe_kind, from_mound, to_mound, decision, moved_along_m, moved_across_m) holds every
//          decision of the survey, also on sites that no plan proposes any more, so that read_field gives all of it back.
//          finding_answers does the same for what was said to findings (answer_layers.h); findings are judged here, so that
//          they fit the survey.
// Same in, same out: equal surveys and plans give equal bytes; the file's time stamps are the survey's latest time.
// Precondition: the plan was made from this survey (same revision, same mounds).
// Coordinates: WGS 84, longitude and latitude; lengths in metres, areas in square metres, bearings in degrees from true
//          north, probabilities 0..1, times UTC. Only the instruction's text follows `units`.
// Safety:  written beside its final name, synced, then renamed over it: a failure or a stop leaves no half file and leaves
//          an earlier file as it was.
// Errors:  a refusal that names the file and the reason.
// Cost:    that of answered_findings, then linear in features; one transaction a file, the spatial index last.
#pragma once

#include <filesystem>
#include <tl/expected.hpp>

#include "core/plan/plan.h"
#include "core/plan/progress.h"
#include "core/survey/refusal.h"
#include "core/units/display.h"
#include "geo/read/field_survey.h"
#include "geo/write/work_layer.h"

namespace plugside {

[[nodiscard]] tl::expected<void, Refusal> write_geopackage(const FieldSurvey& field, const Plan& plan,
                                                           const std::filesystem::path& file, LengthUnits units,
                                                           const Progress& progress = {},
    PrivateRows private_rows = PrivateRows::left_out);

}  // namespace plugside
