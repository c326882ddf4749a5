// One worker's open hand on a picture: reads windows of it, reduced while they are read.
//
// Levels:  the picture itself, the reduced copies within its file, and the levels of the reduced copy beside it; `factor_x`
//          and `factor_y` are pixels of the picture to a pixel of the level.
// whole:   every pixel of the window takes part in the averages.
// sparse:  only as much is decoded as `most_bytes` says, from blocks spread evenly over the window; a coarse answer at
//          once about a picture that has no reduced copies. Which blocks does not depend on the window, so that neighbouring
//          windows agree.
// Memory:  a strip of rows of at most 8 MiB (or one block's height) beside the result.
// Stop:    asked between strips; a stopped reading gives nothing.
// Errors:  a damaged part of a file reads as transparent; what was damaged is counted in `failures`.
// Threads: one at a time an object.
#pragma once

#include <cstdint>
#include <memory>
#include <optional>
#include <stop_token>
#include <tl/expected.hpp>
#include <vector>

#include "core/survey/refusal.h"
#include "geo/imagery/imagery_source.h"
#include "geo/imagery/picture_tone.h"

namespace plugside {

struct PictureLevel {
    int width = 0;
    int height = 0;
    double factor_x = 1.0;
    double factor_y = 1.0;
    int block_width = 0;
    int block_height = 0;
    double bytes_per_pixel = 3.0;  // decoded
    double dearness = 1.0;         // what a decoded byte costs beside one of a file that is not packed; our measurement
};

// Pixels of a level.
struct PixelWindow {
    int left = 0;
    int top = 0;
    int width = 0;
    int height = 0;
};

// Averages of cells of a level, colours multiplied by alpha. The upper left of the first cell lies at (left, top).
struct ReducedWindow {
    int width = 0;
    int height = 0;
    double left = 0.0;
    double top = 0.0;
    double cell_width = 1.0;  // pixels of the level
    double cell_height = 1.0;
    bool sparse = false;
    std::vector<std::uint8_t> rgba;
};

class PictureReader {
public:
    [[nodiscard]] static tl::expected<PictureReader, Refusal> open(const ImagerySource& source);
    PictureReader(PictureReader&&) noexcept;
    PictureReader& operator=(PictureReader&&) noexcept;
    ~PictureReader();

    [[nodiscard]] const std::vector<PictureLevel>& levels() const;  // the picture itself first, then coarser and coarser
    // Cells of `across` by `down` pixels; the window begins at a multiple of them and is cut at the level's edge.
    [[nodiscard]] std::optional<ReducedWindow> whole(std::size_t level, PixelWindow window, int across, int down,
                                                     const std::stop_token& stop);
    [[nodiscard]] std::optional<ReducedWindow> sparse(std::size_t level, PixelWindow window, int across, int down,
                                                      double most_bytes, const std::stop_token& stop);
    [[nodiscard]] std::size_t failures() const;

private:
    struct Hand;
    explicit PictureReader(std::unique_ptr<Hand> hand);
    std::unique_ptr<Hand> hand_;
};

}  // namespace plugside
