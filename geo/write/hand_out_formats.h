// A plan in the formats that other programs and devices read, each with what it cannot carry.
//
// geopackage:    everything, also for reading back (geopackage_layers.h). The only one that gives decisions back.
// gpx_waypoints, gpx_route: the sets that are not dropped, in walking order (waypoints.h).
// kml, geojson:  the layers that have shapes (shown_layers.h) in one file (map_files.h).
// shapefile:     the same, a Shapefile a layer and a legend (shapefiles.h): "plan.shp" names plan_set_points.shp and so on.
// csv:           set_points, probe_points, mounds, and how the work is done: plan_set_points.csv and so on (csv_files.h).
//
// Not carried: plain sentences in the language at hand, for a person who is about to hand out: what a format itself cannot carry
//          (`limits_of`), then what is true of all, then what depends on the plan (texts that were cut).
// Files:   `files_of` names all that a hand-out writes, before it is made; the name given is the only one in most formats.
// Private: names, licence numbers, reasons and notes are left out unless asked for. (The GeoPackage keeps notes of marks: they are the
//          marks.)
// Names:   `format_name` is a format's stable name ("geopackage", "gpx-waypoints", "gpx-route", "kml", "geojson", "shapefile", "csv").
//          `format_of_ending` knows .gpkg, .gpx (waypoints), .kml, .geojson, .json, .shp, .csv, in either case.
// Precondition: the plan was made from this survey.
// Safety:  each hand-out whole or not at all: written beside the final names, synced, renamed; an earlier one stays as it was on a
//          failure or a stop.
// Same in, same out.
// Errors:  a refusal that names the file and the reason.
// Cost:    linear in rows; the GeoPackage's that of judging the findings.
#pragma once

#include <array>
#include <filesystem>
#include <optional>
#include <string>
#include <tl/expected.hpp>
#include <vector>

#include "core/plan/plan.h"
#include "core/plan/progress.h"
#include "core/survey/refusal.h"
#include "core/units/display.h"
#include "geo/read/field_survey.h"
#include "geo/write/work_layer.h"

namespace plugside {

enum class HandOutFormat { geopackage, gpx_waypoints, gpx_route, kml, geojson, shapefile, csv };
inline constexpr std::array<HandOutFormat, 7> all_hand_out_formats{
    HandOutFormat::geopackage, HandOutFormat::gpx_waypoints, HandOutFormat::gpx_route, HandOutFormat::kml,
    HandOutFormat::geojson,    HandOutFormat::shapefile,     HandOutFormat::csv};

[[nodiscard]] const char* format_name(HandOutFormat format);
[[nodiscard]] const char* ending_of(HandOutFormat format);  // ".gpkg"
[[nodiscard]] std::optional<HandOutFormat> format_of_ending(const std::filesystem::path& file);

[[nodiscard]] std::vector<std::filesystem::path> files_of(HandOutFormat format, const std::filesystem::path& file);

// Before anything is written: of the one format, of all whatever their number, and both of one.
[[nodiscard]] std::vector<std::string> limits_of(HandOutFormat format);
[[nodiscard]] std::vector<std::string> true_of_all(PrivateRows private_rows);
[[nodiscard]] std::vector<std::string> not_carried_by(HandOutFormat format, PrivateRows private_rows);

struct HandedOut {
    std::vector<std::filesystem::path> files;
    std::vector<std::string> not_carried;
    std::vector<std::string> of_this_plan;  // the last of them: what this plan had that could not be carried
};

[[nodiscard]] tl::expected<HandedOut, Refusal> write_as(HandOutFormat format, const FieldSurvey& field, const Plan& plan,
                                                        const std::filesystem::path& file, LengthUnits units,
                                                        PrivateRows private_rows = PrivateRows::left_out,
                                                        const Progress& progress = {});

}  // namespace plugside
