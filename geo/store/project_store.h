// A project in its one file (ending .plugside), open for as long as this lives.
//
// make:     writes a whole new file (it appears under its name complete or not at all) in place of what is there, and opens it. A
//           file that is open elsewhere is not replaced.
// open:     judges the file, brings an earlier form forward (migrations.h) and reads it. Before that, a copy of the earlier form is
//           put beside it, "meadow (form 1).plugside"; `earlier_kept_as` names it. Whatever is refused is left as it was.
// keep:     brings the file to `now` in one transaction that writes what differs and nothing else. When it returns without a refusal,
//           the act is in the file, whatever happens to the program or the machine afterwards; with one, the file is as it was
//           before and the next `keep` takes both acts. Nothing is written where nothing differs.
// Once:     a file that is open here or elsewhere is refused (project_lock.h). A file that was removed or replaced by another while it
//           was open is not written to.
// Errors:   a Refusal with file, place, found and expected: no project, a newer form, damaged or cut off, in use, read only, disk full.
// Cost:     open: linear. keep: linear to compare, what differs to write, and the disk's own time to say that it is there.
// Threads:  one at a time.
// Lossless: opening gives back what was kept, by Project's ==.
#pragma once

#include <filesystem>
#include <memory>
#include <optional>
#include <tl/expected.hpp>

#include "core/survey/refusal.h"
#include "geo/store/project.h"

namespace plugside {

class ProjectStore {
public:
    [[nodiscard]] static tl::expected<ProjectStore, Refusal> make(const std::filesystem::path& file,
                                                                  std::shared_ptr<const Project> project);
    [[nodiscard]] static tl::expected<ProjectStore, Refusal> open(const std::filesystem::path& file);
    ProjectStore(ProjectStore&&) noexcept;
    ProjectStore& operator=(ProjectStore&&) noexcept;
    ~ProjectStore();

    [[nodiscard]] tl::expected<void, Refusal> keep(std::shared_ptr<const Project> now);

    // As it stands in the file.
    [[nodiscard]] const std::shared_ptr<const Project>& project() const;
    [[nodiscard]] const std::filesystem::path& file() const;
    // Where the file of an earlier form was put before it was brought forward.
    [[nodiscard]] const std::optional<std::filesystem::path>& earlier_kept_as() const;

private:
    struct Open;
    explicit ProjectStore(std::unique_ptr<Open> open);
    std::unique_ptr<Open> open_;
};

inline constexpr const char* project_ending = ".plugside";

// By its ending, or by what its first bytes say. False for what cannot be read and does not have the ending.
[[nodiscard]] bool is_project_file(const std::filesystem::path& file);

}  // namespace plugside
