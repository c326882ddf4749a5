#include "core/runs/take_off.h"

#include <cassert>
#include <cmath>
#include <numbers>

namespace plugside {

Metres plug_to_run(Metres depth, double slope_degrees) {
    assert(slope_degrees > 0.0 && slope_degrees < 90.0);
    return depth / std::tan(slope_degrees * std::numbers::pi / 180.0);
}

LateralLength lateral_length(const PlanOptions& options) {
    const double slope = options.slope_degrees * std::numbers::pi / 180.0;
    const double slope_sd = options.slope_sd_degrees * std::numbers::pi / 180.0;
    const double mean = plug_to_run(options.depth_mean, options.slope_degrees).value();
    const double from_depth = options.depth_sd.value() / std::tan(slope);
    const double from_slope = options.depth_mean.value() * slope_sd / (std::sin(slope) * std::sin(slope));
    return {mean, std::hypot(from_depth, from_slope)};
}

TakeOff take_off_of(LocalPoint plug, std::optional<Bearing> fan, Metres position_sd, const PlanOptions& options) {
    const LateralLength lateral = lateral_length(options);
    const double receiver = position_sd.value();
    if (!fan) {
        // the run is one lateral away in an unknown direction: variance l^2 / 2 in each
        const double spread = std::hypot(receiver, std::hypot(lateral.mean_m, lateral.sd_m) / std::numbers::sqrt2);
        return {plug, spread, spread};
    }
    const double fan_sd = options.fan_sd_degrees * std::numbers::pi / 180.0;
    return {plug - fan->unit() * lateral.mean_m, std::hypot(receiver, lateral.sd_m),
            std::hypot(receiver, lateral.mean_m * fan_sd)};
}

}  // namespace plugside
