// Where the receiver failed: points of the track that spring away and back, marks that lie off the way the walker was on,
// marks in one place while the clock went on.
//
// TrackJump:  points of a track that are left and reached by steps far beyond this walk's own, with the track going on where
// it was. JumpedMark: a mark that lies much farther from where the track was at its time than this walk's marks do; without
// a track, one
//             that can be reached from the mark before and left to the next only at many times this walk's speed.
//             `should_be`: the track's place at that time.
// FarMark:    a mark without a time, far from every point of its walk's track.
// FrozenRun:  three or more marks that follow one another within 0.1 m, each at least 5 s after the last. `should_be`: where
// the
//             track was, if the track went on.
// Limits:     at least 8 m, and several times what this walk itself has at nine of ten points or marks: our assumption.
// Degenerate input: walks without a track, without times, of one point give what can be told, mostly nothing.
// Cost:       O(track points + marks log track points); a search tree over the track only where a mark has no time.
#pragma once

#include <optional>

#include "core/mending/walk_marks.h"
#include "core/plan/progress.h"

namespace plugside {

struct TrackJump {
    std::size_t walk = 0, segment = 0;
    std::size_t begin = 0, end = 0;  // points begin .. end - 1 of the segment
    LocalPoint at;
    double out_m = 0.0;
};
struct JumpedMark {
    std::size_t mark = 0;  // into WalkMarks::marks
    double out_m = 0.0;
    double usual_m = 0.0;  // of nine marks in ten; a speed in m/s where there is no track
    std::optional<LocalPoint> should_be;
};
struct FarMark {
    std::size_t mark = 0;
    double out_m = 0.0;
};
struct FrozenRun {
    std::vector<std::size_t> marks;
    double seconds = 0.0;
    std::vector<LocalPoint> should_be;  // of all marks, or empty
};

struct ReceiverFaults {
    std::vector<TrackJump> track;
    std::vector<JumpedMark> jumped;
    std::vector<FarMark> far;
    std::vector<FrozenRun> frozen;
};

struct ReceiverFaultOptions {
    double least_jump_m = 8.0;
    double least_far_m = 20.0;
    double times_usual = 4.0;
    double frozen_within_m = 0.1;
};

[[nodiscard]] ReceiverFaults receiver_faults(const Survey& survey, const WalkMarks& walk,
                                             const ReceiverFaultOptions& options = {}, const Progress& progress = {});

}  // namespace plugside
