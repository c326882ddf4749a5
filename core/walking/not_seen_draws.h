// The draws behind the numbers of mounds and animals that were not seen; see not_seen.h for the model.
//
// Preconditions: walked has places; draws > 0. Deterministic.
// Cost:      O(draws x places).
#pragma once

#include <vector>

#include "core/walking/not_seen.h"

namespace plugside {

struct SeenSoFar {
    double marks_walked = 0.0;  // usable marks on walked ground
    double marks_unwalked = 0.0;
    double unwalked_places = 0.0;       // in places as large as those of `walked`
    double unwalked_seen_chance = 0.0;  // mean, from lines further off than the reach
    Amount systems;                     // animals found, with their interval
    std::vector<double> system_sizes;   // mounds seen, one a system
};

struct NotSeenDraws {
    Amount missed;
    Amount unwalked;
    Amount animals;
    Amount in_all;
};

[[nodiscard]] NotSeenDraws draw_not_seen(const DetectionFit& detection, const PassedPlaces& walked, const SeenSoFar& seen,
                                         const NotSeenOptions& options);

}  // namespace plugside
