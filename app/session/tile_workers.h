// Threads that make tiles of imagery away from the window's: what is wanted now, nearest to the middle of the view first.
//
// want:    replaces all wishes; tiles that are being made and are no longer wished for are stopped.
// made:    called on a working thread after each tile, which then lies in the store.
// Two passes: a wish for a quick tile that came out rough is the asker's to follow with a wish for the whole one.
// Threads: `want`, `open` and `close` from one thread. Destruction waits for the tile at hand to notice its stop.
#pragma once

#include <condition_variable>
#include <functional>
#include <map>
#include <memory>
#include <mutex>
#include <set>
#include <thread>
#include <vector>

#include "geo/imagery/imagery_source.h"
#include "geo/imagery/tile_store.h"

namespace plugside {

struct TileWish {
    TileKey key;
    TileCare care = TileCare::quick;
    friend auto operator<=>(const TileWish&, const TileWish&) = default;
};

class TileWorkers {
public:
    TileWorkers(TileStore& store, std::function<void()> made, int threads = 2);
    ~TileWorkers();

    // A picture under its number; a number that was given before is opened anew.
    void open(std::uint64_t picture, const ImagerySource& source);
    // One whose tiles are made otherwise; each thread has its own maker.
    using Make = std::function<std::optional<ImageryTile>(const TilePlace&, int size)>;
    void open(std::uint64_t picture, std::function<Make()> maker);
    void close(std::uint64_t picture);
    void want(std::vector<TileWish> wishes);  // the most wanted first
    [[nodiscard]] bool idle() const;

private:
    struct Opened {
        std::uint64_t opening = 0;  // counts openings, so that a worker notices a new one under the same number
        std::shared_ptr<const ImagerySource> source;
        std::function<Make()> maker;  // in place of a source
    };
    struct Makers;
    void work(const std::stop_token& stop);
    [[nodiscard]] std::shared_ptr<const ImageryTile> made_by(Makers& makers, const TileWish& wish, const Opened& opened,
                                                             const std::stop_token& stop) const;

    TileStore& store_;
    std::function<void()> made_;
    mutable std::mutex mutex_;
    std::condition_variable_any wake_;
    std::uint64_t openings_ = 0;
    std::map<std::uint64_t, Opened> pictures_;
    std::vector<TileWish> wishes_;  // the most wanted last
    std::map<TileWish, std::stop_source> at_hand_;
    std::vector<std::jthread> threads_;
};

}  // namespace plugside
