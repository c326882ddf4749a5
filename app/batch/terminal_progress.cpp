#include "app/batch/terminal_progress.h"

#include <unistd.h>

#include <algorithm>
#include <cmath>
#include <cstdio>

namespace plugside {

namespace {

constexpr std::chrono::milliseconds least_between_lines{80};

}  // namespace

TerminalProgress::TerminalProgress() : on_terminal_(isatty(STDERR_FILENO) == 1) {}

void TerminalProgress::say(double share_done, std::string_view doing) {
    if (!on_terminal_) return;
    const std::lock_guard<std::mutex> lock(mutex_);
    const auto now = std::chrono::steady_clock::now();
    if (line_stands_ && now - last_ < least_between_lines) return;
    last_ = now;
    line_stands_ = true;
    const int in_100 = static_cast<int>(std::lround(std::clamp(share_done, 0.0, 1.0) * 100.0));
    std::fprintf(stderr, "\r\033[K%3d %%  %.*s", in_100, static_cast<int>(std::min<std::size_t>(doing.size(), 60)),
                 doing.data());
    std::fflush(stderr);
}

void TerminalProgress::finish() {
    const std::lock_guard<std::mutex> lock(mutex_);
    if (!line_stands_) return;
    line_stands_ = false;
    std::fputs("\r\033[K", stderr);
    std::fflush(stderr);
}

Progress TerminalProgress::piece(double from, double to, const std::stop_token& stop) {
    Progress progress;
    progress.stop = stop;
    if (on_terminal_)
        progress.report = [this, from, to](double share, std::string_view doing) { say(from + (to - from) * share, doing); };
    return progress;
}

}  // namespace plugside
