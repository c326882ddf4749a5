#include "app/session/ordered_work.h"

#include <utility>

namespace plugside {

OrderedWork::OrderedWork() : thread_([this] { run(); }) {}

OrderedWork::~OrderedWork() {
    {
        const std::lock_guard lock(mutex_);
        ending_ = true;
    }
    changed_.notify_all();
    thread_.join();
}

void OrderedWork::tell(std::function<void()> piece) {
    {
        const std::lock_guard lock(mutex_);
        pieces_.push_back(std::move(piece));
    }
    changed_.notify_all();
}

bool OrderedWork::wait(std::chrono::milliseconds most) {
    std::unique_lock lock(mutex_);
    return changed_.wait_for(lock, most, [this] { return pieces_.empty() && !working_; });
}

void OrderedWork::run() {
    std::unique_lock lock(mutex_);
    for (;;) {
        changed_.wait(lock, [this] { return ending_ || !pieces_.empty(); });
        if (pieces_.empty()) return;
        auto piece = std::move(pieces_.front());
        pieces_.pop_front();
        working_ = true;
        lock.unlock();
        piece();
        piece = nullptr;  // what it held goes on this thread
        lock.lock();
        working_ = false;
        changed_.notify_all();
    }
}

}  // namespace plugside
