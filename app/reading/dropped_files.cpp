#include "app/reading/dropped_files.h"

#include "geo/imagery/imagery_source.h"
#include "geo/read/input_file.h"
#include "geo/read/photo.h"
#include "geo/store/project_store.h"

namespace plugside {

namespace {

bool is_picture_without_position(const std::filesystem::path& file) {
    const auto kind = kind_of_file(file);
    if (!kind || *kind != FileKind::photograph) return false;
    std::error_code error;
    const auto facts = picture_facts(std::filesystem::absolute(file, error).string());
    return facts && !facts->contains("EXIF_GPSLatitude");
}

}  // namespace

DroppedFiles judged(const std::vector<std::filesystem::path>& files) {
    DroppedFiles dropped;
    std::vector<std::filesystem::path> without_position;
    for (const std::filesystem::path& file : files) {
        dropped.holds_project = dropped.holds_project || is_project_file(file);
        if (is_imagery_file(file))
            dropped.imagery.push_back(file);
        else if (is_picture_without_position(file))
            without_position.push_back(file);
        else
            dropped.to_read.push_back(file);
    }
    auto& where = dropped.to_read.empty() && without_position.size() == 1 ? dropped.imagery : dropped.to_read;
    where.insert(where.end(), without_position.begin(), without_position.end());
    return dropped;
}

}  // namespace plugside
