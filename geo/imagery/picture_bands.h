// Which bands of a picture are shown as which colours, and how its values are stretched. Internal to the imagery.
//
// Errors: a Refusal for kinds of values that no picture has (complex numbers).
// Cost:   `tone_of` decodes at most 64 blocks.
#pragma once

#include <filesystem>
#include <tl/expected.hpp>

#include "core/survey/refusal.h"
#include "geo/imagery/picture_tone.h"

class GDALDataset;

namespace plugside {

[[nodiscard]] tl::expected<PictureTone, Refusal> tone_of(GDALDataset& dataset, const std::filesystem::path& file);

// Interleaved values of a tone's bands (bytes or fractions, as the tone says) and the mask where it wants one; false when a
// part could not be decoded.
struct PictureValues {
    std::vector<std::uint8_t> bytes;
    std::vector<float> fractions;
    std::vector<std::uint8_t> mask;
};
[[nodiscard]] bool read_values(GDALDataset& dataset, const PictureTone& tone, int left, int top, int width, int height,
                               PictureValues& values);

}  // namespace plugside
