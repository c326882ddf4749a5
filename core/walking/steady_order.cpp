#include "core/walking/steady_order.h"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <cstdint>
#include <limits>
#include <optional>

#include "core/walking/ways_between.h"

namespace plugside {

namespace {

// Puts places into an order, each where it adds least.
class Insertion {
public:
    Insertion(const std::vector<LocalPoint>& places, const std::vector<std::size_t>& earlier, const VisitingOptions& options)
        : open_(Ground{}),
          ways_(options.ways != nullptr ? *options.ways : open_, with_ends(places, options)),
          order_(earlier) {
        if (options.start) before_first_ = places.size();
        if (options.end) after_last_ = places.size() + (options.start ? 1 : 0);
        round_ = !options.start && !options.end;
    }

    struct Best {
        double added = std::numeric_limits<double>::infinity();
        std::size_t position = 0;
    };
    Best best_for(std::size_t place) {
        Best best;
        for (std::size_t at = 0; at <= order_.size(); ++at) {
            const double added = added_at(place, at);
            if (added < best.added) best = {added, at};
        }
        return best;
    }
    void put(std::size_t place, std::size_t position) {
        order_.insert(order_.begin() + static_cast<std::ptrdiff_t>(position), place);
    }
    [[nodiscard]] const std::vector<std::size_t>& order() const { return order_; }

private:
    static std::vector<LocalPoint> with_ends(std::vector<LocalPoint> places, const VisitingOptions& options) {
        if (options.start) places.push_back(*options.start);
        if (options.end) places.push_back(*options.end);
        return places;
    }
    double metres(std::optional<std::size_t> a, std::optional<std::size_t> b) {
        constexpr double as_good_as_none = 1e7;  // between places that no way joins
        if (!a || !b) return 0.0;
        return std::min(ways_.metres(*a, *b), as_good_as_none);
    }
    double added_at(std::size_t place, std::size_t at) {
        std::optional<std::size_t> before = before_first_;
        std::optional<std::size_t> after = after_last_;
        if (round_ && !order_.empty()) {
            before = order_.back();
            after = order_.front();
        }
        if (at > 0) before = order_[at - 1];
        if (at < order_.size()) after = order_[at];
        const bool between = before && after;
        return metres(before, place) + metres(place, after) - (between ? metres(before, after) : 0.0);
    }

    WalkingWays open_;
    WaysBetween ways_;
    std::vector<std::size_t> order_;
    std::optional<std::size_t> before_first_;
    std::optional<std::size_t> after_last_;
    bool round_ = false;
};

std::vector<std::size_t> with_new_places(const std::vector<LocalPoint>& places, const std::vector<std::size_t>& earlier,
                                         const VisitingOptions& options) {
    std::vector<bool> in_order(places.size(), false);
    for (const std::size_t place : earlier) {
        assert(!in_order[place]);
        in_order[place] = true;
    }
    std::vector<std::size_t> fresh;
    for (std::size_t i = 0; i < places.size(); ++i)
        if (!in_order[i]) fresh.push_back(i);
    Insertion insertion(places, earlier, options);
    // always the one that adds least next: an order in which numbering plays no part
    while (!fresh.empty()) {
        auto next = fresh.begin();
        Insertion::Best least = insertion.best_for(*next);
        for (auto it = fresh.begin() + 1; it != fresh.end(); ++it)
            if (const Insertion::Best best = insertion.best_for(*it); best.added < least.added) {
                least = best;
                next = it;
            }
        insertion.put(*next, least.position);
        fresh.erase(next);
    }
    return insertion.order();
}

}  // namespace

std::vector<std::size_t> steady_order(const std::vector<LocalPoint>& places, const std::vector<std::size_t>& earlier,
                                      const VisitingOptions& options, double least_saving) {
    const std::vector<std::size_t> anew = visiting_order(places, options);
    if (2 * earlier.size() < places.size()) return anew;
    std::vector<std::size_t> kept = with_new_places(places, earlier, options);
    const double kept_m = tour_length(places, kept, options).value();
    return tour_length(places, anew, options).value() < (1.0 - least_saving) * kept_m ? anew : kept;
}

}  // namespace plugside
