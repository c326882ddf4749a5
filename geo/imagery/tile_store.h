// Tiles that were made, as many as fit: those asked for longest ago go first.
//
// Bound:   `most_bytes` over all pictures, counted with what each tile takes beside its pixels; a tile that is larger alone is
//          not kept.
// Cost:    O(log n) a question.
// Threads: any number at once.
#pragma once

#include <cstdint>
#include <list>
#include <map>
#include <memory>
#include <mutex>

#include "geo/imagery/tile_maker.h"

namespace plugside {

struct TileKey {
    std::uint64_t picture = 0;
    TilePlace place;
    friend auto operator<=>(const TileKey&, const TileKey&) = default;
};

class TileStore {
public:
    explicit TileStore(std::size_t most_bytes) : most_bytes_(most_bytes) {}

    // Null for what is not kept.
    [[nodiscard]] std::shared_ptr<const ImageryTile> find(const TileKey& key);
    void keep(const TileKey& key, std::shared_ptr<const ImageryTile> tile);
    void forget(std::uint64_t picture);
    [[nodiscard]] std::size_t bytes() const;

private:
    struct Kept {
        TileKey key;
        std::shared_ptr<const ImageryTile> tile;
    };
    void drop(std::list<Kept>::iterator which);

    mutable std::mutex mutex_;
    std::size_t most_bytes_;
    std::size_t bytes_ = 0;
    std::list<Kept> by_use_;  // the latest first
    std::map<TileKey, std::list<Kept>::iterator> by_key_;
};

}  // namespace plugside
