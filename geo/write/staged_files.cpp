#include "geo/write/staged_files.h"

#include <algorithm>
#include <utility>

namespace plugside {

namespace {

namespace fs = std::filesystem;

// The file that a link points to; the name itself where it is none, or leads nowhere.
fs::path followed(const fs::path& file) {
    std::error_code error;
    if (!fs::is_symlink(file, error)) return file;
    fs::path target = fs::canonical(file, error);
    return error ? file : std::move(target);
}

}  // namespace

tl::expected<void, Refusal> StagedFiles::write(const fs::path& file, const Writer& writer) {
    const fs::path target = followed(file);
    auto part = SafeFiles::beside(target);
    if (!part) {
        part.error().file = file.string();
        return tl::unexpected(part.error());
    }
    const fs::path hidden = part->folder();
    if (auto written = writer(hidden / target.filename()); !written) {
        Refusal refusal = written.error();
        const fs::path told(refusal.file);
        if (told.parent_path() == hidden)
            refusal.file = (told == hidden / target.filename() ? file : file.parent_path() / told.filename()).string();
        return tl::unexpected(std::move(refusal));
    }
    parts_.push_back(std::move(*part));
    shown_.push_back(file);
    return {};
}

tl::expected<std::vector<fs::path>, Refusal> StagedFiles::commit() {
    std::vector<fs::path> names;
    std::error_code error;
    for (std::size_t i = 0; i < parts_.size(); ++i) {
        const fs::path target = followed(shown_[i]).filename();
        std::vector<fs::path> of_part;
        for (const auto& entry : fs::directory_iterator(parts_[i].folder(), error)) {
            const fs::path name = entry.path().filename();
            of_part.push_back(name == target ? shown_[i] : shown_[i].parent_path() / name);
        }
        std::sort(of_part.begin(), of_part.end());
        names.insert(names.end(), of_part.begin(), of_part.end());
    }
    if (auto placed = SafeFiles::commit_together(parts_); !placed) return tl::unexpected(placed.error());
    parts_.clear();
    shown_.clear();
    return names;
}

}  // namespace plugside
