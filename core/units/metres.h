// A length or distance on the ground.
//
// Unit:   metres, held as a double. Any sign; a length that cannot be negative says so where it is used.
// Feet and inches are the international ones: 1 in = 0.0254 m exactly, 1 ft = 0.3048 m exactly
// (International yard and pound agreement of 1959 [memory]).
// Errors: none; arithmetic follows IEEE 754.
#pragma once

#include <compare>

namespace plugside {

class Metres {
public:
    constexpr Metres() = default;
    [[nodiscard]] static constexpr Metres of(double metres) { return Metres(metres); }
    [[nodiscard]] static constexpr Metres from_feet(double feet) { return Metres(feet * 0.3048); }
    [[nodiscard]] static constexpr Metres from_inches(double inches) { return Metres(inches * 0.0254); }

    [[nodiscard]] constexpr double value() const { return metres_; }
    [[nodiscard]] constexpr double feet() const { return metres_ / 0.3048; }
    [[nodiscard]] constexpr double inches() const { return metres_ / 0.0254; }

    friend constexpr Metres operator+(Metres a, Metres b) { return Metres(a.metres_ + b.metres_); }
    friend constexpr Metres operator-(Metres a, Metres b) { return Metres(a.metres_ - b.metres_); }
    friend constexpr Metres operator-(Metres a) { return Metres(-a.metres_); }
    friend constexpr Metres operator*(Metres a, double factor) { return Metres(a.metres_ * factor); }
    friend constexpr Metres operator*(double factor, Metres a) { return Metres(a.metres_ * factor); }
    friend constexpr Metres operator/(Metres a, double divisor) { return Metres(a.metres_ / divisor); }
    friend constexpr double operator/(Metres a, Metres b) { return a.metres_ / b.metres_; }
    friend constexpr auto operator<=>(Metres, Metres) = default;

private:
    explicit constexpr Metres(double metres) : metres_(metres) {}
    double metres_ = 0.0;
};

}  // namespace plugside
