// Any bytes as a file of layers (GeoPackage, GeoJSON, KML, FlatGeobuf): read or refused in one sentence, and what is read lies on
// the earth. The library behind reads files, so that each input is written to one.
#include <unistd.h>

#include <cmath>
#include <cstdint>
#include <cstdlib>
#include <filesystem>
#include <fstream>

#include "geo/read/vector_layers.h"

namespace {

void demand(bool holds) {
    if (!holds) std::abort();
}

bool on_earth(plugside::GeographicPoint place) {
    return std::abs(place.longitude_degrees) <= 180.0 && std::abs(place.latitude_degrees) <= 90.0;
}

// In memory where there is such a folder; taken away at the end.
class InputFile {
public:
    InputFile() {
        std::error_code error;
        const bool in_memory = std::filesystem::is_directory("/dev/shm", error);
        path_ = (in_memory ? std::filesystem::path("/dev/shm") : std::filesystem::temp_directory_path()) /
                ("plugside-fuzz-" + std::to_string(getpid()));
    }
    ~InputFile() {
        std::error_code error;
        std::filesystem::remove(path_, error);
    }
    const std::filesystem::path& write(const std::uint8_t* data, std::size_t size) const {
        std::ofstream stream(path_, std::ios::binary);
        stream.write(reinterpret_cast<const char*>(data), static_cast<std::streamsize>(size));
        return path_;
    }

private:
    std::filesystem::path path_;
};

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    static const InputFile input;
    const std::filesystem::path& file = input.write(data, size);
    const auto kind = plugside::kind_of_file(file);
    if (!kind || !plugside::is_layer_file(*kind) || *kind == plugside::FileKind::shapefile) return 0;
    const auto read = plugside::read_vector_layers(file, *kind);
    if (!read) {
        demand(!read.error().found.empty());
        demand(plugside::sentence(read.error()).find('\n') == std::string::npos);
        return 0;
    }
    for (const auto& walk : read->walks)
        for (const auto& mark : walk.marks) demand(on_earth(mark.at) && mark.mound.position_sd.value() > 0.0);
    for (const auto& part : read->ground.boundary)
        for (const auto& ring : part.rings) demand(ring.size() >= 3 && on_earth(ring.front()));
    return 0;
}
