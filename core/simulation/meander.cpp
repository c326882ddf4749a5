// Smooth runs: the curvature of the way is an autoregressive process, so that a run bends on for some metres before it bends
// back. A tip that comes near other works or the edge turns away from them as far as it can, else it ends.
#include <algorithm>
#include <cmath>
#include <numbers>

#include "core/simulation/run_generators.h"
#include "core/units/bearing.h"

namespace plugside {

namespace {

constexpr double step_m = 0.2;
constexpr double look_ahead_m = 0.8;
constexpr double sharpest_turn_degrees = 9.0;  // a step
constexpr double shortest_run_m = 1.0;

struct Meander {
    double curvature_sd = 0.15;       // radians a metre
    double curvature_memory_m = 3.0;  // distance over which curvature forgets itself by a factor e
    double branch_every_m = 20.0;
    double branch_angle_sd = 12.0;
};

void wander(SystemDigging& digging, const Meander& meander, Bearing heading, double length_m, Random& random) {
    const double memory = std::exp(-step_m / meander.curvature_memory_m);
    const double fresh_sd = meander.curvature_sd * std::sqrt(1.0 - memory * memory);
    double curvature = random.normal(0.0, meander.curvature_sd);
    for (double dug = 0.0; dug < length_m; dug += step_m) {
        curvature = memory * curvature + random.normal(0.0, fresh_sd);
        heading = heading.turned(curvature * step_m * 180.0 / std::numbers::pi);
        const auto bend = way_past(digging, heading, look_ahead_m);
        if (!bend) return;
        if (*bend != 0.0) {
            heading = heading.turned(std::clamp(*bend, -sharpest_turn_degrees, sharpest_turn_degrees));
            curvature = 0.0;
        }
        const LocalPoint next = digging.tip() + heading.unit() * step_m;
        if (!digging.free_at(next)) return;
        digging.dig_to(next);
    }
}

void dig_meandering_system(SystemDigging& digging, const Meander& meander, LocalPoint start, double length_m,
                           Random& random) {
    const Bearing heading = Bearing::degrees(random.uniform(0.0, 360.0));
    const double branches = length_m / meander.branch_every_m;
    digging.start_run(start);
    wander(digging, meander, heading, length_m * random.uniform(1.0 / (1.0 + 0.5 * branches), 1.0), random);
    digging.end_run(shortest_run_m);
    if (digging.grown().runs.empty()) return;
    if (digging.grown().length_m < 0.7 * length_m && random.chance(0.5)) {  // stopped early: on from the other end
        digging.start_run(start);
        wander(digging, meander, heading.reversed(), length_m - digging.grown().length_m, random);
        digging.end_run(shortest_run_m);
    }
    for (int attempt = 0; attempt < 12 && digging.grown().length_m < 0.95 * length_m; ++attempt) {
        const auto place = draw_branch_place(digging.grown(), random);
        if (!place) continue;
        const double turn = (random.chance(0.5) ? 90.0 : -90.0) + random.normal(0.0, meander.branch_angle_sd);
        const double rest = length_m - digging.grown().length_m;
        digging.start_run(place->at);
        wander(digging, meander, place->along.turned(turn), std::min(rest, random.uniform(0.2, 0.6) * length_m), random);
        digging.end_run(shortest_run_m);
    }
}

}  // namespace

std::vector<GrownSystem> grow_meander(const FieldDomain& domain, const FieldScales& scales, double run_length_m,
                                      Random& random) {
    Meander meander;
    meander.curvature_sd = random.log_uniform(0.05, 0.35);
    meander.curvature_memory_m = random.uniform(1.0, 5.0);
    meander.branch_every_m = random.uniform(8.0, 40.0);
    meander.branch_angle_sd = random.uniform(8.0, 18.0);
    return dig_one_after_another(domain, scales, run_length_m, random,
                                 [&](SystemDigging& digging, LocalPoint start, double length_m) {
                                     dig_meandering_system(digging, meander, start, length_m, random);
                                 });
}

}  // namespace plugside
