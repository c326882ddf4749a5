// The whole line of the inference: survey in, plan out.
//
// Deterministic: the same survey gives the same plan; so does one whose marks stand in another order, or which lies or is
//         turned elsewhere on the plane (up to rounding).
// Degenerate input: a survey without a usable mound gives a plan without systems and a notice that says so; 1 mound is one
//         system; marks in one place, on a line, without a fan are planned with what they tell.
// Larger than options.most_marks_for_whole: the coarse form (coarse_plan.h), which says of itself that it is coarse.
// Errors: none; what cannot be done is a notice. Returns nothing only when stopped.
// Cost:   near-linear in the number of mounds.
#pragma once

#include <functional>
#include <map>
#include <optional>
#include <string>

#include "core/plan/plan.h"
#include "core/plan/progress.h"

namespace plugside {

struct PlanOptions {
    int sets_per_system = 2;                       // common practice: two placements a system
    Metres seen_from_track = Metres::of(5.0);      // our assumption: how far to each side a walker sees a mound
    Metres tunnel_diameter = Metres::of(0.064);    // 5-7.6 cm: UC circular 2 in; Montana Dept of Agriculture 3 in
    Metres depth_mean = Metres::of(0.27);          // 15-30 cm UC IPM 7433, 15-36 cm UC circular, 30-36 cm common practice: the
                                                   // mean of their middles
    Metres depth_sd = Metres::of(0.07);            // so that nine in ten lie in the span of these sources
    double slope_degrees = 45.0;                   // common practice
    double slope_sd_degrees = 6.0;                 // our assumption
    double fan_sd_degrees = 15.0;                  // recorded against lateral; read by eye 10-20 degrees: our assumption
    double least_run_probability = 0.5;            // below, more than half of the holes between two mounds are in vain
    double least_between_hit = 0.90;               // a place between mounds with less is offered only where a system lacks better: our
                                                   // assumption
    double most_between_rungs = 6.5;               // and the same for one that is expected to take more holes: twice the plug side's
    double least_gain_of_extra_set = 0.12;         // animals: more sets than usual in a system only while one brings this much: our
                                                   // assumption
    std::optional<int> most_sets;                  // a budget; nothing: as many as the two rules above give
    int draws = 0;                                 // forests to draw; 0 = chosen by the number of mounds
    std::size_t most_marks_for_whole = 60000;      // more usable marks than these are planned in the coarse form: by then the whole
                                                   // takes about a minute
};

// What whoever shows plans wants beside the plan.
// letters:    of the plan shown before, by the mounds' names: systems that are still there keep theirs (system_letters.h).
// first_look: called once, on the working thread, with a plan of the same shape that could be had at once; nothing is called where
//             the plan itself is as quick, or when stopped. It says of itself that it is a first look.
struct PlanWishes {
    std::map<std::string, std::string> letters;
    std::function<void(Plan)> first_look;
};

[[nodiscard]] std::optional<Plan> make_plan(const Survey& survey, const PlanOptions& options = {}, const Progress& progress = {},
                                            const PlanWishes& wishes = {});

}  // namespace plugside
