// Each animal has a home range. Again and again it picks a place with food in it and digs there, nearly straight, from the
// nearest point of what it has dug: a tree grows, whose branches leave near right angles and get shorter as it fills its
// range. The range shifts; old branches that lead nowhere else are filled with soil and given up, and the mounds on them
// weather away: neither is there to be found.
#include <algorithm>
#include <cmath>
#include <numbers>
#include <utility>

#include "core/simulation/run_generators.h"

namespace plugside {

namespace {

constexpr double step_m = 0.2;
constexpr double shortest_run_m = 1.0;
constexpr std::size_t from_end = 8;  // vertices: nearer to its end a run is dug on rather than branched

struct FeedingHabits {
    double ground_per_run_m = 4.0;  // home range over length dug, m2 a metre
    double range_log_sd = 0.25;     // of the range's radius about what that gives
    double inwards = 0.5;           // places with food lie at radius * u ^ inwards: evenly spread at .5, nearer home above
    double wobble_degrees = 10.0;   // of the way about straight
    double wobble_memory_m = 1.5;
    double shift = 0.5;           // of the range's middle while the animal digs, in radii
    double given_up_share = 0.3;  // of old branches that lead nowhere else
    double at_hand_m = 2.0;       // food nearer than this to what is dug needs no digging
    double apart = 0.8;           // of two homes, over the radii of their ranges
};

FeedingHabits draw_habits(const FieldScales& scales, Random& random) {
    FeedingHabits habits;
    habits.ground_per_run_m = random.uniform(0.5, 0.9) * std::clamp(scales.room_per_run_m, 3.0, 10.0);
    habits.range_log_sd = random.uniform(0.1, 0.4);
    habits.inwards = random.uniform(0.45, 1.0);
    habits.wobble_degrees = random.uniform(3.0, 18.0);
    habits.wobble_memory_m = random.uniform(0.5, 3.0);
    habits.shift = random.uniform(0.0, 1.2);
    habits.given_up_share = random.uniform(0.0, 0.5);
    habits.at_hand_m = std::max(shortest_run_m, random.uniform(0.6, 1.6) * scales.spacing_m);
    habits.apart = random.uniform(0.5, 1.0);
    return habits;
}

// A vertex of what has been dug.
struct DugPlace {
    std::size_t run = 0;
    std::size_t vertex = 0;
};

// One animal feeding from its home.
class Feeder {
public:
    Feeder(SystemDigging& digging, const FeedingHabits& habits, LocalPoint home, double radius_m, Random& random)
        : digging_(digging), habits_(habits), home_(home), radius_m_(radius_m), random_(random) {}

    void feed(double length_m) {
        const Bearing shifts_towards = Bearing::degrees(random_.uniform(0.0, 360.0));
        const int most_places = 20 + static_cast<int>(length_m);
        for (int tried = 0; tried < most_places && digging_.grown().length_m < length_m; ++tried) {
            const double done = digging_.grown().length_m / length_m;
            const LocalPoint middle = home_ + shifts_towards.unit() * (habits_.shift * radius_m_ * done);
            const double away_m = radius_m_ * std::pow(random_.uniform(), habits_.inwards);
            reach(middle + Bearing::degrees(random_.uniform(0.0, 360.0)).unit() * away_m);
        }
    }

    // What is still kept up at the end.
    [[nodiscard]] GrownSystem kept() const {
        const GrownSystem& grown = digging_.grown();
        std::vector<bool> keeps(grown.runs.size(), true);
        std::vector<bool> leads_on(grown.runs.size(), false);
        for (std::size_t run = grown.runs.size(); run-- > 1;) {
            const bool old = 3 * run < 2 * grown.runs.size();
            keeps[run] = leads_on[run] || !old || !random_.chance(habits_.given_up_share);
            if (keeps[run]) leads_on[parent_[run]] = true;
        }
        GrownSystem left;
        for (std::size_t run = 0; run < grown.runs.size(); ++run) {
            if (!keeps[run]) continue;
            left.runs.push_back(grown.runs[run]);
            left.length_m += length(grown.runs[run]).value();
        }
        return left;
    }

private:
    void reach(LocalPoint food) {
        const auto& runs = digging_.grown().runs;
        DugPlace from;
        if (!runs.empty()) {
            from = nearest_to(food);
            const std::size_t last = runs[from.run].vertices.size() - 1;
            if (last - from.vertex < from_end) from.vertex = last;
        }
        const LocalPoint start = runs.empty() ? home_ : runs[from.run].vertices[from.vertex];
        if (distance_m(start, food) < habits_.at_hand_m) return;
        digging_.start_run(start);
        dig_towards(food);
        const std::size_t before = digging_.grown().runs.size();
        digging_.end_run(shortest_run_m);
        if (digging_.grown().runs.size() == before) parent_.push_back(from.run);
    }

