#include "core/simulation/plan_score.h"

#include <algorithm>
#include <array>
#include <cassert>
#include <cmath>
#include <map>
#include <set>

#include "core/simulation/true_ground.h"

namespace plugside {

namespace {

double pairs(double count) { return 0.5 * count * (count - 1.0); }

std::size_t distinct(const std::vector<std::size_t>& labels) {
    return std::set<std::size_t>(labels.begin(), labels.end()).size();
}

// The marks that both the plan and the truth have a system for.
struct ScoredMarks {
    std::vector<LocalPoint> places;
    std::vector<std::size_t> plan;
    std::vector<std::size_t> truth;
};

ScoredMarks scored_marks(const Plan& plan, const SimulatedField& field, const TrueGround& ground) {
    ScoredMarks marks;
    for (std::size_t i = 0; i < plan.mounds.size(); ++i) {
        const auto mound = ground.mound_of_mark(i);
        if (!mound || !plan.mounds[i].system) continue;
        marks.places.push_back(field.survey.mounds[i].plug);
        marks.plan.push_back(*plan.mounds[i].system);
        marks.truth.push_back(field.truth.mounds[*mound].system);
    }
    return marks;
}

// The best that DBSCAN can do when its radius is chosen on the truth. `least` 1 and 2 give one partition, as noise marks are
// systems of one, so 2 and 3 are tried.
void tune_yardstick(const ScoredMarks& marks, PlanScore& score) {
    constexpr int radii = 40;
    constexpr double smallest_m = 0.5;
    constexpr double largest_m = 15.0;
    score.yardstick_adjusted_rand = -1.0;
    for (int i = 0; i < radii; ++i) {
        const double radius_m = smallest_m * std::pow(largest_m / smallest_m, static_cast<double>(i) / (radii - 1));
        for (const int least : {2, 3}) {
            const auto labels = density_clusters(marks.places, Metres::of(radius_m), least);
            const double index = adjusted_rand_index(labels, marks.truth);
            if (index <= score.yardstick_adjusted_rand) continue;
            score.yardstick_adjusted_rand = index;
            score.yardstick_systems = distinct(labels);
        }
    }
}

LadderOutcome outcome_of(const ProbeSite& site, std::size_t probe, const TrueGround::Trial& trial) {
    return {probe, site.hit.value(), site.expected_rungs, trial.system.has_value(), trial.rungs};
}

// Goes through the sets by rank and counts the animals whose run one of them meets.
void count_reached(const Plan& plan, const std::vector<std::optional<std::size_t>>& hit_system,
                   const std::set<std::size_t>& present, PlanScore& score) {
    std::vector<const SetPoint*> by_rank;
    for (const SetPoint& set : plan.sets)
        if (set.choice != SetChoice::dropped) by_rank.push_back(&set);
    std::stable_sort(by_rank.begin(), by_rank.end(), [](const SetPoint* a, const SetPoint* b) { return a->rank < b->rank; });
    std::set<std::size_t> reached;
    score.reached_by_sets.assign(1, 0);
    for (const SetPoint* set : by_rank) {
        const auto& system = hit_system.at(set->probe);
        if (system && present.contains(*system)) reached.insert(*system);
        score.reached_by_sets.push_back(reached.size());
    }
    score.sets = by_rank.size();
    score.animals_reached = reached.size();
}

}  // namespace

double adjusted_rand_index(const std::vector<std::size_t>& a, const std::vector<std::size_t>& b) {
    assert(a.size() == b.size());
    std::map<std::size_t, double> in_a;
    std::map<std::size_t, double> in_b;
    std::map<std::pair<std::size_t, std::size_t>, double> in_both;
    for (std::size_t i = 0; i < a.size(); ++i) {
        in_a[a[i]] += 1.0;
        in_b[b[i]] += 1.0;
        in_both[{a[i], b[i]}] += 1.0;
    }
    double pairs_a = 0.0;
    double pairs_b = 0.0;
    double pairs_both = 0.0;
    for (const auto& [label, count] : in_a) pairs_a += pairs(count);
    for (const auto& [label, count] : in_b) pairs_b += pairs(count);
    for (const auto& [labels, count] : in_both) pairs_both += pairs(count);
    const double all = pairs(static_cast<double>(a.size()));
    const double expected = all > 0.0 ? pairs_a * pairs_b / all : 0.0;
    const double most = 0.5 * (pairs_a + pairs_b);
    // all together in both, or all apart in both: nothing could be told better
    if (most - expected == 0.0) return 1.0;
    return (pairs_both - expected) / (most - expected);
}

LadderOutcome try_ladder(const ProbeSite& site, std::size_t probe, const SimulatedField& field) {
    return outcome_of(site, probe, TrueGround(field).try_ladder(site));
}

PlanScore score_plan(const Plan& plan, const SimulatedField& field) {
    const TrueGround ground(field);
    const ScoredMarks marks = scored_marks(plan, field, ground);
    PlanScore score;
    score.marks = marks.places.size();
    score.true_systems = distinct(marks.truth);
    score.plan_systems = plan.systems.size();
    score.expected_systems = plan.estimate.expected;
    score.low = plan.estimate.low;
    score.high = plan.estimate.high;
    score.adjusted_rand = adjusted_rand_index(marks.plan, marks.truth);
    tune_yardstick(marks, score);
    std::vector<std::optional<std::size_t>> hit_system;
    for (std::size_t i = 0; i < plan.probes.size(); ++i) {
        const TrueGround::Trial trial = ground.try_ladder(plan.probes[i]);
        score.ladders.push_back(outcome_of(plan.probes[i], i, trial));
        hit_system.push_back(trial.system);
    }
    count_reached(plan, hit_system, {marks.truth.begin(), marks.truth.end()}, score);
    return score;
}

}  // namespace plugside
