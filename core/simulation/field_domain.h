// The piece of ground that made-up burrows are dug in: a four-sided field, perhaps with a ditch through it and a house on
// it.
//
// Frame:   centred on the origin; `axis` is the direction of the long side. Places are also told as (along, across) that
// axis,
//          across positive to its right.
// Ditch:   a gently winding line from side to side; no run comes within `ditch_berth_m` of it.
// House:   a rectangle near a corner; no run comes within `house_berth_m` of it.
// Edges:   no run comes within `edge_berth_m` of the boundary, so that a receiver's error puts few marks outside.
// Cost:    `open` O(vertices of ditch and house).
#pragma once

#include <optional>

#include "core/geometry/polygon.h"
#include "core/geometry/polyline.h"
#include "core/simulation/random.h"

namespace plugside {

inline constexpr double ditch_berth_m = 1.5;
inline constexpr double house_berth_m = 8.0;
inline constexpr double edge_berth_m = 4.0;

struct DomainOptions {
    double area_m2 = 10000.0;
    double aspect = 1.5;  // long side over short side, >= 1
    bool with_ditch = false;
    bool with_house = false;
};

class FieldDomain {
public:
    FieldDomain(const DomainOptions& options, Random& random);

    [[nodiscard]] const Polygon& boundary() const { return boundary_; }
    [[nodiscard]] const std::optional<Polyline>& ditch() const { return ditch_; }
    [[nodiscard]] const std::optional<Polygon>& house() const { return house_; }
    [[nodiscard]] LocalVector axis() const { return axis_; }
    [[nodiscard]] double half_long_m() const { return half_long_m_; }
    [[nodiscard]] double half_short_m() const { return half_short_m_; }

    [[nodiscard]] LocalPoint at(double along_m, double across_m) const;
    // How far across the ditch's line (or, without a ditch, where it would be) lies at `along_m`.
    [[nodiscard]] double ditch_across_m(double along_m) const;
    // Whether a run may be dug here.
    [[nodiscard]] bool open(LocalPoint place) const;
    // A place, evenly drawn from the open ground; nothing when none is found.
    [[nodiscard]] std::optional<LocalPoint> open_place(Random& random) const;

private:
    LocalVector axis_;
    double half_long_m_ = 0.0;
    double half_short_m_ = 0.0;
    double ditch_offset_m_ = 0.0;
    double ditch_swing_m_ = 0.0;
    double ditch_wave_m_ = 0.0;
    double ditch_phase_ = 0.0;
    Polygon boundary_;
    std::optional<Polyline> ditch_;
    std::optional<Polygon> house_;
};

}  // namespace plugside
