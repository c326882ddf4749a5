#include "core/sets/animal_cover.h"

#include <algorithm>
#include <utility>

namespace plugside {

AnimalCover::AnimalCover(std::vector<CoverItem> items, std::size_t draws)
    : items_(std::move(items)), weight_(draws > 0 ? 1.0 / static_cast<double>(draws) : 1.0), taken_(items_.size(), false) {
    std::uint32_t animals = 0;
    for (const CoverItem& item : items_)
        for (const std::uint32_t animal : item.animals) animals = std::max(animals, animal + 1);
    missed_.assign(animals, 1.0);
    begins_.assign(static_cast<std::size_t>(animals) + 1, 0);
    for (const CoverItem& item : items_)
        for (const std::uint32_t animal : item.animals) ++begins_[animal + 1];
    for (std::size_t a = 0; a < animals; ++a) begins_[a + 1] += begins_[a];
    at_.resize(begins_.back());
    std::vector<std::size_t> filled(begins_.begin(), begins_.end() - 1);
    for (std::uint32_t i = 0; i < items_.size(); ++i)
        for (const std::uint32_t animal : items_[i].animals) at_[filled[animal]++] = i;
}

std::span<const std::uint32_t> AnimalCover::at(std::size_t animal) const {
    return std::span(at_).subspan(begins_[animal], begins_[animal + 1] - begins_[animal]);
}

double AnimalCover::missed_by_others(std::size_t animal, std::size_t item) const {
    double missed = 1.0;
    for (const std::uint32_t other : at(animal))
        if (other != item && taken_[other]) missed *= 1.0 - items_[other].chance;
    return missed;
}

// Worked out from all that stand at an animal, not multiplied on: what is left again leaves no trace of rounding.
void AnimalCover::set_taken(std::size_t item, bool taken) {
    taken_[item] = taken;
    const double miss = taken ? 1.0 - items_[item].chance : 1.0;
    for (const std::uint32_t animal : items_[item].animals) missed_[animal] = missed_by_others(animal, item) * miss;
}

void AnimalCover::take(std::size_t item) { set_taken(item, true); }

void AnimalCover::leave(std::size_t item) { set_taken(item, false); }

double AnimalCover::gain(std::size_t item) const {
    double missed = 0.0;
    for (const std::uint32_t animal : items_[item].animals) missed += missed_[animal];
    return items_[item].chance * missed * weight_;
}

double AnimalCover::reached() const {
    double sum = 0.0;
    for (const double missed : missed_) sum += 1.0 - missed;
    return sum * weight_;
}

double AnimalCover::cost() const {
    double sum = 0.0;
    for (std::size_t i = 0; i < items_.size(); ++i)
        if (taken_[i]) sum += items_[i].cost;
    return sum;
}

}  // namespace plugside
