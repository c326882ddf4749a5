// What a row of probe holes is judged by, as values: with it another row at the same marks can be judged without the draws of the systems.
//
// Units: degrees, clockwise; lengths in metres.
#pragma once

#include <optional>

#include "core/units/metres.h"

namespace plugside {

// What the neighbours that a run joins tell of the run's direction under a mound: the turn from square to the axis opposite
// the fan, clockwise, degrees. Nothing known: mean 0, the sum of stray and lean.
struct RunTurn {
    double mean_degrees = 0.0;
    double sd_degrees = 20.59;  // hypot(stray, lean)
    friend bool operator==(const RunTurn&, const RunTurn&) = default;
};

// One end of a stretch between two mounds.
struct EndOfStretch {
    std::optional<double>
        fan_from_tape_degrees;  // bearing of the fan less bearing of the tape (first -> second), as recorded
};

struct Stretch {
    EndOfStretch from;
    EndOfStretch to;
    Metres length;                 // of the tape
    double tape_sd_degrees = 0.0;  // of the tape's bearing as recorded: the receiver's error
    double joined = 1.0;           // chance that a run joins the two
};

struct RowBasis {
    RunTurn turn;                    // on the plug side
    std::optional<Stretch> stretch;  // between two mounds
    bool from_second = false;        // the site's tape begins at the stretch's second end
};

}  // namespace plugside