    [[nodiscard]] DugPlace nearest_to(LocalPoint food) const {
        DugPlace nearest;
        double best_m = distance_m(home_, food) + 1.0;
        const auto& runs = digging_.grown().runs;
        for (std::size_t run = 0; run < runs.size(); ++run)
            for (std::size_t i = 0; i < runs[run].vertices.size(); ++i)
                if (const double away_m = distance_m(runs[run].vertices[i], food); away_m < best_m) {
                    best_m = away_m;
                    nearest = {run, i};
                }
        return nearest;
    }

    void dig_towards(LocalPoint food) {
        const double memory = std::exp(-step_m / habits_.wobble_memory_m);
        const double fresh_sd = habits_.wobble_degrees * std::sqrt(1.0 - memory * memory);
        double wobble = random_.normal(0.0, habits_.wobble_degrees);
        const double most_m = 1.3 * distance_m(digging_.tip(), food);
        for (double dug = 0.0; dug < most_m; dug += step_m) {
            const LocalVector left = food - digging_.tip();
            if (left.length_m() < step_m) return;
            wobble = memory * wobble + random_.normal(0.0, fresh_sd);
            const LocalPoint next = digging_.tip() + Bearing::along(left)->turned(wobble).unit() * step_m;
            if (!digging_.free_at(next)) return;
            digging_.dig_to(next);
        }
    }

    SystemDigging& digging_;
    const FeedingHabits& habits_;
    LocalPoint home_;
    double radius_m_;
    Random& random_;
    std::vector<std::size_t> parent_;  // of each run; of the first: itself
};

}  // namespace

std::vector<GrownSystem> grow_food_tree(const FieldDomain& domain, const FieldScales& scales, double run_length_m,
                                        Random& random) {
    const FeedingHabits habits = draw_habits(scales, random);
    std::vector<GrownSystem> systems;
    DugGround ground(scales.gap_m);
    const auto usual_radius_m = [&](double length_m) {
        return std::sqrt(length_m * habits.ground_per_run_m / std::numbers::pi);
    };
    const double apart_m = 2.0 * habits.apart * usual_radius_m(scales.mounds_median * scales.spacing_m);
    DugGround homes(apart_m);
    double dug_m = 0.0;
    for (int failures = 0; dug_m < run_length_m && failures < 60;) {
        const auto home = domain.open_place(random);
        if (!home) break;
        const auto number = static_cast<std::uint32_t>(systems.size());
        const double length_m = draw_run_length_m(scales, random);
        // animals settle apart from each other while there is room, then closer and closer
        const double least_m = apart_m * std::pow(0.93, failures);
        if (!homes.clear_of_others(*home, number, least_m) || !ground.clear_of_others(*home, number, scales.gap_m)) {
            ++failures;
            continue;
        }
        SystemDigging digging(domain, ground, number, scales.gap_m, own_gap_m(scales));
        const double radius_m = usual_radius_m(length_m) * random.log_normal(1.0, habits.range_log_sd);
        Feeder feeder(digging, habits, *home, radius_m, random);
        feeder.feed(length_m);
        if (digging.grown().length_m < std::max(2.0 * scales.spacing_m, 0.5 * length_m)) {
            ++failures;
            continue;
        }
        failures = 0;
        homes.add(*home, number);
        ground.add(digging.grown(), number);  // given-up ground is worked ground, too
        systems.push_back(feeder.kept());
        dug_m += systems.back().length_m;
    }
    return systems;
}

}  // namespace plugside
