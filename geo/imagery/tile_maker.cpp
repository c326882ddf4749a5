#include "geo/imagery/tile_maker.h"

#include <algorithm>
#include <cassert>
#include <cmath>

#include "core/words/words.h"
#include "geo/imagery/imagery_opening.h"
#include "geo/imagery/pixel_mesh.h"
#include "geo/imagery/tile_sampling.h"

namespace plugside {

namespace {

// The coarsest level that is still as fine as the tile, and how many of its pixels make a cell.
struct Chosen {
    std::size_t level = 0;
    int across = 1;
    int down = 1;
};

Chosen choose(const std::vector<PictureLevel>& levels, double columns_per_pixel, double rows_per_pixel) {
    constexpr double nearly = 1.02;  // sizes of reduced copies are rounded
    Chosen chosen;
    for (std::size_t i = 0; i < levels.size(); ++i)
        if (levels[i].factor_x <= columns_per_pixel * nearly && levels[i].factor_y <= rows_per_pixel * nearly)
            chosen.level = i;
    const PictureLevel& level = levels[chosen.level];
    const auto whole = [](double ratio) { return static_cast<int>(std::clamp(std::floor(ratio + 0.02), 1.0, 1e6)); };
    chosen.across = whole(columns_per_pixel / level.factor_x);
    chosen.down = whole(rows_per_pixel / level.factor_y);
    return chosen;
}

// The level's pixels that the tile needs, with a rim for the cells beside its edges.
std::optional<PixelWindow> window_of(const PixelMesh::Reach& reach, const PictureLevel& level, const Chosen& chosen) {
    const double rim_x = 2.0 * chosen.across;
    const double rim_y = 2.0 * chosen.down;
    const double left = std::max(std::floor(reach.low.column / level.factor_x - rim_x), 0.0);
    const double top = std::max(std::floor(reach.low.row / level.factor_y - rim_y), 0.0);
    const double right = std::min(std::ceil(reach.high.column / level.factor_x + rim_x), static_cast<double>(level.width));
    const double bottom = std::min(std::ceil(reach.high.row / level.factor_y + rim_y), static_cast<double>(level.height));
    if (!(left < right) || !(top < bottom)) return std::nullopt;
    return PixelWindow{static_cast<int>(left), static_cast<int>(top), static_cast<int>(right - left),
                       static_cast<int>(bottom - top)};
}

}  // namespace

double tile_resolution_m(int zoom) { return std::ldexp(1.0, -zoom); }

LocalPoint tile_corner(const TilePlace& place, int size) {
    const double side_m = tile_resolution_m(place.zoom) * size;
    return {static_cast<double>(place.column) * side_m, static_cast<double>(place.row) * side_m};
}

int zoom_for(double metres_per_pixel) {
    if (!(metres_per_pixel > 0.0)) return most_zoom;
    return static_cast<int>(std::clamp(std::ceil(-std::log2(metres_per_pixel)), static_cast<double>(least_zoom),
                                       static_cast<double>(most_zoom)));
}

TileMaker::TileMaker(PictureReader reader, GroundToPixel way, const ImagerySource& source, const TileOptions& options)
    : reader_(std::move(reader)), way_(std::move(way)), source_(source), options_(options) {}

tl::expected<TileMaker, Refusal> TileMaker::on(const ImagerySource& source, const TileOptions& options) {
    assert(options.size >= 1 && options.size <= 4096);
    auto reader = PictureReader::open(source);
    if (!reader) return tl::unexpected(reader.error());
    auto way = GroundToPixel::of(source.opening());
    if (!way)
        return tl::unexpected(Refusal{Refusal::Code::needs_reference_system, source.facts().file.string(), "",
                                      Words::later("a reference system that no way leads to"),
                                      Words::later("the reference system of its position")});
    return TileMaker(std::move(*reader), std::move(*way), source, options);
}

std::optional<ImageryTile> TileMaker::make(const TilePlace& place, TileCare care, const std::stop_token& stop) {
    if (stop.stop_requested()) return std::nullopt;
    const int size = options_.size;
    const double resolution = tile_resolution_m(place.zoom);
    const LocalPoint upper_left = tile_corner(place, size) + LocalVector{0.0, resolution * size};
    ImageryTile tile;
    tile.size = size;
    tile.empty = true;
    const PixelMesh mesh(way_, upper_left, resolution, size);
    if (!mesh.reach()) return tile;
    const Chosen chosen = choose(reader_.levels(), mesh.columns_per_pixel(), mesh.rows_per_pixel());
    const PictureLevel& level = reader_.levels()[chosen.level];
    const auto window = window_of(*mesh.reach(), level, chosen);
    if (!window) return tile;
    const double bytes = static_cast<double>(window->width) * window->height * level.bytes_per_pixel;
    const double most_bytes = options_.quick_bytes / level.dearness;
    const bool sparse = care == TileCare::quick && bytes > most_bytes;
    const auto reduced = sparse
                             ? reader_.sparse(chosen.level, *window, chosen.across, chosen.down, most_bytes, stop)
                             : reader_.whole(chosen.level, *window, chosen.across, chosen.down, stop);
    if (!reduced) return std::nullopt;
    tile.empty = false;
    tile.rough = sparse;
    tile.rgba.assign(static_cast<std::size_t>(size) * static_cast<std::size_t>(size) * 4, 0);
    fill(tile, mesh, *reduced,
         {level.factor_x, level.factor_y, static_cast<double>(source_.facts().width),
          static_cast<double>(source_.facts().height)});
    return tile;
}

}  // namespace plugside
