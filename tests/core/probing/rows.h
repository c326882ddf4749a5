// Rows of probe holes with a known distribution, for the tests.
#pragma once

#include <cmath>
#include <numbers>

#include "core/probing/row_chance.h"

namespace plugside::test {

inline constexpr Metres tunnel = Metres::of(0.064);

// A run that lies normally about `mean_m`, if it is there at all.
inline RowChance normal_row(double mean_m, double sd_m, double presence) {
    const auto below = [&](double at) { return 0.5 * std::erfc((mean_m - at) / (sd_m * std::numbers::sqrt2)); };
    RowChance row;
    row.first_m = -1.0;
    for (int i = 0; i <= 250; ++i) {
        const double at = -1.0 + 0.01 * i;
        row.chance.push_back(static_cast<float>(presence * (below(at + 0.005) - below(at - 0.005))));
    }
    return row;
}

inline double chance_below(const RowChance& row, double at_m) {
    double sum = 0.0;
    for (std::size_t i = 0; i < row.chance.size(); ++i)
        if (row.at_m(i) <= at_m) sum += static_cast<double>(row.chance[i]);
    return sum;
}

}  // namespace plugside::test
