#include "geo/write/safe_files.h"

#include <fcntl.h>
#include <unistd.h>

#include <algorithm>
#include <cerrno>
#include <cstring>
#include <optional>

#include "core/words/words.h"

namespace plugside {

namespace {

namespace fs = std::filesystem;

bool synced(const fs::path& path, int flags) {
    const int descriptor = ::open(path.c_str(), flags | O_CLOEXEC);
    if (descriptor < 0) return false;
    const bool done = ::fsync(descriptor) == 0;
    const int error = errno;
    ::close(descriptor);
    errno = error;
    return done;
}

std::vector<fs::path> names_in(const fs::path& folder) {
    std::vector<fs::path> names;
    for (const auto& entry : fs::directory_iterator(folder)) names.push_back(entry.path().filename());
    std::sort(names.begin(), names.end());
    return names;
}

// Renames that can be undone, newest first.
class Renames {
public:
    bool rename(const fs::path& from, const fs::path& to) {
        if (::rename(from.c_str(), to.c_str()) != 0) return false;
        done_.push_back({from, to});
        return true;
    }
    void undo() {
        for (auto step = done_.rbegin(); step != done_.rend(); ++step) ::rename(step->to.c_str(), step->from.c_str());
        done_.clear();
    }

private:
    struct Step {
        fs::path from;
        fs::path to;
    };
    std::vector<Step> done_;
};

std::optional<std::string> in_the_way(const fs::path& name) {
    std::error_code error;
    const fs::file_status status = fs::symlink_status(name, error);
    if (!fs::exists(status)) return std::nullopt;
    if (fs::is_directory(status)) return Words::tell("the name of a folder");
    if (!fs::is_regular_file(status))
        return Words::tell("a link, device or pipe under the name {1}", {name.filename().string()});
    if (::access(name.c_str(), W_OK) != 0) return Words::tell("an earlier file that may not be written over");
    return std::nullopt;
}

Refusal refused_for(const fs::path& name, const std::string& reason) {
    return {Refusal::Code::cannot_write, name.string(), "", reason, Words::later("a file that can be written")};
}

}  // namespace

tl::expected<SafeFiles, Refusal> SafeFiles::beside(const fs::path& shown) {
    auto inner = SafeFile::beside(shown);
    if (!inner) return tl::unexpected(inner.error());
    return SafeFiles(std::move(*inner), fs::absolute(shown).parent_path());
}

// What is to be placed, once nothing is in its way and the disk keeps it.
tl::expected<std::vector<fs::path>, Refusal> SafeFiles::checked_names() const {
    std::vector<fs::path> names = names_in(folder());
    for (const fs::path& name : names) {
        if (const auto reason = in_the_way(into_ / name)) return tl::unexpected(refused_for(into_ / name, *reason));
        if (!synced(folder() / name, O_RDONLY))
            return tl::unexpected(
                cannot_write(Words::tell("a disk that does not keep it") + " (" + std::strerror(errno) + ")"));
    }
    return names;
}

tl::expected<std::vector<fs::path>, Refusal> SafeFiles::commit_together(std::span<const SafeFiles> parts) {
    std::vector<std::vector<fs::path>> names;
    for (const SafeFiles& part : parts) {
        auto checked = part.checked_names();
        if (!checked) return tl::unexpected(checked.error());
        names.push_back(std::move(*checked));
    }
    std::error_code error;
    Renames renames;
    std::vector<fs::path> placed;
    for (std::size_t i = 0; i < parts.size(); ++i) {
        const fs::path earlier = parts[i].folder() / ".earlier";
        fs::create_directory(earlier, error);
        for (const fs::path& name : names[i]) {
            const fs::path target = parts[i].into_ / name;
            const bool aside = !fs::exists(target, error) || renames.rename(target, earlier / name);
            if (!aside || !renames.rename(parts[i].folder() / name, target)) {
                const std::string reason = Words::tell("a name that cannot be taken") + " (" + std::strerror(errno) + ")";
                renames.undo();
                return tl::unexpected(refused_for(target, reason));
            }
            placed.push_back(target);
        }
    }
    // The files are in place whatever happens now; a folder that cannot be synced (some network disks) is no failure.
    for (const SafeFiles& part : parts) static_cast<void>(synced(part.into_, O_RDONLY | O_DIRECTORY));
    return placed;
}

tl::expected<std::vector<fs::path>, Refusal> SafeFiles::commit() { return commit_together({this, 1}); }

}  // namespace plugside
