#include "core/simulation/burrow_simulator.h"

#include <algorithm>
#include <cmath>

#include "core/simulation/mounds_on_runs.h"
#include "core/simulation/run_generators.h"
#include "core/simulation/walk_simulator.h"

namespace plugside {

namespace {

// Each part of a field is drawn from its own stream, so that one more number for the walker moves no burrow.
enum Stream : std::uint64_t { scales_stream = 1, domain_stream, runs_stream, mounds_stream, walk_stream, walkers_stream };

std::uint64_t stream_of(FieldKind kind, Stream part, int attempt) {
    return (static_cast<std::uint64_t>(kind) + 1) * 1000 + static_cast<std::uint64_t>(part) * 10 +
           static_cast<std::uint64_t>(attempt);
}

std::vector<GrownSystem> grow(FieldKind kind, const FieldDomain& domain, const FieldScales& scales, double run_length_m,
                              Random& random) {
    switch (kind) {
        case FieldKind::meander: return grow_meander(domain, scales, run_length_m, random);
        case FieldKind::straight_with_branches: return grow_straight_with_branches(domain, scales, run_length_m, random);
        case FieldKind::crowded_growth: return grow_crowded(domain, scales, run_length_m, random);
        case FieldKind::edge_rows: return grow_edge_rows(domain, scales, run_length_m, random);
        case FieldKind::patch_foraging: return grow_patch_foraging(domain, scales, run_length_m, random);
        case FieldKind::shared_ground: return grow_shared_ground(domain, scales, run_length_m, random);
        case FieldKind::food_tree: return grow_food_tree(domain, scales, run_length_m, random);
    }
    return {};
}

FieldScales scales_of(FieldKind kind, Random& random) {
    FieldScales scales = draw_field_scales(random);
    // a defended border may be narrow: where all ground is taken, works come nearer to it than to each other elsewhere
    if (kind == FieldKind::shared_ground) scales.gap_m = random.log_uniform(1.0, 2.5);
    return scales;
}

// The field's area over that of a field of systems dug one after another; shared ground has its lanes and buffers within.
double room_factor(FieldKind kind) {
    if (kind == FieldKind::crowded_growth) return 0.5;
    return kind == FieldKind::shared_ground ? 0.8 : 1.0;
}

DomainOptions domain_options(const SimulationOptions& options, const FieldScales& scales, double run_length_m,
                             Random& random) {
    DomainOptions domain;
    domain.area_m2 = options.area_m2.value_or(run_length_m * scales.room_per_run_m * room_factor(options.kind));
    domain.aspect = options.kind == FieldKind::edge_rows ? random.uniform(2.5, 6.0) : random.uniform(1.0, 2.2);
    domain.with_ditch = options.with_ground || options.kind == FieldKind::edge_rows;
    domain.with_house = options.with_ground;
    return domain;
}

Ground ground_of(const FieldDomain& domain) {
    Ground ground;
    ground.boundary.parts.push_back(domain.boundary());
    if (domain.ditch()) ground.barriers.push_back({"ditch", *domain.ditch()});
    if (domain.house()) ground.keep_clear.push_back({"house", "people live here", KeepClearKind::building, *domain.house()});
    return ground;
}

std::vector<double> parameters_of(const FieldScales& scales, const std::vector<WalkerHabits>& walkers) {
    const WalkerHabits& habits = walkers.front();
    return {std::log(scales.spacing_m),
            scales.spacing_variation,
            std::log(scales.mounds_median),
            scales.mounds_log_sd,
            std::log(scales.gap_m),
            std::log(scales.room_per_run_m),
            scales.depth_m,
            scales.lean_sd_degrees / 20.0,
            scales.fan_spread_degrees / 10.0,
            scales.side_keeping,
            std::log(habits.shared_sd_m),
            std::log(habits.shared_memory_s),
            std::log(habits.own_sd_m),
            habits.fan_sd_degrees / 20.0,
            habits.no_fan_share,
            habits.miss_chance,
            habits.line_gap_m / 10.0,
            habits.follows_mounds ? 1.0 : 0.0,
            static_cast<double>(walkers.size())};
}

FieldTruth dig_field(const SimulationOptions& options, const FieldScales& scales, const FieldDomain& domain,
                     double run_length_m, int attempt) {
    Random runs_random(options.seed, stream_of(options.kind, runs_stream, attempt));
    Random mounds_random(options.seed, stream_of(options.kind, mounds_stream, attempt));
    FieldTruth truth;
    truth.tunnel_diameter = Metres::of(scales.tunnel_diameter_m);
    for (const GrownSystem& grown : grow(options.kind, domain, scales, run_length_m, runs_random)) {
        put_mounds_on(grown, scales, truth, mounds_random);
        // systems dug one after another can end here; of those that shut each other in none can be taken away
        if (!is_crowded(options.kind) && truth.mounds.size() >= options.mounds_wanted) break;
    }
    return truth;
}

}  // namespace

std::string to_text(FieldKind kind) {
    switch (kind) {
        case FieldKind::meander: return "meander";
        case FieldKind::straight_with_branches: return "straight with branches";
        case FieldKind::crowded_growth: return "crowded growth";
        case FieldKind::edge_rows: return "edge rows";
        case FieldKind::patch_foraging: return "patch foraging";
        case FieldKind::shared_ground: return "shared ground";
        case FieldKind::food_tree: return "food tree";
    }
    return "meander";
}

std::vector<FieldKind> all_field_kinds() {
    return {FieldKind::meander,        FieldKind::straight_with_branches, FieldKind::crowded_growth, FieldKind::edge_rows,
            FieldKind::patch_foraging, FieldKind::shared_ground,          FieldKind::food_tree};
}

bool is_crowded(FieldKind kind) { return kind == FieldKind::crowded_growth || kind == FieldKind::shared_ground; }

SimulatedField simulate_field(const SimulationOptions& options) {
    Random scales_random(options.seed, stream_of(options.kind, scales_stream, 0));
    const FieldScales scales = scales_of(options.kind, scales_random);
    const double run_length_m = static_cast<double>(options.mounds_wanted) * scales.spacing_m * 1.25;
    Random domain_random(options.seed, stream_of(options.kind, domain_stream, 0));
    DomainOptions domain_wanted = domain_options(options, scales, run_length_m, domain_random);
    const double least_area_m2 = options.with_ground ? 5000.0 : 900.0;  // a house needs its yard
    domain_wanted.area_m2 = std::max(domain_wanted.area_m2, least_area_m2);
    const Random domain_start = domain_random;
    constexpr int most_attempts = 8;
    for (int attempt = 0;; ++attempt) {
        Random same_shape = domain_start;
        const FieldDomain domain(domain_wanted, same_shape);
        SimulatedField field;
        field.truth = dig_field(options, scales, domain, run_length_m, attempt);
        // too little room for so many: the same field, a quarter larger
        const bool enough = 10 * field.truth.mounds.size() >= 8 * options.mounds_wanted;
        if (enough || attempt + 1 == most_attempts) {
            Random walk_random(options.seed, stream_of(options.kind, walk_stream, 0));
            if (options.with_ground) field.survey.ground = ground_of(domain);
            Random walkers_random(options.seed, stream_of(options.kind, walkers_stream, 0));
            std::vector<WalkerHabits> walkers(draw_walker_count(domain, walkers_random));
            for (WalkerHabits& habits : walkers) {
                habits = draw_walker_habits(&habits == &walkers.front() ? walk_random : walkers_random);
                if (!options.other_diggers) habits.others_share = 0.0;
            }
            walk_field(domain, walkers, field, walk_random);
            field.truth.parameters = parameters_of(scales, walkers);
            return field;
        }
        domain_wanted.area_m2 *= 1.25;
    }
}

}  // namespace plugside
