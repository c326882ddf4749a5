// A vector file opened with the one driver that its kind asks for. For geo/read alone; what is refused is said in
// layer_rows.h.
#pragma once

#include <filesystem>
#include <memory>
#include <optional>

#include "core/survey/refusal.h"
#include "geo/read/input_file.h"

class GDALDataset;

namespace plugside {

struct LayerSourceCloser {
    void operator()(GDALDataset* data) const;
};
using LayerSource = std::unique_ptr<GDALDataset, LayerSourceCloser>;

// Null where the library cannot. `prepare_vector_library` was called.
[[nodiscard]] LayerSource open_layers(const std::filesystem::path& file, FileKind kind);
// What a refusal says should be there.
[[nodiscard]] const char* expected_of_layers(FileKind kind);
// What the library cannot be left to find out.
[[nodiscard]] std::optional<Refusal> refusal_before_opening(const std::filesystem::path& file, FileKind kind);

}  // namespace plugside
