// A picture of a field as a GeoTIFF with its position: tiled, packed as JPEG within, with reduced copies.
//
// System:  the field's own plane, a transverse Mercator projection on WGS 84, written out in full in the file.
// Size:    some tenths of a byte a pixel at the default quality.
// Safety, errors: as safe_file.h. Cost: O(pixels).
#pragma once

#include <filesystem>
#include <tl/expected.hpp>

#include "core/simulation/field_picture.h"
#include "core/survey/refusal.h"
#include "geo/frame/local_frame.h"

namespace plugside {

// `quality` 1..100 as JPEG has it.
[[nodiscard]] tl::expected<void, Refusal> write_picture(const FieldPicture& picture, const LocalFrame& frame,
                                                        const std::filesystem::path& file, int quality = 78);

}  // namespace plugside
