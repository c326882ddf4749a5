// Draws of the run about a mound and between two mounds, seen from where a person stands: from the plug, along the tape or
// away from the fan as it lies on the ground. A row of probe holes is judged by where the draws cross it.
//
// Lateral:  length = depth x cot(slope), both drawn; two mounds of one system share most of the depth. It lies opposite the
// fan
//           but for a stray; it leaves the run square but for a lean ("usually a T, rarely a Y", Dalquest 1948).
// Between:  the run leaves one junction and comes to the other as an arc with some of an S. A draw counts by how square its
//           laterals stand to its run: that ties what was read of fans to what the tape does.
// Not joined: where no run joins the two, the near mound's own run may still pass there: straight on from its junction.
// Draws:    one fixed Latin hypercube for every place, so that a place's chance depends on nothing but what was seen there.
// Source:   spreads are our assumptions, checked against simulated truth of several mechanisms.
// Cost:     O(draws) a row.
#pragma once

#include <vector>

#include "core/plan/make_plan.h"
#include "core/probing/row_basis.h"
#include "core/probing/row_chance.h"

namespace plugside {

// How far the fan as seen strays from its lateral, and the lateral from square to its run: our assumptions.
inline constexpr double stray_sd_degrees = 10.0;
inline constexpr double lean_sd_degrees = 18.0;

// Joins what was observed (turn, with its own standard deviation) with what is known of every lateral.
[[nodiscard]] RunTurn run_turn_given(double observed_degrees, double observed_sd_degrees);

// Along the plug side's axis, on a line `across` to its right.
[[nodiscard]] RowChance plug_side_chance(const PlanOptions& options, const RunTurn& turn = {},
                                         Metres across = Metres::of(0.0));

// The draws of one stretch, made once, then asked for rows across the tape (positive right, looking from first to second).
class StretchDraws {
public:
    StretchDraws(const Stretch& stretch, const PlanOptions& options);
    ~StretchDraws();
    StretchDraws(const StretchDraws&) = delete;
    StretchDraws& operator=(const StretchDraws&) = delete;

    [[nodiscard]] RowChance across_tape(Metres along) const;

private:
    struct Curve;
    struct Straight;
    double length_m_;
    double joined_;
    std::vector<Curve> curves_;
    std::vector<Straight> from_first_;
    std::vector<Straight> from_second_;
};

}  // namespace plugside
