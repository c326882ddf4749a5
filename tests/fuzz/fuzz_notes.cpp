// Any bytes as a note: there is a reading, it is in range, each word lies in one part, filler or rest, capitals change
// nothing, and a rule of the walk does no harm.
#include <algorithm>
#include <cstdint>
#include <cstdlib>
#include <string>
#include <vector>

#include "geo/read/notes_grammar.h"
#include "geo/read/numbers.h"

namespace {

using namespace plugside;

void demand(bool holds) {
    if (!holds) std::abort();
}

bool is_bearing(const std::optional<double>& degrees) { return !degrees || (*degrees >= 0.0 && *degrees < 360.0); }

void demand_in_range(const NoteReading& note) {
    demand(is_bearing(note.fan_degrees) && is_bearing(note.magnetic_fan_degrees));
    demand(note.fan_degrees.has_value() + note.magnetic_fan_degrees.has_value() + note.clock_hour.has_value() <= 1);
    demand(!note.clock_hour || (*note.clock_hour >= 0.0 && *note.clock_hour < 12.0));
    demand(!note.count || (*note.count >= 1 && *note.count < 1000));
    if (!note.probe) return;
    for (const auto& length : {note.probe->depth, note.probe->distance})
        demand(!length || (length->value() >= 0.0 && length->value() < 1e9));
}

void demand_covered(std::string_view text, const NoteReading& note) {
    std::vector<TextSpan> spans = note.fillers;
    spans.insert(spans.end(), note.rest_spans.begin(), note.rest_spans.end());
    for (const NotePart& part : note.parts) spans.push_back(part.span);
    std::sort(spans.begin(), spans.end(), [](TextSpan a, TextSpan b) { return a.begin < b.begin; });
    std::size_t covered = 0;
    const auto holds_no_word = [&](std::size_t from, std::size_t to) {
        return std::none_of(
            text.begin() + static_cast<std::ptrdiff_t>(from), text.begin() + static_cast<std::ptrdiff_t>(to),
            [](char c) { return (c >= '0' && c <= '9') || (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z'); });
    };
    for (const TextSpan span : spans) {
        demand(span.begin >= covered && span.begin < span.end && span.end <= text.size());
        demand(holds_no_word(covered, span.begin));
        covered = span.end;
    }
    demand(holds_no_word(covered, text.size()));
}

void demand_same(const NoteReading& a, const NoteReading& b) {
    demand(a.fan_degrees == b.fan_degrees && a.magnetic_fan_degrees == b.magnetic_fan_degrees &&
           a.clock_hour == b.clock_hour);
    demand(a.freshness == b.freshness && a.kind == b.kind && a.count == b.count && a.no_fan == b.no_fan);
    demand(a.parts.size() == b.parts.size() && a.rest_spans == b.rest_spans && a.fillers == b.fillers);
    demand(a.problems == b.problems);
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    const std::string_view text(reinterpret_cast<const char*>(data), size);
    const NoteReading note = read_note(text);
    demand_in_range(note);
    demand_covered(text, note);
    std::string capitals(text);
    for (char& c : capitals)
        if (c >= 'a' && c <= 'z') c = static_cast<char>(c - 'a' + 'A');
    demand_same(note, read_note(capitals));
    const std::string own(text.substr(0, text.find(' ')));
    demand_in_range(reread_note(text, "walk 1", {{"walk 1", own, "fresh fan 90"}, {"walk 2", own, "old"}, {"", "gr", ""}}));
    static_cast<void>(is_time_stamp(text));
    static_cast<void>(names_a_thing(text));
    static_cast<void>(parse_number(text));
    // A time that is understood is written so that it is understood again.
    if (const auto time = parse_utc_time(text)) {
        const std::string written = format_utc_time(*time);
        if (written.size() <= 24 && written.front() != '-') demand(parse_utc_time(written) == time);
    }
    return 0;
}
