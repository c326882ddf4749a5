#include "core/units/bearing.h"

#include <cassert>
#include <cmath>
#include <numbers>

namespace plugside {

Bearing Bearing::degrees(double degrees) {
    assert(std::isfinite(degrees));
    double folded = std::fmod(degrees, 360.0);
    if (folded < 0.0) folded += 360.0;
    if (folded >= 360.0 || folded == 0.0) folded = 0.0;  // a tiny negative folds to 360 exactly; -0 becomes 0
    Bearing bearing;
    bearing.degrees_ = folded;
    return bearing;
}

std::optional<Bearing> Bearing::along(LocalVector step) {
    if (step.east_m == 0.0 && step.north_m == 0.0) return std::nullopt;
    return degrees(std::atan2(step.east_m, step.north_m) * 180.0 / std::numbers::pi);
}

double Bearing::radians() const { return degrees_ * std::numbers::pi / 180.0; }

LocalVector Bearing::unit() const { return {std::sin(radians()), std::cos(radians())}; }

double turn_degrees(Bearing from, Bearing to) {
    double turn = to.degrees() - from.degrees();
    if (turn > 180.0) turn -= 360.0;
    if (turn <= -180.0) turn += 360.0;
    return turn;
}

double angle_between_axes_degrees(Bearing a, Bearing b) {
    const double turn = std::abs(turn_degrees(a, b));
    return turn > 90.0 ? 180.0 - turn : turn;
}

}  // namespace plugside
