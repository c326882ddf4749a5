// How far the work is, on one line of a terminal that is written over. Where stderr is a pipe or a file, nothing at all.
//
// Threads: `say` may be called from any thread.
// The line is taken away again by `finish` and on destruction, so that what is printed next starts on a clean line.
#pragma once

#include <chrono>
#include <mutex>
#include <stop_token>
#include <string_view>

#include "core/plan/progress.h"

namespace plugside {

class TerminalProgress {
public:
    TerminalProgress();
    ~TerminalProgress() { finish(); }
    TerminalProgress(const TerminalProgress&) = delete;
    TerminalProgress& operator=(const TerminalProgress&) = delete;

    void say(double share_done, std::string_view doing);
    void finish();
    // For work that covers the piece from `from` to `to` of the whole.
    [[nodiscard]] Progress piece(double from, double to, const std::stop_token& stop);

private:
    std::mutex mutex_;
    bool on_terminal_ = false;
    bool line_stands_ = false;
    std::chrono::steady_clock::time_point last_;
};

}  // namespace plugside
