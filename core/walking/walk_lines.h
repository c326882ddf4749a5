// Lines for the next walk: parallel, inside the boundary, as far apart as sees a chosen share of the mounds.
//
// Spacing:   the widest at which places between endless parallel lines are seen with the chosen mean chance, each
//            place passed by all lines about it (detection_curve.h). The lines of a part are spread evenly, so
//            they are at most that far apart.
// Part:      the field, or the ground given (unwalked), less keep-clear areas and a berth about them and about
//            barriers; each connected piece is walked on its own, along its longer way (across its least width). A
//            piece less than a metre wide is left out.
// Order:     back and forth, always on to the end that is left and soonest reached. From line to line the way
//            keeps inside the piece, following its edge where the straight way would leave it. A gate joins the
//            pieces on its two sides. Pieces that do not hang together become routes of their own: where to get
//            across is for the walker to see, and a sentence says so.
// Walkers:   each piece's lines are cut in as many stretches of about equal length, one route each.
// Time:      length over pace; what marking takes comes on top.
// Preconditions: 0 < see < 1, pace > 0, walkers > 0; anything else asserts.
// Degenerate input: no ground gives no route.
// Cost:      O(lines^2 log lines + lines x vertices).
// Source:    walking by lines is common practice; the berth is our assumption.
#pragma once

#include <string>
#include <vector>

#include "core/geometry/polyline.h"
#include "core/survey/ground.h"
#include "core/units/probability.h"
#include "core/walking/detection_curve.h"

namespace plugside {

struct WalkLineOptions {
    Probability see = Probability::of(0.9);
    DetectionCurve curve;            // as fitted to a walk, or the default
    Metres berth = Metres::of(1.0);  // kept from barriers and keep-clear areas
    std::size_t walkers = 1;
    double pace_m_per_s = 1.0;  // a searching walk; our assumption
};

struct WalkRoute {
    std::string name;  // "Piece 1, walker 2"; "Walk" where there is one route only
    std::size_t piece = 0;
    std::size_t walker = 0;
    std::size_t lines = 0;
    Polyline way;
    Metres length;
    double seconds = 0.0;
};

struct WalkLines {
    Metres spacing;                 // the widest allowed
    std::vector<WalkRoute> routes;  // piece after piece, walker after walker
    std::size_t pieces = 0;
    Metres length;         // of all routes
    double seconds = 0.0;  // of the walker who takes longest
    std::vector<std::string> sentences;
};

[[nodiscard]] Metres line_spacing(const DetectionCurve& curve, Probability see);
// The mean chance over places between endless lines `spacing` apart.
[[nodiscard]] Probability seen_between_lines(const DetectionCurve& curve, Metres spacing);

// `part`: the ground to walk; empty = the whole boundary.
[[nodiscard]] WalkLines walk_lines(const Ground& ground, const MultiPolygon& part, const WalkLineOptions& options = {});

}  // namespace plugside
