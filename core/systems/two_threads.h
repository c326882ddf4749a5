// Work on the numbers from 0 to `things`, in pieces, on two threads.
//
// piece:    how many numbers are worth handing out at once; less for heavy work.
// work(begin, end): called for pieces that together are 0..things, each number once; pieces may run at the same time, so
//           what one writes no other may touch. It must not throw.
// Stop:     asked before each piece; the pieces left are then not begun. Returns whether all was done.
// Guarantee: pieces have the same borders in every run, so results that depend on a piece alone are the same in every run.
// Degenerate input: no thing: nothing is called. Few things: one thread.
#pragma once

#include <algorithm>
#include <atomic>
#include <cstddef>
#include <thread>

#include "core/plan/progress.h"

namespace plugside {

template <class Work>
bool on_two_threads(std::size_t things, const Progress& progress, const Work& work, std::size_t piece = 4096) {
    std::atomic<std::size_t> next{0};
    const auto take_pieces = [&] {
        for (std::size_t begin = next.fetch_add(piece); begin < things; begin = next.fetch_add(piece)) {
            if (progress.stopped()) return;
            work(begin, std::min(begin + piece, things));
        }
    };
    if (things <= 2 * piece) {
        take_pieces();
    } else {
        const std::jthread second(take_pieces);
        take_pieces();
    }
    return !progress.stopped();
}

}  // namespace plugside
