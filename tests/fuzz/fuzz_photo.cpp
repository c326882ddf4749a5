// Any bytes as a picture's header and, apart from that, as the values of its tags: it is read or refused. The bytes lie in
// the library's own memory, which no name that a person gives can reach.
#include <cpl_vsi.h>

#include <cmath>
#include <cstdint>
#include <cstdlib>
#include <string>
#include <vector>

#include "geo/read/photo.h"

namespace {

constexpr const char* memory = "/vsimem/fuzz.jpg";

void demand(bool holds) {
    if (!holds) std::abort();
}

void read(const plugside::PictureFacts& facts) {
    const auto file = plugside::photograph_from(facts, "fuzz.jpg");
    if (!file) {
        demand(!file.error().found.empty());
        return;
    }
    for (const auto& mark : file->walks.front().marks) {
        demand(std::abs(mark.at.longitude_degrees) <= 180.0 && std::abs(mark.at.latitude_degrees) <= 90.0);
        demand(mark.mound.picture == "fuzz.jpg");
    }
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    std::vector<std::uint8_t> bytes(data, data + size);
    VSIFCloseL(VSIFileFromMemBuffer(memory, bytes.data(), bytes.size(), 0));
    if (const auto facts = plugside::picture_facts(memory)) read(*facts);
    VSIUnlink(memory);
    // "GPSLatitude=(38) (15) (0)", a line each
    plugside::PictureFacts facts;
    std::string text(reinterpret_cast<const char*>(data), size);
    for (std::size_t start = 0; start < text.size();) {
        const std::size_t end = std::min(text.find('\n', start), text.size());
        const std::string line = text.substr(start, end - start);
        if (const auto equals = line.find('='); equals != std::string::npos)
            facts["EXIF_" + line.substr(0, equals)] = line.substr(equals + 1);
        start = end + 1;
    }
    read(facts);
    return 0;
}
