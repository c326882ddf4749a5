#include "geo/store/project_lock.h"

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <cerrno>
#include <cstring>
#include <utility>

#include "core/words/words.h"

namespace plugside {

namespace {

// SQLite's own locks lie at the first gigabyte.
constexpr off_t byte_of_the_lock = off_t{1} << 62;

Refusal cannot_open(const std::filesystem::path& file, int error) {
    const std::string name = file.string();
    if (error == ENOENT)
        return {Refusal::Code::missing_file, name, "", Words::later("no such file"), Words::later("a project file")};
    if (error == EISDIR)
        return {Refusal::Code::not_a_file, name, "", Words::later("a folder"), Words::later("a project file")};
    if (error == EACCES || error == EROFS || error == EPERM)
        return {Refusal::Code::cannot_write, name, "", Words::later("a file that may not be written"),
                Words::later("a project that each change can be put into (copy it where you may write)")};
    return {Refusal::Code::unreadable, name, "", std::strerror(error), Words::later("a project file")};
}

}  // namespace

tl::expected<ProjectLock, Refusal> ProjectLock::take(const std::filesystem::path& file) {
    // not waiting: a pipe under that name would keep us for ever
    const int descriptor = ::open(file.c_str(), O_RDWR | O_CLOEXEC | O_NONBLOCK);
    if (descriptor < 0) return tl::unexpected(cannot_open(file, errno));
    ProjectLock lock(descriptor);
    struct stat facts {};
    if (::fstat(descriptor, &facts) != 0 || !S_ISREG(facts.st_mode))
        return tl::unexpected(Refusal{Refusal::Code::not_a_file, file.string(), "", Words::later("a device or pipe"),
                                      Words::later("a project file")});
    struct flock wanted {};
    wanted.l_type = F_WRLCK;
    wanted.l_whence = SEEK_SET;
    wanted.l_start = byte_of_the_lock;
    wanted.l_len = 1;
    if (::fcntl(descriptor, F_OFD_SETLK, &wanted) == 0) return lock;
    if (errno == EAGAIN || errno == EACCES)
        return tl::unexpected(Refusal{Refusal::Code::in_use, file.string(), "",
                                      Words::later("a project that is open already"),
                                      Words::later("one that is open nowhere else")});
    return tl::unexpected(Refusal{Refusal::Code::cannot_write, file.string(), "",
                                  Words::tell("a disk that keeps no locks ({1})", {std::strerror(errno)}),
                                  Words::later("one on which a project can be kept from being opened twice")});
}

ProjectLock::ProjectLock(ProjectLock&& other) noexcept : descriptor_(std::exchange(other.descriptor_, -1)) {}

ProjectLock& ProjectLock::operator=(ProjectLock&& other) noexcept {
    std::swap(descriptor_, other.descriptor_);
    return *this;
}

ProjectLock::~ProjectLock() {
    if (descriptor_ >= 0) ::close(descriptor_);
}

bool ProjectLock::holds(const std::filesystem::path& file) const {
    struct stat held {};
    struct stat named {};
    return ::fstat(descriptor_, &held) == 0 && ::stat(file.c_str(), &named) == 0 && held.st_dev == named.st_dev &&
           held.st_ino == named.st_ino;
}

}  // namespace plugside
