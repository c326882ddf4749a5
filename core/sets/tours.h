// The tours on which the standing sets of a plan are walked to: who goes where, on which day, in which order and on which way.
//
// Tour:     one person's way of one day. Ways are true ways on foot (walking_ways.h), from the start past each set, by the vehicle where more is
//           fetched, to the end.
// Sets:     kept, moved and undecided ones; dropped ones are in no tour.
// Start:    as wished (gate or vehicle), else where the walk began; more to carry is at the start. End: as wished, else the last set.
// Minutes:  of the sets as what_to_load counts them (holes by their chances, the method's minutes), with their interval; the way at the pace
//           of WorkOptions and the time to load are added as they are.
// Carrying: in traps where a trap is set (one in a lateral, a pair in a run), else in placements of the method; a set without a method is one.
// Order:    without a wish, and with nothing kept, the plan's own (SetPoint::visit_order). Else `held` is gone on with, if it is given: sets that
//           are gone leave the others' order alone, new ones are put in where they add least way. It gives way to tours found anew that take
//           fewer days or make the longest tour shorter by more than `usual_least_saving`; where it is `fixed` it never does.
// Better:   told the first tours at once and shorter ones as they are found, a few times a second; on the working thread.
// Stop:     the best so far is the result.
// Left out: sets that no way leads to, and those that take more than a day even alone.
// Preconditions: `plan` was made from `survey`.
// Degenerate input: no sets: no tours.
// Cost:     share_work, or visiting_order for one person in one day.
#pragma once

#include <cstddef>
#include <functional>
#include <optional>
#include <stop_token>
#include <vector>

#include "core/geometry/polyline.h"
#include "core/plan/plan.h"
#include "core/sets/work_order.h"

namespace plugside {

struct TourWishes {
    std::optional<LocalPoint> start;
    std::optional<LocalPoint> end;  // the start again for a way back to it
    int people = 1;
    std::optional<double> minutes_a_day;
    std::optional<int> carry;
    [[nodiscard]] bool none() const { return !start && !end && people == 1 && !minutes_a_day && !carry; }
    friend bool operator==(const TourWishes&, const TourWishes&) = default;
};

struct Tours;

struct TourOptions {
    std::vector<KeptTour> held;
    bool fixed = false;
    std::stop_token stop;
    std::function<void(Tours tours)> better;
};

struct Tour {
    int person = 0;                         // from 0
    int day = 0;                            // from 0
    std::vector<std::size_t> sets;          // of plan.sets, in walking order
    std::vector<std::size_t> loads_before;  // indexes into `sets`: before going there one goes by the start for more
    std::vector<Polyline> way;              // stretch by stretch; a stretch without a way is missing
    Metres length;
    double minutes = 0.0;
    double low = 0.0;  // interval of `level`
    double high = 0.0;
};

struct Tours {
    std::vector<Tour> tours;  // by day, then person
    std::optional<LocalPoint> start;
    std::optional<LocalPoint> end;
    Metres length;
    double longest_minutes = 0.0;
    double level = 0.90;
    int days = 0;
    std::vector<std::size_t> cut_off;   // sets, ascending
    std::vector<std::size_t> too_long;  // sets, ascending
    bool of_the_plan = false;           // in the plan's own order
};

[[nodiscard]] Tours make_tours(const Survey& survey, const Plan& plan, const TourWishes& wishes,
                               const TourOptions& options = {});

// The order of the tours in words that outlive a plan.
[[nodiscard]] std::vector<KeptTour> kept_form(const Plan& plan, const Tours& tours);

// The plan with its sets numbered tour after tour (SetPoint::visit_order); those in no tour follow, dropped ones last.
[[nodiscard]] Plan in_order_of(Plan plan, const Tours& tours);

}  // namespace plugside
