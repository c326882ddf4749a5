// Made-up fields: burrow systems, their mounds, a walker with a receiver and a compass.
//
// Kinds differ in mechanism, not only in numbers, so that nothing is tuned to one: see the .cpp of each.
// Numbers are drawn from broad ranges around the published ones (sources beside each constant).
// Deterministic: the same kind and seed give the same field, on every machine (own generator, no std distributions).
// Cost: near-linear in the number of mounds.
#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "core/simulation/truth.h"

namespace plugside {

enum class FieldKind {
    meander,
    straight_with_branches,
    crowded_growth,
    edge_rows,
    patch_foraging,
    shared_ground,
    food_tree
};

// "meander", "straight with branches", "crowded growth", "edge rows", "patch foraging", "shared ground",
// "food tree"
[[nodiscard]] std::string to_text(FieldKind kind);
[[nodiscard]] std::vector<FieldKind> all_field_kinds();
// Whether systems of this kind leave each other little room, so that marks alone say less about where one ends.
[[nodiscard]] bool is_crowded(FieldKind kind);

struct SimulationOptions {
    FieldKind kind = FieldKind::meander;
    std::uint64_t seed = 1;
    std::size_t mounds_wanted = 300;  // about; the field's size follows
    bool other_diggers = true;        // some moles', ground squirrels' and voles' signs among the marks
    bool with_ground = false;         // boundary, a ditch as barrier, a house as keep-clear
    // Of the field; nothing = as crowded as the seed has it. Enlarged where it does not hold the mounds wanted.
    std::optional<double> area_m2;
};

[[nodiscard]] SimulatedField simulate_field(const SimulationOptions& options);

}  // namespace plugside
