// The parts of a track on which somebody walked and could look: without its gaps and without driving.
//
// Gap:       two fixes further apart in time than a minute and than five times the track's usual step, with more
//            than 10 m between them: nobody knows where the walker was. Without times a track has the gaps that
//            its segments show.
// Driving:   more than 2.5 m/s (9 km/h) kept up over 15 s: nobody looks for mounds from there. Without times not
//            known.
// Standing:  adds no length; fixes within half a metre of the last one kept are left out, so a receiver that
//            wanders while the walker stands still adds little.
// Result:    pieces in the order walked, each with the way walked so far (metres along the track as recorded,
//            growing over all pieces of a walk) and, where the track has them, times.
// Degenerate input: a segment of one fix is a piece of one vertex; none gives none.
// Cost:      O(n).
// Source:    the limits are our assumption.
#pragma once

#include <optional>
#include <vector>

#include "core/geometry/polyline.h"
#include "core/survey/walk.h"

namespace plugside {

struct SearchLimits {
    double gap_s = 60.0;
    double gap_usual_steps = 5.0;
    double gap_m = 10.0;
    double driving_m_per_s = 2.5;
    double driving_over_s = 15.0;
    double standing_m = 0.5;
};

struct SearchedPiece {
    Polyline track;
    std::vector<double> way_m;                 // one a vertex
    std::vector<std::optional<UtcTime>> time;  // one a vertex
};

struct SearchedTrack {
    std::vector<SearchedPiece> pieces;
    double searched_m = 0.0;
    double gaps_m = 0.0;  // straight across what is not known
    double driven_m = 0.0;
    double seconds = 0.0;  // on the searched pieces, where times are known
};

[[nodiscard]] SearchedTrack searched_track(const Walk& walk, const SearchLimits& limits = {});

}  // namespace plugside
