// Smooth random numbers over the plane: the same at the same place in every run.
//
// value:  0..1, mean 1/2, smooth over about `size_m`.
// cloudy: three of them, each half as large and half as strong as the one before; 0..1.
// grain:  one number a whole step of the lattice, 0..1, not smooth.
// Cost:   O(1).
// Source: value noise on a lattice of hashed numbers (splitmix64's finisher), common practice.
#pragma once

#include <cstdint>

#include "core/geometry/point.h"

namespace plugside {

class ValueNoise {
public:
    explicit ValueNoise(std::uint64_t seed) : seed_(seed) {}
    [[nodiscard]] double value(LocalPoint at, double size_m) const;
    [[nodiscard]] double cloudy(LocalPoint at, double size_m) const;
    [[nodiscard]] double grain(std::int64_t column, std::int64_t row) const;

private:
    std::uint64_t seed_;
};

}  // namespace plugside
