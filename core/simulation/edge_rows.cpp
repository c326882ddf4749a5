// Along a ditch and the crop rows beside it: each row is a smooth line that follows the ditch at its own distance; systems
// lie along it one after another, long and narrow, with a short branch to the side here and there.
#include <algorithm>
#include <cmath>
#include <numbers>

#include "core/simulation/run_generators.h"
#include "core/units/bearing.h"

namespace plugside {

namespace {

struct RowPattern {
    double first_m = 3.0;  // from the ditch to the first row on either side
    double row_gap_m = 6.0;
    double wobble_m = 0.4;  // how far a run strays from its row
    double wobble_wave_m = 12.0;
    double branch_every_m = 15.0;
    double branch_m = 2.0;
    double empty_chance = 0.15;  // that a longer stretch of a row is free of animals
};

struct Row {
    double across_m = 0.0;  // from the ditch
    double phase = 0.0;
    double second_phase = 0.0;
};

struct RowDigger {
    const FieldDomain& domain;
    const FieldScales& scales;
    const RowPattern& pattern;
    Random& random;
    DugGround ground;
    std::vector<GrownSystem> systems;
    double dug_m = 0.0;

    [[nodiscard]] LocalPoint on_row(const Row& row, double along_m) const;
    void dig_branches(SystemDigging& digging, double length_m) const;
    double dig_system(const Row& row, double from_m, double length_m);
    void dig_row(const Row& row, double run_length_m);
};

LocalPoint RowDigger::on_row(const Row& row, double along_m) const {
    const double turn = 2.0 * std::numbers::pi * along_m / pattern.wobble_wave_m;
    const double stray =
        pattern.wobble_m * (0.7 * std::sin(turn + row.phase) + 0.5 * std::sin(2.3 * turn + row.second_phase));
    return domain.at(along_m, domain.ditch_across_m(along_m) + row.across_m + stray);
}

void RowDigger::dig_branches(SystemDigging& digging, double length_m) const {
    const int wanted = random.poisson(digging.grown().length_m / pattern.branch_every_m);
    for (int i = 0; i < wanted && digging.grown().length_m < length_m; ++i) {
        const auto place = draw_branch_place(digging.grown(), random);
        if (!place) continue;
        const double turn = (random.chance(0.5) ? 90.0 : -90.0) + random.normal(0.0, 10.0);
        digging.start_run(place->at);
        const LocalPoint target =
            place->at + place->along.turned(turn).unit() * (pattern.branch_m * random.uniform(0.5, 1.5));
        if (digging.free_towards(target)) digging.dig_to(target);
        digging.end_run(0.8);
    }
}

// Digs along the row from `from_m`; returns where the system ends.
double RowDigger::dig_system(const Row& row, double from_m, double length_m) {
    constexpr double step_m = 0.2;
    const auto number = static_cast<std::uint32_t>(systems.size());
    SystemDigging digging(domain, ground, number, scales.gap_m, own_gap_m(scales));
    double along_m = from_m;
    digging.start_run(on_row(row, along_m));
    const double main_m = length_m * random.uniform(0.8, 1.0);
    while (digging.grown().length_m < main_m) {
        const LocalPoint next = on_row(row, along_m + step_m);
        if (!digging.free_at(next)) break;
        digging.dig_to(next);
        along_m += step_m;
    }
    digging.end_run(2.0 * scales.spacing_m);
    if (digging.grown().runs.empty()) return along_m + 1.0;
    dig_branches(digging, length_m);
    ground.add(digging.grown(), number);
    dug_m += digging.grown().length_m;
    systems.push_back(digging.grown());
    return along_m;
}

void RowDigger::dig_row(const Row& row, double run_length_m) {
    const double end_m = domain.half_long_m();
    double along_m = -end_m + random.uniform(0.0, 10.0);
    while (along_m < end_m && dug_m < run_length_m) {
        along_m = dig_system(row, along_m, draw_run_length_m(scales, random));
        along_m += scales.gap_m * random.uniform(1.05, 2.5);
        if (random.chance(pattern.empty_chance)) along_m += random.uniform(3.0, 20.0);
    }
}

}  // namespace

std::vector<GrownSystem> grow_edge_rows(const FieldDomain& domain, const FieldScales& scales, double run_length_m,
                                        Random& random) {
    RowPattern pattern;
    pattern.first_m = random.uniform(2.0, 4.0);
    pattern.row_gap_m = scales.gap_m + random.uniform(1.0, 6.0);
    pattern.wobble_m = random.uniform(0.1, 0.8);
    pattern.wobble_wave_m = random.uniform(8.0, 25.0);
    pattern.branch_every_m = random.uniform(6.0, 30.0);
    pattern.branch_m = random.uniform(1.0, 2.5);
    pattern.empty_chance = random.uniform(0.0, 0.3);
    RowDigger digger{domain, scales, pattern, random, DugGround(scales.gap_m), {}, 0.0};
    for (double away_m = pattern.first_m; away_m < 2.0 * domain.half_short_m(); away_m += pattern.row_gap_m)
        for (const double side : {1.0, -1.0}) {
            const Row row{side * away_m, random.uniform(0.0, 2.0 * std::numbers::pi),
                          random.uniform(0.0, 2.0 * std::numbers::pi)};
            digger.dig_row(row, run_length_m);
        }
    return std::move(digger.systems);
}

}  // namespace plugside
