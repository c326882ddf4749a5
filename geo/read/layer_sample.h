// A look into the layers of a vector file, to lay a guess (gis_layers.h) beside: the first rows as text, how many shapes of
// each kind there are, and the first places in the layer's own numbers, whatever reference system they are in.
//
// Shapes:  counted by feature; a feature that mixes kinds counts for each.
// Places:  the middle of the box of each of the first shapes; not transformed, so that a person can be told where they
//          would lie in a reference system that is about to be chosen.
// Errors:  a Refusal where the file cannot be opened. Cost: linear in features; stop is honoured.
#pragma once

#include <array>
#include <cstddef>
#include <filesystem>
#include <string>
#include <tl/expected.hpp>
#include <vector>

#include "core/plan/progress.h"
#include "core/survey/refusal.h"

namespace plugside {

struct LayerSample {
    std::string layer;
    std::vector<std::string> columns;
    std::vector<std::vector<std::string>> rows;
    std::size_t points = 0;
    std::size_t lines = 0;
    std::size_t polygons = 0;
    std::vector<std::array<double, 2>> places;  // east (or longitude) first
};

// One a layer that has shapes, in the file's order.
[[nodiscard]] tl::expected<std::vector<LayerSample>, Refusal> sample_layers(const std::filesystem::path& file,
                                                                            std::size_t rows = 20,
                                                                            const Progress& progress = {});

}  // namespace plugside
