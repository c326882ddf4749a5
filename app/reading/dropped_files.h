// What dropped files are, so that each goes where it belongs: judged by content, away from the window's thread, as it opens them.
//
// A photograph with a position is a mark and is read; a JPEG without one is taken as a picture to be placed where it came alone (or
// with other pictures of the ground): among walks and photographs it is read with them, which says what it lacks.
#pragma once

#include <filesystem>
#include <vector>

namespace plugside {

struct DroppedFiles {
    std::vector<std::filesystem::path> imagery;  // pictures of the ground, with or without a position
    bool holds_project = false;
    std::vector<std::filesystem::path> to_read;  // projects, walks, layers, photographs and whatever is none of all
};

[[nodiscard]] DroppedFiles judged(const std::vector<std::filesystem::path>& files);

}  // namespace plugside
