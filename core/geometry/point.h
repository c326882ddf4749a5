// A place, and a step between two places, on the field's own plane.
//
// Unit:   metres east and north of the field's origin; the plane is the local transverse Mercator
//         projection that geo/frame chooses, so plane distances are ground distances to 1e-6.
// Ranges: fields reach some kilometres; nothing here fails for larger numbers.
// Cost:   O(1) each.
#pragma once

#include <cmath>
#include <compare>

namespace plugside {

struct LocalVector {
    double east_m = 0.0;
    double north_m = 0.0;

    friend constexpr LocalVector operator+(LocalVector a, LocalVector b) {
        return {a.east_m + b.east_m, a.north_m + b.north_m};
    }
    friend constexpr LocalVector operator-(LocalVector a, LocalVector b) {
        return {a.east_m - b.east_m, a.north_m - b.north_m};
    }
    friend constexpr LocalVector operator*(LocalVector a, double factor) {
        return {a.east_m * factor, a.north_m * factor};
    }
    friend constexpr LocalVector operator*(double factor, LocalVector a) { return a * factor; }
    friend constexpr bool operator==(LocalVector, LocalVector) = default;

    [[nodiscard]] double length_m() const { return std::hypot(east_m, north_m); }
};

struct LocalPoint {
    double east_m = 0.0;
    double north_m = 0.0;

    friend constexpr LocalVector operator-(LocalPoint a, LocalPoint b) {
        return {a.east_m - b.east_m, a.north_m - b.north_m};
    }
    friend constexpr LocalPoint operator+(LocalPoint a, LocalVector step) {
        return {a.east_m + step.east_m, a.north_m + step.north_m};
    }
    friend constexpr LocalPoint operator-(LocalPoint a, LocalVector step) {
        return {a.east_m - step.east_m, a.north_m - step.north_m};
    }
    friend constexpr bool operator==(LocalPoint, LocalPoint) = default;
};

// Scalar product, m2.
[[nodiscard]] constexpr double dot(LocalVector a, LocalVector b) {
    return a.east_m * b.east_m + a.north_m * b.north_m;
}

// Twice the signed area of the triangle 0, a, b, m2: positive when b lies to the left of a, seen from above.
[[nodiscard]] constexpr double cross(LocalVector a, LocalVector b) {
    return a.east_m * b.north_m - a.north_m * b.east_m;
}

[[nodiscard]] inline double distance_m(LocalPoint a, LocalPoint b) { return (a - b).length_m(); }

[[nodiscard]] constexpr LocalPoint midpoint(LocalPoint a, LocalPoint b) {
    return {0.5 * (a.east_m + b.east_m), 0.5 * (a.north_m + b.north_m)};
}

// `v` turned by a quarter clockwise, seen from above: east becomes south. This is "to the right of v".
[[nodiscard]] constexpr LocalVector turned_right(LocalVector v) { return {v.north_m, -v.east_m}; }

}  // namespace plugside
