// What a walk saw, and what it did not: the ground within `reach` of the track.
//
// Result:    `walked` clipped to the boundary where there is one; `unwalked` = boundary less walked (empty without a
//            boundary: then nothing says where the field ends).
// Degenerate input: no track: nothing walked, all of the boundary unwalked; a track of one point is a disc.
// Cost:      buffers are taken in chunks of the track and joined, O(n log n) for tracks that cross themselves a lot (one
//            buffer of a 20,000-vertex walk takes a minute, chunks a second).
// Errors:    returns nothing when stopped, or when GEOS refuses the input (an invalid boundary is mended first).
// Source:    reach of sight is our assumption.
#pragma once

#include <optional>
#include <vector>

#include "core/geometry/polygon.h"
#include "core/plan/progress.h"
#include "core/survey/walk.h"

namespace plugside {

struct Coverage {
    MultiPolygon walked;
    MultiPolygon unwalked;
    double walked_area_m2 = 0.0;
    double unwalked_area_m2 = 0.0;
};

[[nodiscard]] std::optional<Coverage> coverage_of(const std::vector<Walk>& walks, const MultiPolygon& boundary, Metres reach,
                                                  const Progress& progress = {});

}  // namespace plugside
