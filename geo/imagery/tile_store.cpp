#include "geo/imagery/tile_store.h"

#include <iterator>

namespace plugside {

std::shared_ptr<const ImageryTile> TileStore::find(const TileKey& key) {
    const std::scoped_lock lock(mutex_);
    const auto found = by_key_.find(key);
    if (found == by_key_.end()) return nullptr;
    by_use_.splice(by_use_.begin(), by_use_, found->second);
    return found->second->tile;
}

void TileStore::keep(const TileKey& key, std::shared_ptr<const ImageryTile> tile) {
    const std::scoped_lock lock(mutex_);
    if (const auto found = by_key_.find(key); found != by_key_.end()) drop(found->second);
    if (tile->bytes() > most_bytes_) return;
    bytes_ += tile->bytes();
    by_use_.push_front({key, std::move(tile)});
    by_key_[key] = by_use_.begin();
    while (bytes_ > most_bytes_) drop(std::prev(by_use_.end()));
}

void TileStore::forget(std::uint64_t picture) {
    const std::scoped_lock lock(mutex_);
    for (auto it = by_use_.begin(); it != by_use_.end();) {
        const auto next = std::next(it);
        if (it->key.picture == picture) drop(it);
        it = next;
    }
}

std::size_t TileStore::bytes() const {
    const std::scoped_lock lock(mutex_);
    return bytes_;
}

void TileStore::drop(std::list<Kept>::iterator which) {
    bytes_ -= which->tile->bytes();
    by_key_.erase(which->key);
    by_use_.erase(which);
}

}  // namespace plugside
