// What a walk saw, and what it did not: the ground within `reach` of the track.
//
// Result:    `walked` clipped to the boundary where there is one; `unwalked` = boundary less walked (empty without a
//            boundary: then nothing says where the field ends).
// Degenerate input: no track: nothing walked, all of the boundary unwalked; a track of one point is a disc.
// Searched:  gaps in time and driving count as not walked (searched_track.h).
// Accuracy:  the track is thinned first, by at most a twentieth of the reach and a quarter of a metre; a receiver errs by
//            metres.
// Cost:      O(n): from 2,000 vertices on the outline comes from a net of distances (reach_cells.h), 100,000 fixes in a
//            quarter of a second, a million in three; shorter tracks, and those wider than the net, by joined buffers.
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
