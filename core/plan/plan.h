// What follows from a survey: which mounds are one animal's, where the runs lie, where to probe, where to set.
// A plan is computed, never edited; a person's decisions are in the survey and constrain the next plan.
//
// Units:   metres, square metres, degrees from true north, probabilities 0..1.
// Indexes: `mound` indexes Survey::mounds of the survey the plan was made from; `system`, `run`, `probe` index the
//          vectors here. Ids shown to people and files are the index + 1.
// Order:   systems by number of mounds, largest first, which is by letter where no earlier plan's letters were kept; probes by
//          system, then chance; sets by rank (1 = first choice over the whole field).
#pragma once

#include <cstdint>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "core/geometry/polygon.h"
#include "core/geometry/polyline.h"
#include "core/probing/row_basis.h"
#include "core/probing/row_chance.h"
#include "core/survey/survey.h"
#include "core/systems/count_in_part.h"
#include "core/units/probability.h"

namespace plugside {

// The scales the inference found in this survey, and the number of animals.
struct SystemsEstimate {
    double expected = 0.0;     // posterior mean number of systems
    int most_likely = 0;       // mode of the drawn numbers, smoothed
    int low = 0;               // ends of the central interval
    int high = 0;
    double interval = 0.90;    // its level
    Metres link_length;        // fitted typical distance between neighbouring mounds of one system
    double mounds_per_system = 0.0;  // usable mounds over expected systems
    int draws = 0;             // forests drawn
};

struct MoundInPlan {
    std::optional<std::size_t> system;
    std::optional<std::string> not_used_because;
    LocalPoint take_off;          // where the lateral leaves the run, as far as one mark tells
    Metres take_off_sd_along;     // along the fan's axis
    Metres take_off_sd_across;    // across it
    Probability belongs;          // mean chance that it is one animal's with the others of its system; 1 alone
    friend bool operator==(const MoundInPlan&, const MoundInPlan&) = default;
};

// What else may be true of the systems: definitions in core/systems/alternatives.h. The likeliest stand first.
struct JoinedSystems {
    std::size_t first = 0;
    std::size_t second = 0;
    Probability one;                   // that the two are one animal's
};

struct SplitSystem {
    std::size_t system = 0;
    Probability two;                   // that it is two animals', or more
    std::vector<std::size_t> apart;    // of the likeliest split the smaller part: mounds, ascending
};

struct DoubtfulMound {
    std::size_t mound = 0;
    std::size_t system = 0;
    Probability belongs;
    std::optional<std::size_t> runner_up;  // the system it most likely belongs to if not to its own; nothing: to none in particular
    Probability of_runner_up;
};

struct Alternatives {
    std::vector<JoinedSystems> joined;
    std::vector<SplitSystem> split;
    std::vector<DoubtfulMound> doubtful;
};

struct BurrowSystem {
    std::string letter;                // A, B, ... Z, AA, AB, ...
    std::vector<std::size_t> mounds;   // ascending
    MultiPolygon outline;              // buffer about its runs and mounds
    Probability single;                // chance that these mounds, all of them, are one animal's
    Metres run_length;
    Freshness freshest = Freshness::unknown;
    LocalPoint label_at;               // a place inside the outline
};

struct MainRun {
    std::size_t system = 0;
    std::size_t from_mound = 0;
    std::size_t to_mound = 0;
    Polyline line;                     // from take-off to take-off
    std::vector<double> sd_m;          // across the line, one a vertex
    Probability probability;           // that a run joins the two
};

// A row of probe holes. Origin: the plug of the first mound. Axis: towards the other mound's plug, or, on the plug side,
// opposite the fan of the first mound as it is seen on the ground.
struct Ladder {
    Metres along;                      // of its middle, along the axis
    Metres across;                     // of its middle, positive to the right, looking along the axis
    double angle_degrees = 0.0;        // of the row, clockwise from the axis; 0 = along it, 90 = across it
    Metres half_length;
    Metres step;
};

struct ProbeSite {
    ProbeKey key;
    std::size_t system = 0;
    std::size_t from_mound = 0;
    std::optional<std::size_t> to_mound;  // nothing for plug side
    bool across_gap = false;              // a wide row over a gap of which neither side pins the run
    Ladder ladder;
    std::vector<Metres> rungs;            // offsets from the middle along the row, in the order to try
    Probability hit;                      // that some rung meets the run
    Probability hit_as_proposed;          // the same for the ladder as proposed, before a person moved it
    LocalPoint middle_as_proposed;        // where that ladder's middle was
    double expected_rungs = 0.0;          // holes pushed until the hit, or all of them when there is none
    Bearing axis;                         // true bearing of the axis as recorded
    LocalPoint middle;                    // for the map: the ladder's middle as far as the marks tell
    std::vector<LocalPoint> rung_places;  // for the map, same order as rungs
    Metres run_offset;                    // where along the row, from its middle, the run is expected
    Metres run_offset_sd;
    RowChance along_row;                  // where the row meets the run, from its middle, as far as the rungs reach
    RowBasis basis;                       // what another row at the same marks would be judged by
};

enum class CautionWeight { stop, hold_back, mind };

struct SetPoint {
    std::size_t probe = 0;
    int rank = 0;                         // 1..n over the field
    int visit_order = 0;                  // 1..n along the walking order; dropped sets come last
    SetChoice choice = SetChoice::proposed;
    std::string method;                   // which method the place serves, in words
    std::vector<std::string> cautions;    // ids, see core/sets/cautions.h
};

struct Plan {
    std::uint64_t revision = 0;           // of the survey
    bool first_look = false;              // worked out roughly, to be replaced by the whole plan: not for handing out
    bool coarse = false;                  // the form for surveys too large for the whole: no runs, chances of a plain rule
    SystemsEstimate estimate;
    std::vector<MoundInPlan> mounds;      // same order as Survey::mounds
    std::vector<BurrowSystem> systems;
    std::vector<MainRun> runs;
    std::vector<ProbeSite> probes;
    std::vector<SetPoint> sets;
    std::vector<double> expected_reached_by_sets;  // animals that the first 1, 2, ... sets by rank are expected to reach
    Alternatives alternatives;
    std::shared_ptr<const DrawnSystems> drawn;  // for count_in_part; nothing without a usable mound
    MultiPolygon unwalked;                // inside the boundary, further from the track than a walker sees
    std::optional<double> area_walked_m2; // nothing without a track, nor in a first look
    std::optional<double> area_field_m2;  // nothing without a boundary
    std::vector<std::string> notices;     // plain sentences: what the plan could not do, and why
};

}  // namespace plugside
