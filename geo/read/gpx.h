// A GPX file (1.1, and 1.0 as receivers still write it) as it stands, with nothing interpreted: marks and tracks.
//
// Read:     wpt and rte/rtept (lat, lon, time, ele, name, cmt, desc, sym, type, fix, sat, hdop, link or 1.0's url),
//           trk/trkseg/trkpt (lat, lon, time), the file's own title. Of extensions of a waypoint, and of elements of other
//           namespaces there, the short texts are kept with their elements' names; elsewhere they are passed over.
// Exchanged: a latitude beyond 90 beside a longitude within 90 can only be the two exchanged: the place is taken so, and
//           the waypoint says it (`exchanged`); of a track it is a finding.
// Strict:   a place without a finite latitude (-90..90) and longitude (-180..180; 180 is taken as -180) refuses the file,
//           with line, waypoint and its name. A time, hdop or fix that cannot be understood is a finding, and counts as not
//           given.
// Hostile:  a document type declaration is refused, so no entity is ever expanded or fetched; elements nested deeper than 64
//           and texts longer than 64 KiB are refused. Encodings: UTF-8, UTF-16, Latin-1 and ASCII, as the XML parser has
//           them.
// Limits:   512 MiB, 2,000,000 marks, 20,000,000 track points.
// Errors:   a Refusal; nothing partial is returned.
// Cost:     linear in bytes; the file is read in pieces, memory follows the marks and points kept.
// Source:   GPX 1.1 schema by TopoGrafix.
#pragma once

#include <cstddef>
#include <filesystem>
#include <optional>
#include <string>
#include <string_view>
#include <tl/expected.hpp>
#include <vector>

#include "core/plan/progress.h"
#include "core/survey/mound.h"
#include "core/survey/refusal.h"
#include "geo/frame/local_frame.h"
#include "geo/read/field_survey.h"
#include "geo/read/geographic_survey.h"

namespace plugside {

struct GpxWaypoint {
    GeographicPoint at;
    std::size_t ordinal = 0;  // 1 for the first waypoint of the file
    std::size_t line = 0;
    std::string name;
    std::string comment;
    std::string description;
    std::string symbol;
    std::string type;
    std::string fix;
    std::optional<double> hdop;
    std::optional<int> satellites;
    std::optional<double> accuracy_m;  // no element of GPX: tables and photographs may say it
    std::optional<double> elevation_m;
    std::optional<UtcTime> time;
    std::string link;        // of the first link: a picture's name, an address; never followed
    std::string extensions;  // "depth: 3; ripple: none": what stands in elements that GPX does not know
    bool exchanged = false;  // see "Exchanged" above
    std::string called;      // what findings call it; empty: "waypoint 7, M031"
};

struct GpxFile {
    std::string title;  // metadata name (1.1) or name (1.0); empty when there is none
    std::vector<GpxWaypoint> waypoints;
    std::vector<GpxWaypoint> route_points;
    std::vector<std::vector<GeographicTrackPoint>> segments;  // of all tracks, in file order; empty ones left out
    std::vector<ReadFinding> findings;
};

[[nodiscard]] tl::expected<GpxFile, Refusal> read_gpx(const std::filesystem::path& file, const Progress& progress = {});

// The same from memory; `name` is what refusals and findings call it.
[[nodiscard]] tl::expected<GpxFile, Refusal> read_gpx_text(std::string_view text, const std::string& name);

// "waypoint 7, M031", or "waypoint 7" for a nameless one.
[[nodiscard]] std::string place_of(const GpxWaypoint& waypoint);

}  // namespace plugside
