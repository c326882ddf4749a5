#include "app/batch/stop_on_signal.h"

#include <fcntl.h>
#include <unistd.h>

#include <array>
#include <cerrno>
#include <csignal>

namespace plugside {

namespace {

std::array<int, 2> signal_pipe{-1, -1};  // a handler reaches nothing but what is static

constexpr char signalled = 's';
constexpr char leave = 'l';

void write_byte(char byte) {
    const int saved = errno;
    [[maybe_unused]] const ssize_t written = write(signal_pipe[1], &byte, 1);
    errno = saved;
}

void on_signal(int) { write_byte(signalled); }

}  // namespace

StopOnSignal::StopOnSignal() {
    if (pipe2(signal_pipe.data(), O_CLOEXEC) != 0) return;  // then a signal ends the program as it would without us
    listener_ = std::thread([this] {
        char byte = 0;
        while (read(signal_pipe[0], &byte, 1) == 1 && byte != leave) source_.request_stop();
    });
    struct sigaction action {};
    action.sa_handler = on_signal;
    action.sa_flags = static_cast<int>(SA_RESTART | SA_RESETHAND);
    sigemptyset(&action.sa_mask);
    for (const int signal : {SIGINT, SIGTERM}) sigaction(signal, &action, nullptr);
}

StopOnSignal::~StopOnSignal() {
    if (!listener_.joinable()) return;
    for (const int signal : {SIGINT, SIGTERM}) std::signal(signal, SIG_DFL);
    write_byte(leave);
    listener_.join();
    for (int& end : signal_pipe) {
        close(end);
        end = -1;
    }
}

}  // namespace plugside
