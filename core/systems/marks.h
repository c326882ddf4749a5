// The marks that take part in the inference, in an order of their own that does not depend on how the survey numbers them.
//
// take_off: plug - l * fan, with l = depth * cot(slope); the plug itself where no fan was read.
// sd_m:     of the take-off in each direction: receiver and, along and across the fan's axis, the lateral's own spread.
// key:      keyed_random key from the distances to the nearest marks, to the millimetre: unchanged when the field is moved,
//           turned or renumbered. Marks with equal surroundings are told apart by their order on the ground.
// Order:    along a space-filling curve, so that neighbours lie near one another in memory; ties by what the mark says.
// Degenerate input: no mark gives an empty set; marks in one place are kept apart.
// Cost:     O(n log n).
#pragma once

#include <cstdint>
#include <optional>
#include <vector>

#include "core/plan/make_plan.h"
#include "core/survey/survey.h"

namespace plugside {

struct Mark {
    std::size_t mound = 0;  // index into Survey::mounds
    LocalPoint plug;
    LocalPoint take_off;
    std::optional<Bearing> fan;
    double position_sd_m = 0.5;         // own part
    std::optional<double> shared_sd_m;  // part shared with marks made soon before and after
    double sd_m = 0.5;
    Freshness freshness = Freshness::unknown;
    std::optional<UtcTime> time;  // when it was marked
    std::size_t walk = 0;         // index into Survey::walks
    std::uint64_t key = 0;
};

[[nodiscard]] std::vector<Mark> marks_of(const Survey& survey, const PlanOptions& options);

}  // namespace plugside
