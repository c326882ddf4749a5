// Mounds along the runs of one system: laterals leave the run about at a right angle, to either side, rise to the surface,
// and the soil is thrown on, away from the run.
//
// Geometry: the run is at depth d; a lateral of slope s leaves it at the junction and meets the surface d * cot(s) further
// on:
//           there is the plug. The fan lies beyond, so the run lies on the plug's side opposite the fan.
// Spacing:  gamma along each run, near-even (Reichman, Whitham & Ruffner 1982); mean and variation from the field's scales,
//            stretched or drawn together where the system's spacing factors say so.
// Guarantee: plugs at least 0.4 m apart within a system (a mound is 30-46 cm wide: extension accounts).
// Cost:     O(length) plus O(mounds squared) within a system.
#pragma once

#include "core/simulation/dug_ground.h"
#include "core/simulation/field_scales.h"
#include "core/simulation/truth.h"

namespace plugside {

// Appends the system's mounds and runs to `truth`; a system on which no mound fits leaves nothing behind.
void put_mounds_on(const GrownSystem& grown, const FieldScales& scales, FieldTruth& truth, Random& random);

}  // namespace plugside
