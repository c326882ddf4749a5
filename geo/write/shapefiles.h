// Layers as Shapefiles (ESRI white paper J-7855, 1998), one a layer, and a legend that says what the short names mean.
//
// Files:   of "plan.shp" and a layer `mounds`: plan_mounds.shp, .shx, .dbf, .prj (WGS 84) and .cpg (UTF-8); plan_legend.txt once.
// Names:   a column's name has ten bytes at most. Longer ones have a short name of ours (`short_name`), never the start of the
//          long one: starts collide ("take_off_sd_along_m" and "take_off_sd_across_m").
// Texts:   254 bytes at most; longer ones are cut between two characters and counted.
// Blanks:  a text that is nothing cannot be told from an empty one.
// Safety:  all files or none (safe_files.h); a stop leaves none. Same in, same out: the tables' own dates are that of `stamp`.
// Precondition: plain values (shown_layers.h), every layer has shapes.
// Errors:  a Refusal that names the file and the library's reason.
// Cost:    linear in features and vertices.
#pragma once

#include <filesystem>
#include <string>
#include <string_view>
#include <tl/expected.hpp>
#include <vector>

#include "core/plan/progress.h"
#include "core/survey/refusal.h"
#include "geo/write/layer_content.h"

namespace plugside {

// The name itself when it has ten bytes or fewer; null for a longer one without a short name.
[[nodiscard]] const char* short_name(const char* column);

struct ShapefilesWritten {
    std::vector<std::filesystem::path> files;  // sorted
    std::size_t texts_cut = 0;
};

[[nodiscard]] tl::expected<ShapefilesWritten, Refusal> write_shapefiles(const std::vector<LayerContent>& layers, UtcTime stamp,
                                                                        const std::filesystem::path& file,
                                                                        const Progress& progress = {});

}  // namespace plugside
