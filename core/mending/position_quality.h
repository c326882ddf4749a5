// How well marks are placed, and how well relative to one another.
//
// PlaceError: standard deviations in each direction (east, north). `own_m` is the mark's own jitter; `shared_m` the part
// that marks
//          made soon after one another by one walker have in common, whose correlation falls as exp(-seconds / memory_s).
// Defaults: own 0.4 m where nothing was said of a mark, shared 1.5 m, memory 600 s: our assumption; the shape (a drift
// shared over
//          a minute and more, plus jitter) is that of Sensors 2020, 20:6050.
// relative_sd_m: of the difference of two marks' places in each direction. One walker: own_i^2 + own_j^2 + shared_i^2 +
// shared_j^2
//          - 2 shared_i shared_j exp(-seconds / memory). Two walkers: without the last term. A time missing on one walk: as
//          if one memory had passed.
// mean_place: several marks of one mound taken together, weighted by 1 / (own^2 + shared^2), with the standard deviation of
// that
//          mean: averaging lessens the own parts, the shared part only as far as time has passed.
// Degenerate input: mean_place of no mark asserts; of one is that mark.
// Cost:    O(1); mean_place O(marks^2).
#pragma once

#include <optional>
#include <vector>

#include "core/survey/mound.h"

namespace plugside {

struct PlaceError {
    double own_m = 0.4;
    double shared_m = 1.5;
    double memory_s = 600.0;
    friend bool operator==(const PlaceError&, const PlaceError&) = default;
};

struct PlacedMark {
    LocalPoint at;
    PlaceError error;
    std::optional<UtcTime> time;
    std::size_t walk = 0;
};

// Of a mark that is known by its survey alone: its position_sd as the own part; `usual` gives the rest. A position_sd that
// is what a mark has when nothing was said of it gives the usual own part.
[[nodiscard]] PlaceError place_error_of(const Mound& mound, const PlaceError& usual = {});
[[nodiscard]] PlacedMark placed(const Mound& mound, const PlaceError& usual = {});

// Seconds from the first to the second mark, negative when it was made before; nothing where a time is missing.
[[nodiscard]] std::optional<double> seconds_between(const PlacedMark& first, const PlacedMark& second);

// Covariance of the two errors in one direction, m2: of the shared parts alone (two marks, not one with itself).
[[nodiscard]] double shared_covariance_m2(const PlacedMark& a, const PlacedMark& b);
[[nodiscard]] double relative_sd_m(const PlacedMark& a, const PlacedMark& b);

struct MeanPlace {
    LocalPoint at;
    double sd_m = 0.0;      // in each direction, of own and shared parts together
    double own_sd_m = 0.0;  // of the own parts alone
};
[[nodiscard]] MeanPlace mean_place(const std::vector<PlacedMark>& marks);

}  // namespace plugside
