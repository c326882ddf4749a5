#include "core/simulation/run_generators.h"

#include <algorithm>
#include <array>

#include "core/units/bearing.h"

namespace plugside {

double own_gap_m(const FieldScales& scales) { return std::clamp(0.6 * scales.spacing_m, 0.7, 1.5); }

std::vector<GrownSystem> dig_one_after_another(const FieldDomain& domain, const FieldScales& scales, double run_length_m,
                                               Random& random, const DigSystem& dig_system) {
    std::vector<GrownSystem> systems;
    DugGround ground(scales.gap_m);
    double dug_m = 0.0;
    for (int failures = 0; dug_m < run_length_m && failures < 60;) {
        const auto start = domain.open_place(random);
        if (!start) break;
        const double length_m = draw_run_length_m(scales, random);
        const auto number = static_cast<std::uint32_t>(systems.size());
        SystemDigging digging(domain, ground, number, scales.gap_m, own_gap_m(scales));
        if (ground.clear_of_others(*start, number, scales.gap_m)) dig_system(digging, *start, length_m);
        // an animal that finds no room for half its works settles elsewhere
        if (digging.grown().length_m < std::max(2.0 * scales.spacing_m, 0.5 * length_m)) {
            ++failures;
            continue;
        }
        failures = 0;
        ground.add(digging.grown(), number);
        dug_m += digging.grown().length_m;
        systems.push_back(digging.grown());
    }
    return systems;
}

std::optional<double> way_past(const SystemDigging& digging, Bearing heading, double look_ahead_m) {
    constexpr std::array<double, 7> bends{0.0, 25.0, -25.0, 50.0, -50.0, 80.0, -80.0};
    for (const double bend : bends)
        if (digging.free_at(digging.tip() + heading.turned(bend).unit() * look_ahead_m)) return bend;
    return std::nullopt;
}

std::optional<BranchPlace> draw_branch_place(const GrownSystem& grown, Random& random) {
    constexpr std::size_t from_end = 10;  // a metre
    const Polyline& run = grown.runs[random.below(grown.runs.size())];
    if (run.vertices.size() < 2 * from_end + 1) return std::nullopt;
    const std::size_t i = from_end + random.below(run.vertices.size() - 2 * from_end);
    const auto along = Bearing::along(run.vertices[i + 1] - run.vertices[i - 1]);
    if (!along) return std::nullopt;
    return BranchPlace{run.vertices[i], *along};
}

}  // namespace plugside
