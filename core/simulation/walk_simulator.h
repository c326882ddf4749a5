// People walk a made-up field with handheld receivers and mark the mounds they see.
//
// Way:      lines across the field, back and forth, a few metres apart; the walker leaves the line for each mound and, by
//           habit, follows a string of mounds from one to the next before going on.
// Several: two or three people share a larger field by strips and walk at the same time, each with their own habits and
//           their own receiver, so marks of different walks share no error. Each mound is in one strip: none is marked
//           twice.
// Misses:   each mound is overlooked with the walker's own chance, 1-25 %.
// Receiver: error = a shared part that drifts (Ornstein-Uhlenbeck in time, sd 0.3-3 m, minutes) + own jitter (sd 0.05-0.8
//           m),
// so
//           that marks taken one after another are placed better relative to each other than absolutely. Source of the
//           shape: Sensors 2020, 20:6050; numbers: our assumption.
// Accuracy: half of the receivers tell how good they are, roughly: the true standard deviations times log-normal factors.
// Fan:      read by eye, error sd 6-25 degrees (our assumption after Tomastik & Tunak 2015), rounded to 5, 10, 22.5 or 45
//           degrees by habit; 2-45 % of mounds have none to read: crushed or mown, or a surface plug.
// Others:   moles' strings, ground squirrels' holes and voles' runways stand among the marks.
// Notes:    as a walker writes them: "fan 135 fresh", "fan SE older", "crushed", "mole".
// Cost:     near-linear in mounds and in the length walked.
#pragma once

#include <optional>

#include "core/simulation/field_domain.h"
#include "core/simulation/truth.h"

namespace plugside {

struct WalkerHabits {
    double line_gap_m = 7.0;
    double pace_m_per_s = 1.0;
    double seconds_a_mark = 12.0;
    double miss_chance = 0.07;
    bool follows_mounds = true;  // from one mound to the next within sight before going on
    double shared_sd_m = 2.0;
    double shared_memory_s = 600.0;
    double own_sd_m = 0.3;
    std::optional<double> told_own_sd_m;  // what the receiver says of itself
    std::optional<double> told_shared_sd_m;
    double fan_sd_degrees = 13.0;
    double fan_rounding_degrees = 10.0;
    double no_fan_share = 0.15;
    double age_noted_share = 0.9;
    double others_share = 0.06;  // marks of other diggers, as a share of the gophers' mounds
};

[[nodiscard]] WalkerHabits draw_walker_habits(Random& random);

// One person, or on about a quarter of the larger fields two or three. `random` of its own: it moves nothing else.
[[nodiscard]] std::size_t draw_walker_count(const FieldDomain& domain, Random& random);

// Fills survey.walks (one a walker), survey.mounds (walk after walk, in the order marked) and TrueMound::seen_as.
// `walkers`: at least one; the first walks the first strip.
void walk_field(const FieldDomain& domain, const std::vector<WalkerHabits>& walkers, SimulatedField& field, Random& random);

}  // namespace plugside
