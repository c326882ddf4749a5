// How long work tells how far it is, and is told to stop.
//
// stop:   asked between steps of at most some tens of milliseconds; work that is stopped returns nothing.
// report: called on the working thread with the share done (0..1, never falling) and a short phrase of what is
//         being done, in English (Words::later); may be empty. It must not block.
#pragma once

#include <functional>
#include <stop_token>
#include <string_view>

namespace plugside {

struct Progress {
    std::stop_token stop;
    std::function<void(double share_done, std::string_view doing)> report;

    [[nodiscard]] bool stopped() const { return stop.stop_requested(); }
    void say(double share_done, std::string_view doing) const {
        if (report) report(share_done, doing);
    }
};

}  // namespace plugside
