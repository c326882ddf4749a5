// Layers and rows (layer_content.h) as layers and features of the vector library, in WGS 84 longitude and latitude.
//
// Options: "KEY=VALUE", those of the library's driver.
// Blanks:  a value that is nothing is null, or not there at all (in formats that tell the two apart, as GeoJSON).
// The 180th meridian: `kept` writes shapes as they are; `cut` parts lines and areas that cross it, so that no side of them runs
//          round the earth, and gives points on it the longitude -180 (longitudes of points are in [-180, 180)).
// Rows:    `write_rows` counts them for the progress and heeds a stop between two.
// Data set: `written_by` creates one at `file`, lets `fill` write into it and closes it; true when all of it went well. The library
//          was prepared, and a LibraryMessages lives.
// Errors:  null or false; the library's messages (LibraryMessages) say why.
// Cost:    linear in vertices.
#pragma once

#include <filesystem>
#include <functional>
#include <string>
#include <vector>

#include "core/plan/progress.h"
#include "geo/write/layer_content.h"

class GDALDataset;
class OGRLayer;

namespace plugside {

enum class Blanks { as_nulls, left_out };
enum class AtThe180th { kept, cut };
enum class ShapesOfLayer { of_its_kind, any };

[[nodiscard]] OGRLayer* create_layer(GDALDataset& data, const LayerContent& content, const std::vector<std::string>& options,
                                     ShapesOfLayer shapes = ShapesOfLayer::of_its_kind);

// The shape as KML 2.2 has it, cut at the 180th meridian; "" for none.
[[nodiscard]] std::string kml_of(const Shape& shape);

class RowCount {
public:
    RowCount(const std::vector<LayerContent>& layers, const Progress& progress);
    // False on a stop.
    [[nodiscard]] bool next();

private:
    const Progress& progress_;
    std::size_t rows_ = 0;
    std::size_t written_ = 0;
};

[[nodiscard]] bool write_rows(OGRLayer& layer, const LayerContent& content, RowCount& count, Blanks blanks,
                              AtThe180th meridian = AtThe180th::kept);
[[nodiscard]] bool written_by(const char* driver, const std::filesystem::path& file, const std::vector<std::string>& options,
                              const std::function<bool(GDALDataset&)>& fill);

}  // namespace plugside
