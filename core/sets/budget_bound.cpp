#include <algorithm>
#include <map>
#include <numeric>

#include "core/sets/budget_search.h"

namespace plugside {

namespace {

constexpr int price_steps = 150;
constexpr double kept_of_step = 0.7;
constexpr double near_enough = 1e-3;  // share of what is reached: a bound as near is told as it is

// Animals at which the same items stand, in however many draws.
struct Block {
    std::vector<std::uint32_t> items;
    double weight = 0.0;        // animals that it stands for
    std::vector<double> price;  // of each of its items
    std::vector<double> step;   // the last step down
    std::vector<bool> bought;   // at these prices, by who would buy what is worth most beyond its price
};

// What a block is worth to a buyer at its prices: the greatest of (reached - prices) over all choices of its items. In the best choice every
// item adds more than its price to whatever part of the others stands before it, so only such steps are tried.
class Buyer {
public:
    Buyer(const AnimalCover& cover, Block& block) : cover_(cover), block_(block), chosen_(block.items.size(), false) {
        block_.bought.assign(block.items.size(), false);
    }
    double buy() {
        go_on(0, 0.0, 1.0);
        return best_;
    }

private:
    void go_on(std::size_t from, double value, double missed) {
        if (value > best_) {
            best_ = value;
            block_.bought = chosen_;
        }
        if (value + missed <= best_) return;
        for (std::size_t k = from; k < block_.items.size(); ++k) {
            const double chance = cover_.items()[block_.items[k]].chance;
            const double added = missed * chance - block_.price[k];
            if (added <= 0.0) continue;
            chosen_[k] = true;
            go_on(k + 1, value + added, missed * (1.0 - chance));
            chosen_[k] = false;
        }
    }

    const AnimalCover& cover_;
    Block& block_;
    std::vector<bool> chosen_;
    double best_ = 0.0;
};

class Prices {
public:
    Prices(const AnimalCover& cover, double budget) : cover_(cover), budget_(budget), share_(cover.items().size()) {
        std::map<std::vector<std::uint32_t>, std::size_t> known;
        for (std::size_t animal = 0; animal < cover.animals(); ++animal) {
            const auto at = cover.at(animal);
            const auto [place, fresh] = known.try_emplace({at.begin(), at.end()}, blocks_.size());
            if (fresh)
                blocks_.push_back(
                    {place->first, 0.0, std::vector<double>(at.size(), 0.0), std::vector<double>(at.size(), 0.0), {}});
            blocks_[place->second].weight += cover.weight();
            if (fresh) animal_.push_back(animal);
        }
        alone_.resize(cover.items().size(), 0.0);
        for (std::size_t b = 0; b < blocks_.size(); ++b)
            for (const std::uint32_t item : blocks_[b].items)
                if (cover.taken(item)) alone_[item] += blocks_[b].weight * adds(b, item);
        order_.resize(cover.items().size());
        std::iota(order_.begin(), order_.end(), std::size_t{0});
    }

    // First prices: a chosen item costs what it adds to the others, but no more than the budget's marginal set is worth; one left out
    // what it adds to the chosen, with what they do not charge.
    void set_by_choice(double worth_of_cost) {
        for (std::size_t b = 0; b < blocks_.size(); ++b) {
            Block& block = blocks_[b];
            double open = cover_.missed(animal_[b]);
            for (std::size_t k = 0; k < block.items.size(); ++k) {
                const std::uint32_t item = block.items[k];
                if (!cover_.taken(item)) continue;
                const double wanted = worth_of_cost * cover_.items()[item].cost;
                block.price[k] = adds(b, item) * (alone_[item] > wanted ? wanted / alone_[item] : 1.0);
                open += block.price[k];
            }
            for (std::size_t k = 0; k < block.items.size(); ++k)
                if (!cover_.taken(block.items[k])) block.price[k] = cover_.items()[block.items[k]].chance * open;
        }
    }

    double bound() {
        std::vector<double> earned(cover_.items().size(), 0.0);
        double sum = 0.0;
        for (Block& block : blocks_) {
            sum += block.weight * Buyer(cover_, block).buy();
            for (std::size_t k = 0; k < block.items.size(); ++k) earned[block.items[k]] += block.weight * block.price[k];
        }
        return sum + fill_knapsack(earned);
    }

