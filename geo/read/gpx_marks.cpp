#include "geo/read/gpx_marks.h"

#include <algorithm>

#include "core/words/words.h"
#include "geo/read/notes_grammar.h"
#include "geo/read/numbers.h"
#include "geo/read/true_fan.h"
#include "geo/read/walking_direction.h"

namespace plugside {

namespace {

constexpr double sd_at_hdop_1_m = 0.5;
constexpr double least_sd_m = 0.3;
constexpr double most_sd_m = 5.0;
constexpr double shared_sd_at_hdop_1_m = 1.8;
constexpr double most_shared_sd_m = 10.0;

// A name is told in sentences and drawn beside a mark: runs of white space, line ends among them, become one space.
std::string in_one_line(std::string_view name) {
    std::string line;
    for (const char c : trimmed(name)) {
        const bool blank = c == ' ' || c == '\t' || c == '\n' || c == '\r';
        if (!blank)
            line += c;
        else if (line.back() != ' ')
            line += ' ';
    }
    return line;
}

// The walker's own words: comment and description, without repeats of the name and without a receiver's time stamp.
std::string note_of(const GpxWaypoint& waypoint, const std::string& place, FindingList& findings) {
    std::string note;
    for (const std::string* text : {&waypoint.comment, &waypoint.description, &waypoint.extensions}) {
        const std::string part(trimmed(*text));
        if (part.empty() || part == note || part == trimmed(waypoint.name)) continue;
        if (is_time_stamp(part)) {
            findings.add(place, Words::later("a note that is only a date or time is not used"));
            continue;
        }
        note += (note.empty() ? "" : "; ") + part;
    }
    return note;
}

// The name without its folder, where a link leads to a picture; else nothing. No link is ever followed.
std::string picture_in(std::string_view link) {
    std::string_view name = trimmed(link);
    if (name.size() > 1000) return {};
    if (const auto slash = name.find_last_of("/\\"); slash != std::string_view::npos) name.remove_prefix(slash + 1);
    const auto dot = name.rfind('.');
    if (dot == std::string_view::npos || dot == 0) return {};
    std::string ending(name.substr(dot + 1));
    std::transform(ending.begin(), ending.end(), ending.begin(),
                   [](char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; });
    return ending == "jpg" || ending == "jpeg" || ending == "png" ? std::string(name) : std::string();
}

class MarkReader {
public:
    MarkReader(const GpxWaypoint& waypoint, const TrackTimes& track, FindingList& findings)
        : waypoint_(waypoint), track_(track), findings_(findings), place_(place_of(waypoint)) {}

    GeographicMark mark() {
        mark_.at = waypoint_.at;
        mark_.place = place_;
        mark_.mound.name = in_one_line(waypoint_.name);
        mark_.mound.time = waypoint_.time;
        read_position();
        read_receiver();
        mark_.exchanged = waypoint_.exchanged;
        if (const std::string picture = picture_in(waypoint_.link); !picture.empty()) mark_.mound.picture = picture;
        read_exact_type();
        read_the_note();
        read_type();
        read_name();
        read_symbol();
        mark_.mound.kind = kind_.value_or(SignKind::gopher_mound);
        return std::move(mark_);
    }

private:
    void find(const std::string& sentence) { findings_.add(place_, sentence); }

    void read_position() {
        mark_.mound.position_sd = position_sd_from_hdop(waypoint_.hdop);
        mark_.mound.shared_sd = shared_sd_from_hdop(waypoint_.hdop);
        if (trimmed(waypoint_.fix) != "none") return;
        mark_.mound.position_sd = Metres::of(most_sd_m);
        find(Words::later("the receiver had no fix at this mark; its place is taken as good to 5 m only"));
    }

    void read_receiver() {
        ReceiverFacts facts{waypoint_.hdop, waypoint_.satellites, std::string(trimmed(waypoint_.fix)), waypoint_.accuracy_m};
        if (facts != ReceiverFacts{}) mark_.mound.receiver = std::move(facts);
    }

    // A type in just the words of the mounds layer is the writer's own answer and goes before any note.
    void read_exact_type() { kind_ = sign_kind_from_text(std::string(trimmed(waypoint_.type))); }

    void read_the_note() {
        mark_.mound.note = note_of(waypoint_, place_, findings_);
        const NoteReading note = read_note(mark_.mound.note);
        fan_is_settled_ = note.fan_degrees || note.magnetic_fan_degrees || note.clock_hour;
        if (fan_is_settled_) mark_.fan_degrees = true_fan(note);
        if (note.count.value_or(1) > 1)
            find(Words::tell("the note counts {1} mounds; the mark is taken as one, where it stands",
                             {std::to_string(*note.count)}));
        mark_.mound.freshness = note.freshness.value_or(Freshness::unknown);
        if (note.kind) take_kind(*note.kind, Words::later("note"));
        note_says_a_sign_ = fan_is_settled_ || note.freshness || note.kind;
        for (const std::string& problem : note.problems) find(problem);
        if (!note.rest.empty())
            find(Words::tell("in the note, {1} was not understood", {quoted_for_display(note.rest, 120)}));
    }

