// Random numbers keyed by what they are for, not by when they are asked: the same mark, draw and use always gets the same
// number, whatever else is on the field and in whatever order the work is done.
//
// Result: uniform in [0, 1), 53 bits. Quality: the finaliser of splitmix64 (Steele, Lea & Flood 2014 [memory]).
// Cost:   O(1), a few nanoseconds.
#pragma once

#include <cstdint>

namespace plugside {

[[nodiscard]] constexpr std::uint64_t mixed(std::uint64_t x) {
    x += 0x9E3779B97F4A7C15ULL;
    x = (x ^ (x >> 30U)) * 0xBF58476D1CE4E5B9ULL;
    x = (x ^ (x >> 27U)) * 0x94D049BB133111EBULL;
    return x ^ (x >> 31U);
}

[[nodiscard]] constexpr std::uint64_t mixed(std::uint64_t a, std::uint64_t b) { return mixed(a ^ mixed(b)); }

[[nodiscard]] constexpr double uniform_of(std::uint64_t key) {
    return static_cast<double>(mixed(key) >> 11U) * 0x1.0p-53;
}

}  // namespace plugside
