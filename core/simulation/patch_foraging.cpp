// A search for food. In rich ground an animal turns often and sharply, and turns back at a patch's edge: the run fills the
// patch with hairpins. In poor ground it goes straight on until it meets the next patch. Where it works most, mounds stand
// closest.
#include <algorithm>
#include <cmath>
#include <numbers>

#include "core/simulation/food_field.h"
#include "core/simulation/run_generators.h"

namespace plugside {

namespace {

constexpr double step_m = 0.2;
constexpr double look_ahead_m = 0.7;
constexpr double shortest_run_m = 1.0;
constexpr double least_spacing_m = 0.6;  // nearer than this two mounds' soil would lie on one heap

struct Search {
    double turn_every_rich_m = 2.0;
    double turn_every_poor_m = 12.0;
    double turn_sd_rich_degrees = 90.0;
    double turn_sd_poor_degrees = 12.0;
    double turn_back_chance = 0.6;  // on leaving a patch
    double hairpin_radius_m = 0.8;
    double poor_over_rich = 2.5;  // spacing of mounds in poor ground over that in rich
};

Search draw_search(const FieldScales& scales, Random& random) {
    Search search;
    search.turn_every_rich_m = random.uniform(1.2, 3.5);
    search.turn_every_poor_m = random.log_uniform(6.0, 25.0);
    search.turn_sd_rich_degrees = random.uniform(55.0, 120.0);
    search.turn_sd_poor_degrees = random.uniform(6.0, 20.0);
    search.turn_back_chance = random.uniform(0.3, 0.95);
    search.hairpin_radius_m = own_gap_m(scales) * random.uniform(0.6, 1.0);  // so that the way back keeps its distance
    search.poor_over_rich = random.log_uniform(1.6, 4.0);
    return search;
}

FoodOptions draw_food(Random& random) {
    FoodOptions food;
    food.patch_m = random.log_uniform(4.0, 14.0);
    food.contrast = random.uniform(2.5, 7.0);
    food.scarcity = random.uniform(-0.1, 0.8);
    return food;
}

// One animal's way through the food.
class Forager {
public:
    Forager(SystemDigging& digging, const Search& search, const FoodField& food, Random& random)
        : digging_(digging), search_(search), food_(food), random_(random) {}

    void search_on(Bearing heading, double length_m) {
        const double sharpest = step_m / search_.hairpin_radius_m * 180.0 / std::numbers::pi;  // a step
        heading_ = heading;
        turn_left_ = 0.0;
        in_patch_ = false;
        for (double dug = 0.0; dug < length_m; dug += step_m) {
            decide();
            const double turn = std::clamp(turn_left_, -sharpest, sharpest);
            turn_left_ -= turn;
            heading_ = heading_.turned(turn + random_.normal(0.0, 2.0));
            const auto bend = way_past(digging_, heading_, look_ahead_m);
            if (!bend) return;
            if (*bend != 0.0) {
                heading_ = heading_.turned(std::clamp(*bend, -sharpest, sharpest));
                turn_left_ = 0.0;
            }
            const LocalPoint next = digging_.tip() + heading_.unit() * step_m;
            if (!digging_.free_at(next)) return;
            digging_.dig_to(next);
        }
    }

private:
    void decide() {
        const double food = food_.richness(digging_.tip());
        const bool leaves = in_patch_ && food < 0.45;
        in_patch_ = food > 0.6 || (in_patch_ && !leaves);
        if (leaves && random_.chance(search_.turn_back_chance)) {
            if (const auto richer = Bearing::along(food_.slope(digging_.tip())))
                turn_left_ = turn_degrees(heading_, *richer) + random_.normal(0.0, 25.0);
            return;
        }
        if (turn_left_ != 0.0) return;
        const auto between = [food](double poor, double rich) { return poor * std::pow(rich / poor, food); };
        if (random_.chance(step_m / between(search_.turn_every_poor_m, search_.turn_every_rich_m)))
            turn_left_ = random_.normal(0.0, between(search_.turn_sd_poor_degrees, search_.turn_sd_rich_degrees));
    }

    SystemDigging& digging_;
    const Search& search_;
    const FoodField& food_;
    Random& random_;
    Bearing heading_;
    double turn_left_ = 0.0;  // degrees of the turn that is being made
    bool in_patch_ = false;
};

// Where a branch leaves: of three places the one with most food.
std::optional<BranchPlace> richest_branch_place(const GrownSystem& grown, const FoodField& food, Random& random) {
    std::optional<BranchPlace> best;
    for (int i = 0; i < 3; ++i) {
        const auto place = draw_branch_place(grown, random);
        if (place && (!best || food.richness(place->at) > food.richness(best->at))) best = place;
    }
    return best;
}

void forage(SystemDigging& digging, const Search& search, const FoodField& food, LocalPoint start, double length_m,
            Random& random) {
    if (!random.chance(0.25 + 0.75 * food.richness(start))) return;  // most settle where there is something to eat
    Forager forager(digging, search, food, random);
    const Bearing heading = Bearing::degrees(random.uniform(0.0, 360.0));
    digging.start_run(start);
    forager.search_on(heading, length_m * random.uniform(0.6, 1.0));
    digging.end_run(shortest_run_m);
    if (digging.grown().runs.empty()) return;
    for (int attempt = 0; attempt < 14 && digging.grown().length_m < 0.95 * length_m; ++attempt) {
        const auto place = richest_branch_place(digging.grown(), food, random);
        if (!place) continue;
        const double turn = (random.chance(0.5) ? 90.0 : -90.0) + random.normal(0.0, 14.0);
        const double rest = length_m - digging.grown().length_m;
        digging.start_run(place->at);
        forager.search_on(place->along.turned(turn), std::min(rest, random.uniform(0.2, 0.8) * length_m));
        digging.end_run(shortest_run_m);
    }
}

// Mounds closer where food is rich, so that over all runs there are as many as at an even spacing.
void space_mounds_by_food(std::vector<GrownSystem>& systems, const Search& search, const FoodField& food,
                          const FieldScales& scales) {
    double mounds = 0.0;  // in units of one mound a spacing
    double places = 0.0;
    for (GrownSystem& grown : systems)
        for (const Polyline& run : grown.runs) {
            std::vector<double>& factors = grown.spacing_factors.emplace_back();
            for (const LocalPoint p : run.vertices) {
                factors.push_back(std::pow(search.poor_over_rich, 0.5 - food.richness(p)));
                mounds += 1.0 / factors.back();
                places += 1.0;
            }
        }
    for (GrownSystem& grown : systems)
        for (std::vector<double>& factors : grown.spacing_factors)
            for (double& factor : factors) factor = std::max(factor * mounds / places, least_spacing_m / scales.spacing_m);
}

}  // namespace

std::vector<GrownSystem> grow_patch_foraging(const FieldDomain& domain, const FieldScales& scales, double run_length_m,
                                             Random& random) {
    const Search search = draw_search(scales, random);
    const FoodField food(draw_food(random), random);
    std::vector<GrownSystem> systems = dig_one_after_another(domain, scales, run_length_m, random,
                                                             [&](SystemDigging& digging, LocalPoint start, double length_m) {
                                                                 forage(digging, search, food, start, length_m, random);
                                                             });
    space_mounds_by_food(systems, search, food, scales);
    return systems;
}

}  // namespace plugside
