#include "core/simulation/field_scales.h"

#include <algorithm>

namespace plugside {

FieldScales draw_field_scales(Random& random) {
    FieldScales scales;
    scales.spacing_m = random.log_uniform(0.8, 4.0);
    scales.spacing_variation = random.uniform(0.2, 0.7);
    scales.mounds_median = random.log_uniform(6.0, 32.0);
    scales.mounds_log_sd = random.uniform(0.25, 0.85);
    scales.gap_m = random.log_uniform(0.8, 5.0);
    scales.room_per_run_m = scales.gap_m * random.uniform(1.0, 1.6) + random.log_uniform(1.0, 12.0);
    scales.tunnel_diameter_m = random.uniform(0.05, 0.076);
    scales.depth_m = random.uniform(0.18, 0.33);
    scales.depth_between_sd_m = random.uniform(0.015, 0.04);
    scales.slope_degrees = random.uniform(42.0, 48.0);
    scales.slope_sd_degrees = random.uniform(6.0, 9.0);
    scales.lean_sd_degrees = random.uniform(12.0, 24.0);
    scales.fan_spread_degrees = random.uniform(4.0, 12.0);
    scales.side_keeping = random.uniform(0.2, 0.85);
    return scales;
}

double draw_run_length_m(const FieldScales& scales, Random& random) {
    const double mounds = std::clamp(random.log_normal(scales.mounds_median, scales.mounds_log_sd), 3.0, 60.0);
    return mounds * scales.spacing_m;
}

}  // namespace plugside
