// Turns an interrupt (Ctrl+C) or a request to terminate into a stop that the work sees between its steps.
//
// A second signal ends the program at once, for work that does not come to such a place.
// One at a time in a program. The handler only writes a byte into a pipe; a thread of its own asks for the stop.
#pragma once

#include <stop_token>
#include <thread>

namespace plugside {

class StopOnSignal {
public:
    StopOnSignal();
    ~StopOnSignal();
    StopOnSignal(const StopOnSignal&) = delete;
    StopOnSignal& operator=(const StopOnSignal&) = delete;

    [[nodiscard]] std::stop_token token() const { return source_.get_token(); }

private:
    std::stop_source source_;
    std::thread listener_;
};

}  // namespace plugside
