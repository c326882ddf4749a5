// Square pieces of a picture on the field's own plane, ready to be drawn.
//
// Place:   a tile of `zoom` z shows pixels of 2^-z metres; column and row count tiles east and north from the plane's origin,
//          so that tile (0, 0) has its lower left corner there. The first row of its pixels is the northernmost.
// Pixels:  red, green, blue, alpha, a byte each, colours multiplied by alpha; transparent beyond the picture.
// How:     averages of whole cells of the picture's best level while it is reduced, linear between the middles of pixels in
//          both directions while it is enlarged. Positions are computed on a mesh, finer until its error is under a tenth of
//          a pixel, and lie within .2 pixels of the picture's own (checked in the tests against the raster library's warp).
// quick:   decodes at most `quick_bytes`, fewer of a packed picture (`PictureLevel::dearness`); a tile that would need more comes from blocks spread over its ground and is
//          marked `rough`. A picture with reduced copies is never rough.
// Cost:    quick: tens of milliseconds a tile; else as much as the tile's ground holds on the best level.
// Memory:  some 16 MiB at work, whatever the picture's size.
// Stop:    asked between strips; a stopped tile is nothing.
// Threads: one at a time a maker, with its own opening of the file; many makers at once.
// Errors:  a damaged part of a file is transparent.
#pragma once

#include <cstdint>
#include <memory>
#include <optional>
#include <stop_token>
#include <tl/expected.hpp>
#include <vector>

#include "core/survey/refusal.h"
#include "geo/imagery/ground_to_pixel.h"
#include "geo/imagery/imagery_source.h"
#include "geo/imagery/picture_reader.h"

namespace plugside {

struct TilePlace {
    int zoom = 0;
    std::int64_t column = 0;
    std::int64_t row = 0;
    friend auto operator<=>(const TilePlace&, const TilePlace&) = default;
};

inline constexpr int least_zoom = -16;
inline constexpr int most_zoom = 12;

// Metres a pixel, and the places of a tile's lower left corner.
[[nodiscard]] double tile_resolution_m(int zoom);
[[nodiscard]] LocalPoint tile_corner(const TilePlace& place, int size);
// The coarsest zoom whose pixels are no larger than `metres_per_pixel`.
[[nodiscard]] int zoom_for(double metres_per_pixel);

struct ImageryTile {
    int size = 0;
    bool empty = false;  // transparent throughout; then `rgba` holds nothing
    bool rough = false;
    std::vector<std::uint8_t> rgba;

    [[nodiscard]] std::size_t bytes() const { return rgba.size() + sizeof(ImageryTile); }
};

enum class TileCare { quick, whole };

struct TileOptions {
    int size = 256;                          // 256 or 512 are usual; 1 to 4096
    double quick_bytes = 6.0 * 1024 * 1024;  // twenty tiles of a view then stay under half a second; our measurement
};

class TileMaker {
public:
    [[nodiscard]] static tl::expected<TileMaker, Refusal> on(const ImagerySource& source, const TileOptions& options = {});

    [[nodiscard]] std::optional<ImageryTile> make(const TilePlace& place, TileCare care, const std::stop_token& stop = {});
    [[nodiscard]] const PictureReader& reader() const { return reader_; }

private:
    TileMaker(PictureReader reader, GroundToPixel way, const ImagerySource& source, const TileOptions& options);
    PictureReader reader_;
    GroundToPixel way_;
    ImagerySource source_;
    TileOptions options_;
};

}  // namespace plugside
