// Several files that appear under their names together or not at all: the files of one hand-out in a format that needs many.
//
// Use:     write them into `folder()`, close them, then `commit()`: each is synced and renamed into the folder of the name given.
// Failure: files that were placed are taken back and earlier ones put back under their names. Without a commit, everything
//          that was written is removed with the object. Should the machine fail amid the renaming, earlier files that were
//          not yet replaced or put back lie in the folder beside them that starts with a point.
// Gives:   the files' final names, sorted.
// Errors:  a Refusal that names the file: a folder or device in the way, a folder that may not be written, a full disk.
#pragma once

#include <filesystem>
#include <span>
#include <string>
#include <tl/expected.hpp>
#include <vector>

#include "core/survey/refusal.h"
#include "geo/write/safe_file.h"

namespace plugside {

class SafeFiles {
public:
    // `shown` is the name that refusals give; the files go into its folder.
    [[nodiscard]] static tl::expected<SafeFiles, Refusal> beside(const std::filesystem::path& shown);

    [[nodiscard]] std::filesystem::path folder() const { return inner_.temporary().parent_path(); }
    [[nodiscard]] tl::expected<std::vector<std::filesystem::path>, Refusal> commit();
    // The same of several, also in different folders: the files of all or of none. The names one after the other, sorted in each.
    [[nodiscard]] static tl::expected<std::vector<std::filesystem::path>, Refusal> commit_together(
        std::span<const SafeFiles> parts);
    [[nodiscard]] Refusal cannot_write(const std::string& reason) const { return inner_.cannot_write(reason); }

private:
    [[nodiscard]] tl::expected<std::vector<std::filesystem::path>, Refusal> checked_names() const;
    SafeFiles(SafeFile inner, std::filesystem::path into) : inner_(std::move(inner)), into_(std::move(into)) {}
    SafeFile inner_;              // holds the temporary folder and removes it
    std::filesystem::path into_;  // absolute
};

}  // namespace plugside