    // The named edge: whatever way the note tells the fan, from here on it is degrees from true north.
    std::optional<double> true_fan(const NoteReading& note) {
        if (note.magnetic_fan_degrees) {
            const TrueFan fan = true_fan_from_magnetic(*note.magnetic_fan_degrees, waypoint_.at, waypoint_.time);
            find(fan.degrees ? fan.sentence : Words::tell("{1} The mound is used without a fan", {fan.sentence}));
            return fan.degrees;
        }
        if (!note.clock_hour) return note.fan_degrees;
        const auto walking = track_.walking_direction(waypoint_.at, waypoint_.time);
        if (!walking) {
            find(
                Words::later("the fan is told by the clock and the track does not tell the walking direction here; the "
                             "mound is used without a fan"));
            return std::nullopt;
        }
        find(Words::later("fans told by the clock are turned into bearings by the walking direction at the mark"));
        return fan_from_clock(*note.clock_hour, *walking).degrees();
    }

    void take_kind(SignKind kind, const char* where) {
        if (kind_ && *kind_ != kind && kind != SignKind::gopher_mound)
            find(Words::tell("the {1} says {2}, but the mark is taken as {3}",
                             {Words::shown(where), Words::shown(to_text(kind)), Words::shown(to_text(*kind_))}));
        if (!kind_) kind_ = kind;
    }

    // "gate" as a name or type: the walker marked the way, not a sign.
    void take_thing(const std::string& text, const char* where) {
        if (note_says_a_sign_ || kind_) return;
        kind_ = SignKind::other;
        find(Words::tell("the {1} {2} is that of a thing; it takes no part as a mound",
                         {Words::shown(where), quoted_for_display(text)}));
    }

    void read_type() {
        const std::string type(trimmed(waypoint_.type));
        if (type.empty()) return;
        if (sign_kind_from_text(type)) return;
        if (names_a_thing(type)) return take_thing(type, Words::later("type"));
        const NoteReading reading = read_note(type);
        if (reading.kind) take_kind(*reading.kind, Words::later("type"));
        if (reading.freshness && mark_.mound.freshness == Freshness::unknown) mark_.mound.freshness = *reading.freshness;
        if (!reading.kind && !reading.freshness)
            find(Words::tell("the type {1} tells nothing of a mound; it is not used", {quoted_for_display(type)}));
    }

    void read_name() {
        const std::string name(trimmed(waypoint_.name));
        const NoteReading reading = read_note(name);
        if (reading.kind) take_kind(*reading.kind, Words::later("name"));
        if (reading.freshness && mark_.mound.freshness == Freshness::unknown) mark_.mound.freshness = *reading.freshness;
        if (!fan_is_settled_ && reading.fan_word) {
            mark_.fan_degrees = true_fan(reading);
            fan_is_settled_ = true;
            for (const std::string& problem : reading.problems) find(problem);
        }
        const bool could_be_a_fan = reading.fan_degrees && (reading.freshness || name.front() == 'f' || name.front() == 'F');
        if (!fan_is_settled_ && could_be_a_fan)
            find(Words::later(
                "a name like this could mean a fan bearing; only a note, or a name with the word fan, is read as one"));
        if (!reading.kind && !reading.fan_word && names_a_thing(name)) take_thing(name, Words::later("name"));
    }

    void read_symbol() {
        const std::string symbol(trimmed(waypoint_.symbol));
        if (symbol.empty()) return;
        const NoteReading reading = read_note(symbol);
        if (reading.kind) return take_kind(*reading.kind, Words::later("symbol"));
        find(Words::tell("the symbol {1} tells nothing of a mound; it is not used", {quoted_for_display(symbol)}));
    }

    const GpxWaypoint& waypoint_;
    const TrackTimes& track_;
    FindingList& findings_;
    std::string place_;
    GeographicMark mark_;
    std::optional<SignKind> kind_;
    bool fan_is_settled_ = false;
    bool note_says_a_sign_ = false;
};

}  // namespace

Metres position_sd_from_hdop(std::optional<double> hdop) {
    if (!hdop) return Metres::of(sd_at_hdop_1_m);
    return Metres::of(std::clamp(sd_at_hdop_1_m * *hdop, least_sd_m, most_sd_m));
}

std::optional<Metres> shared_sd_from_hdop(std::optional<double> hdop) {
    if (!hdop) return std::nullopt;
    return Metres::of(std::clamp(shared_sd_at_hdop_1_m * *hdop, least_sd_m, most_shared_sd_m));
}

std::optional<double> hdop_from_position_sd(Metres sd) {
    if (sd.value() == sd_at_hdop_1_m) return std::nullopt;
    return sd.value() / sd_at_hdop_1_m;
}

std::vector<GeographicMark> marks_of(const GpxFile& file, const std::string& file_name, FindingList& findings) {
    std::vector<GeographicMark> marks;
    marks.reserve(file.waypoints.size());
    const TrackTimes track(file.segments);
    for (const GpxWaypoint& waypoint : file.waypoints) {
        marks.push_back(MarkReader(waypoint, track, findings).mark());
        marks.back().file = file_name;
    }
    return marks;
}

}  // namespace plugside
