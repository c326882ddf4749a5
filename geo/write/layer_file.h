// Writes layers as a GeoPackage 1.3 in WGS 84 longitude and latitude.
//
// Order:   all layers exist in the order given, also empty ones; rows keep their order; spatial indexes come last.
// Same in, same out: the file's own time stamps are `stamp`, so that equal layers give equal bytes.
// Safety:  see safe_file.h; stop leaves no file.
// Errors:  a Refusal that names the file and the library's reason. No exception leaves.
// Cost:    linear in features and vertices; one transaction.
#pragma once

#include <filesystem>
#include <tl/expected.hpp>
#include <vector>

#include "core/plan/progress.h"
#include "core/survey/refusal.h"
#include "geo/write/layer_content.h"

namespace plugside {

[[nodiscard]] tl::expected<void, Refusal> write_layer_file(const std::filesystem::path& file,
                                                           const std::vector<LayerContent>& layers, UtcTime stamp,
                                                           const Progress& progress = {});

}  // namespace plugside
