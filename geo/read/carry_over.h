// What a person said of a field, carried onto the same files read anew by other choices: decisions on sets, answers to
// findings, corrections of how notes are read, what is known of the systems, how the work is done, and which north a walk's bearings were
// read from.
//
// Marks:    walks are the same where their source is, in order; within them a mark is the same by its name, else by its
// place
//           to a centimetre, else by its number in the walk where both have as many. What named a mark by an earlier name
//           names it by the new one.
// Places:   what a mend says of a place moves with its mark.
// North:    told again for each walk (north_of_walk.h), so that the fans that are turned are those read now; where the
//           magnetic model has no answer, a finding says so and the walk's north stays untold.
// Lost:     nothing. What names a mark that is no longer there stays and does nothing until such a mark is read again;
//           `without_mark` counts it.
// Revision: one above either's. Cost: linear in marks and what was said.
#pragma once

#include <cstddef>

#include "geo/read/field_survey.h"

namespace plugside {

struct CarriedOver {
    std::size_t without_mark = 0;  // decisions, answers and facts that name a mark that is no longer there
    bool as_before = true;         // every mark that was there has its name and its place
};

CarriedOver carry_over(const FieldSurvey& before, FieldSurvey& again);

}  // namespace plugside
