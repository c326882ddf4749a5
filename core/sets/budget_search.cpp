#include "core/sets/budget_search.h"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <queue>
#include <tuple>

namespace plugside {

namespace {

constexpr double rounding = 1e-9;            // of a budget, and of animals
constexpr std::size_t most_nodes = 200'000;  // of the search
constexpr std::size_t most_searched = 40;    // items: more are seldom searched through within so many nodes
constexpr int most_rounds_of_swaps = 4;
constexpr int price_halvings = 14;

// Gains that differ by less are the same: a field that lies turned elsewhere differs in the last digits.
double comparable(double gain) { return std::round(gain * 1e9); }

double take_forced(AnimalCover& cover) {
    double cost = 0.0;
    for (std::size_t i = 0; i < cover.items().size(); ++i)
        if (cover.items()[i].forced) {
            cover.take(i);
            cost += cover.items()[i].cost;
        }
    return cost;
}

// Lazy greedy: what an item adds only falls, so the one whose fresh gain still leads is the best. Returns the items in order.
std::vector<std::size_t> take_greedily(AnimalCover& cover, double room, bool for_cost) {
    const auto worth = [&](std::size_t i) { return comparable(cover.gain(i) / (for_cost ? cover.items()[i].cost : 1.0)); };
    using Bound = std::pair<double, std::ptrdiff_t>;  // worth, then the earlier item
    std::priority_queue<Bound> open;
    for (std::size_t i = 0; i < cover.items().size(); ++i)
        if (!cover.taken(i)) open.emplace(worth(i), -static_cast<std::ptrdiff_t>(i));
    std::vector<std::size_t> order;
    while (!open.empty()) {
        const auto [bound, negative] = open.top();
        const auto i = static_cast<std::size_t>(-negative);
        open.pop();
        if (cover.items()[i].cost > room + rounding) continue;
        const double now = worth(i);
        if (now < bound) {
            open.emplace(now, negative);
            continue;
        }
        cover.take(i);
        room -= cover.items()[i].cost;
        order.push_back(i);
    }
    return order;
}

// Of each item those that stand at an animal of its own in some draw.
std::vector<std::vector<std::size_t>> rivals_of(const AnimalCover& cover) {
    std::vector<std::vector<std::size_t>> rivals(cover.items().size());
    for (std::size_t i = 0; i < rivals.size(); ++i) {
        for (const std::uint32_t animal : cover.items()[i].animals)
            for (const std::uint32_t other : cover.at(animal))
                if (other != i) rivals[i].push_back(other);
        std::sort(rivals[i].begin(), rivals[i].end());
        rivals[i].erase(std::unique(rivals[i].begin(), rivals[i].end()), rivals[i].end());
    }
    return rivals;
}

// Gives single chosen items for others that fit and add more, until none does. Only rivals add more when an item goes; what the others add
// is remembered.
void swap_items(AnimalCover& cover, const std::vector<std::vector<std::size_t>>& rivals, double& room) {
    const std::size_t n = cover.items().size();
    std::vector<double> adds(n, 0.0);
    const auto look_again = [&](std::size_t i) {
        adds[i] = cover.taken(i) ? 0.0 : cover.gain(i);
        for (const std::size_t rival : rivals[i]) adds[rival] = cover.taken(rival) ? 0.0 : cover.gain(rival);
    };
    for (std::size_t i = 0; i < n; ++i) adds[i] = cover.taken(i) ? 0.0 : cover.gain(i);
    bool better = true;
    for (int round = 0; better && round < most_rounds_of_swaps; ++round) {
        better = false;
        for (std::size_t out = 0; out < n; ++out) {
            if (!cover.taken(out) || cover.items()[out].forced) continue;
            cover.leave(out);
            look_again(out);
            const double freed = room + cover.items()[out].cost;
            std::size_t best = out;
            double most = adds[out] + rounding;
            for (std::size_t in = 0; in < n; ++in) {
                if (cover.taken(in) || adds[in] <= most || cover.items()[in].cost > freed + rounding) continue;
                most = adds[in];
                best = in;
            }
            cover.take(best);
            look_again(best);
            if (best != out) look_again(out);
            room = freed - cover.items()[best].cost;
            if (best == out) continue;
            better = true;
            for (const std::size_t added : take_greedily(cover, room, true)) {
                room -= cover.items()[added].cost;
                look_again(added);
            }
        }
    }
}

// The choice where cost has a price: items go, come, or give way to a rival while that raises what is reached less the price.
void settle_at_price(AnimalCover& cover, const std::vector<std::vector<std::size_t>>& rivals, double price) {
    const auto profit = [&](std::size_t i) { return cover.gain(i) - price * cover.items()[i].cost; };
    bool better = true;
    for (int round = 0; better && round < most_rounds_of_swaps; ++round) {
        better = false;
        for (std::size_t i = 0; i < cover.items().size(); ++i) {
            if (cover.items()[i].forced) continue;
            const bool was_taken = cover.taken(i);
            if (was_taken) cover.leave(i);
            const double own = profit(i);
            std::size_t best = i;
            double most = own;
            if (was_taken)
                for (const std::size_t rival : rivals[i]) {
                    if (cover.taken(rival) || profit(rival) <= most + rounding) continue;
                    best = rival;
                    most = profit(rival);
                }
            if (most > 0.0) cover.take(best);
            better = better || (most > 0.0) != was_taken || best != i;
        }
    }
}

// By bisection, the price at which the choice just fits the room; then what still fits.
AnimalCover choice_by_price(const AnimalCover& forced_only, const std::vector<std::vector<std::size_t>>& rivals,
                            double room_at_first) {
    const double budget = room_at_first + forced_only.cost();
    AnimalCover best = forced_only;
    double low = 0.0;
    double high = 0.0;
    for (std::size_t i = 0; i < best.items().size(); ++i) high = std::max(high, best.gain(i) / best.items()[i].cost);
    for (int halving = 0; halving < price_halvings; ++halving) {
        const double price = 0.5 * (low + high);
        AnimalCover tried = forced_only;
        settle_at_price(tried, rivals, price);
        const double room = budget - tried.cost();
        (room < 0.0 ? low : high) = price;
        if (room < 0.0) continue;
        take_greedily(tried, room, true);
        if (tried.reached() > best.reached() + rounding) best = std::move(tried);
    }
    return best;
}

std::vector<std::size_t> taken_items(const AnimalCover& cover) {
    std::vector<std::size_t> items;
    for (std::size_t i = 0; i < cover.items().size(); ++i)
        if (cover.taken(i)) items.push_back(i);
    return items;
}

// Depth first: the item that adds most for its cost is taken, then left out. What is left adds at most its gains now, as far as the
// budget goes (a fractional knapsack): where that does not beat the best found, nothing further on does.
class Search {
public:
    Search(AnimalCover cover, double room, double best) : cover_(std::move(cover)), room_(room), best_(best) {
        for (std::size_t i = 0; i < cover_.items().size(); ++i)
            if (!cover_.taken(i)) open_.push_back(i);
    }

