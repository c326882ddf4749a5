// A survey without a plan as a GeoPackage 1.3: what was brought home, what looks wrong in it, and what was not looked at.
//
// Layers:  mounds (without systems and take-offs), walk_tracks, field_boundaries, barriers, keep_clear_areas, set_decisions,
//          findings, finding_answers, note_rules, walked_areas, unwalked_areas (both empty where the walk has no track; the latter where there
//          is no boundary) and survey_summary (attributes: field_name, area_walked_m2, area_unwalked_m2, area_field_m2,
//          mounds_recorded, mounds_used, interval, and with _low and _high the ends of their intervals mounds_missed on ground
//          walked and mounds_unwalked elsewhere; survey_revision, plugside_version).
// Read back by read_field it is the survey again.
// Same in, same out; coordinates, safety, errors: as geopackage_layers.h. Cost: linear in features.
#pragma once

#include <filesystem>
#include <optional>
#include <tl/expected.hpp>
#include <vector>

#include "core/mending/answered_findings.h"
#include "core/survey/refusal.h"
#include "core/walking/coverage.h"
#include "core/walking/not_seen.h"
#include "geo/read/field_survey.h"
#include "geo/write/work_layer.h"

namespace plugside {

struct SurveyJudged {
    std::vector<AnsweredFinding> findings;
    std::optional<Coverage> coverage;  // nothing without a track
    std::optional<NotSeen> not_seen;
};

[[nodiscard]] tl::expected<void, Refusal> write_survey(const FieldSurvey& field, const SurveyJudged& judged,
                                                       const std::filesystem::path& file, const Progress& progress = {},
    PrivateRows private_rows = PrivateRows::left_out);

}  // namespace plugside
