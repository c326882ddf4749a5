// How good a plan was, judged by the truth of a simulated field.
//
// adjusted_rand: adjusted Rand index (Hubert & Arabie 1985) between the plan's systems and the true ones over the marks that
//               are gophers' and were used.
// hit:          whether walking the ladder on the true ground (true plugs, true fan, tape and eye as told) meets a true run
//               within half the tunnel's diameter, and at which rung.
#pragma once

#include <optional>
#include <vector>

#include "core/plan/plan.h"
#include "core/simulation/truth.h"

namespace plugside {

// Index of two labellings of the same things; 1 when both are trivially equal. Throws nothing; sizes must match (asserts).
[[nodiscard]] double adjusted_rand_index(const std::vector<std::size_t>& a, const std::vector<std::size_t>& b);

struct LadderOutcome {
    std::size_t probe = 0;
    double claimed_hit = 0.0;
    double claimed_rungs = 0.0;
    bool hit = false;
    int rungs = 0;  // pushed
};

struct PlanScore {
    std::size_t marks = 0;
    std::size_t true_systems = 0;      // systems with at least one mark used
    std::size_t plan_systems = 0;
    double expected_systems = 0.0;
    int low = 0;
    int high = 0;
    double adjusted_rand = 0.0;
    double yardstick_adjusted_rand = 0.0;   // DBSCAN, radius tuned on the truth
    std::size_t yardstick_systems = 0;
    std::vector<LadderOutcome> ladders;
    std::size_t sets = 0;
    std::size_t animals_reached = 0;   // systems with at least one set whose ladder hits a run of that system
    // [k]: animals reached by the first k sets by rank, dropped ones left out; size sets + 1, ascending
    std::vector<std::size_t> reached_by_sets;
};

[[nodiscard]] LadderOutcome try_ladder(const ProbeSite& site, std::size_t probe, const SimulatedField& field);
[[nodiscard]] PlanScore score_plan(const Plan& plan, const SimulatedField& field);

// DBSCAN with `least` marks (itself counted) within `radius`; noise marks are systems of one.
[[nodiscard]] std::vector<std::size_t> density_clusters(const std::vector<LocalPoint>& places, Metres radius, int least);

}  // namespace plugside
