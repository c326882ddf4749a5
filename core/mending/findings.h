// Everything that looks wrong with a survey's walks, in one list, most worth a person's eye first.
//
// What:    double marks, fans read from the wrong end (one or a whole walk's), a compass that is off, jumps, frozen
// stretches, marks
//          far from the track, outside the field, of an earlier walk, of other diggers: each from its own header of
//          core/mending.
// Left out: marks that are set aside; findings whose own id was accepted before (a person's word is not asked for twice);
// refused
//          ones stay, with their answer in Survey::answers. A mark that jumped or froze is not also called a double; in a
//          walk that is to be turned round as a whole, no single fan is.
// Order:   by worth, the chance that the proposal is right times how many marks hang on it; then by id.
// Ids:     kind and marks' names; of a walk as a whole its name; of a jump of the track the walk and the time. Unique.
// Guarantee: the same survey with its mounds in another order gives the same list.
// Degenerate input: an empty survey gives no finding.
// Errors:  nothing when stopped.
// Cost:    near-linear in marks and track points: 20,000 marks and 100,000 points well under a second.
#pragma once

#include <optional>
#include <vector>

#include "core/mending/compass_offset.h"
#include "core/mending/double_marks.h"
#include "core/mending/earlier_walk.h"
#include "core/mending/receiver_faults.h"
#include "core/mending/reversed_bearings.h"
#include "core/survey/finding.h"

namespace plugside {

struct FindingOptions {
    PlaceError usual;  // of receivers of which nothing is known
    DoubleMarkOptions doubles;
    EarlierWalkOptions earlier;
    ReversedOptions reversed;
    CompassOptions compass;
    ReceiverFaultOptions receiver;
};

[[nodiscard]] std::optional<std::vector<Finding>> findings_of(const Survey& survey, const FindingOptions& options = {},
                                                              const Progress& progress = {});

}  // namespace plugside
