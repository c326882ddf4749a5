// A walk whose bare bearings turn out to be magnetic. (One note that says so itself: true_fan.h.)
//
// Place and time: the middle of the walk's marks. Without times the middle of the magnetic model's years is taken (mid 2027;
// our assumption: the
//          declination changes by 5 to 15 minutes a year, trade facts, section 6) and the sentence says so.
// Errors:  a time outside the model's years gives a Refusal and changes nothing.
#pragma once

#include <optional>
#include <string>
#include <tl/expected.hpp>

#include "core/survey/refusal.h"
#include "core/survey/survey.h"
#include "geo/frame/local_frame.h"

namespace plugside {

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
