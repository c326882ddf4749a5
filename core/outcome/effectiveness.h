// How much a treatment reduced the animals' activity, from counts before and after, with an untreated piece where there is
// one.
//
// Units:      counts >= 0 of the same sign (fresh mounds, plots with activity) over the same ground; the result is a share,
// 1 = none
//             left, negative = more than would be expected without treatment.
// Preconditions: counts are finite and not negative; anything else asserts.
// Degenerate input: nothing where the formula divides by zero (no activity before, none left on the untreated piece).
// Not claimed: an index of activity can overstate the reduction of animals: 77.5 % by activity against 65.0 % by radio tags
// in one
//             trial (Sullivan & Sullins 1988).
// Source:     Abbott 1925, J. Econ. Entomol. 18:265-267; Henderson & Tilton 1955, J. Econ. Entomol. 48:157-161 [memory].
#pragma once

#include <optional>

namespace plugside {

// 1 - treated / untreated: both counted after the treatment, alike before. O(1).
[[nodiscard]] std::optional<double> abbott_reduction(double treated_after, double untreated_after);

struct BeforeAfter {
    double before = 0.0;
    double after = 0.0;
};

// 1 - (treated after / before) / (untreated after / before): allows for what happened on the untreated piece. O(1).
[[nodiscard]] std::optional<double> henderson_tilton_reduction(BeforeAfter treated, BeforeAfter untreated);

// 1 - after / before, where nothing was left untreated: weather and season are in it too. O(1).
[[nodiscard]] std::optional<double> raw_reduction(BeforeAfter treated);

// The reduction that field trials are held to: EPA, as quoted in field trials.
inline constexpr double trial_pass_mark = 0.70;

}  // namespace plugside
