// The sizes that hold over one made-up field: how far apart mounds stand, how long systems are, how deep runs lie.
//
// Every number is drawn anew for each field, from ranges at least as broad as the published ones, because system sizes in
// print span a factor of sixty and no field is average.
//
// Sources: tunnel diameter 5-7.6 cm: UC field-rodent circular, Montana Dept of Agriculture. Depth 15-36 cm: UC IPM Pest
// Notes
//          7433, UC field-rodent circular. Slope of a lateral about 45 degrees: common practice, no source. T-junctions:
//          Dalquest 1948. Mounds per system, spacing along a run, gap between systems: no published figure, our assumption.
#pragma once

#include "core/simulation/random.h"

namespace plugside {

struct FieldScales {
    double spacing_m = 2.0;           // mean distance along a run from one lateral to the next, 0.8-4
    double spacing_variation = 0.45;  // its coefficient of variation, .2-.7
    double mounds_median = 12.0;      // mounds of a system: log-normal, held within 3-60; 6-32
    double mounds_log_sd = 0.5;
    double gap_m = 2.0;           // no run of one system comes nearer than this to one of another, 0.8-5
    double room_per_run_m = 6.0;  // field area over length of run, m2 a metre
    double tunnel_diameter_m = 0.064;
    double depth_m = 0.25;  // mean over the field; systems differ, and each wobbles along its runs
    double depth_between_sd_m = 0.03;
    double slope_degrees = 45.0;
    double slope_sd_degrees = 8.0;
    double lean_sd_degrees = 17.0;    // of a lateral about the right angle to its run
    double fan_spread_degrees = 8.0;  // of the fan about its lateral's direction
    double side_keeping = 0.5;        // chance that the next lateral leaves on the same side as the last
};

inline constexpr double least_depth_m = 0.15;
inline constexpr double most_depth_m = 0.36;

[[nodiscard]] FieldScales draw_field_scales(Random& random);

// Length of run that one system digs, from its log-normal number of mounds.
[[nodiscard]] double draw_run_length_m(const FieldScales& scales, Random& random);

}  // namespace plugside