    // Whether it got through; `better` then holds the best choice if it is better than what was known.
    bool run() {
        go_on(open_, cover_.reached());
        return nodes_ < most_nodes;
    }
    [[nodiscard]] const std::vector<std::size_t>& better() const { return better_; }

private:
    void go_on(const std::vector<std::size_t>& open, double reached) {
        if (reached > best_ + rounding) {
            best_ = reached;
            better_ = taken_items(cover_);
        }
        if (++nodes_ >= most_nodes) return;
        struct Gain {
            double worth, gain;
            std::size_t item;
        };
        std::vector<Gain> gains;
        for (const std::size_t i : open) {
            if (cover_.items()[i].cost > room_ + rounding) continue;
            const double gain = cover_.gain(i);
            gains.push_back({gain / cover_.items()[i].cost, gain, i});
        }
        std::sort(gains.begin(), gains.end(),
                  [](const Gain& a, const Gain& b) { return std::tuple(-a.worth, a.item) < std::tuple(-b.worth, b.item); });
        std::vector<std::size_t> rest;
        for (const Gain& gain : gains) rest.push_back(gain.item);
        for (std::size_t k = 0; k < gains.size(); ++k) {
            double bound = reached;
            double room = room_;
            for (std::size_t j = k; j < gains.size() && room > 0.0; ++j) {
                const double cost = cover_.items()[gains[j].item].cost;
                bound += gains[j].gain * std::min(1.0, room / cost);
                room -= cost;
            }
            if (bound <= best_ + rounding || nodes_ >= most_nodes) return;
            const std::size_t item = gains[k].item;
            cover_.take(item);
            room_ -= cover_.items()[item].cost;
            go_on({rest.begin() + static_cast<std::ptrdiff_t>(k) + 1, rest.end()}, reached + gains[k].gain);
            room_ += cover_.items()[item].cost;
            cover_.leave(item);
        }
    }

