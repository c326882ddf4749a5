#include "core/probing/ladder.h"

#include <algorithm>
#include <cassert>
#include <cmath>

namespace plugside {

namespace {

double to_the_centimetre(double metres) { return std::round(metres * 100.0) / 100.0; }

// The rows about one middle: each with one pair of holes more, as long as a pair more is worth it.
void try_rows(const RowChance& row, Metres tunnel, Metres middle, Metres step, const LadderOptions& options,
              PlacedRow& best) {
    const double enough = options.enough * row.presence();
    RowInHand in_hand(row, tunnel);
    double expected = 1.0;
    in_hand.push(middle);
    const int most = static_cast<int>(std::floor(options.longest_half / step + 1e-9));
    int useless = 0;
    double own_best = -1e9;
    for (int k = 0; k <= most && useless < 3 && (k == 0 || 1.0 - in_hand.not_met() < enough); ++k) {
        if (k > 0)
            for (const double side : {-1.0, 1.0}) {
                expected += in_hand.not_met();
                in_hand.push(middle + step * (side * k));
            }
        const double worth = 1.0 - in_hand.not_met() - options.price * expected;
        useless = worth > own_best ? 0 : useless + 1;
        own_best = std::max(own_best, worth);
        if (worth <= best.worth + 1e-9) continue;
        const Metres half = k > 0 ? Metres::of(std::ceil(step.value() * k * 100.0 - 1e-6) / 100.0) : Metres::of(0.0);
        best = {middle, half, step, {Probability::of(std::clamp(1.0 - in_hand.not_met(), 0.0, 1.0)), expected}, worth};
    }
}

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

PlacedRow place_row(const RowChance& row, Metres tunnel_diameter, const LadderOptions& options) {
    PlacedRow best;
    best.worth = -1e9;
    const double mean = to_the_centimetre(row.mean_m());
    for (int k = -options.middles_either_way; k <= options.middles_either_way; ++k)
        for (const Metres step : options.steps) {
            const Metres middle = Metres::of(to_the_centimetre(mean + 0.02 * k));
            try_rows(row, tunnel_diameter, middle, step, options, best);
        }
    for (const double nearby : {-0.01, 0.01})
        try_rows(row, tunnel_diameter, Metres::of(to_the_centimetre(best.middle.value() + nearby)), best.step, options,
                 best);
    return best;
}

}  // namespace plugside
