#include "geo/imagery/server_tiles.h"

#include <cpl_error.h>
#include <cpl_string.h>
#include <cpl_vsi.h>
#include <gdal_priv.h>

#include <algorithm>
#include <atomic>
#include <cmath>
#include <cstring>
#include <map>

#include "geo/imagery/imagery_opening.h"
#include "geo/imagery/picture_bands.h"
#include "geo/imagery/picture_library.h"
#include "geo/imagery/tile_sampling.h"

namespace plugside {

namespace {

constexpr int tile_px = 256;
constexpr double earth_radius_m = 6378137.0;
constexpr double half_round_m = 3.14159265358979323846 * earth_radius_m;
constexpr std::size_t most_tiles = 16;  // under one: it would take more only where the way between the systems breaks

const char* const pseudo_mercator =
    R"(PROJCS["WGS 84 / Pseudo-Mercator",GEOGCS["WGS 84",DATUM["WGS_1984",SPHEROID["WGS 84",6378137,298.257223563,)"
    R"(AUTHORITY["EPSG","7030"]],AUTHORITY["EPSG","6326"]],PRIMEM["Greenwich",0],UNIT["degree",0.0174532925199433],)"
    R"(AUTHORITY["EPSG","4326"]],PROJECTION["Mercator_1SP"],PARAMETER["central_meridian",0],PARAMETER["scale_factor",1],)"
    R"(PARAMETER["false_easting",0],PARAMETER["false_northing",0],UNIT["metre",1],)"
    R"(EXTENSION["PROJ4","+proj=merc +a=6378137 +b=6378137 +lat_ts=0 +lon_0=0 +x_0=0 +y_0=0 +k=1 +units=m +nadgrids=@null )"
    R"(+wktext +no_defs"],AUTHORITY["EPSG","3857"]])";

// A file of the library's own memory, as long as it is looked at.
class InMemory {
public:
    explicit InMemory(const std::string& bytes) {
        static std::atomic<unsigned> number{0};
        name_ = "/vsimem/server_tile_" + std::to_string(++number);
        // the library only reads it
        auto* data = const_cast<GByte*>(reinterpret_cast<const GByte*>(bytes.data()));
        VSIFCloseL(VSIFileFromMemBuffer(name_.c_str(), data, bytes.size(), FALSE));
    }
    ~InMemory() { VSIUnlink(name_.c_str()); }
    InMemory(const InMemory&) = delete;
    InMemory& operator=(const InMemory&) = delete;
    [[nodiscard]] const std::string& name() const { return name_; }

private:
    std::string name_;
};

struct Range {
    std::int64_t left = 0;
    std::int64_t top = 0;
    std::int64_t right = -1;  // included
    std::int64_t bottom = -1;
    [[nodiscard]] std::int64_t count() const {
        return std::max<std::int64_t>(right - left + 1, 0) * std::max<std::int64_t>(bottom - top + 1, 0);
    }
};

// A pixel more on every side, for what lies between the middles of pixels.
Range range_of(const PixelMesh::Reach& reach, int level) {
    const std::int64_t last = (std::int64_t{1} << level) - 1;
    const auto index = [last](double pixel) {
        return std::clamp(static_cast<std::int64_t>(std::floor(pixel / tile_px)), std::int64_t{-1}, last + 1);
    };
    const Range range{index(reach.low.column - 1.0), index(reach.low.row - 1.0), index(reach.high.column + 1.0),
                      index(reach.high.row + 1.0)};
    return {std::max<std::int64_t>(range.left, 0), std::max<std::int64_t>(range.top, 0), std::min(range.right, last),
            std::min(range.bottom, last)};
}

}  // namespace

bool looks_like_tile(const std::string& bytes) {
    const std::string_view start = bytes;
    return start.substr(0, 8) == "\x89PNG\r\n\x1A\n" || start.substr(0, 3) == "\xFF\xD8\xFF" ||
           (start.substr(0, 4) == "RIFF" && start.size() > 12 && start.substr(8, 4) == "WEBP");
}

std::optional<DecodedTile> decoded(const std::string& bytes) {
    if (bytes.empty()) return std::nullopt;
    prepare_picture_library();
    CPLErrorHandlerPusher quiet(CPLQuietErrorHandler);
    const InMemory file(bytes);
    static constexpr std::array<const char*, 4> drivers{"PNG", "JPEG", "WEBP", nullptr};
    static constexpr std::array<const char*, 1> no_siblings{nullptr};
    const OpenDataset dataset(GDALDataset::Open(file.name().c_str(), GDAL_OF_RASTER | GDAL_OF_READONLY, drivers.data(),
                                                nullptr, no_siblings.data()));
    if (!dataset) return std::nullopt;
    const int size = dataset->GetRasterXSize();
    if (size != dataset->GetRasterYSize() || (size != tile_px && size != 2 * tile_px)) return std::nullopt;
    const auto tone = tone_of(*dataset, "");
    PictureValues values;
    if (!tone || !tone->eight_bit || !read_values(*dataset, *tone, 0, 0, size, size, values)) return std::nullopt;
    DecodedTile tile{size, {}};
    const auto pixels = static_cast<std::size_t>(size) * static_cast<std::size_t>(size);
    tile.rgba.resize(pixels * 4);
    to_rgba(*tone, values.bytes.data(), values.mask.empty() ? nullptr : values.mask.data(), pixels, tile.rgba.data());
    return tile;
}

