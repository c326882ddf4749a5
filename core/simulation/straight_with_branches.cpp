// Straight pieces of near-equal length end to end, left and right turns random about 0, branches near right angles at
// near-equal spacing. Source of the mechanism: Andersen 1988 (Geomys); Reichman, Whitham & Ruffner 1982.
#include <algorithm>
#include <cmath>

#include "core/simulation/run_generators.h"
#include "core/units/bearing.h"

namespace plugside {

namespace {

struct StraightPieces {
    double piece_m = 3.0;
    double piece_variation = 0.1;
    double turn_sd_degrees = 25.0;
    double branch_gap_m = 6.0;
    double branch_m = 4.0;
    double branch_angle_sd = 8.0;
};

// Digs pieces until `length_m`; a piece that meets something is tried again in other directions, then the run ends.
void dig_pieces(SystemDigging& digging, const StraightPieces& pieces, Bearing heading, double length_m, Random& random) {
    constexpr int directions_tried = 6;
    double rest_m = length_m;
    bool first = true;
    while (rest_m > 0.2) {
        const double drawn = pieces.piece_m * std::max(0.5, random.normal(1.0, pieces.piece_variation));
        const double piece = std::min(rest_m, drawn);
        bool dug = false;
        for (int attempt = 0; attempt < directions_tried && !dug; ++attempt) {
            const double turn_sd = pieces.turn_sd_degrees * (1.0 + 0.4 * attempt);
            const Bearing direction = first && attempt == 0 ? heading : heading.turned(random.normal(0.0, turn_sd));
            const LocalPoint target = digging.tip() + direction.unit() * piece;
            if (!digging.free_towards(target)) continue;
            digging.dig_to(target);
            heading = direction;
            dug = true;
        }
        if (!dug) return;
        first = false;
        rest_m -= piece;
    }
}

// Branches along one run, at near-equal gaps, to either side, until the system has its length.
void dig_branches(SystemDigging& digging, const StraightPieces& pieces, std::size_t run_number, double length_m,
                  Random& random) {
    const Polyline run = digging.grown().runs[run_number];  // a copy: new runs are added while it is walked
    double at_m = pieces.branch_gap_m * random.uniform(0.3, 1.0);
    while (digging.grown().length_m < length_m) {
        const auto i = static_cast<std::size_t>(at_m / dig_step_m);
        if (i + 1 >= run.vertices.size()) return;
        at_m += pieces.branch_gap_m * std::max(0.5, random.normal(1.0, 0.1));
        const auto along = Bearing::along(run.vertices[i + 1] - run.vertices[i > 0 ? i - 1 : 0]);
        if (!along) continue;
        const double turn = (random.chance(0.5) ? 90.0 : -90.0) + random.normal(0.0, pieces.branch_angle_sd);
        const double branch_m = pieces.branch_m * std::max(0.5, random.normal(1.0, 0.15));
        digging.start_run(run.vertices[i]);
        dig_pieces(digging, pieces, along->turned(turn), std::min(branch_m, length_m - digging.grown().length_m + 0.5),
                   random);
        digging.end_run(1.0);
    }
}

void dig_straight_system(SystemDigging& digging, const StraightPieces& pieces, LocalPoint start, double length_m,
                         Random& random) {
    const double branch_share = pieces.branch_m / (pieces.branch_m + pieces.branch_gap_m);
    digging.start_run(start);
    dig_pieces(digging, pieces, Bearing::degrees(random.uniform(0.0, 360.0)),
               length_m * (1.0 - branch_share * random.uniform(0.6, 1.0)), random);
    digging.end_run(1.0);
    for (std::size_t run = 0; run < digging.grown().runs.size() && run < 8; ++run)  // branches of branches come last
        dig_branches(digging, pieces, run, length_m, random);
}

}  // namespace

std::vector<GrownSystem> grow_straight_with_branches(const FieldDomain& domain, const FieldScales& scales,
                                                     double run_length_m, Random& random) {
    StraightPieces pieces;
    pieces.piece_m = random.log_uniform(1.5, 5.0);
    pieces.piece_variation = random.uniform(0.05, 0.2);
    pieces.turn_sd_degrees = random.uniform(12.0, 40.0);
    pieces.branch_gap_m = random.uniform(4.0, 12.0);
    pieces.branch_m = random.uniform(2.0, 7.0);
    pieces.branch_angle_sd = random.uniform(5.0, 12.0);
    return dig_one_after_another(domain, scales, run_length_m, random,
                                 [&](SystemDigging& digging, LocalPoint start, double length_m) {
                                     dig_straight_system(digging, pieces, start, length_m, random);
                                 });
}

}  // namespace plugside
