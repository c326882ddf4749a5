// A handheld's waypoints as the marks of a scouting walk: which sign, which way the fan, how fresh, how well placed.
//
// Texts:   cmt and desc are the note (one of them where they are equal) and are read by the note grammar; name, type and sym
//          may say the kind of sign, the name also "fan 135" in so many words. Later ones only fill what earlier ones left
//          open: note, type, name, symbol. A type that is exactly a word of the mounds layer ("mole") goes first.
// Fan:     degrees from true north; a magnetic one is turned by the declination at the mark's place and time, one told by
// the
//          clock by the walking direction there, each with a finding; where that cannot be, the finding says why there is
//          none.
// Kind:    a pocket gopher's mound unless something says otherwise; a name or type that is a thing on the way ("gate") is
//          "other", unless the note says a fan, a freshness or a sign.
// Not understood: listed as findings, the same words once with the number of marks. A name that is just a name is none.
// Error:   position_sd = 0.5 m times the receiver's hdop, held within 0.3 and 5 m; 0.5 m without one; 5 m where the receiver
//          says it had no fix. shared_sd = 1.8 m times the hdop, held within 0.3 and 10 m; not known without one. Our
//          assumption: neighbours marked in one walk share most of their error (trade facts, section 6).
// Cost:    linear.
#pragma once

#include <vector>

#include "core/units/metres.h"
#include "geo/read/finding_list.h"
#include "geo/read/gpx.h"

namespace plugside {

[[nodiscard]] std::vector<GeographicMark> marks_of(const GpxFile& file, const std::string& file_name, FindingList& findings);

// The rule of the header and its inverse, for the writer of walks: nothing where the default needs no hdop.
[[nodiscard]] Metres position_sd_from_hdop(std::optional<double> hdop);
[[nodiscard]] std::optional<Metres> shared_sd_from_hdop(std::optional<double> hdop);
[[nodiscard]] std::optional<double> hdop_from_position_sd(Metres sd);

}  // namespace plugside
