// All animals dig at once: in every round each lengthens the tunnel it is at by one piece, away from what is near, or, when
// it is shut in, starts a branch elsewhere. Space runs out before the animals do: some stay small, borders between systems
// are narrow and follow each other.
#include <algorithm>
#include <array>
#include <memory>

#include "core/simulation/run_generators.h"
#include "core/units/bearing.h"

namespace plugside {

namespace {

constexpr double piece_m = 0.5;

struct Crowd {
    double wobble_degrees = 15.0;  // change of heading a piece
    double branch_chance = 0.03;   // a piece
    int patience = 8;              // branches tried in vain before an animal gives up
};

struct Digger {
    std::unique_ptr<SystemDigging> digging;
    Bearing heading;
    double wanted_m = 0.0;
    int patience_left = 0;
    bool digs_on = true;
};

bool dig_one_piece(Digger& digger, const Crowd& crowd, Random& random) {
    constexpr std::array<double, 7> bends{0.0, 20.0, -20.0, 45.0, -45.0, 75.0, -75.0};
    const double mirror = random.chance(0.5) ? 1.0 : -1.0;  // neither side is tried first always
    const Bearing wished = digger.heading.turned(random.normal(0.0, crowd.wobble_degrees));
    for (const double bend : bends) {
        const Bearing direction = wished.turned(mirror * bend);
        const LocalPoint target = digger.digging->tip() + direction.unit() * piece_m;
        if (!digger.digging->free_towards(target)) continue;
        digger.digging->dig_to(target);
        digger.heading = direction;
        return true;
    }
    return false;
}

bool start_branch(Digger& digger, Random& random) {
    const auto place = draw_branch_place(digger.digging->grown(), random);
    if (!place) return false;
    digger.heading = place->along.turned((random.chance(0.5) ? 90.0 : -90.0) + random.normal(0.0, 12.0));
    if (!digger.digging->free_at(place->at + digger.heading.unit() * piece_m)) return false;
    digger.digging->start_run(place->at);
    return true;
}

void take_turn(Digger& digger, const Crowd& crowd, DugGround& ground, std::uint32_t number, Random& random) {
    if (digger.digging->grown().length_m >= digger.wanted_m) {
        digger.digs_on = false;
        return;
    }
    const bool turns_off = random.chance(crowd.branch_chance) && start_branch(digger, random);
    if (dig_one_piece(digger, crowd, random)) {
        ground.add(digger.digging->tip(), number);
        ground.add(digger.digging->tip() - digger.heading.unit() * (0.5 * piece_m), number);
        return;
    }
    if (!turns_off && start_branch(digger, random)) return;
    digger.digs_on = --digger.patience_left > 0;
}

std::vector<Digger> settle(const FieldDomain& domain, const FieldScales& scales, double run_length_m, const Crowd& crowd,
                           DugGround& ground, Random& random) {
    std::vector<Digger> diggers;
    double wanted_m = 0.0;
    for (int failures = 0; wanted_m < run_length_m && failures < 100;) {
        const auto start = domain.open_place(random);
        if (!start) break;
        const auto number = static_cast<std::uint32_t>(diggers.size());
        if (!ground.clear_of_others(*start, number, scales.gap_m)) {
            ++failures;
            continue;
        }
        Digger digger;
        digger.digging = std::make_unique<SystemDigging>(domain, ground, number, scales.gap_m, own_gap_m(scales));
        digger.digging->start_run(*start);
        digger.heading = Bearing::degrees(random.uniform(0.0, 360.0));
        digger.wanted_m = draw_run_length_m(scales, random);
        digger.patience_left = crowd.patience;
        ground.add(*start, number);
        wanted_m += digger.wanted_m;
        diggers.push_back(std::move(digger));
    }
    return diggers;
}

}  // namespace

std::vector<GrownSystem> grow_crowded(const FieldDomain& domain, const FieldScales& scales, double run_length_m,
                                      Random& random) {
    Crowd crowd;
    crowd.wobble_degrees = random.uniform(6.0, 22.0);
    crowd.branch_chance = random.uniform(0.01, 0.05);
    crowd.patience = 4 + static_cast<int>(random.below(10));
    DugGround ground(scales.gap_m);
    std::vector<Digger> diggers = settle(domain, scales, run_length_m, crowd, ground, random);
    for (bool anyone = true; anyone;) {
        anyone = false;
        for (std::size_t i = 0; i < diggers.size(); ++i) {
            if (!diggers[i].digs_on) continue;
            take_turn(diggers[i], crowd, ground, static_cast<std::uint32_t>(i), random);
            anyone = true;
        }
    }
    std::vector<GrownSystem> systems;
    for (const Digger& digger : diggers) {
        GrownSystem grown = digger.digging->grown();
        // a branch that was begun and shut in at once is no run, and an animal without works has left
        std::erase_if(grown.runs, [](const Polyline& run) { return run.vertices.size() < 4; });
        if (grown.length_m >= 2.0 * scales.spacing_m && !grown.runs.empty()) systems.push_back(std::move(grown));
    }
    return systems;
}

}  // namespace plugside
