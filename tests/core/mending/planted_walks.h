// Simulated walks with planted faults, the same in every run.
#pragma once

#include <algorithm>
#include <set>
#include <string>

#include "core/mending/findings.h"
#include "core/simulation/burrow_simulator.h"
#include "core/simulation/planted_faults.h"

namespace plugside::test {

struct PlantedWalk {
    SimulatedField field;
    PlantedFaults planted;
};

inline SimulatedField field_number(std::size_t number, std::uint64_t first_seed, std::size_t mounds = 300) {
    SimulationOptions options;
    options.kind = all_field_kinds()[number % all_field_kinds().size()];
    options.seed = first_seed + number;
    options.mounds_wanted = mounds;
    options.with_ground = true;
    return simulate_field(options);
}

inline PlantedWalk planted_walk(std::size_t number, const FaultsToPlant& wanted = {}, std::uint64_t first_seed = 900,
                                std::size_t mounds = 300) {
    PlantedWalk walk{field_number(number, first_seed, mounds), {}};
    Random random(7, number);
    walk.planted = plant_faults(walk.field, wanted, random);
    return walk;
}

inline std::set<std::string> marks_named(const std::vector<Finding>& findings, FindingKind kind) {
    std::set<std::string> names;
    for (const Finding& finding : findings)
        if (finding.kind == kind) names.insert(finding.marks.begin(), finding.marks.end());
    return names;
}

}  // namespace plugside::test
