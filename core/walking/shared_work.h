// Places to work at, shared among people and days, each person's day in walking order.
//
// Shared:   so that the longest day is as short as can be found. With `minutes_a_day`, on as few days as will do.
// Minutes:  the way at a pace, the time at each place, and the time to load.
// Carrying: who can carry only so much goes back to the vehicle for more, where that costs the least way; the first load is in hand at
//           the start. A place that takes more than one load is served by a load of its own.
// Start:    each person's own wish, else the common start (gate or vehicle); without either, the first place. The same for the end, which
//           without a word is where the last place is.
// Left out: places that no way leads to from the start (`cut_off`), and those that take more than a day even alone (`too_long`).
// Method:   one way past all places, cut into stretches by bisection on the longest; then places go from the longest day to others, or are
//           exchanged with theirs, while that makes the longer of the two shorter. Not proven the best; within some percent of it for few
//           places (tests).
// Preconditions: people, pace, minutes_a_day and carry are > 0 where given; `minutes_at` has one for each place (asserts).
// Stop:     what is found so far.
// While it works: `better` is told the first sharing and each better one as it is found.
// Degenerate input: no places: no days. More people than places: some stay at home.
// keep_shares: the same persons and days as before. Places of `earlier` that are gone are left out by the caller; those that stand in none are
//           put in where they add the least way to a day that has room for them, or into one day more.
// Cost:     visiting_order, and about O(places x days) tries of O(places a day) each; a second for 300 places and four people. `rough`: the
//           way always on to the nearest, cut evenly and no more. keep_shares: O(new places x places).
#pragma once

#include <cstddef>
#include <functional>
#include <optional>
#include <vector>

#include "core/walking/visiting_order.h"

namespace plugside {

struct SharedWork;

struct WorkOptions {
    std::size_t people = 1;
    std::optional<LocalPoint> start;
    std::optional<LocalPoint> end;
    std::vector<std::optional<LocalPoint>>
        wished_start;                     // of each person; those without one, and those missing, take `start`
    std::optional<double> minutes_a_day;  // nothing: all in one day
    std::optional<std::size_t> carry;     // what one load holds: places, or pieces where `load_at` tells
    std::vector<std::size_t> load_at;     // pieces that each place takes, > 0; empty: one each
    std::optional<LocalPoint> vehicle;    // where more is; nothing: the start (without one, at the first place)
    double minutes_to_load = 2.0;         // our assumption
    double pace_m_per_s = 1.0;            // over rough ground with a load: our assumption
    const WalkingWays* ways = nullptr;    // outlives the call; nothing: straight lines
    bool rough = false;
    std::stop_token stop;
    std::function<void(const SharedWork& work)> better;  // on the working thread
};

struct WorkDay {
    std::size_t person = 0;
    std::size_t day = 0;
    std::vector<std::size_t> places;        // in walking order
    std::vector<std::size_t> loads_before;  // indexes into `places`: before going there one goes by the vehicle
    Metres way;
    double minutes = 0.0;
};

struct SharedWork {
    std::vector<WorkDay> days;  // by day, then person; none without places
    std::size_t day_count = 0;
    double longest_minutes = 0.0;
    std::vector<std::size_t> cut_off;   // ascending
    std::vector<std::size_t> too_long;  // ascending
};

[[nodiscard]] SharedWork share_work(const std::vector<LocalPoint>& places, const std::vector<double>& minutes_at,
                                    const WorkOptions& options);

// Each place stands at most once in `earlier`; its ways and minutes are worked out anew.
[[nodiscard]] SharedWork keep_shares(const std::vector<LocalPoint>& places, const std::vector<double>& minutes_at,
                                     const std::vector<WorkDay>& earlier, const WorkOptions& options);

}  // namespace plugside
