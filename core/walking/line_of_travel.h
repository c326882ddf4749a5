// The line a walker searched from: the track without the ways off to the mounds.
//
// Why:       a walker leaves the line to stand at a mound, so that the track comes within a step of every mark;
//            how far a mound lay from where it was seen is told by the line without these detours.
// How:       of all lines through vertices of the track (every metre), in order, the shortest one. A part of the
//            track may be left out only where marks were made on it, at most 10 m deep, and where the walker went
//            straight to each mark and straight back, or on to the next (a string of marks at most 20 m long
//            without touching the line), 48 m of way at most; so a turn at a line's end stays. Vertices within .75
//            m of a mark are never on the line.
// Marks:     each belongs to the place of the track at its time; without times, to the nearest place of the track.
//            A mark more than 15 m off the track belongs to none.
// told:      whether the fixes are close enough to say how the walker came from the mark before: marks on one side
//            of the line, and the way that touches the line longer than straight by at least 1.5 m and two and a
//            half times the usual step between fixes.
// followed:  told, and the walker came from the mark before without going back to the line: the way walked between
//            the two is nearer to straight than to the way by the line. Such a mark was perhaps seen from the
//            other mark, not from the line.
// Degenerate input: no track gives nothing; a track without marks is the line itself.
// Cost:      about 50 steps for each metre of track.
// Source:    our own; limits are our assumption.
#pragma once

#include <cstddef>
#include <vector>

#include "core/walking/searched_track.h"

namespace plugside {

struct TravelPiece {
    Polyline line;
    std::vector<double> way_m;  // of the track as walked, one a vertex
};

struct MarkBesideLine {
    std::size_t mark = 0;  // index into what was given
    std::size_t piece = 0;
    double way_m = 0.0;
    Metres distance;  // from the line, near where the mark was made
    bool told = false;
    bool followed = false;
};

struct LineOfTravel {
    std::vector<TravelPiece> pieces;
    std::vector<MarkBesideLine> marks;  // in the order walked
};

struct MarkOnWalk {
    LocalPoint at;
    std::optional<UtcTime> time;
};

[[nodiscard]] LineOfTravel line_of_travel(const SearchedTrack& track, const std::vector<MarkOnWalk>& marks);

}  // namespace plugside
