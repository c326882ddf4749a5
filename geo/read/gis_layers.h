// Layers that are not ours by name, from a farm's own files (GeoPackage, GeoJSON, KML, Shapefile, FlatGeobuf): what each of
// them is and what its columns mean is guessed, the guess is a value that a person can change, and the file is read by it.
//
//     auto guesses = guess_layers(file);                        // one a layer
//     guesses->front().roles[2] = ColumnRole::fan_bearing;
//     guesses->front().reference_system = "EPSG:25830";         // where the layer says none
//     auto read = read_gis_layers(file, *guesses);
//
// Guess:    points are mounds; lines are walks where the layer's name says track, walk, route or the like, else barriers;
//           polygons are kept clear where the name says so (keep, clear, well, house, ...), else the field's boundary. A
//           mixed layer holds all three. Columns by their headings, as in tables. What was assumed is told in findings.
// Marks:    read by the rules of a handheld's waypoints (gpx_marks.h); a point of several is a mark each.
// Walks:    a line is a stretch of track without times; its layer is the walk's source ("farm.gpkg, tracks").
// System:   the layer's own is honoured; one without any refuses with Code::needs_reference_system until the guess says it.
// Errors:   a Refusal with layer and feature. Cost: linear.
#pragma once

#include <filesystem>
#include <string>
#include <tl/expected.hpp>
#include <vector>

#include "core/plan/progress.h"
#include "core/survey/refusal.h"
#include "geo/read/geographic_survey.h"
#include "geo/read/row_marks.h"

namespace plugside {

enum class PointUse { mounds, not_used };
enum class LineUse { walks, barriers, not_used };
enum class PolygonUse { boundary, keep_clear, not_used };

struct LayerGuess {
    std::string layer;
    PointUse points = PointUse::mounds;
    LineUse lines = LineUse::barriers;
    PolygonUse polygons = PolygonUse::boundary;
    std::vector<std::string> columns;  // as the layer names them
    std::vector<ColumnRole> roles;     // one a column
    TimeWriting times;
    bool has_reference_system = true;
    std::string reference_system;  // taken where the layer has none; empty: not known
    friend bool operator==(const LayerGuess&, const LayerGuess&) = default;
};

// The layers whose names are not ours; a file of ours gives none.
[[nodiscard]] tl::expected<std::vector<LayerGuess>, Refusal> guess_layers(const std::filesystem::path& file);

// A layer without a guess is read by the default one.
[[nodiscard]] tl::expected<GeographicFile, Refusal> read_gis_layers(const std::filesystem::path& file,
                                                                    const std::vector<LayerGuess>& guesses,
                                                                    const Progress& progress = {});

}  // namespace plugside
