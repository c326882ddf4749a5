// Plans of many made-up fields, scored against their truth: the figures that the project states about itself.
//
// Fields:  every kind times every seed; each is simulated, planned and scored on its own, two at a time. Results stand in
// the
//          order kinds, seeds, whatever finished first.
// Seconds: of the planning alone, on a machine that is planning another field at the same time.
// Stop:    returns nothing when stopped.
#pragma once

#include <cstdint>
#include <functional>
#include <optional>
#include <stop_token>
#include <string>
#include <vector>

#include "core/simulation/burrow_simulator.h"
#include "core/simulation/plan_score.h"

namespace plugside {

struct EvaluationOptions {
    std::vector<FieldKind> kinds;
    std::uint64_t first_seed = 1;
    std::uint64_t seeds = 6;
    std::size_t mounds = 300;
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
    PlanScore score;
    LadderTally plug_side;
    LadderTally between_mounds;
    double seconds = 0.0;
    [[nodiscard]] bool interval_holds() const;
};

using FieldDone = std::function<void(std::size_t done, std::size_t of)>;

[[nodiscard]] std::optional<std::vector<FieldResult>> evaluate_fields(const EvaluationOptions& options,
                                                                      const std::stop_token& stop,
                                                                      const FieldDone& field_done);

// A table for reading: a line a kind and one for all.
[[nodiscard]] std::string table_of(const std::vector<FieldResult>& results);
// The same and more as CSV, a row a field; RFC 4180, numbers with a point.
[[nodiscard]] std::string csv_of(const std::vector<FieldResult>& results);

}  // namespace plugside
