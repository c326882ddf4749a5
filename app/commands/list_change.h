// What an act changed of a list: the stretch between what both begin with alike and what both end with alike.
//
// Guarantee: `put` of change_between(a, b) makes b of a, row for row; of the change turned round it makes a of b.
// Preconditions: `put` is given the list that the change was told from.
// Cost: O(rows) to tell; keeps no more than the rows from the first that differs to the last.
#pragma once

#include <algorithm>
#include <cassert>
#include <cstddef>
#include <vector>

namespace plugside {

template <typename Row>
struct ListChange {
    std::size_t at = 0;
    std::vector<Row> before;
    std::vector<Row> after;

    [[nodiscard]] bool nothing() const { return before.empty() && after.empty(); }
    [[nodiscard]] ListChange turned_round() const { return {at, after, before}; }
};

template <typename Row>
[[nodiscard]] ListChange<Row> change_between(const std::vector<Row>& before, const std::vector<Row>& after) {
    const auto alike = std::mismatch(before.begin(), before.end(), after.begin(), after.end());
    const auto [last_before, last_after] = std::mismatch(before.rbegin(), std::make_reverse_iterator(alike.first),
                                                         after.rbegin(), std::make_reverse_iterator(alike.second));
    return {static_cast<std::size_t>(alike.first - before.begin()),
            {alike.first, last_before.base()},
            {alike.second, last_after.base()}};
}

template <typename Row>
void put(std::vector<Row>& list, const ListChange<Row>& change) {
    assert(change.at + change.before.size() <= list.size());
    const auto from = list.begin() + static_cast<std::ptrdiff_t>(change.at);
    const auto kept = list.erase(from, from + static_cast<std::ptrdiff_t>(change.before.size()));
    list.insert(kept, change.after.begin(), change.after.end());
}

}  // namespace plugside
