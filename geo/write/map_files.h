// Layers as one file that maps and web pages show: KML 2.2 (OGC 07-147r2) or GeoJSON (RFC 7946), in WGS 84 longitude and latitude.
//
// KML:     a folder a layer; a feature's name is its name, mark, letter or marks, its description the instruction; all other
//          columns stand in its extended data.
// GeoJSON: one collection; a feature's property `layer` tells the layer, the others are its columns, without those that say nothing.
//          Outer rings run counterclockwise, nine decimals (0.1 mm).
// Both:    what crosses the 180th meridian is cut there. Precondition: plain values (shown_layers.h), one type a name.
// Safety:  see safe_file.h; a stop leaves no file.
// Same in, same out.
// Errors:  a Refusal that names the file and the library's reason. No exception leaves.
// Cost:    linear in features and vertices; the whole file is held in memory before it is written, in GeoJSON all rows twice.
#pragma once

#include <filesystem>
#include <string>
#include <tl/expected.hpp>
#include <vector>

#include "core/plan/progress.h"
#include "core/survey/refusal.h"
#include "geo/write/layer_content.h"

namespace plugside {

[[nodiscard]] tl::expected<void, Refusal> write_kml(const std::vector<LayerContent>& layers, const std::string& title,
                                                    const std::filesystem::path& file, const Progress& progress = {});
[[nodiscard]] tl::expected<void, Refusal> write_geojson(const std::vector<LayerContent>& layers, const std::string& title,
                                                        const std::filesystem::path& file, const Progress& progress = {});

}  // namespace plugside