struct ServerGround::Levels {
    GeographicPoint centre;
    int deepest = 0;
    std::map<int, GroundToPixel> ways;

    const GroundToPixel* way(int level) {
        if (const auto found = ways.find(level); found != ways.end()) return &found->second;
        ImageryOpening opening;
        const double pixel_m = 2.0 * half_round_m / (static_cast<double>(tile_px) * std::ldexp(1.0, level));
        opening.placement = {-half_round_m, pixel_m, 0.0, half_round_m, 0.0, -pixel_m};
        opening.definition = pseudo_mercator;
        opening.frame_centre = centre;
        auto way = GroundToPixel::of(opening);
        return way ? &ways.emplace(level, std::move(*way)).first->second : nullptr;
    }
    // Nothing where nothing is to be asked for.
    std::optional<PixelMesh> mesh(const TilePlace& place, int size, int level) {
        const GroundToPixel* const to_pixels = way(level);
        if (to_pixels == nullptr) return std::nullopt;
        const double resolution = tile_resolution_m(place.zoom);
        PixelMesh mesh(*to_pixels, tile_corner(place, size) + LocalVector{0.0, resolution * size}, resolution, size);
        if (!mesh.reach() || range_of(*mesh.reach(), level).count() > static_cast<std::int64_t>(most_tiles))
            return std::nullopt;
        return mesh;
    }
};

ServerGround::ServerGround(GeographicPoint frame_centre, int deepest) : levels_(std::make_unique<Levels>()) {
    levels_->centre = frame_centre;
    levels_->deepest = std::clamp(deepest, 0, deepest_level);
}
ServerGround::ServerGround(ServerGround&&) noexcept = default;
ServerGround& ServerGround::operator=(ServerGround&&) noexcept = default;
ServerGround::~ServerGround() = default;

int ServerGround::level_for(double metres_per_pixel) const {
    const double shrunk = std::cos(levels_->centre.latitude_degrees * 0.017453292519943295);
    const double of_level_0 = 2.0 * half_round_m / tile_px * std::max(shrunk, 1e-3);
    return static_cast<int>(
        std::clamp(std::round(std::log2(of_level_0 / metres_per_pixel)), 0.0, static_cast<double>(levels_->deepest)));
}

std::vector<ServerTile> ServerGround::under(const TilePlace& place, int size) {
    const int level = level_for(tile_resolution_m(place.zoom));
    std::vector<ServerTile> tiles;
    const auto mesh = levels_->mesh(place, size, level);
    if (!mesh) return tiles;
    const Range range = range_of(*mesh->reach(), level);
    for (std::int64_t row = range.top; row <= range.bottom; ++row)
        for (std::int64_t column = range.left; column <= range.right; ++column) tiles.push_back({level, column, row});
    return tiles;
}

ImageryTile ServerGround::joined(const TilePlace& place, int size,
                                 const std::function<std::shared_ptr<const std::string>(const ServerTile&)>& bytes_of) {
    const int level = level_for(tile_resolution_m(place.zoom));
    ImageryTile tile;
    tile.size = size;
    tile.empty = true;
    const auto mesh = levels_->mesh(place, size, level);
    if (!mesh) return tile;
    const Range range = range_of(*mesh->reach(), level);
    if (range.count() == 0) return tile;
    std::map<ServerTile, DecodedTile> pictures;
    int side = tile_px;  // the finest that came
    for (std::int64_t row = range.top; row <= range.bottom; ++row)
        for (std::int64_t column = range.left; column <= range.right; ++column) {
            const auto bytes = bytes_of({level, column, row});
            auto picture = bytes ? decoded(*bytes) : std::nullopt;
            if (!picture) continue;
            side = std::max(side, picture->size);
            pictures.emplace(ServerTile{level, column, row}, std::move(*picture));
        }
    if (pictures.empty()) return tile;
    ReducedWindow window;
    window.width = static_cast<int>(range.right - range.left + 1) * side;
    window.height = static_cast<int>(range.bottom - range.top + 1) * side;
    window.left = static_cast<double>(range.left) * tile_px;
    window.top = static_cast<double>(range.top) * tile_px;
    window.cell_width = window.cell_height = static_cast<double>(tile_px) / side;
    window.rgba.assign(static_cast<std::size_t>(window.width) * static_cast<std::size_t>(window.height) * 4, 0);
    for (const auto& [where, picture] : pictures) {
        const int times = side / picture.size;
        for (int row = 0; row < side; ++row) {
            const auto y = static_cast<std::size_t>((where.row - range.top) * side + row);
            const auto x = static_cast<std::size_t>((where.column - range.left) * side);
            std::uint8_t* to = &window.rgba[(y * static_cast<std::size_t>(window.width) + x) * 4];
            const std::uint8_t* from =
                &picture.rgba[static_cast<std::size_t>(row / times) * static_cast<std::size_t>(picture.size) * 4];
            for (int column = 0; column < side; ++column, to += 4)
                std::memcpy(to, from + static_cast<std::size_t>(column / times) * 4, 4);
        }
    }
    const double whole = static_cast<double>(tile_px) * std::ldexp(1.0, level);
    tile.empty = false;
    tile.rgba.assign(static_cast<std::size_t>(size) * static_cast<std::size_t>(size) * 4, 0);
    fill(tile, *mesh, window, {1.0, 1.0, whole, whole});
    return tile;
}

}  // namespace plugside
