// Who has a project file open: at most one at a time.
//
// How:     the operating system's lock on a byte far behind the file's end, held by an open file description: it goes with the process
//          however that ends, so that a crash leaves nothing that blocks, and no closing of the file elsewhere in the program lets go
//          of it, as it would of the locks that SQLite itself takes. Two names of one file (links) are one.
// Errors:  in use; a file that may not be written; a disk that keeps no locks.
#pragma once

#include <filesystem>
#include <tl/expected.hpp>

#include "core/survey/refusal.h"

namespace plugside {

class ProjectLock {
public:
    [[nodiscard]] static tl::expected<ProjectLock, Refusal> take(const std::filesystem::path& file);
    ProjectLock(ProjectLock&& other) noexcept;
    ProjectLock& operator=(ProjectLock&& other) noexcept;
    ~ProjectLock();

    // The name still leads to the file that was locked: it was not removed, moved or replaced.
    [[nodiscard]] bool holds(const std::filesystem::path& file) const;

private:
    explicit ProjectLock(int descriptor) : descriptor_(descriptor) {}
    int descriptor_;
};

}  // namespace plugside
