// What a person reads of a fault of coordinates (coordinate_faults.h).
#include "core/words/words.h"
#include "geo/read/coordinate_faults.h"

namespace plugside {

namespace {

const char* what_looks_wrong(CoordinateChange change) {
    switch (change) {
        case CoordinateChange::exchange: return Words::later("latitude and longitude look exchanged");
        case CoordinateChange::turn_longitude: return Words::later("the sign of the longitude (east or west) looks lost");
        case CoordinateChange::turn_latitude: return Words::later("the sign of the latitude (north or south) looks lost");
        case CoordinateChange::turn_both: return Words::later("the signs of latitude and longitude look lost");
        case CoordinateChange::exchange_and_turn:
            return Words::later("latitude and longitude look exchanged, and the sign of the longitude (east or west) lost");
        case CoordinateChange::degrees_and_minutes: return Words::later("degrees and minutes look read as decimal degrees");
    }
    return "";
}

const char* what_is_proposed(CoordinateChange change) {
    switch (change) {
        case CoordinateChange::exchange: return Words::later("with latitude and longitude exchanged");
        case CoordinateChange::turn_longitude: return Words::later("with the longitude's sign turned");
        case CoordinateChange::turn_latitude: return Words::later("with the latitude's sign turned");
        case CoordinateChange::turn_both: return Words::later("with both signs turned");
        case CoordinateChange::exchange_and_turn:
            return Words::later("with latitude and longitude exchanged and the longitude's sign turned");
        case CoordinateChange::degrees_and_minutes: return Words::later("read as degrees and minutes");
    }
    return "";
}

FindingKind kind_of(CoordinateChange change) {
    if (change == CoordinateChange::exchange || change == CoordinateChange::exchange_and_turn)
        return FindingKind::swapped_coordinates;
    return change == CoordinateChange::degrees_and_minutes ? FindingKind::degrees_and_minutes : FindingKind::lost_sign;
}

}  // namespace

Finding finding_of(const CoordinateFault& fault, std::vector<std::string> marks, LocalPoint at) {
    Finding finding;
    finding.kind = kind_of(fault.change);
    finding.at = at;
    const bool many = marks.size() > 1;
    const std::string looks = Words::shown(what_looks_wrong(fault.change));
    const std::string latitude = std::to_string(fault.as_written.latitude_degrees);
    const std::string longitude = std::to_string(fault.as_written.longitude_degrees);
    finding.found = many ? Words::tell("Of {1} marks of {2} {3}; the first was written as latitude {4}, longitude {5}.",
                                       {std::to_string(marks.size()), fault.file, looks, latitude, longitude})
                         : Words::tell("Of {1} of {2} {3}; it was written as latitude {4}, longitude {5}.",
                                       {marks.front(), fault.file, looks, latitude, longitude});
    finding.why = fault.evidence;
    const std::string proposed = Words::shown(what_is_proposed(fault.change));
    finding.proposed =
        many
            ? Words::tell("Take them back at the place where they stand now, {1}; until then they take no part.", {proposed})
            : Words::tell("Take it back at the place where it stands now, {1}; until then it takes no part.", {proposed});
    finding.id = many && fault.whole_file ? to_text(finding.kind) + ": " + fault.file + ", " + marks.front()
                                          : finding_id(finding.kind, marks);
    finding.mend = Mend{};
    finding.mend->kind = MendKind::take_back;
    finding.mend->marks = marks;
    finding.marks = std::move(marks);
    finding.sure = Probability::of(fault.sure);
    return finding;
}

}  // namespace plugside
