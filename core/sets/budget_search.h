// The best choice of items within a budget, and how much better any choice could be. Inside core only; the plan's own is budget.h.
//
// Choice:   what adds most for its cost, what adds most at all, and what stands where cost has just the price that spends the budget,
//           whichever ends better; then single items given for others while that helps; up to
//           forty items are searched through (branch and bound) until the choice is proven the best.
// Bound:    no choice within the budget reaches more. By Lagrangian decomposition: at every animal each item there has a price of its own; a
//           choice reaches at most what a buyer at each animal gains beyond the prices (the best of all choices there), and what its items
//           earn over all animals, which is no more than the fractional knapsack of the earnings. Any prices give a valid bound; good ones
//           are found from the choice and by a subgradient method.
// Forced:   items taken whatever they cost; the budget left is then 0 or more.
// Guarantee: without swaps and search at least 1 - 1/e of the best for equal costs (Nemhauser, Wolsey & Fisher 1978 [memory]).
// Degenerate input: no items, a budget of 0: nothing (but the forced) is chosen, and that is exact.
// Cost:     O(items^2 + rivals x draws) for a round of swaps (rivals: pairs of items that share an animal in some draw); 200,000 nodes at most of the search; bound O(300 x animals that differ in their items).
#pragma once

#include <cstddef>
#include <vector>

#include "core/sets/animal_cover.h"

namespace plugside {

struct CoverChoice {
    std::vector<std::size_t> items;  // forced ones first, then by what each adds to those before it for its cost
    double reached = 0.0;
    double cost = 0.0;
    double bound = 0.0;
    bool exact = false;  // proven: no choice within the budget reaches more; bound = reached then
};

[[nodiscard]] CoverChoice best_within(AnimalCover cover, double budget);

// Every item in the order of the greedy choice for cost, forced ones first.
[[nodiscard]] std::vector<std::size_t> greedy_order(AnimalCover cover);

// The bound alone, from the items taken in `cover`.
[[nodiscard]] double reach_bound(const AnimalCover& cover, double budget);

}  // namespace plugside
