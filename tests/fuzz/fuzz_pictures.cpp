// Any bytes as a picture of the ground with a world file and a .prj beside it: opened or refused in one sentence; what is opened
// lies at numbers, and tiles of it are made. Any numbers as pairs of a placement: placed finitely, there and back, or refused.
//
// Input: one byte says how many bytes of a world file follow, then those, then the same of a .prj, then the picture.
#include <unistd.h>

#include <cmath>
#include <cstdint>
#include <cstdlib>
#include <cstring>
#include <filesystem>
#include <fstream>
#include <string>
#include <string_view>

#include "geo/imagery/imagery_source.h"
#include "geo/imagery/tile_maker.h"

namespace {

using namespace plugside;
namespace fs = std::filesystem;

void demand(bool holds) {
    if (!holds) std::abort();
}

// In memory where there is such a folder; taken away at the end.
class InputFolder {
public:
    InputFolder() {
        std::error_code error;
        const bool in_memory = fs::is_directory("/dev/shm", error);
        path_ =
            (in_memory ? fs::path("/dev/shm") : fs::temp_directory_path()) / ("plugside-fuzz-" + std::to_string(getpid()));
        fs::create_directory(path_, error);
    }
    ~InputFolder() {
        std::error_code error;
        fs::remove_all(path_, error);
    }
    [[nodiscard]] fs::path write(const char* name, std::string_view bytes) const {
        std::ofstream(path_ / name, std::ios::binary).write(bytes.data(), static_cast<std::streamsize>(bytes.size()));
        return path_ / name;
    }
    void remove(const char* name) const {
        std::error_code error;
        fs::remove(path_ / name, error);
    }

private:
    fs::path path_;
};

std::string_view taken(std::string_view& bytes) {
    if (bytes.empty()) return {};
    const auto length = std::min<std::size_t>(static_cast<unsigned char>(bytes.front()), bytes.size() - 1);
    const std::string_view part = bytes.substr(1, length);
    bytes.remove_prefix(1 + length);
    return part;
}

void make_tiles(const ImagerySource& source) {
    const ImageryFacts& facts = source.facts();
    demand(facts.width > 0 && facts.height > 0 && facts.bands > 0);
    for (const LocalPoint place : facts.outline) demand(std::isfinite(place.east_m) && std::isfinite(place.north_m));
    auto maker = TileMaker::on(source, {64, 1024.0 * 1024.0});
    if (!maker || facts.outline.empty()) return;
    const LocalPoint corner = facts.outline.front();
    const int zoom = zoom_for(facts.metres_per_pixel);
    const double side_m = tile_resolution_m(zoom) * 64;
    if (std::abs(corner.east_m) > 1e7 || std::abs(corner.north_m) > 1e7) return;
    const TilePlace at{zoom, static_cast<std::int64_t>(std::floor(corner.east_m / side_m)),
                       static_cast<std::int64_t>(std::floor(corner.north_m / side_m))};
    const auto tile = maker->make(at, TileCare::quick);
    demand(tile.has_value() && (tile->empty || tile->rgba.size() == 64U * 64U * 4U));
}

void open_picture(const fs::path& file, const ImageryAnswers& answers) {
    static const LocalFrame frame = LocalFrame::centred_on({-106.3, 34.1});
    const auto source = ImagerySource::open(file, frame, answers);
    if (source) return make_tiles(*source);
    demand(!source.error().found.empty() && !source.error().expected.empty());
    demand(sentence(source.error()).find('\n') == std::string::npos);
}

std::optional<PicturePlacement> place(std::string_view bytes) {
    std::vector<PlacementPair> pairs;
    for (; bytes.size() >= 4 * sizeof(float) && pairs.size() < 40; bytes.remove_prefix(4 * sizeof(float))) {
        float numbers[4];
        std::memcpy(numbers, bytes.data(), sizeof numbers);
        pairs.push_back({{double{numbers[0]}, double{numbers[1]}}, {double{numbers[2]}, double{numbers[3]}}});
    }
    const auto fit = fit_placement(pairs);
    if (!fit) {
        demand(!sentence(fit.error()).empty());
        return std::nullopt;
    }
    demand(fit->residuals_m.size() == pairs.size());
    for (const double left : fit->residuals_m) demand(left >= 0.0);
    return fit->placement;
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    static const InputFolder folder;
    std::string_view bytes(reinterpret_cast<const char*>(data), size);
    const std::string_view world = taken(bytes);
    const std::string_view definition = taken(bytes);
    world.empty() ? folder.remove("picture.jgw") : static_cast<void>(folder.write("picture.jgw", world));
    definition.empty() ? folder.remove("picture.prj") : static_cast<void>(folder.write("picture.prj", definition));
    const fs::path picture = folder.write("picture.jpg", bytes);
    static_cast<void>(is_imagery_file(picture));
    open_picture(picture, {});
    ImageryAnswers by_pairs;
    by_pairs.placement = place(bytes);
    if (by_pairs.placement) open_picture(picture, by_pairs);
    return 0;
}
