// Tiles of the usual scheme of map servers (Mercator squares), laid on the field's own plane.
//
// ServerGround: which of a server's tiles lie under one of the field's, and these joined and warped to it by the same mesh and
//          sampling as pictures of files.
// Level:   that whose pixels come nearest to the tile's (by ratio), no deeper than asked for.
// Bytes:   PNG, JPEG or WebP of 256 or 512 pixels a side, as a server sent them; whatever is none of these is transparent.
//          `decoded` decodes one, with those drivers alone and out of memory.
// Where there is none: beyond 85 degrees of latitude the map ends, and a tile across the 180th meridian asks for nothing.
// Cost:    some 60 projections to find tiles; decoding of up to nine tiles and one warp to join them.
// Threads: one at a time an object.
// Source:  EPSG:3857, IOGP Guidance Note 7-2, for the plane; the squares are common practice of tile servers.
#pragma once

#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "geo/imagery/ground_to_pixel.h"
#include "geo/imagery/tile_address.h"
#include "geo/imagery/tile_maker.h"

namespace plugside {

struct DecodedTile {
    int size = 0;
    std::vector<std::uint8_t> rgba;  // colours multiplied by alpha
};

// By the first bytes: PNG, JPEG or WebP.
[[nodiscard]] bool looks_like_tile(const std::string& bytes);
// Nothing for bytes that are no such picture.
[[nodiscard]] std::optional<DecodedTile> decoded(const std::string& bytes);

class ServerGround {
public:
    // `deepest`: 0 to deepest_level.
    ServerGround(GeographicPoint frame_centre, int deepest);
    ServerGround(ServerGround&&) noexcept;
    ServerGround& operator=(ServerGround&&) noexcept;
    ~ServerGround();

    [[nodiscard]] std::vector<ServerTile> under(const TilePlace& place, int size);
    // Null bytes: a tile that the server has not.
    [[nodiscard]] ImageryTile joined(const TilePlace& place, int size,
                                     const std::function<std::shared_ptr<const std::string>(const ServerTile&)>& bytes_of);
    [[nodiscard]] int level_for(double metres_per_pixel) const;

private:
    struct Levels;
    std::unique_ptr<Levels> levels_;
};

}  // namespace plugside
