// A direction on the ground.
//
// Meaning: degrees clockwise from true north, 0 <= degrees < 360. This is the only angle convention inside core;
//          magnetic, grid and screen angles convert at named edges (geo/frame, app/canvas).
// Degenerate input: `degrees()` folds any finite number into the range; -0 and 360 become 0. A step of no length has no
//          bearing: `Bearing::along` returns nothing for it.
// Preconditions: a number that is not finite asserts; readers refuse it before.
// Cost:    O(1).
#pragma once

#include <optional>

#include "core/geometry/point.h"

namespace plugside {

class Bearing {
public:
    constexpr Bearing() = default;
    [[nodiscard]] static Bearing degrees(double degrees);
    // The direction of a step; nothing for a step of no length.
    [[nodiscard]] static std::optional<Bearing> along(LocalVector step);

    [[nodiscard]] constexpr double degrees() const { return degrees_; }
    [[nodiscard]] double radians() const;
    [[nodiscard]] Bearing reversed() const { return degrees(degrees_ + 180.0); }
    // Turned clockwise by `turn_degrees` (negative: anticlockwise).
    [[nodiscard]] Bearing turned(double turn_degrees) const { return degrees(degrees_ + turn_degrees); }
    // The step of one metre in this direction.
    [[nodiscard]] LocalVector unit() const;

    friend constexpr bool operator==(Bearing, Bearing) = default;

private:
    double degrees_ = 0.0;
};

// The turn from `from` to `to`, degrees, -180 < turn <= 180, clockwise positive.
[[nodiscard]] double turn_degrees(Bearing from, Bearing to);

// The angle between two undirected lines (axes), degrees, 0..90.
[[nodiscard]] double angle_between_axes_degrees(Bearing a, Bearing b);

}  // namespace plugside
