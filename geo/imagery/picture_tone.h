// From a picture's own values to red, green, blue and alpha.
//
// Input:   for each pixel the values of `bands` one after another, and where `mask` is read, one byte of mask a pixel.
// Output:  four bytes a pixel, colours multiplied by alpha.
// No data: a pixel all of whose colour values are "no data" (or, in fractions, not a number) is transparent.
// Range:   values from `from` to `to` are spread over 0..255; equal ends give 0 below and 255 from there on.
#pragma once

#include <array>
#include <cstddef>
#include <cstdint>
#include <optional>
#include <vector>

namespace plugside {

struct ValueRange {
    double from = 0.0;
    double to = 255.0;
};

struct PictureTone {
    std::vector<int> bands;  // numbers from 1: one or three colours, then alpha where there is one
    bool alpha = false;      // the last of `bands` is alpha
    bool mask = false;       // a mask is read beside
    bool eight_bit = true;   // values are bytes, else fractions
    double full_alpha = 255.0;
    std::vector<std::array<std::uint8_t, 4>> palette;
    std::vector<std::optional<double>> no_data;  // of each colour
    std::vector<ValueRange> ranges;              // of each colour

    [[nodiscard]] std::size_t colours() const { return bands.size() - (alpha ? 1 : 0); }
};

void to_rgba(const PictureTone& tone, const std::uint8_t* values, const std::uint8_t* mask, std::size_t pixels,
             std::uint8_t* rgba);
void to_rgba(const PictureTone& tone, const float* values, const std::uint8_t* mask, std::size_t pixels, std::uint8_t* rgba);

// The 2nd and 98th percentile of a sample; the sample is reordered. Nothing of an empty one.
[[nodiscard]] std::optional<ValueRange> middle_range(std::vector<float>& sample);

}  // namespace plugside
