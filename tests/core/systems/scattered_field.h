// Marks at random places with links between near ones, for tests of knowledge and draws.
#pragma once

#include <cmath>
#include <cstdint>
#include <vector>

#include "core/simulation/random.h"
#include "core/systems/keyed_random.h"
#include "core/systems/neighbour_graph.h"

namespace plugside {

struct ScatteredField {
    std::vector<LocalPoint> places;
    std::vector<std::uint64_t> keys;
    std::vector<Link> links;
    std::vector<double> log_weight, log_root;
};

// About one mark a square metre over a square that begins at `east_m`; linked within 1.8 m.
inline ScatteredField scattered_field(std::uint32_t marks, std::uint64_t seed, double east_m = 0.0) {
    ScatteredField field;
    Random random(seed);
    const double side = std::sqrt(static_cast<double>(marks));
    for (std::uint32_t i = 0; i < marks; ++i) {
        field.places.push_back({east_m + random.uniform(0.0, side), random.uniform(0.0, side)});
        field.keys.push_back(mixed(seed, i));
    }
    for (std::uint32_t a = 0; a < marks; ++a)
        for (std::uint32_t b = a + 1; b < marks; ++b)
            if (const double length = distance_m(field.places[a], field.places[b]); length < 1.8) {
                field.links.push_back({a, b, length, 1, 1});
                field.log_weight.push_back(2.5 - 2.5 * length + random.uniform(-0.5, 0.5));
            }
    field.log_root.assign(marks, -1.5);
    return field;
}

}  // namespace plugside
