// Reduced copies of pictures that have none of their own, kept in a folder of the program's (never beside the picture).
//
// What:    a tiled GeoTIFF of four bands of 8 bits, as the picture is shown (stretched, palette looked up), at a quarter of its
//          resolution, with copies at halves of that down to some hundred pixels. Of a PNG or JPEG, whose rows can only be
//          decoded from the top, at the whole resolution.
// Name:    from the picture's whole path, size, time of change and table, so that a changed picture gets a new copy.
// When:    `wants_reduced_copy` of pictures over 4 million pixels whose coarsest copy is still over 2048 pixels a side.
// Cost:    one pass over the picture, some 50 to 150 million pixels a second a core as it is packed; memory some 40 MiB.
// Stop:    within some hundredths of a second; nothing is left of a stopped copy.
// Errors:  a Refusal when the folder cannot be written to.
#pragma once

#include <cstdint>
#include <filesystem>
#include <optional>
#include <tl/expected.hpp>

#include "core/plan/progress.h"
#include "core/survey/refusal.h"
#include "geo/imagery/imagery_source.h"

namespace plugside {

[[nodiscard]] bool wants_reduced_copy(const ImagerySource& source);

// The copy that was made before and is still in the folder.
[[nodiscard]] std::optional<std::filesystem::path> reduced_copy_of(const ImagerySource& source,
                                                                   const std::filesystem::path& folder);

[[nodiscard]] tl::expected<std::filesystem::path, Refusal> make_reduced_copy(const ImagerySource& source,
                                                                             const std::filesystem::path& folder,
                                                                             const Progress& progress = {});

// Removes the copies that were used longest ago until the rest holds at most `most_bytes`; what else lies in the folder is
// left alone.
void trim_reduced_copies(const std::filesystem::path& folder, std::uintmax_t most_bytes);

}  // namespace plugside
