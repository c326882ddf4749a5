#include "core/outcome/effectiveness.h"

#include <cassert>
#include <cmath>

namespace plugside {

namespace {

// 1 - part / whole; nothing without a whole.
std::optional<double> one_less_ratio(double part, double whole) {
    assert(std::isfinite(part) && std::isfinite(whole) && part >= 0.0 && whole >= 0.0);
    if (whole == 0.0) return std::nullopt;
    return 1.0 - part / whole;
}

}  // namespace

std::optional<double> abbott_reduction(double treated_after, double untreated_after) {
    return one_less_ratio(treated_after, untreated_after);
}

std::optional<double> henderson_tilton_reduction(BeforeAfter treated, BeforeAfter untreated) {
    return one_less_ratio(treated.after * untreated.before, treated.before * untreated.after);
}

std::optional<double> raw_reduction(BeforeAfter treated) { return one_less_ratio(treated.after, treated.before); }

}  // namespace plugside
