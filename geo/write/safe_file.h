// A file that appears under its name whole or not at all.
//
// Use:     write to `temporary()`, close it, then `commit()`: the content is synced to the disk, renamed over the final name
//          in one step, and the folder synced. Without a commit, everything that was written is removed with the object.
// Where:   the temporary file lies in a folder of its own beside the final name, so that the rename never crosses a disk
//          and what a library leaves beside its file (a journal) goes with it.
// Links:   a final name that is a symbolic link keeps the link; the file it points to is replaced.
// Errors:  a Refusal that names the file: a folder in the way, a folder that is missing or may not be written, a full disk.
#pragma once

#include <filesystem>
#include <string>
#include <string_view>
#include <tl/expected.hpp>

#include "core/survey/refusal.h"

namespace plugside {

class SafeFile {
public:
    [[nodiscard]] static tl::expected<SafeFile, Refusal> beside(const std::filesystem::path& final_name);

    SafeFile(SafeFile&& other) noexcept;
    SafeFile& operator=(SafeFile&&) = delete;
    SafeFile(const SafeFile&) = delete;
    SafeFile& operator=(const SafeFile&) = delete;
    ~SafeFile();

    [[nodiscard]] std::filesystem::path temporary() const { return folder_ / final_name_.filename(); }
    [[nodiscard]] tl::expected<void, Refusal> commit();
    // A refusal about this file.
    [[nodiscard]] Refusal cannot_write(const std::string& reason) const;

private:
    SafeFile(std::filesystem::path shown, std::filesystem::path final_name, std::filesystem::path folder);
    std::filesystem::path shown_;       // the name as it was given
    std::filesystem::path final_name_;  // links followed
    std::filesystem::path folder_;      // empty once nothing is left to remove
};

// A whole text at once.
[[nodiscard]] tl::expected<void, Refusal> write_text_file(const std::filesystem::path& file, std::string_view text);

}  // namespace plugside
