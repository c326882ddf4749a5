// Where a person can walk on a field, and the corners that a shortest way goes around.
//
// Walls:    barriers, the edges of the boundary and of its holes, the edges of keep-clear areas that may not be walked in; each opened
//           where a gate lies. A crossing is for runs, not for people. A wall has no thickness.
// Ways:     keep `corner_berth_m` from ends and corners, so that a shortest way is longer than the one that touches them by less than
//           four of it at each corner. Two walls that come within that of one another leave no way between them (a line drawn not quite
//           up to the next is closed). A place on a wall (nearer than half of it) stands on the side from which more of the places about
//           it are seen.
// Bound:    at most `most_corners` corners: where there are more, lines are simplified by ever more (2 cm, 4 cm, ...) until there are not;
//           `simplified_by` tells by how much. Below that ways are exact.
// Degenerate input: no ground: every straight way is free. Lines of one vertex are no wall.
// Cost:     O(corners^2) questions to make, most of them answered by the turn at the corner alone: 400 corners about 20 ms.
// Threads:  immutable once made.
// Source:   shortest ways among obstacles bend at their corners only, and only where they go around them: Lozano-Perez & Wesley 1979
//           (visibility graph) [memory]; the berth is our assumption.
#pragma once

#include <cstddef>
#include <cstdint>
#include <vector>

#include "core/survey/ground.h"
#include "core/walking/wall_cells.h"

namespace plugside {

enum class KeepClearWalk { around_buildings, around_all, through_all };

struct WalkingWayOptions {
    KeepClearWalk keep_clear = KeepClearWalk::around_buildings;
    bool stay_inside = true;  // the boundary's edges are walls; false: one may leave the field anywhere
    std::size_t most_corners = 800;
};

class WalkingWays {
public:
    static constexpr double corner_berth_m = 0.02;

    explicit WalkingWays(const Ground& ground, const WalkingWayOptions& options = {});

    // Nothing stands in anybody's way.
    [[nodiscard]] bool open_everywhere() const { return walls_.empty(); }
    [[nodiscard]] bool straight(LocalPoint a, LocalPoint b) const { return !walls_.between(a, b); }
    [[nodiscard]] const WallCells& walls() const { return walls_; }
    [[nodiscard]] Metres simplified_by() const { return simplified_by_; }

    struct Corner {
        LocalPoint at;             // a berth off the wall
        LocalPoint vertex;         // of the wall
        LocalPoint before, after;  // the wall's vertices beside it; the same at an end
    };
    struct Step {
        std::uint32_t corner = 0;
        double metres = 0.0;
    };
    [[nodiscard]] const std::vector<Corner>& corners() const { return corners_; }
    // The corners that can be walked to straight from a corner.
    [[nodiscard]] const std::vector<Step>& steps(std::size_t corner) const { return steps_[corner]; }
    // The corners seen from a place that a shortest way may go around, nearest first.
    [[nodiscard]] std::vector<Step> seen_from(LocalPoint place) const;
    // Of each corner the part of the ground it lies in: corners of different parts are not joined by any way.
    [[nodiscard]] const std::vector<std::uint32_t>& part() const { return part_; }

private:
    void join_corners();
    void number_parts();

    WallCells walls_{{}};
    std::vector<Corner> corners_;
    std::vector<std::vector<Step>> steps_;
    std::vector<std::uint32_t> part_;
    Metres simplified_by_ = Metres::of(0.0);
};

}  // namespace plugside
