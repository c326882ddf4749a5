// Which animals each of some items reaches with what chance, and what a choice of them reaches together. Inside core only.
//
// Animal:   one of one draw; an item stands at one animal in every draw and reaches it with its chance, on its own. A choice reaches
//           1 - product of (1 - chance) of each animal.
// Value:    reached animals, on average over the draws (each animal weighs one over the number of draws).
// Guarantee: what an item adds never grows as others are taken (submodular).
// Cost:     take, leave: O(draws x chosen items at an animal); gain: O(draws).
#pragma once

#include <cstddef>
#include <cstdint>
#include <span>
#include <vector>

namespace plugside {

struct CoverItem {
    double chance = 0.0;                 // 0..1
    double cost = 1.0;                   // > 0
    bool forced = false;                 // taken whatever it costs
    std::vector<std::uint32_t> animals;  // one a draw, numbers not shared between draws
};

class AnimalCover {
public:
    AnimalCover(std::vector<CoverItem> items, std::size_t draws);

    [[nodiscard]] const std::vector<CoverItem>& items() const { return items_; }
    [[nodiscard]] double weight() const { return weight_; }
    [[nodiscard]] std::size_t animals() const { return missed_.size(); }
    [[nodiscard]] std::span<const std::uint32_t> at(std::size_t animal) const;  // items, ascending

    void take(std::size_t item);
    void leave(std::size_t item);
    [[nodiscard]] bool taken(std::size_t item) const { return taken_[item]; }
    [[nodiscard]] double gain(std::size_t item) const;  // of an item not taken
    [[nodiscard]] double missed(std::size_t animal) const { return missed_[animal]; }
    // Chance that none of the taken items at this animal but `item` reaches it.
    [[nodiscard]] double missed_by_others(std::size_t animal, std::size_t item) const;
    [[nodiscard]] double reached() const;
    [[nodiscard]] double cost() const;

private:
    void set_taken(std::size_t item, bool taken);

    std::vector<CoverItem> items_;
    double weight_ = 1.0;
    std::vector<std::size_t> begins_;  // of each animal its first in at_, and the end
    std::vector<std::uint32_t> at_;
    std::vector<bool> taken_;
    std::vector<double> missed_;  // of each animal
};

}  // namespace plugside