    // One step down the subgradient, bent towards the steps before it (which keeps it from going to and fro), as far as would reach `target`
    // were the bound straight.
    void improve(double bound, double target) {
        double square = 0.0;
        for (Block& block : blocks_)
            for (std::size_t k = 0; k < block.items.size(); ++k) {
                const double slope = block.weight * (share_[block.items[k]] - (block.bought[k] ? 1.0 : 0.0));
                block.step[k] = kept_of_step * block.step[k] + slope;
                square += block.step[k] * block.step[k];
            }
        if (square <= 0.0) return;
        const double far = (bound - target) / square;
        for (Block& block : blocks_)
            for (std::size_t k = 0; k < block.items.size(); ++k)
                block.price[k] = std::max(0.0, block.price[k] - far * block.step[k]);
    }

private:
    // What a chosen item adds to the other chosen ones at a block's animal.
    [[nodiscard]] double adds(std::size_t b, std::uint32_t item) const {
        return cover_.items()[item].chance * cover_.missed_by_others(animal_[b], item);
    }

    // The most that items can earn within the budget when shares of items may be taken.
    double fill_knapsack(const std::vector<double>& earned) {
        const auto& items = cover_.items();
        std::sort(order_.begin(), order_.end(), [&](std::size_t a, std::size_t b) {
            const double left = earned[a] * items[b].cost;
            const double right = earned[b] * items[a].cost;
            return left != right ? left > right : a < b;
        });
        double sum = 0.0;
        double room = budget_;
        for (const std::size_t i : order_)
            if (items[i].forced) room -= items[i].cost;
        room = std::max(0.0, room);
        for (const std::size_t i : order_) {
            share_[i] = items[i].forced ? 1.0 : std::min(1.0, room / items[i].cost);
            if (!items[i].forced) room = std::max(0.0, room - items[i].cost * share_[i]);
            sum += share_[i] * earned[i];
        }
        return sum;
    }

    const AnimalCover& cover_;
    double budget_;
    std::vector<Block> blocks_;
    std::vector<std::size_t> animal_;  // of each block, one of its animals
    std::vector<double> alone_;        // of each chosen item, what it adds to the others
    std::vector<double> share_;        // of each item, in the knapsack
    std::vector<std::size_t> order_;
};

// What the least worthy chosen item adds for its cost.
double marginal_worth(const AnimalCover& cover) {
    double least = -1.0;
    for (std::size_t i = 0; i < cover.items().size(); ++i) {
        if (!cover.taken(i) || cover.items()[i].forced) continue;
        double alone = 0.0;
        for (const std::uint32_t animal : cover.items()[i].animals) alone += cover.missed_by_others(animal, i);
        const double worth = alone * cover.items()[i].chance * cover.weight() / cover.items()[i].cost;
        if (least < 0.0 || worth < least) least = worth;
    }
    return std::max(0.0, least);
}

}  // namespace

double reach_bound(const AnimalCover& cover, double budget) {
    Prices prices(cover, budget);
    const double reached = cover.reached();
    const double marginal = marginal_worth(cover);
    double best = 1e300;
    double best_factor = 1.0;
    for (const double factor : {0.8, 0.9, 0.95, 1.0, 1.05, 1.1, 1.25}) {
        prices.set_by_choice(factor * marginal);
        const double bound = prices.bound();
        if (bound < best) best_factor = factor;
        best = std::min(best, bound);
    }
    prices.set_by_choice(best_factor * marginal);
    double target_share = 1.0;
    for (int step = 0, idle = 0; step < price_steps && best > (1.0 + near_enough) * reached; ++step) {
        const double bound = prices.bound();
        idle = bound < best - 1e-9 ? 0 : idle + 1;
        best = std::min(best, bound);
        if (idle > 8) {
            target_share *= 0.5;
            idle = 0;
        }
        prices.improve(bound, best - target_share * (best - reached));
    }
    return std::max(best, reached);
}

}  // namespace plugside
