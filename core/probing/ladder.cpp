#include "core/probing/ladder.h"

#include <algorithm>
#include <cassert>
#include <cmath>

namespace plugside {

namespace {

double chance_within(const RunOffset& offset, double low_m, double high_m) {
    return high_m > low_m ? offset.below(high_m) - offset.below(low_m) : 0.0;
}

double to_the_centimetre(double metres) { return std::round(metres * 100.0) / 100.0; }

}  // namespace

std::vector<Metres> rungs_of(Metres half_length, Metres step) {
    assert(step.value() > 0.0);
    std::vector<Metres> rungs{Metres::of(0.0)};
    for (int k = 1; static_cast<double>(k) * step.value() <= half_length.value() + 1e-9; ++k) {
        rungs.push_back(step * -static_cast<double>(k));
        rungs.push_back(step * static_cast<double>(k));
    }
    return rungs;
}

LadderPromise promise_of(const RunOffset& offset, Metres middle, const std::vector<Metres>& rungs, Metres tunnel_diameter) {
    const double reach = 0.5 * tunnel_diameter.value();
    double low = middle.value();
    double high = low;
    double found = 0.0;
    double expected = 0.0;
    bool first = true;
    for (const Metres rung : rungs) {
        expected += 1.0 - found;  // this hole is pushed when none before it met the run
        const double at = middle.value() + rung.value();
        if (first) {
            low = at - reach;
            high = at + reach;
            found = chance_within(offset, low, high);
            first = false;
        } else if (at < low + reach) {  // the row grows downwards
            const double edge = std::min(low, at + reach);
            found += chance_within(offset, at - reach, edge);
            low = std::min(low, at - reach);
        } else {
            const double edge = std::max(high, at - reach);
            found += chance_within(offset, edge, at + reach);
            high = std::max(high, at + reach);
        }
    }
    return {Probability::of(std::clamp(found, 0.0, 1.0)), expected};
}

PlacedRow place_row(const RunOffset& offset, Metres tunnel_diameter, const LadderOptions& options) {
    PlacedRow row{Metres::of(to_the_centimetre(offset.mean_m())), options.step, options.step};
    const double wanted = options.enough * offset.presence;
    const int most = static_cast<int>(std::floor(options.longest_half / options.step + 1e-9));
    for (int k = 1; k <= most; ++k) {
        row.half_length = options.step * static_cast<double>(k);
        const double reach = row.half_length.value() + 0.5 * tunnel_diameter.value();
        if (chance_within(offset, row.middle.value() - reach, row.middle.value() + reach) >= wanted) break;
    }
    return row;
}

}  // namespace plugside
