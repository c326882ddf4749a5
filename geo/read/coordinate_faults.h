// Coordinates that were written down wrong: latitude for longitude, a sign lost, degrees and minutes read as decimal
// degrees. Found by evidence over whole files before the field's plane is chosen, and put before a person; never put right
// in silence.
//
// Each walk's marks, each walk's track and each file's ground are a body of places. Bodies less than 500 m apart hang
// together; the cluster with ground, else the one with most in it that pocket gophers can live at, is where the field is.
//   whole files: a body of marks apart from the field that lies on it (within 500 m) once its coordinates are exchanged,
//                turned in sign, or read as degrees and minutes (whose minutes, the fraction times 100, then are below 60 in
//                every mark). The track of the same walk goes with the marks where it lies beside them.
//   scattered:   a file whose marks lie more than 10 km apart and come together within a quarter of that when read as
//                degrees and minutes, all fractions below .6: a field on the edge of a minute.
//   alone:       with nothing else to compare, a body outside the continent of the pocket gophers (Geomyidae: southern
//   Canada
//                to north-western Colombia [memory]; here latitude 5..60, longitude -141..-70) that one change of the same
//                kind brings there. A lone file whose coordinates are good either way cannot be told from a good one.
//   single:      a mark more than 3 km and more than three times the field's spread from the middle, that such a change
//                brings within the field.
//   exchanged:   marks that lie on the earth in no other way were exchanged by the reader already.
// Result:  such marks stand where the mend puts them, are set aside (Mound::set_aside_because) and carry the number of their
//          fault; `finding_of` makes the finding, with a mend that takes them back, once the marks have their names.
// Not found: a mark or file whose change would move it less than what is said above.
// Cost:    linear in places; bodies are compared by boxes.
// Source:  our own rules; the thresholds are our assumptions.
#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include "core/survey/finding.h"
#include "geo/read/geographic_survey.h"

namespace plugside {

enum class CoordinateChange { exchange, turn_longitude, turn_latitude, turn_both, exchange_and_turn, degrees_and_minutes };

struct CoordinateFault {
    CoordinateChange change = CoordinateChange::exchange;
    std::string file;  // name without folder
    bool whole_file = false;
    GeographicPoint as_written;  // of the first mark
    std::string evidence;        // a sentence
    double sure = 0.95;
};

// Places that are known to be good already: of a field that files are added to.
struct KnownPlaces {
    std::vector<GeographicPoint> places;
};

[[nodiscard]] std::vector<CoordinateFault> mend_coordinates(std::vector<GeographicFile>& files,
                                                            const KnownPlaces& known = {});

// What the coordinates mean after the change; nothing where that is no place.
[[nodiscard]] std::optional<GeographicPoint> changed(GeographicPoint place, CoordinateChange change);

// `marks`: the names, in order; `at` the middle of their mended places.
[[nodiscard]] Finding finding_of(const CoordinateFault& fault, std::vector<std::string> marks, LocalPoint at);

}  // namespace plugside
