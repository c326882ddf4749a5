// Random choices of a test by a key: the same key, the same choices, on every machine.
#pragma once

#include <cstddef>
#include <cstdint>
#include <utility>
#include <vector>

#include "core/systems/keyed_random.h"

namespace plugside::testing_support {

class KeyedChoice {
public:
    explicit KeyedChoice(std::uint64_t key) : key_(key) {}

    double share() { return uniform_of(mixed(key_, ++asked_)); }  // [0, 1)
    double between(double low, double high) { return low + share() * (high - low); }
    std::size_t below(std::size_t count) { return static_cast<std::size_t>(share() * static_cast<double>(count)); }
    bool chance(double of) { return share() < of; }
    template <typename List>
    const auto& one_of(const List& list) {
        return list[below(std::size(list))];
    }
    // Any of an enumeration's words, of which `last` is the last.
    template <typename Word>
    Word word(Word last) {
        return static_cast<Word>(below(static_cast<std::size_t>(last) + 1));
    }

private:
    std::uint64_t key_;
    std::uint64_t asked_ = 0;
};

}  // namespace plugside::testing_support
