// Layers as tables of comma-separated values (RFC 4180), one file a layer: of "plan.csv" and a layer `mounds`, plan_mounds.csv.
//
// Header:  the columns' names with their units in parentheses, "along (m)", "fan_bearing (deg_true)"; a layer of points
//          begins with longitude and latitude (deg, WGS 84, ten decimals), in [-180, 180).
// Cells:   numbers with a point, in the shortest form that reads back the same; nothing for no value; texts with a comma, a quote or
//          a line end are quoted. UTF-8 without a mark at its beginning; lines end with CR LF.
// Formulas: a text that begins with = + - @, a tab or a CR, which spreadsheets take for a formula, gets an apostrophe before it; so does one that
//          begins with an apostrophe, so that taking one leading apostrophe off every text gives back what it was. Numbers stay numbers:
//          a column of numbers holds no text. Source: OWASP, "CSV Injection" (the six characters and the apostrophe).
// Precondition: plain values (shown_layers.h); layers of points or of no shape.
// Safety:  all files or none (safe_files.h); a stop leaves none. Same in, same out.
// Errors:  a Refusal that names the file and the reason.
// Cost:    linear.
#pragma once

#include <filesystem>
#include <string>
#include <tl/expected.hpp>
#include <vector>

#include "core/plan/progress.h"
#include "core/survey/refusal.h"
#include "geo/write/layer_content.h"

namespace plugside {

// "along_m" -> "along (m)"; a name that tells no unit and needs none stays.
[[nodiscard]] std::string heading_of(const std::string& column);
[[nodiscard]] std::string csv_cell(const std::string& text);
// The text as it stands in a cell, before it is quoted.
[[nodiscard]] std::string never_a_formula(const std::string& text);

// The files, sorted.
[[nodiscard]] tl::expected<std::vector<std::filesystem::path>, Refusal> write_csv(const std::vector<LayerContent>& layers,
                                                                                  const std::filesystem::path& file,
                                                                                  const Progress& progress = {});

}  // namespace plugside
