// The ground as it really is under the marks, to try ladders on.
//
// Build once a field, try many ladders: O(run vertices) to build, O(rungs) expected a ladder.
// Axis:  from the TRUE plug of the first mound, towards the TRUE plug of the other, or opposite its TRUE fan: a person on
// the
//        spot goes by plug, fan and tape, not by the receiver's place or the bearing that was noted.
// Hit:   a rung within half the tunnel's diameter of the centre line of a run, of whichever system. Laterals are not runs.
// Degenerate input: a site on a mark that is no gopher's mound, or between marks with one plug, is a miss after all rungs.
#pragma once

#include <cstdint>
#include <optional>
#include <unordered_map>
#include <vector>

#include "core/plan/plan.h"
#include "core/simulation/truth.h"

namespace plugside {

class TrueGround {
public:
    explicit TrueGround(const SimulatedField& field);

    struct Trial {
        int rungs = 0;                      // pushed, the one that hit included
        std::optional<std::size_t> system;  // whose run was hit first
    };
    [[nodiscard]] Trial try_ladder(const ProbeSite& site) const;

    // The true mound of a mark, or nothing for another digger's.
    [[nodiscard]] std::optional<std::size_t> mound_of_mark(std::size_t mark) const;
    // The system of the run that a hole here meets.
    [[nodiscard]] std::optional<std::size_t> system_under(LocalPoint hole) const;

private:
    struct Segment {
        LocalPoint from;
        LocalPoint to;
        std::size_t system;
    };
    [[nodiscard]] static std::uint64_t key(LocalPoint place);
    const FieldTruth& truth_;
    std::vector<std::optional<std::size_t>> mound_of_mark_;
    std::unordered_map<std::uint64_t, std::vector<Segment>> cells_;
};

}  // namespace plugside
