// The results of many fields summed up: a group for each kind of field that was tested, and one for all.
//
// Totals:   sums over fields; `mean` of a sum is a field's. Ratios are told of sums where that is what a person asks (sets
// an
//           animal), of fields where each field counts alike (index, width).
// Shortfall: (1 - index) / (1 - yardstick): what is left to gain, as a share of what the yardstick leaves. Once of the mean
//           indices; once as the mean over fields, those left out where the yardstick is right to the last mark.
// Reach:    share of animals reached by the first sets by rank, at 0, 0.1, ... `reach_end` sets an animal (rounded down to
//           whole sets in each field); flat once a plan has no further set. Animals: systems with at least one mark used.
// Degenerate input: no field: one group for all, every figure 0.
// Cost:     O(claims log claims).
#pragma once

#include <array>
#include <string>
#include <vector>

#include "app/batch/evaluation.h"

namespace plugside {

struct Totals {
    double fields = 0.0;
    double marks = 0.0;
    double true_systems = 0.0;
    double expected = 0.0;
    double count_ratio = 0.0;
    double width = 0.0;  // of the interval, over the true number
    double holds = 0.0;
    double index = 0.0;
    double yardstick = 0.0;
    double yardstick_count_ratio = 0.0;
    double shortfall_ratios = 0.0;
    double fields_with_shortfall = 0.0;
    double with_reference = 0.0;  // fields
    double reference_index = 0.0;
    double reference_count_ratio = 0.0;
    double reference_holds = 0.0;
    double sets = 0.0;
    double reached = 0.0;
    double seconds = 0.0;
    LadderTally plug_side;
    LadderTally between_mounds;

    void add(const FieldResult& result);
    [[nodiscard]] double mean(double sum) const;
    [[nodiscard]] double shortfall_of_means() const;
    [[nodiscard]] double mean_shortfall() const;
};

// part / whole; 0 of nothing.
[[nodiscard]] double share(double part, double whole);

struct ReachPoint {
    double sets_an_animal = 0.0;
    double reached = 0.0;
};
inline constexpr double reach_end = 3.0;

struct EvaluationGroup {
    std::string name;  // of the kind, or "all"
    bool is_all = false;
    bool left_out = false;  // the kind's generator was left out of tuning, of all fields of the group
    Totals totals;
    std::array<Calibration, claim_kinds> calibration;  // by ClaimKind
    std::vector<ReachPoint> reach;
    std::vector<RankHistogram> truth_ranks;  // by truth_rank_names
    std::vector<const FieldResult*> fields;  // of the results that the group was made from
};

[[nodiscard]] std::vector<ReachPoint> reach_curve(const std::vector<const FieldResult*>& fields);

// Kinds in their own order, "all" last. The results outlive the groups.
[[nodiscard]] std::vector<EvaluationGroup> groups_of(const std::vector<FieldResult>& results);

// (1 - index) / (1 - yardstick) of one field; nothing where the yardstick is 1.
[[nodiscard]] std::optional<double> shortfall_ratio(const PlanScore& score);

// Mean width of the interval over the true number, of the group's fields whose kind is not crowded; nothing
// where all are or none is.
[[nodiscard]] std::optional<double> width_outside_crowded(const EvaluationGroup& group);

// "No kind was left out of tuning ..." or which ones were: for the head of a table.
[[nodiscard]] std::string tuning_sentence(const std::vector<EvaluationGroup>& groups);

}  // namespace plugside
