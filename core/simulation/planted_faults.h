// What goes wrong on real walks, planted into a made-up one, with a list of what was planted: the yardstick of core/mending.
//
// Doubles:   `pressed_twice`: a second mark some seconds after the first; `met_again`: the mound is met from a later line of
// the
//            same walk and marked once more. Both with a new reading of the fan and new jitter; the later one with the error
//            that the receiver had by then.
// Fans:      single ones read from the wrong end; a whole walk read so; a walk whose compass is off.
// Receiver:  single marks and track points that jump 15-60 m; stretches of three to six marks in one place while the clock
// goes
//            on.
// Outside:   marks pressed 12-50 m beyond the boundary; none where there is no boundary.
// Later:     the field walked once more two weeks later with an error of its own; part of the mounds is marked again.
// Diggers:   other diggers' signs marked as a gopher's, every other one with a word of what was seen.
// Shares are of marks of true mounds. How often each happens: our assumption, no published figure.
// Guarantee: marks of the first walks keep their index, so TrueMound::seen_as stays valid; new marks are appended. No mark
// gets two
//            faults of its own (a walk's compass and wrong end hold for all its fans, before single ones are turned).
// Degenerate input: a walk too small for a fault gets fewer of it.
// Cost:      O(n log n).
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/simulation/random.h"
#include "core/simulation/truth.h"

namespace plugside {

// Standard deviations in each direction: own jitter, and a shared part that drifts (Ornstein-Uhlenbeck) with this memory.
struct Receiver {
    double own_sd_m = 0.3;
    double shared_sd_m = 2.0;
    double shared_memory_s = 600.0;
};

struct FaultsToPlant {
    double pressed_twice = 0.02;
    double met_again = 0.02;
    double reversed = 0.03;
    std::optional<std::size_t> wrong_end_walk;  // all its fans
    std::optional<std::size_t> turned_walk;     // its compass is off
    double turned_degrees = 0.0;
    std::size_t jumped_marks = 2;
    std::size_t jumped_track_points = 3;
    std::size_t frozen_stretches = 1;
    std::size_t marks_outside = 2;
    double marked_later = 0.0;  // share of true mounds that a second walk marks
    bool diggers_as_gophers = true;
    double fan_sd_degrees = 13.0;  // of the second reading
    Receiver later_receiver;
};

struct MarkedAgain {
    std::string mark;
    std::string first;  // the mark of the same mound that was there before
    double seconds = 0.0;
};

struct PlantedFaults {
    std::vector<MarkedAgain> pressed_twice, met_again, marked_later;
    std::vector<std::string> reversed;
    std::vector<std::string> jumped;
    std::vector<LocalPoint> jumped_track_points;
    std::vector<std::vector<std::string>> frozen;  // the marks after the first of each stretch
    std::vector<std::string> outside;
    std::vector<std::string> diggers;
};

PlantedFaults plant_faults(SimulatedField& field, const FaultsToPlant& wanted, Random& random);

// The same walk as this receiver would have recorded it: marks of true mounds stand at the plug plus its error; other marks
// and the track are moved along. Each walk has its own.
void record_with(SimulatedField& field, const Receiver& receiver, Random& random);

}  // namespace plugside
