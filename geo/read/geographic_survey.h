// What the readers bring home before there is a plane to put it on: marks, tracks and ground in longitude and latitude.
// field_reader.h chooses the plane from all of it and makes the Survey.
//
// GeographicMark: `mound` holds everything but plug, fan and walk, which need the plane; `place` and `file` say where the
//          mark stands, for refusals and findings about it. fan_degrees: clockwise from true north.
// GeographicRecord, GeographicAnswer, GeographicFinding: of a plan handed out before: core's RecordedMark, MendAnswer and
//          Finding, whose places and bearings wait for the plane. A bearing is taken at the record's place, or that of the
//          answer's first mark.
// GeographicDecision is core's SetDecision: it names marks and tape lengths, and needs no plane.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "core/survey/decision.h"
#include "core/survey/finding.h"
#include "core/survey/ground.h"
#include "core/survey/held_work.h"
#include "core/survey/known_fact.h"
#include "core/survey/mound.h"
#include "core/survey/note_rule.h"
#include "geo/frame/geographic_shapes.h"
#include "geo/frame/local_frame.h"
#include "geo/read/field_survey.h"

namespace plugside {

struct GeographicRecord {
    GeographicPoint at;
    std::optional<double> fan_degrees;
    RecordedMark mark;  // but plug and fan
};

struct GeographicAnswer {
    std::string place;  // in the file
    MendAnswer answer;  // but the mend's `to` and `fan`
    std::vector<GeographicPoint> to;
    std::optional<double> fan_degrees;
};

struct GeographicFinding {
    std::string place;  // in the file
    Finding finding;    // but `at`
    GeographicPoint at;
};

struct GeographicRule {
    std::string place;  // in the file
    NoteRule rule;      // its walk as the file calls it
};

struct GeographicMark {
    GeographicPoint at;
    std::optional<double> fan_degrees;
    Mound mound;
    std::optional<GeographicRecord> record;  // how the walk had it, where a mend changed anything
    std::string file;
    std::string place;
    bool exchanged = false;  // latitude and longitude were exchanged by the reader, as nothing else lies on the earth
    std::optional<std::size_t> fault;  // number of the coordinate fault (coordinate_faults.h) that the mark is part of
};

struct GeographicTrackPoint {
    GeographicPoint at;
    std::optional<UtcTime> time;
};

struct GeographicWalk {
    std::string source;
    std::vector<std::vector<GeographicTrackPoint>> segments;
    std::vector<GeographicMark> marks;
    North bearings_from = North::not_told;
    std::string id = {};  // as a plan handed out before calls it; empty in all other files
};

struct GeographicBarrier {
    std::string name;
    GeographicLine line;
};

struct GeographicKeepClear {
    std::string name;
    std::string reason;
    KeepClearKind kind = KeepClearKind::other;
    GeographicPolygon area;
};

struct GeographicGap {
    std::string name;
    GeographicPoint at;
    double width_m = 1.0;
};

struct GeographicFact {
    std::string place;  // in the file
    KnownFact fact;     // but its line
    std::optional<GeographicLine> line;
};

struct GeographicGround {
    std::vector<GeographicPolygon> boundary;
    std::vector<GeographicBarrier> barriers;
    std::vector<GeographicKeepClear> keep_clear;
    std::vector<GeographicGap> crossings;
    std::vector<GeographicGap> gates;
    std::vector<GeographicPolygon> untreated;
};

// The contents of one file.
struct GeographicFile {
    std::string file;   // as it was given
    std::string title;  // the file's own; empty when it has none
    std::vector<GeographicWalk> walks;
    GeographicGround ground;
    std::vector<SetDecision> decisions;
    std::vector<GeographicAnswer> answers;
    std::vector<GeographicFinding> of_reading;
    std::vector<GeographicRule> note_rules;
    std::vector<GeographicFact> known;
    HeldWork work;
    std::uint64_t revision = 0;  // of a plan handed out before
    std::vector<ReadFinding> findings;
    bool gathered = false;  // its contents went into another file's (photographs)
};

}  // namespace plugside
