#include "geo/write/safe_file.h"

#include <fcntl.h>
#include <unistd.h>

#include <cerrno>
#include <cstdlib>
#include <cstring>
#include <fstream>
#include <utility>

#include "core/words/words.h"

namespace plugside {

namespace {

Refusal refused(const std::filesystem::path& file, const std::string& reason) {
    return {Refusal::Code::cannot_write, file.string(), "", reason, Words::later("a file that can be written")};
}

// False with errno set when it fails.
bool sync_to_disk(const std::filesystem::path& path, int flags) {
    const int descriptor = ::open(path.c_str(), flags | O_CLOEXEC);
    if (descriptor < 0) return false;
    const bool synced = ::fsync(descriptor) == 0;
    const int error = errno;
    ::close(descriptor);
    errno = error;
    return synced;
}

std::string system_reason(const std::string& doing) { return Words::shown(doing) + " (" + std::strerror(errno) + ")"; }

}  // namespace

SafeFile::SafeFile(std::filesystem::path shown, std::filesystem::path final_name, std::filesystem::path folder)
    : shown_(std::move(shown)), final_name_(std::move(final_name)), folder_(std::move(folder)) {}

SafeFile::SafeFile(SafeFile&& other) noexcept
    : shown_(std::move(other.shown_)),
      final_name_(std::move(other.final_name_)),
      folder_(std::exchange(other.folder_, {})) {}

SafeFile::~SafeFile() {
    std::error_code ignored;
    if (!folder_.empty()) std::filesystem::remove_all(folder_, ignored);
}

tl::expected<SafeFile, Refusal> SafeFile::beside(const std::filesystem::path& shown) {
    std::error_code error;
    if (shown.filename().empty() || std::filesystem::is_directory(shown, error))
        return tl::unexpected(refused(shown, Words::later("the name of a folder")));
    std::filesystem::path final_name = std::filesystem::absolute(shown);
    if (std::filesystem::is_symlink(final_name, error)) {
        final_name = std::filesystem::canonical(final_name, error);
        if (error) return tl::unexpected(refused(shown, Words::tell("a link that leads nowhere ({1})", {error.message()})));
    }
    if (std::filesystem::exists(final_name, error) && !std::filesystem::is_regular_file(final_name, error))
        return tl::unexpected(refused(shown, Words::later("a device or pipe under that name")));
    if (std::filesystem::exists(final_name, error) && ::access(final_name.c_str(), W_OK) != 0)
        return tl::unexpected(refused(shown, Words::later("an earlier file that may not be written over")));
    std::string pattern = (final_name.parent_path() / ".").string();
    pattern.append(final_name.filename().string()).append(".XXXXXX");
    if (::mkdtemp(pattern.data()) == nullptr)
        return tl::unexpected(refused(shown, system_reason(Words::later("a folder in which nothing can be written"))));
    return SafeFile(shown, final_name, pattern);
}

Refusal SafeFile::cannot_write(const std::string& reason) const { return refused(shown_, reason); }

tl::expected<void, Refusal> SafeFile::commit() {
    if (!sync_to_disk(temporary(), O_RDONLY))
        return tl::unexpected(cannot_write(system_reason(Words::later("a disk that does not keep it"))));
    if (::rename(temporary().c_str(), final_name_.c_str()) != 0)
        return tl::unexpected(cannot_write(system_reason(Words::later("a name that cannot be taken"))));
    // The file is in place whatever happens now; a folder that cannot be synced (some network disks) is no failure.
    static_cast<void>(sync_to_disk(final_name_.parent_path(), O_RDONLY | O_DIRECTORY));
    std::error_code ignored;
    std::filesystem::remove_all(std::exchange(folder_, {}), ignored);
    return {};
}

tl::expected<void, Refusal> write_text_file(const std::filesystem::path& file, std::string_view text) {
    auto safe = SafeFile::beside(file);
    if (!safe) return tl::unexpected(safe.error());
    std::ofstream stream(safe->temporary(), std::ios::binary);
    stream.write(text.data(), static_cast<std::streamsize>(text.size()));
    stream.close();
    if (!stream) return tl::unexpected(safe->cannot_write(Words::later("a disk that took only a part of it")));
    return safe->commit();
}

}  // namespace plugside
