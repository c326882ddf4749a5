// A chance, 0..1.
//
// Degenerate input: `of` clamps rounding residue (1 + 1e-9 becomes 1); a number further outside, or not finite, is a bug
//          and asserts.
// Display: `in_100` is what is shown to a person; it never says 100 or 0 unless the chance is exactly that.
#pragma once

#include <cassert>
#include <cmath>
#include <compare>

namespace plugside {

class Probability {
public:
    constexpr Probability() = default;
    [[nodiscard]] static Probability of(double value) {
        assert(std::isfinite(value) && value > -1e-6 && value < 1.0 + 1e-6);
        return Probability(value < 0.0 ? 0.0 : (value > 1.0 ? 1.0 : value));
    }
    [[nodiscard]] constexpr double value() const { return value_; }
    [[nodiscard]] int in_100() const {
        const int rounded = static_cast<int>(std::lround(value_ * 100.0));
        if (rounded == 100 && value_ < 1.0) return 99;
        if (rounded == 0 && value_ > 0.0) return 1;
        return rounded;
    }
    friend constexpr auto operator<=>(Probability, Probability) = default;

private:
    explicit constexpr Probability(double value) : value_(value) {}
    double value_ = 0.0;
};

}  // namespace plugside
