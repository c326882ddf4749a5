// A ladder: which holes to push, in which order, and what that promises.
//
// Rungs are tried from the middle outwards, nearer first. Middle and half length are round to a centimetre; the steps
// offered are 5 cm (2 in), 5.7 cm (2 1/4 in) and 7 cm (2 3/4 in): what a tape of either kind reads to the millimetre.
// Choice: of all middles, half lengths and steps the row with the greatest worth: its chance less `price` for each hole that
// it is
//         expected to take. A price of p is a person who pushes on while a hole finds the run at least p times in one. No
//         row is longer than it takes to find `enough`.
// Cost:   `place_row` O(middles x steps x rungs).
#pragma once

#include <vector>

#include "core/probing/row_chance.h"

namespace plugside {

struct LadderOptions {
    std::vector<Metres> steps = {Metres::of(0.05), Metres::of(0.057)};  // about the narrowest tunnel's diameter
    Metres longest_half = Metres::of(0.60);                             // what is probed standing in one place
    double price = 0.05;                                                // of one hole, in chance: our assumption
    double enough = 1.0;         // of the chance that can be had: no longer than reaches it
    int middles_either_way = 5;  // tried about the mean, two centimetres apart
};

// Offsets from the middle in the order to try: 0, -step, +step, -2 step, ... within half_length.
[[nodiscard]] std::vector<Metres> rungs_of(Metres half_length, Metres step);

struct PlacedRow {
    Metres middle;
    Metres half_length;  // a whole number of steps, rounded up to a centimetre
    Metres step;
    LadderPromise promise;
    double worth = 0.0;
};
[[nodiscard]] PlacedRow place_row(const RowChance& row, Metres tunnel_diameter, const LadderOptions& options = {});

}  // namespace plugside
