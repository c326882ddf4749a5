// The files of one hand-out in several formats: all of them appear under their names, or none does.
//
// Use:     `write` each with the writer of its format, which gets a name in a hidden folder beside the final one; then `commit()`.
// Failure: of a writer: write no more and let the object go; nothing that lay there was touched. Of `commit`: what was placed is taken
//          back, earlier files stand again (safe_files.h).
// Links:   as safe_file.h: a final name that is a link keeps the link, what it points to is replaced.
// Gives:   the files that were placed, in the order in which they were written, in the folder that was named.
// Errors:  a Refusal that names the final file, also where the writer spoke of the hidden one.
#pragma once

#include <filesystem>
#include <functional>
#include <tl/expected.hpp>
#include <vector>

#include "core/survey/refusal.h"
#include "geo/write/safe_files.h"

namespace plugside {

class StagedFiles {
public:
    using Writer = std::function<tl::expected<void, Refusal>(const std::filesystem::path& file)>;

    [[nodiscard]] tl::expected<void, Refusal> write(const std::filesystem::path& file, const Writer& writer);
    [[nodiscard]] tl::expected<std::vector<std::filesystem::path>, Refusal> commit();

private:
    std::vector<SafeFiles> parts_;
    std::vector<std::filesystem::path> shown_;  // the name that each part was asked for by
};

}  // namespace plugside
