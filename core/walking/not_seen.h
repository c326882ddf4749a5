// What a walk did not see: the chance that each place was seen, the mounds overlooked, and what may lie where
// nobody walked.
//
// Line:      distances are taken from the line of travel (line_of_travel.h), on the searched parts of the track
//            only (searched_track.h). Where more than two fifths of the marks were reached from the mark before,
//            distances tell little of seeing from the line: then a default curve about the track itself stands in,
//            and a sentence says so.
// Seen:      chance seen at places of a fine grid inside the boundary, buildings left out; without a boundary,
//            within reach of the line.
// Walked:    within `walked_reach` of the searched track, as the plan's area walked; the rest of the boundary is
//            unwalked.
// Mounds not seen on walked ground: as many more as chances of less than 1 leave room for (negative binomial,
//            given the marks and a curve drawn from the spread of its fit).
// Unwalked:  taken to be like the walked ground. Systems come as a Poisson number with a rate known from the
//            systems found (their own interval included), each with a size drawn from those found, so that the
//            interval is as wide as clustered mounds make it. Animals: the same draws' systems. A system that lies
//            across the edge is counted on both sides, so that this number is rather too large on narrow strips.
// Intervals: central, 90 in 100, of `draws` draws; expected is their middle (of animals the mean); the same survey
//            and plan give the same numbers.
// Preconditions: the plan is of this survey (else every mark is its own group and ten mounds a system are
//            assumed).
// Degenerate input: no track gives nothing; no marks: the default curve, all numbers small and wide.
// Cost:      O(places) with at most about 30,000 places: about half a second.
// Errors:    nothing when stopped.
// Source:    Buckland et al. 2001 for the walked part [memory]; likeness of the unwalked part is our assumption
//            and is said.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "core/plan/plan.h"
#include "core/plan/progress.h"
#include "core/walking/detection_curve.h"
#include "core/walking/searched_track.h"

namespace plugside {

struct NotSeenOptions {
    Metres walked_reach = Metres::of(5.0);  // as PlanOptions::seen_from_track
    DefaultCurve fallback;
    SearchLimits limits;
    double most_followed = 0.4;  // of marks that can be told; our assumption
    // The spread of a fitted curve, over what its fit tells: distances carry the receiver's drift and the error of the line
    // found. Measured on simulated walks (seeds 5000-5199, 20000-20199, 30000-30199), where intervals without it held 78 in
    // 100 instead of 90; with it 177 of 200 others.
    double spread_factor = 1.5;
    std::size_t most_places = 30000;
    int draws = 1000;
    double interval = 0.90;
};

struct Amount {
    double expected = 0.0;
    double low = 0.0;
    double high = 0.0;
    friend bool operator==(const Amount&, const Amount&) = default;
};

// Rows from south to north, cells from west to east; the chance at a place of each cell, negative outside the field.
struct SeenSurface {
    LocalPoint south_west;
    double cell_m = 1.0;
    std::size_t columns = 0;
    std::size_t rows = 0;
    std::vector<float> chance;
};

struct NotSeen {
    DetectionFit detection;
    double followed_share = 0.0;  // of the marks
    double walked_m2 = 0.0;
    double unwalked_m2 = 0.0;  // 0 without a boundary
    double gaps_m = 0.0;       // of track, left out
    double driven_m = 0.0;
    std::size_t mounds_seen = 0;  // usable marks in the field
    double seen_of_walked = 0.0;  // mean chance on walked ground
    double interval = 0.90;       // level of every Amount
    Amount mounds_in_all;         // seen and not seen, walked and unwalked
    Amount mounds_missed;         // not seen on walked ground
    Amount mounds_unwalked;       // not seen on unwalked ground
    Amount animals_unwalked;
    double assumed_alike = 0.0;  // share of the mounds not seen that rests on likeness alone
    SeenSurface surface;
};

[[nodiscard]] std::optional<NotSeen> not_seen(const Survey& survey, const Plan& plan, const NotSeenOptions& options = {},
                                              const Progress& progress = {});

}  // namespace plugside
