// Plans of many made-up fields, scored against their truth: the figures that the project states about itself.
//
// Fields:  every kind times every seed, or so many in all, spread evenly over the kinds (the first kinds have one more where
//          it does not come out even); each is simulated, planned and scored on its own, two at a time. Results stand in the
//          order kinds, seeds, whatever finished first.
// Tuning:  `weights` says which learnt weights plan the fields of a kind and whether they were learnt without that kind, so
//          that generators tuned to and generators tested on are told apart in every table.
// Reference: a second form of the inference to stand beside the first; its plans are scored on the same fields.
// Seconds: of the planning alone, on a machine that is planning another field at the same time.
// Stop:    returns nothing when stopped.
#pragma once

#include <cstdint>
#include <functional>
#include <optional>
#include <stop_token>
#include <string>
#include <vector>

#include "core/plan/plan_with_posterior.h"
#include "core/simulation/burrow_simulator.h"
#include "core/simulation/plan_claims.h"
#include "core/simulation/plan_score.h"
#include "core/simulation/truth_ranks.h"

namespace plugside {

struct WeightsOfKind {
    const LinkWeights* weights = nullptr;  // outlive the evaluation; nothing = the weights built into the program
    bool kind_left_out = false;            // no field of the kind's generator took part in learning them
};
using WeightsFor = std::function<WeightsOfKind(FieldKind)>;
// Returns nothing when stopped.
using PlanField = std::function<std::optional<Plan>(const Survey& survey, FieldKind kind, const Progress& progress)>;

struct EvaluationOptions {
    std::vector<FieldKind> kinds;
    std::uint64_t first_seed = 1;
    std::uint64_t seeds = 6;              // fields of each kind,
    std::optional<std::uint64_t> fields;  // unless the number of all is given
    std::size_t mounds = 300;
    WeightsFor weights;   // empty: those built into the program; left out is what they were not learnt on (tuned_kinds.h)
    PlanField reference;  // empty: none
};

// Ladders of one kind of probe site: means are sums over `count`.
struct LadderTally {
    double count = 0.0;
    double claimed_hits = 0.0;
    double hits = 0.0;
    double claimed_rungs = 0.0;
    double rungs = 0.0;
    LadderTally& operator+=(const LadderTally& other);
};

struct FieldResult {
    FieldKind kind = FieldKind::meander;
    std::uint64_t seed = 0;
    bool kind_left_out = false;
    PlanScore score;
    PlanClaims claims;
    TruthPlaces places;
    std::optional<PlanScore> reference;
    LadderTally plug_side;
    LadderTally between_mounds;
    double seconds = 0.0;
};

// Whether the interval of the number of systems holds the true number.
[[nodiscard]] bool interval_holds(const PlanScore& score);

using FieldDone = std::function<void(std::size_t done, std::size_t of)>;

[[nodiscard]] std::optional<std::vector<FieldResult>> evaluate_fields(const EvaluationOptions& options,
                                                                      const std::stop_token& stop,
                                                                      const FieldDone& field_done);

// How many fields of each of `kinds` kinds; they sum to `fields`.
[[nodiscard]] std::vector<std::uint64_t> spread_evenly(std::uint64_t fields, std::size_t kinds);

// A table for reading: a line a kind and one for all.
[[nodiscard]] std::string table_of(const std::vector<FieldResult>& results);
// The same and more as CSV, a row a field; RFC 4180, numbers with a point, nothing where a figure does not exist.
[[nodiscard]] std::string csv_of(const std::vector<FieldResult>& results);

}  // namespace plugside
