// The layers of a vector file as plain rows in WGS 84, whatever the layers' own reference system is.
//
// Which:   only layers that `wanted` names are read; the others come back without rows, so that they can be listed.
// Shapes:  collections and multi-shapes are taken apart; curves become lines; heights are dropped; the closing vertex of a
//          ring is dropped. A polygon that crosses itself is repaired, with a finding.
// System:  the layer's own; where it has none, the one that `assumed_system` names for it ("EPSG:25830").
// Refused: a layer with shapes and no reference system (Code::needs_reference_system), or one that cannot be turned into
//          longitude and latitude; a KML file with a document type; a Shapefile without its .shx; a place that is not finite
//          or not on the earth (a point whose latitude and longitude can only be exchanged is taken so, `exchanged`); a ring
//          of fewer than three vertices; whatever the library reports as failure.
// Safety:  only the driver of the file's kind is allowed at the open, the name is made absolute, the network is shut (see
//          vector_library.h); GeoJSON over 64 MiB is refused, as it is read into memory.
// Cost:    linear in features and vertices.
#pragma once

#include <cstdint>
#include <filesystem>
#include <functional>
#include <string>
#include <string_view>
#include <tl/expected.hpp>
#include <vector>

#include "core/plan/progress.h"
#include "core/survey/refusal.h"
#include "geo/frame/geographic_shapes.h"
#include "geo/read/finding_list.h"
#include "geo/read/input_file.h"
#include "geo/write/layer_content.h"

namespace plugside {

struct RowShape {
    std::vector<GeographicPoint> points;
    std::vector<GeographicLine> lines;
    std::vector<GeographicPolygon> polygons;
    [[nodiscard]] bool empty() const { return points.empty() && lines.empty() && polygons.empty(); }
};

struct ReadRow {
    std::string place;  // "layer barriers, feature 3"
    RowShape shape;
    std::vector<Value> values;
    bool exchanged = false;
};

struct ReadLayer {
    std::string name;
    bool has_reference_system = true;
    bool has_shapes = true;  // else a table beside the map
    std::vector<std::string> columns;
    std::vector<ReadRow> rows;

    // Null when there is no such column.
    [[nodiscard]] const Value& value(const ReadRow& row, std::string_view column) const;
};

// Name, columns and reference system of every layer, without rows.
[[nodiscard]] tl::expected<std::vector<ReadLayer>, Refusal> list_layers(const std::filesystem::path& file, FileKind kind);

// The reference system to take for a layer that names none; empty when nobody said.
using SystemOfLayer = std::function<std::string(const std::string& layer)>;

[[nodiscard]] tl::expected<std::vector<ReadLayer>, Refusal> read_layer_rows(
    const std::filesystem::path& file, FileKind kind, const std::function<bool(const std::string&)>& wanted,
    FindingList& findings, const Progress& progress, const SystemOfLayer& assumed_system = {});

}  // namespace plugside