    AnimalCover cover_;
    double room_;
    double best_;
    std::vector<std::size_t> open_;
    std::vector<std::size_t> better_;
    std::size_t nodes_ = 0;
};

// The chosen items: forced ones first, then by what each adds for its cost.
std::vector<std::size_t> in_order(AnimalCover cover, const std::vector<std::size_t>& chosen) {
    for (const std::size_t i : chosen) cover.leave(i);
    std::vector<std::size_t> order;
    std::vector<std::size_t> left;
    for (const std::size_t i : chosen) {
        if (cover.items()[i].forced) cover.take(i);
        (cover.items()[i].forced ? order : left).push_back(i);
    }
    while (!left.empty()) {
        const auto worth = [&](std::size_t i) { return comparable(cover.gain(i) / cover.items()[i].cost); };
        auto best = left.begin();
        double most = worth(*best);
        for (auto it = left.begin() + 1; it != left.end(); ++it)
            if (const double now = worth(*it); now > most) {
                most = now;
                best = it;
            }
        cover.take(*best);
        order.push_back(*best);
        left.erase(best);
    }
    return order;
}

}  // namespace

std::vector<std::size_t> greedy_order(AnimalCover cover) {
    take_forced(cover);
    std::vector<std::size_t> order = taken_items(cover);
    const std::vector<std::size_t> rest = take_greedily(cover, 1e300, true);
    order.insert(order.end(), rest.begin(), rest.end());
    return order;
}

CoverChoice best_within(AnimalCover cover, double budget) {
    const double room_at_first = std::max(0.0, budget - take_forced(cover));
    const auto rivals = rivals_of(cover);
    std::vector<AnimalCover> tries{cover, cover, choice_by_price(cover, rivals, room_at_first)};
    take_greedily(tries[0], room_at_first, true);
    take_greedily(tries[1], room_at_first, false);
    AnimalCover best = cover;
    for (AnimalCover& tried : tries) {
        double room = room_at_first - (tried.cost() - cover.cost());
        swap_items(tried, rivals, room);
        if (tried.reached() > best.reached() + rounding) best = std::move(tried);
    }
    CoverChoice choice;
    if (cover.items().size() <= most_searched) {
        Search search(cover, room_at_first, best.reached());
        choice.exact = search.run();
        if (!search.better().empty()) {
            best = cover;
            for (const std::size_t i : search.better()) best.take(i);
        }
    }
    choice.reached = best.reached();
    choice.cost = best.cost();
    choice.bound = choice.exact ? choice.reached : reach_bound(best, budget);
    choice.exact = choice.exact || choice.bound <= choice.reached + rounding;
    choice.items = in_order(best, taken_items(best));
    return choice;
}

}  // namespace plugside
