// A simulated field with what is really there: the yardstick of every chance the program tells.
//
// TrueMound: plug and fan as they are on the ground; system it belongs to; the point where its lateral meets the run.
// TrueRun:   the centre line of a piece of main run or branch, vertices at most 0.1 m apart; depth below the surface.
// parameters: what the generator and the first walker drew for the whole field (scales of field_scales.h, habits of
//           walk_simulator.h; lengths as logs), for measuring how much of what is missed is in not knowing these.
// seen_as:   for each mound the index of the mark of Survey::mounds that the walker made of it, or nothing (missed).
#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include "core/geometry/polyline.h"
#include "core/survey/survey.h"

namespace plugside {

struct TrueMound {
    LocalPoint plug;
    Bearing fan;
    std::size_t system = 0;
    LocalPoint run_junction;
    std::optional<std::size_t> seen_as;
};

struct TrueRun {
    std::size_t system = 0;
    Polyline line;
    Metres depth;
};

struct FieldTruth {
    std::size_t systems = 0;
    Metres tunnel_diameter;
    std::vector<TrueMound> mounds;
    std::vector<TrueRun> runs;
    std::vector<double> parameters;
};

struct SimulatedField {
    Survey survey;
    FieldTruth truth;
};

}  // namespace plugside
