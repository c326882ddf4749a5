// Which marks are one animal's, for surveys too large for the whole posterior: a coarse form, and it says so.
//
// What it is:  one partition and a crude interval of the number of systems. It draws nothing: it tells no chance of a link, a
//           run or a pair, knows no missed mound, no crossing and no size of a system. Where the whole posterior can be had
//           (infer_systems), take that.
// Method:   take-offs along a space-filling curve; the nearest of each; links between them scored by a closed formula with the
//           marks' own spacing as the unit (coarse_links); groups joined by what stands between them (coarse_joining).
// Result:   `system` 0.. by number of marks, largest first (equal ones: the closer together first, then along the curve).
// expected, low, high: the number of systems. The number found times a factor, and an interval as wide as the simulated
//           fields scattered about it (tests/training/fit_coarse_links): its level is claimed for fields like those alone. Marks
//           that are the only ones within reach are certain: each is one system.
// Guarantee: the partition does not depend on how the marks are numbered, nor on the threads; what lies beyond the reach of
//           a part of the field does not change that part's partition.
// Degenerate input: no mark: nothing expected; one: one system, certain. Marks in one spot are one system.
// Preconditions: coordinates are finite; fewer than 2^32 - 1 marks (asserts).
// Errors:   returns nothing when stopped.
// Cost:     near-linear; two threads; about 500 bytes a mark at its most.
#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>
#include <span>
#include <vector>

#include "core/plan/make_plan.h"
#include "core/plan/progress.h"
#include "core/survey/survey.h"
#include "core/systems/coarse_joining.h"
#include "core/units/bearing.h"
#include "core/units/metres.h"

namespace plugside {

struct CoarseMark {
    LocalPoint take_off;
    std::optional<Bearing> fan;
};

struct CoarseOptions {
    std::size_t nearest = 8;              // more changes the partition little and costs time
    Metres reach = Metres::of(25.0);      // mounds of one system clump below 20 m over weeks: Klaas et al. 2000
    CoarseJoiningOptions joining;
    std::span<const Barrier> barriers;    // no link meets one
};

struct CoarseSystems {
    std::vector<std::uint32_t> system;    // of each mark, in the order given
    std::size_t systems = 0;
    double expected = 0.0;
    double low = 0.0;                     // ends of the central interval
    double high = 0.0;
    double interval = 0.90;               // its level, on simulated fields
    bool coarse = true;                   // always: so that what is shown can say so
};

[[nodiscard]] std::optional<CoarseSystems> coarse_systems(std::span<const CoarseMark> marks, const CoarseOptions& options = {},
                                                          const Progress& progress = {});

// The marks of a survey that take part, and the mound that each is.
struct CoarseSurvey {
    std::vector<CoarseMark> marks;
    std::vector<std::size_t> mound;       // index into Survey::mounds
};
[[nodiscard]] CoarseSurvey coarse_marks_of(const Survey& survey, const PlanOptions& options = {});

}  // namespace plugside
