// A survey together with where on the earth it lies, and what reading it brought to light.
//
// ReadFinding: something in a file that was not understood or was changed on the way (a rest of a note, a name made unique,
//              a waypoint that is no mound). Never silent: the window and the batch program list them.
#pragma once

#include <string>
#include <vector>

#include "core/survey/finding.h"
#include "core/survey/survey.h"
#include "geo/frame/local_frame.h"

namespace plugside {

struct ReadFinding {
    std::string file;   // name without folder
    std::string place;  // "waypoint 7, M031", "line 12"
    std::string sentence;
    friend bool operator==(const ReadFinding&, const ReadFinding&) = default;
};

struct FieldSurvey {
    std::string field_name;  // from a file's own title or its name; may be edited
    Survey survey;
    LocalFrame frame;
    std::vector<ReadFinding> findings;
    std::vector<Finding> of_reading;  // faults of coordinates, found where the files were read: for a person to answer
};

}  // namespace plugside
