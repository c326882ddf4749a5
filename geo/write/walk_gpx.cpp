#include "geo/write/walk_gpx.h"

#include <cmath>

#include "geo/read/gpx_marks.h"
#include "geo/read/notes_grammar.h"
#include "geo/read/numbers.h"
#include "geo/write/gpx_text.h"
#include "geo/write/safe_file.h"

namespace plugside {

namespace {

// "fan 135 fresh": whole degrees, as a compass is read.
std::string noted(const Mound& mound, const LocalFrame& frame) {
    std::string note;
    if (mound.fan) {
        const long degrees = std::lround(frame.true_bearing(*mound.fan, mound.plug).degrees()) % 360;
        note = "fan " + std::to_string(degrees);
    }
    if (mound.freshness != Freshness::unknown) note.append(note.empty() ? "" : " ").append(to_text(mound.freshness));
    return note;
}

bool says_the_same(const std::string& note, const Mound& mound, const LocalFrame& frame) {
    const NoteReading reading = read_note(note);
    if (reading.freshness.value_or(Freshness::unknown) != mound.freshness) return false;
    if (reading.fan_degrees.has_value() != mound.fan.has_value()) return false;
    if (!mound.fan) return true;
    const Bearing noted_fan = Bearing::degrees(*reading.fan_degrees);
    return std::abs(turn_degrees(noted_fan, frame.true_bearing(*mound.fan, mound.plug))) <= 0.5;
}

// The walker's own note where it still says what the mark is; otherwise what the mark is, before the note.
std::string comment(const Mound& mound, const LocalFrame& frame) {
    if (!mound.note.empty() && says_the_same(mound.note, mound, frame)) return mound.note;
    std::string note = noted(mound, frame);
    if (!mound.note.empty()) note.append(note.empty() ? "" : "; ").append(mound.note);
    return note;
}

std::string waypoint(const Mound& mound, const LocalFrame& frame) {
    using namespace gpx_text;
    std::string text = "  <wpt" + coordinates(frame.to_geographic(mound.plug)) + ">\n";
    if (mound.time) text += element(4, "time", format_utc_time(*mound.time));
    text += element(4, "name", mound.name);
    text += element(4, "cmt", comment(mound, frame));
    const auto kind_in_note = read_note(mound.note).kind.value_or(SignKind::gopher_mound);
    if (mound.kind != SignKind::gopher_mound || kind_in_note != mound.kind) text += element(4, "type", to_text(mound.kind));
    if (const auto hdop = hdop_from_position_sd(mound.position_sd)) text += element(4, "hdop", decimal_text(*hdop));
    return text + "  </wpt>\n";
}

std::string track(const Walk& walk, const LocalFrame& frame) {
    using namespace gpx_text;
    std::string text = "  <trk>\n" + element(4, "name", walk.id);
    for (const TrackSegment& segment : walk.segments) {
        text += "    <trkseg>\n";
        for (const TrackPoint& point : segment) {
            text += "      <trkpt" + coordinates(frame.to_geographic(point.at)) + ">";
            if (point.time) text.append("<time>").append(format_utc_time(*point.time)).append("</time>");
            text += "</trkpt>\n";
        }
        text += "    </trkseg>\n";
    }
    return text + "  </trk>\n";
}

}  // namespace

tl::expected<void, Refusal> write_walk(const Survey& survey, const LocalFrame& frame, const std::string& field_name,
                                       const std::filesystem::path& file) {
    std::string text = gpx_text::opening(field_name);
    for (const Mound& mound : survey.mounds) text += waypoint(mound, frame);
    for (const Walk& walk : survey.walks)
        if (!walk.segments.empty()) text += track(walk, frame);
    return write_text_file(file, text + gpx_text::closing);
}

}  // namespace plugside
