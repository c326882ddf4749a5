// From magnetic to true north where bearings come in, and a walk whose bare bearings turn out to be magnetic.
//
// Place and time: a mark's own. Without a time the middle of the magnetic model's years is taken (mid 2027; our assumption:
// the
//          declination changes by 5 to 15 minutes a year, trade facts, section 6) and the sentence says so.
// Errors:  a time outside the model's years gives no bearing, and a sentence.
#pragma once

#include <optional>
#include <string>
#include <tl/expected.hpp>

#include "core/survey/refusal.h"
#include "core/survey/survey.h"
#include "geo/frame/local_frame.h"

namespace plugside {

struct TrueFan {
    std::optional<double> degrees;  // 0 <= degrees < 360
    std::string sentence;           // what was done, or why not
};

// `magnetic_degrees`: clockwise from magnetic north.
[[nodiscard]] TrueFan true_fan_from_magnetic(double magnetic_degrees, GeographicPoint at, std::optional<UtcTime> time);

struct NorthTurn {
    Mend mend;  // turn_fans of every mark of the walk whose bearing was bare
    double declination_degrees = 0.0;
    std::string
        sentence;  // "The fans of 120 marks are turned by 13.1 degrees, the declination at the walk's place and time."
};

// What telling that a walk's bare bearings are magnetic does to its fans. Bare is a fan whose note and name say no north and
// no hour of the clock, and that no person has corrected. One declination for the walk, at the middle of its marks and the
// mean of their times. Nothing where no fan is bare. `walk` < survey.walks.size(). O(marks + answers).
[[nodiscard]] tl::expected<std::optional<NorthTurn>, Refusal> turn_of_magnetic_walk(const Survey& survey, std::size_t walk,
                                                                                    const LocalFrame& frame);

// Notes the north of a walk's bare bearings and turns the fans as it says, or back again, through the person's own mend;
// raises the revision. On a refusal the survey is as before.
[[nodiscard]] tl::expected<void, Refusal> tell_north(Survey& survey, std::size_t walk, const LocalFrame& frame, North north);

}  // namespace plugside
