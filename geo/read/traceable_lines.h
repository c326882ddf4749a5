// The lines and outlines of a vector file (GeoPackage, GeoJSON, KML, Shapefile, FlatGeobuf), to be followed while drawing: none of
// them becomes part of the field by itself.
//
// Which:   every line and every polygon of every layer that has shapes, on the field's plane; points are left out. A polygon is its
//          outer ring with its holes.
// name:    "layer, name" where a column is taken for a name, else the layer.
// Refused: as layer_rows.h refuses; besides a file of another kind, one without lines and outlines, and one whose shapes all lie
//          further than 50 km from the field.
// Cost:    linear.
#pragma once

#include <filesystem>
#include <string>
#include <tl/expected.hpp>
#include <vector>

#include "core/geometry/traced_line.h"
#include "core/plan/progress.h"
#include "core/survey/refusal.h"
#include "geo/frame/local_frame.h"

namespace plugside {

struct Traceable {
    std::string name;
    TracedLine line;
    std::vector<std::vector<LocalPoint>> holes;
    friend bool operator==(const Traceable&, const Traceable&) = default;
};

[[nodiscard]] tl::expected<std::vector<Traceable>, Refusal> read_traceable(const std::filesystem::path& file,
                                                                           const LocalFrame& frame,
                                                                           const Progress& progress = {});

}  // namespace plugside
