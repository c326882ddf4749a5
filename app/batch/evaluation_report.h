// The report of an evaluation: one HTML page that holds all it needs, to be read in any browser or printed.
//
// Guarantee: no script, no link, nothing fetched; opens with what was tested and which kinds were left out of tuning; the
// same
//            results give the same page.
// Degenerate input: no field: a page that says that nothing was tested.
// Cost:     O(claims log claims).
#pragma once

#include <string>
#include <vector>

#include "app/batch/evaluation.h"

namespace plugside {

[[nodiscard]] std::string report_of(const std::vector<FieldResult>& results);

}  // namespace plugside
