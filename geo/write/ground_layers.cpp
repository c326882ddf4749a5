#include "geo/write/ground_layers.h"

#include "geo/write/layer_file.h"
#include "geo/write/survey_layers.h"

namespace plugside {

tl::expected<void, Refusal> write_ground(const Ground& ground, const LocalFrame& frame, const std::filesystem::path& file) {
    return write_layer_file(file, ground_layers(ground, frame), UtcTime{});
}

}  // namespace plugside
