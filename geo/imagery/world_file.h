// The text files that may lie beside a picture and say where it is: a world file and a definition of its reference system.
//
// World file: six numbers, one a line: east a column, north a column, east a row, north a row, then east and north of the
//             middle of the first pixel. Found beside the picture under the usual endings (.jgw, .jpgw, .pgw, .tfw, .j2w,
//             .wld and so on, small or capital letters).
// Definition: `.prj`, in the well-known text of a reference system; returned as text.
// Errors:     a refusal with file and line for a text that is no world file: not six numbers, not finite, a picture squeezed
//             into a line. A side file over 64 KiB or that is no plain file is refused as well.
// Source:     common practice; there is no standard of world files.
#pragma once

#include <array>
#include <filesystem>
#include <optional>
#include <string>
#include <tl/expected.hpp>

#include "core/survey/refusal.h"

namespace plugside {

// As the raster library orders them: east of the corner, east a column, east a row, north of the corner, north a column,
// north a row; the corner is the first pixel's outer one.
using GeoTransform = std::array<double, 6>;

// Nothing where there is none.
[[nodiscard]] tl::expected<std::optional<GeoTransform>, Refusal> world_file_of(const std::filesystem::path& picture);
[[nodiscard]] bool has_world_file(const std::filesystem::path& picture);
[[nodiscard]] tl::expected<std::string, Refusal> definition_beside(const std::filesystem::path& picture);

// Finite and not squeezed into a line.
[[nodiscard]] bool is_usable(const GeoTransform& transform);

}  // namespace plugside
