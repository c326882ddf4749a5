// What a person reads of a fault of coordinates (coordinate_faults.h).
#include "geo/read/coordinate_faults.h"

namespace plugside {

namespace {

const char* what_looks_wrong(CoordinateChange change) {
    switch (change) {
        case CoordinateChange::exchange: return "latitude and longitude look exchanged";
        case CoordinateChange::turn_longitude: return "the sign of the longitude (east or west) looks lost";
        case CoordinateChange::turn_latitude: return "the sign of the latitude (north or south) looks lost";
        case CoordinateChange::turn_both: return "the signs of latitude and longitude look lost";
        case CoordinateChange::exchange_and_turn:
            return "latitude and longitude look exchanged, and the sign of the longitude (east or west) lost";
        case CoordinateChange::degrees_and_minutes: return "degrees and minutes look read as decimal degrees";
    }
    return "";
}

const char* what_is_proposed(CoordinateChange change) {
    switch (change) {
        case CoordinateChange::exchange: return "with latitude and longitude exchanged";
        case CoordinateChange::turn_longitude: return "with the longitude's sign turned";
        case CoordinateChange::turn_latitude: return "with the latitude's sign turned";
        case CoordinateChange::turn_both: return "with both signs turned";
        case CoordinateChange::exchange_and_turn:
            return "with latitude and longitude exchanged and the longitude's sign turned";
        case CoordinateChange::degrees_and_minutes: return "read as degrees and minutes";
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
    const std::string who = !many ? marks.front() : std::to_string(marks.size()) + " marks";
    finding.found = "Of " + who + " of " + fault.file + " " + what_looks_wrong(fault.change) + "; " +
                    (many ? "the first was" : "it was") + " written as latitude " +
                    std::to_string(fault.as_written.latitude_degrees) + ", longitude " +
                    std::to_string(fault.as_written.longitude_degrees) + ".";
    finding.why = fault.evidence;
    finding.proposed = std::string("Take ") + (many ? "them" : "it") + " back at the place where " +
                       (many ? "they stand" : "it stands") + " now, " + what_is_proposed(fault.change) + "; until then " +
                       (many ? "they take" : "it takes") + " no part.";
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
