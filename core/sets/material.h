// What to load, and how long the work takes.
//
// Counts:  of the sets that stand (kept, moved, and proposed ones where asked for), by the method of each. A reserve is added to what breaks or
//          runs out: a share, rounded up to whole pieces.
// Bait:    placements x dose, by weight or by count, with a reserve; only with a label, and only up to what it says: without one no amount
//          is computed, and the notice says so.
// Gloves:  one pair a person; signs: four a field, one a side, our assumption, where anybody can come.
// Time:    minutes a hole x holes + minutes of each set. The number of holes of one ladder has the exact distribution of the row's own chances (a
//          hole finds the run, or all are pushed); of all ladders their sum, taken as independent. The minutes of a set vary about the
//          method's mean with its standard deviation, normally and one by one; minutes a hole are as given. The interval is central at
//          `level`. The way between sets is not in it. A ladder without its row's distribution (a coarse plan) finds the run evenly
//          along its rungs.
// Cost:    O(sets x most holes) for the exact sum.
#pragma once

#include <string>
#include <vector>

#include "core/plan/plan.h"
#include "core/sets/work_order.h"

namespace plugside {

struct LoadOptions {
    bool with_proposed = true;  // sets that nobody decided on yet
    double reserve = 0.10;      // of what can break or run out: our assumption
    int people = 1;
    double minutes_a_hole = 0.5;  // as in set_worth.h: our assumption
    double level = 0.90;
    Metres tunnel_diameter = Metres::of(0.064);  // as PlanOptions has it
};

struct LoadLine {
    std::optional<LoadItem> item;  // nothing: bait or fumigant
    double needed = 0.0;
    double with_reserve = 0.0;
    std::optional<Quantity> amount;  // of bait or fumigant, with the reserve
    std::string sentence;            // "33 traps: 30 and 3 in reserve"
};

struct WorkTime {
    double holes = 0.0;  // expected
    int holes_low = 0;
    int holes_high = 0;
    double minutes = 0.0;  // expected
    double low = 0.0;
    double high = 0.0;
    double level = 0.90;
    std::string assumption;  // a sentence: how it was worked out
};

struct Load {
    int sets = 0;
    int without_method = 0;  // counted in time as their ladders alone
    std::vector<LoadLine> lines;
    WorkTime time;
    std::vector<std::string> notices;
};

[[nodiscard]] Load what_to_load(const Survey& survey, const WorkOrder& work, const Plan& plan, UtcTime now,
                                const LoadOptions& options = {});

// The time of some of the plan's sets alone (by index), without the way between them. Degenerate: none, no time.
[[nodiscard]] WorkTime time_of_sets(const WorkOrder& work, const Plan& plan, const std::vector<std::size_t>& sets,
                                    const LoadOptions& options = {});

// Chance of 1, 2, ... holes pushed at one ladder; sums to 1. One rung or none: one entry.
[[nodiscard]] std::vector<double> holes_pushed(const ProbeSite& site, Metres tunnel_diameter);

}  // namespace plugside
