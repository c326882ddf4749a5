// The shortest ways on foot between the places of a fixed set, worked out as they are asked for.
//
// metres:   length of the shortest way between two places by index; infinite where there is none. The same both ways.
// way:      its course, from place to place; nothing where there is none.
// groups:   places that can be reached from one another have the same label, 0.. in order of each group's first place.
// Places:   one on a wall (nearer than half the corners' berth) is stood beside it, on the side from which more of its eight nearest
//           others are seen straight; the right of the wall as drawn where that does not decide.
// Cost:     a pair with nothing between: O(walls near the line). Else the corners seen from each place once (O(corners)), the ways from
//           each corner once (Dijkstra over the corners), then O(corners seen by one x seen by the other), and a memory of pairs.
// Memory:   O(corners^2 + corners seen by each place); pairs remembered up to two million.
// Lifetime: `ways` outlives it. Threads: for one at a time.
// Degenerate input: no place; places on one spot (0 m).
#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>
#include <vector>

#include "core/geometry/polyline.h"
#include "core/walking/walking_ways.h"

namespace plugside {

class WaysBetween {
public:
    WaysBetween(const WalkingWays& ways, std::vector<LocalPoint> places);

    [[nodiscard]] double metres(std::size_t a, std::size_t b);
    [[nodiscard]] std::optional<Polyline> way(std::size_t a, std::size_t b);
    [[nodiscard]] std::vector<std::uint32_t> groups();
    [[nodiscard]] std::size_t count() const { return places_.size(); }

private:
    using Step = WalkingWays::Step;
    struct Remembered {
        std::uint64_t pair = ~std::uint64_t{0};
        double metres = 0.0;
    };
    struct Bend {
        double metres = 0.0;
        std::uint32_t first = 0;  // corner, seen from a
        std::uint32_t last = 0;   // corner, seen from b
    };

    void stand_beside_walls();
    [[nodiscard]] double around(std::size_t a, std::size_t b);
    [[nodiscard]] std::optional<Bend> best_bend(std::size_t a, std::size_t b);
    [[nodiscard]] const std::vector<Step>& seen(std::size_t place);
    [[nodiscard]] const std::vector<double>& from_corner(std::uint32_t corner);

    const WalkingWays* ways_;
    std::vector<LocalPoint> places_;
    std::vector<std::optional<std::vector<Step>>> seen_;
    std::vector<std::vector<double>> from_corner_;  // of each corner asked for: metres to each
    std::vector<Remembered> memory_;
};

// One way; nothing where there is none. A set of places is better asked as a whole.
[[nodiscard]] std::optional<Polyline> walking_way(const WalkingWays& ways, LocalPoint from, LocalPoint to);

}  // namespace plugside
