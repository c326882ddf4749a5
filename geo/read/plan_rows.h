// Rows of a handed-out plan's layers back into a survey: mounds, walks, decisions. For geo/read/vector_layers.cpp alone; the
// layers and their columns are those of geo/write/survey_layers.h and plan_layers.h.
//
// Lenient where a person may have edited: a missing column counts as not given, an unknown word is a finding. Strict with
// numbers: a bearing outside 0..360, a position error that is not above 0 refuse the file.
#pragma once

#include <string>
#include <tl/expected.hpp>
#include <vector>

#include "core/survey/refusal.h"
#include "geo/read/finding_list.h"
#include "geo/read/geographic_survey.h"
#include "geo/read/layer_rows.h"

namespace plugside {

// Walks in the order of their first row; the names used in walk_id are kept beside them until marks are assigned.
struct NamedWalks {
    std::vector<GeographicWalk> walks;
    std::vector<std::string> ids;
};

[[nodiscard]] NamedWalks walks_from(const ReadLayer& walk_tracks, const std::string& file_name, FindingList& findings);
// Puts each mark into its walk; a walk that is not known, or not given, becomes a walk of its own.
[[nodiscard]] tl::expected<void, Refusal> add_marks(const ReadLayer& mounds, const std::string& file, NamedWalks& walks,
                                                    FindingList& findings);
[[nodiscard]] std::vector<SetDecision> decisions_from(const ReadLayer& set_decisions, const ReadLayer& set_points,
                                                      FindingList& findings);

[[nodiscard]] std::string text_of(const Value& value);
[[nodiscard]] std::optional<double> number_of(const Value& value);

}  // namespace plugside
