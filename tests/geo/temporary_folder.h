// A folder of its own for each test, removed with everything in it.
#pragma once

#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <sstream>
#include <stdexcept>
#include <string>
#include <string_view>
#include <tl/expected.hpp>

#include "core/survey/refusal.h"

namespace plugside::testing_support {

class TemporaryFolder {
public:
    TemporaryFolder() {
        std::string pattern = (std::filesystem::temp_directory_path() / "plugside-test-XXXXXX").string();
        if (::mkdtemp(pattern.data()) == nullptr) throw std::runtime_error("no temporary folder can be made");
        path_ = pattern;
    }
    ~TemporaryFolder() {
        std::error_code ignored;
        std::filesystem::permissions(path_, std::filesystem::perms::owner_all, ignored);
        std::filesystem::remove_all(path_, ignored);
    }
    TemporaryFolder(const TemporaryFolder&) = delete;
    TemporaryFolder& operator=(const TemporaryFolder&) = delete;

    [[nodiscard]] std::filesystem::path operator/(const std::string& name) const { return path_ / name; }
    [[nodiscard]] const std::filesystem::path& path() const { return path_; }

    // Writes a file and gives its path.
    std::filesystem::path file(const std::string& name, std::string_view content) const {
        std::ofstream stream(path_ / name, std::ios::binary);
        stream.write(content.data(), static_cast<std::streamsize>(content.size()));
        return path_ / name;
    }
    [[nodiscard]] std::size_t entries() const {
        std::size_t count = 0;
        for ([[maybe_unused]] const auto& entry : std::filesystem::recursive_directory_iterator(path_)) ++count;
        return count;
    }

private:
    std::filesystem::path path_;
};

// "" when it went well, else the refusal's sentence.
inline std::string refusal_of(const tl::expected<void, Refusal>& result) { return result ? "" : sentence(result.error()); }

inline std::string content_of(const std::filesystem::path& file) {
    std::ifstream stream(file, std::ios::binary);
    std::ostringstream text;
    text << stream.rdbuf();
    return text.str();
}

// Runs a command line; its exit code, with everything it said in `said`.
inline int run(const std::string& command, const std::filesystem::path& said) {
    const int status = std::system((command + " > '" + said.string() + "' 2>&1").c_str());
    return status == -1 ? -1 : (status >> 8) & 0xFF;
}

}  // namespace plugside::testing_support
