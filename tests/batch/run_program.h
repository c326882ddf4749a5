// Runs the built batch program as a person would and keeps what it said.
#pragma once

#include <fcntl.h>
#include <gtest/gtest.h>
#include <signal.h>
#include <spawn.h>
#include <sys/wait.h>
#include <unistd.h>

#include <algorithm>
#include <chrono>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <string>
#include <thread>
#include <vector>

extern char** environ;

namespace plugside::testing_batch {

inline std::string content_of(const std::filesystem::path& file) {
    std::ifstream stream(file, std::ios::binary);
    return {std::istreambuf_iterator<char>(stream), std::istreambuf_iterator<char>()};
}

// A folder of its own that goes with the object.
class TemporaryFolder {
public:
    TemporaryFolder() {
        std::string pattern = testing::TempDir() + "plugside-batch-XXXXXX";
        path_ = mkdtemp(pattern.data()) != nullptr ? pattern : std::string();
    }
    ~TemporaryFolder() {
        std::error_code ignored;
        std::filesystem::remove_all(path_, ignored);
    }
    TemporaryFolder(const TemporaryFolder&) = delete;
    TemporaryFolder& operator=(const TemporaryFolder&) = delete;
    [[nodiscard]] std::string at(const std::string& name) const { return (path_ / name).string(); }
    [[nodiscard]] bool holds_nothing_but(const std::vector<std::string>& names) const {
        for (const auto& entry : std::filesystem::directory_iterator(path_))
            if (std::find(names.begin(), names.end(), entry.path().filename().string()) == names.end()) return false;
        return true;
    }

private:
    std::filesystem::path path_;
};

struct Outcome {
    int code = -1;
    std::string out;
    std::string err;
};

// With `interrupt_after` the program gets an interrupt signal after that time.
inline Outcome run_batch(std::vector<std::string> words, std::chrono::milliseconds interrupt_after = {}) {
    const TemporaryFolder folder;
    const std::string out = folder.at("out");
    const std::string err = folder.at("err");
    words.insert(words.begin(), PLUGSIDE_BINARY_DIR "/plugside-batch");
    std::vector<char*> word_list;
    for (std::string& word : words) word_list.push_back(word.data());
    word_list.push_back(nullptr);
    posix_spawn_file_actions_t actions;
    posix_spawn_file_actions_init(&actions);
    posix_spawn_file_actions_addopen(&actions, STDIN_FILENO, "/dev/null", O_RDONLY, 0);
    posix_spawn_file_actions_addopen(&actions, STDOUT_FILENO, out.c_str(), O_WRONLY | O_CREAT | O_TRUNC, 0600);
    posix_spawn_file_actions_addopen(&actions, STDERR_FILENO, err.c_str(), O_WRONLY | O_CREAT | O_TRUNC, 0600);
    pid_t process = 0;
    const int spawned = posix_spawn(&process, word_list[0], &actions, nullptr, word_list.data(), environ);
    posix_spawn_file_actions_destroy(&actions);
    if (spawned != 0) return {};
    if (interrupt_after.count() > 0) {
        std::this_thread::sleep_for(interrupt_after);
        kill(process, SIGINT);
    }
    int status = 0;
    waitpid(process, &status, 0);
    return {WIFEXITED(status) ? WEXITSTATUS(status) : -1, content_of(out), content_of(err)};
}

inline std::size_t lines_of(const std::string& text) {
    return static_cast<std::size_t>(std::count(text.begin(), text.end(), '\n'));
}

}  // namespace plugside::testing_batch
