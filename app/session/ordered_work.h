// Work away from the window's thread where every piece counts: done one after the other in the order told, none forgotten, none at once.
//
// Destruction waits until all that was told is done.
// Threads: `tell` and `wait` from any thread but the worker's own.
#pragma once

#include <chrono>
#include <condition_variable>
#include <deque>
#include <functional>
#include <mutex>
#include <thread>

namespace plugside {

class OrderedWork {
public:
    OrderedWork();
    ~OrderedWork();
    OrderedWork(const OrderedWork&) = delete;
    OrderedWork& operator=(const OrderedWork&) = delete;

    void tell(std::function<void()> piece);
    // Whether all that was told is done, at the latest after `most`.
    [[nodiscard]] bool wait(std::chrono::milliseconds most);

private:
    void run();

    std::mutex mutex_;
    std::condition_variable changed_;
    std::deque<std::function<void()>> pieces_;
    bool working_ = false;
    bool ending_ = false;
    std::thread thread_;  // last: it uses all of the above
};

}  // namespace plugside
