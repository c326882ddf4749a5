// Where the lateral leaves the main run, as far as one mound tells.
//
// lateral_m: horizontal length from plug to run, depth * cot(slope); mean and standard deviation to first order.
// Source:    depth UC IPM Pest Notes 7433 (6-12 in) and the UC field-rodent circular (6-14 in); slope about 45 degrees is
//            common practice. Worked example: 8, 12, 14 in deep at 45 degrees gives 8, 12, 14 in.
#pragma once

#include "core/geometry/point.h"
#include "core/plan/make_plan.h"
#include "core/units/bearing.h"

namespace plugside {

// Horizontal distance from plug to run. Precondition: 0 < slope_degrees < 90 (asserts).
[[nodiscard]] Metres plug_to_run(Metres depth, double slope_degrees);

struct LateralLength {
    double mean_m = 0.0;
    double sd_m = 0.0;
};
[[nodiscard]] LateralLength lateral_length(const PlanOptions& options);

struct TakeOff {
    LocalPoint at;
    double sd_along_m = 0.0;   // along the fan's axis (any direction where there is no fan)
    double sd_across_m = 0.0;
};
// Without a fan: the plug, with the lateral's length as an isotropic spread.
[[nodiscard]] TakeOff take_off_of(LocalPoint plug, std::optional<Bearing> fan, Metres position_sd,
                                  const PlanOptions& options);

}  // namespace plugside
