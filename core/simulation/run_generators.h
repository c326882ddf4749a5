// Seven mechanisms that dig burrow systems into a field. They differ in how a run comes about, not only in numbers, so that
// an inference tuned to one is found out by another; tables that tune on one and test on another stay possible.
//
// Each: digs systems one after another (crowded growth: all at once; shared ground: each in its own part) until their runs
//       add up to `run_length_m`, or until no room is left; then the caller finds less than it asked for and gives more
//       room.
// Guarantee: runs of different systems keep the field's gap; vertices at most 0.1 m apart; every run lies on open ground.
// Cost: near-linear in the length dug.
#pragma once

#include <functional>
#include <vector>

#include "core/simulation/dug_ground.h"
#include "core/simulation/field_domain.h"
#include "core/simulation/field_scales.h"
#include "core/units/bearing.h"

namespace plugside {

// Smooth runs whose curvature is correlated along the way, with an occasional branch.
[[nodiscard]] std::vector<GrownSystem> grow_meander(const FieldDomain& domain, const FieldScales& scales,
                                                    double run_length_m, Random& random);

// Short straight pieces of near-equal length end to end, turning left and right at random about 0; branches near right
// angles at near-equal spacing. Source: Andersen 1988; Reichman, Whitham & Ruffner 1982.
[[nodiscard]] std::vector<GrownSystem> grow_straight_with_branches(const FieldDomain& domain, const FieldScales& scales,
                                                                   double run_length_m, Random& random);

// Many systems growing at once, a piece of tunnel each in turn, each stopped or turned by its neighbours.
[[nodiscard]] std::vector<GrownSystem> grow_crowded(const FieldDomain& domain, const FieldScales& scales,
                                                    double run_length_m, Random& random);

// Systems strung one after another along a ditch and the crop rows beside it.
[[nodiscard]] std::vector<GrownSystem> grow_edge_rows(const FieldDomain& domain, const FieldScales& scales,
                                                      double run_length_m, Random& random);

// A search for food: short steps, sharp turns and a way back where food is rich, long straight ways where it is poor; mounds
// stand closer in rich ground. Source of the shape: Bailey's Thomomys revision (direct when food is scarce, winding when
// plentiful); area-restricted search as a mechanism and all numbers: our assumption.
[[nodiscard]] std::vector<GrownSystem> grow_patch_foraging(const FieldDomain& domain, const FieldScales& scales,
                                                           double run_length_m, Random& random);

// The ground is shared out first; each animal then fills its own part with parallel lanes, up to a buffer at the border.
[[nodiscard]] std::vector<GrownSystem> grow_shared_ground(const FieldDomain& domain, const FieldScales& scales,
                                                          double run_length_m, Random& random);

// A tree: from the nearest point dug so far to one place with food after another, within a home range that shifts; old
// branches are given up. Our assumption; T-junctions: Dalquest 1948.
[[nodiscard]] std::vector<GrownSystem> grow_food_tree(const FieldDomain& domain, const FieldScales& scales,
                                                      double run_length_m, Random& random);

// How near a system comes to its own runs; below that it would dig the same soil twice. Our assumption.
[[nodiscard]] double own_gap_m(const FieldScales& scales);

// Digs systems at places drawn evenly over the open ground, each by `dig_system` (which digs about `length_m` from its
// start).
using DigSystem = std::function<void(SystemDigging& digging, LocalPoint start, double length_m)>;
[[nodiscard]] std::vector<GrownSystem> dig_one_after_another(const FieldDomain& domain, const FieldScales& scales,
                                                             double run_length_m, Random& random,
                                                             const DigSystem& dig_system);

// The bend, degrees, that leads past what lies `look_ahead_m` ahead of the tip; 0 when nothing does, nothing when there is
// no way past.
[[nodiscard]] std::optional<double> way_past(const SystemDigging& digging, Bearing heading, double look_ahead_m);

// A place on the runs dug so far from which a branch may leave, with the run's direction there; not near a run's ends.
struct BranchPlace {
    LocalPoint at;
    Bearing along;
};
[[nodiscard]] std::optional<BranchPlace> draw_branch_place(const GrownSystem& grown, Random& random);

}  // namespace plugside
