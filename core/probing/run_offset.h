// Where along a row of probe holes the run is, as a distribution: mixtures of normal densities.
//
// Unit:    metres from the row's own zero (the plug on the plug side; the tape between two mounds).
// Mass:    `presence` is the chance that the run is there at all; the parts' weights sum to 1.
// Source:  geometry of plug, lateral and run as in trade publications (see take_off.h); spreads are our assumptions, checked
//          against simulated truth.
#pragma once

#include <optional>
#include <vector>

#include "core/plan/make_plan.h"

namespace plugside {

struct RunOffset {
    struct Part {
        double weight = 0.0;
        double mean_m = 0.0;
        double sd_m = 0.0;
    };
    std::vector<Part> parts;
    double presence = 1.0;

    // Chance that the run is there and lies below `offset_m`, O(parts).
    [[nodiscard]] double below(double offset_m) const;
    [[nodiscard]] double mean_m() const;
    [[nodiscard]] double sd_m() const;
};

// Along the plug side's axis, on a line `across` to its right. The run is met where it crosses that line: the lateral strays from
// the axis that the eye lays along the fan, and the run leans from square to the lateral.
[[nodiscard]] RunOffset plug_side_offset(const PlanOptions& options, Metres across = Metres::of(0.0));

// One end of a stretch between two mounds: where its junction lies beside the tape.
struct EndOfStretch {
    std::optional<double> fan_from_tape_degrees;  // bearing of the fan less bearing of the tape (from -> to); nothing: no fan
    double direction_sd_degrees = 0.0;            // of that angle: reading of the fan, and of the tape's bearing by receiver
};

// Across the tape (positive right, looking from the first mound to the second), at `along` of a tape `length` long.
[[nodiscard]] RunOffset between_offset(const EndOfStretch& from, const EndOfStretch& to, Metres length, Metres along,
                                       double presence, const PlanOptions& options);

}  // namespace plugside
