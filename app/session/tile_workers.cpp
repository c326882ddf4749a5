#include "app/session/tile_workers.h"

#include <algorithm>
#include <utility>

namespace plugside {

// What one thread has open.
struct TileWorkers::Makers {
    struct Kept {
        std::uint64_t opening = 0;
        std::optional<TileMaker> maker;
        Make make;  // where there is no file
    };
    std::map<std::uint64_t, Kept> by_picture;
};

TileWorkers::TileWorkers(TileStore& store, std::function<void()> made, int threads) : store_(store), made_(std::move(made)) {
    for (int i = 0; i < threads; ++i) threads_.emplace_back([this](const std::stop_token& stop) { work(stop); });
}

TileWorkers::~TileWorkers() {
    {
        const std::scoped_lock lock(mutex_);
        wishes_.clear();
        for (auto& [wish, stop] : at_hand_) stop.request_stop();
    }
    for (std::jthread& thread : threads_) thread.request_stop();
    threads_.clear();
}

void TileWorkers::open(std::uint64_t picture, const ImagerySource& source) {
    const std::scoped_lock lock(mutex_);
    pictures_[picture] = {++openings_, std::make_shared<const ImagerySource>(source), nullptr};
}

void TileWorkers::open(std::uint64_t picture, std::function<Make()> maker) {
    const std::scoped_lock lock(mutex_);
    pictures_[picture] = {++openings_, nullptr, std::move(maker)};
}

void TileWorkers::close(std::uint64_t picture) {
    const std::scoped_lock lock(mutex_);
    pictures_.erase(picture);
    std::erase_if(wishes_, [&](const TileWish& wish) { return wish.key.picture == picture; });
    for (auto& [wish, stop] : at_hand_)
        if (wish.key.picture == picture) stop.request_stop();
}

void TileWorkers::want(std::vector<TileWish> wishes) {
    {
        const std::scoped_lock lock(mutex_);
        const std::set<TileWish> wanted(wishes.begin(), wishes.end());
        for (auto& [wish, stop] : at_hand_)
            if (!wanted.contains(wish)) stop.request_stop();
        std::erase_if(wishes, [&](const TileWish& wish) {
            const auto found = at_hand_.find(wish);
            return found != at_hand_.end() && !found->second.stop_requested();
        });
        std::reverse(wishes.begin(), wishes.end());
        wishes_ = std::move(wishes);
    }
    wake_.notify_all();
}

bool TileWorkers::idle() const {
    const std::scoped_lock lock(mutex_);
    return wishes_.empty() && at_hand_.empty();
}

std::shared_ptr<const ImageryTile> TileWorkers::made_by(Makers& makers, const TileWish& wish, const Opened& opened,
                                                        const std::stop_token& stop) const {
    Makers::Kept& kept = makers.by_picture[wish.key.picture];
    if (kept.opening != opened.opening) {
        kept = {opened.opening, std::nullopt, nullptr};
        if (opened.maker)
            kept.make = opened.maker();
        else if (auto maker = TileMaker::on(*opened.source))
            kept.maker.emplace(std::move(*maker));
    }
    if (kept.make) {
        auto tile = kept.make(wish.key.place, TileOptions{}.size);
        return tile ? std::make_shared<const ImageryTile>(std::move(*tile)) : nullptr;
    }
    if (kept.maker) {
        auto tile = kept.maker->make(wish.key.place, wish.care, stop);
        return tile ? std::make_shared<const ImageryTile>(std::move(*tile)) : nullptr;
    }
    // a file that is gone: an empty tile, so that it is not asked for again and again
    auto nothing = std::make_shared<ImageryTile>();
    nothing->empty = true;
    return nothing;
}

void TileWorkers::work(const std::stop_token& stop) {
    Makers makers;
    std::unique_lock lock(mutex_);
    while (wake_.wait(lock, stop, [&] { return !wishes_.empty(); })) {
        const TileWish wish = wishes_.back();
        wishes_.pop_back();
        const auto found = pictures_.find(wish.key.picture);
        if (found == pictures_.end() || at_hand_.contains(wish)) continue;
        const Opened opened = found->second;
        std::erase_if(makers.by_picture, [&](const auto& kept) { return !pictures_.contains(kept.first); });
        const std::stop_token of_wish = at_hand_[wish].get_token();
        lock.unlock();
        const auto tile = made_by(makers, wish, opened, of_wish);
        lock.lock();
        at_hand_.erase(wish);
        const auto still = pictures_.find(wish.key.picture);
        const bool of_now = still != pictures_.end() && still->second.opening == opened.opening;
        if (tile && of_now) store_.keep(wish.key, tile);
        lock.unlock();
        if (made_) made_();
        lock.lock();
    }
}

}  // namespace plugside
