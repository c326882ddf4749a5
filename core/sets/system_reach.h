// Where a whole inferred burrow system may lie, and how near it may come to an area.
//
// Meaning:  the system's runs with their corridors, the take-offs and the plugs of its mounds. "May": with a chance above 1 in 20. A place of a
//           run that lies off its line by a normal error of standard deviation s, at a distance d from an area, is within a reach R of it
//           with chance Phi((R - d) / s); that is above 1 in 20 where d < R + 1.645 s (the 95 % quantile, one side; 90 of 100 lie within
//           it to both sides). The deviation of one run is taken as one bend: its places go astray together, so that the likeliest
//           place tells for the whole run.
// One with: a system that may be one animal's with the one in question, and a mound that may be of it, count as well: where both are so, that it
//           is one with it (`there`) and that it lies within reach, with a chance above 1 in 20: d < R + q s with the quantile q of
//           1 - .05 / there.
// Careful:  a run of the plan is taken as there, however likely it is; between the vertices of a run the deviation is interpolated; on a
//           lateral the greatest of plug, take-off along and take-off across holds. Runs beyond the outermost mounds are not known
//           to anybody and are not in it.
// Preconditions: `plan` was made from `survey`.
// Degenerate input: a system without runs is judged by its mounds; a system number that the plan does not have comes near nothing; so does an area
//           without vertices.
// Cost:     O(runs + mounds) to make; each question O(vertices of the system x vertices of the area), O(1) where their boxes lie apart.
// Source:   measuring from the whole system and its uncertainty, not from the hole: [memory] of phosphide labels; 1 in 20: our rule.
#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include "core/geometry/polygon.h"
#include "core/geometry/polyline.h"
#include "core/plan/plan.h"
#include "core/units/probability.h"

namespace plugside {

// The part of a system that may lie within reach of an area.
struct ReachReason {
    std::size_t system = 0;         // whose runs and laterals these are
    std::size_t keep_clear = 0;        // index into Ground::keep_clear, put there by whoever asks
    std::vector<Polyline> parts;       // of runs and laterals, each to the millimetre
    std::vector<double> half_width_m;  // of each part: the widest corridor along it
    LocalPoint from;                // the place that comes nearest, its corridor taken off,
    LocalPoint to;                  // and the place of the area that is nearest to it
    Metres apart;                      // between the two
    Probability chance;             // that it is part of the system and lies within reach, at the likeliest place
};

class SystemReach {
public:
    // `there`: the chance that this system is one with the one in question.
    SystemReach(const Survey& survey, const Plan& plan, std::size_t system, Probability there = Probability::of(1.0));
    // The lateral of one mound alone, of whatever system.
    [[nodiscard]] static SystemReach of_mound(const Survey& survey, const Plan& plan, std::size_t mound, Probability there);

    [[nodiscard]] bool may_come_within(Metres reach, const Polygon& area) const;
    // The same with its reason; nothing where it does not.
    [[nodiscard]] std::optional<ReachReason> why_within(Metres reach, const Polygon& area) const;
    // The least distance that has a chance of 1 in 20: 0 where the system may lie under the area; nothing where either is empty, or where it is
    // not below `below`, which is the quicker the less it is.
    [[nodiscard]] std::optional<Metres> nearest(const Polygon& area, std::optional<Metres> below = {}) const;

    // A straight piece of a run or lateral: standard deviation off it, and half width of the corridor that counts, at both ends.
    struct Piece {
        LocalPoint from;
        LocalPoint to;
        double from_sd_m;
        double to_sd_m;
        double from_half_m;
        double to_half_m;
    };

private:
    SystemReach(std::size_t system, Probability there);
    void add(LocalPoint from, LocalPoint to, double from_sd_m, double to_sd_m);
    void add_mound(const Survey& survey, const Plan& plan, std::size_t mound);
    [[nodiscard]] double box_distance_m(const Polygon& area) const;
    std::size_t system_ = 0;
    Probability there_;
    double deviations_ = 0.0;  // that count to a side
    std::vector<Piece> pieces_;
    LocalPoint low_;  // the box about all pieces and their corridors
    LocalPoint high_;
};

// The system, each system that may be one animal's with it, and each mound of another that may be its own (Plan::alternatives), every one with its
// chance; those of 1 in 20 or less are left out. O(alternatives + runs of each).
[[nodiscard]] std::vector<SystemReach> reaches_of(const Survey& survey, const Plan& plan, std::size_t system);

}  // namespace plugside
