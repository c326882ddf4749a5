#include "app/batch/read_summary.h"

#include <algorithm>
#include <map>
#include <sstream>

#include "core/geometry/polyline.h"
#include "core/survey/refusal.h"
#include "geo/read/note_corrections.h"

namespace plugside {

namespace {

std::string counted(std::size_t count, const std::string& one, const std::string& many) {
    return std::to_string(count) + " " + (count == 1 ? one : many);
}

double length_m(const TrackSegment& segment) {
    double length = 0.0;
    for (std::size_t i = 1; i < segment.size(); ++i) length += distance_m(segment[i - 1].at, segment[i].at);
    return length;
}

void tell_walks(const Survey& survey, LengthUnits units, std::ostringstream& text) {
    std::vector<std::size_t> marks(survey.walks.size(), 0);
    for (const Mound& mound : survey.mounds)
        if (mound.walk < marks.size()) ++marks[mound.walk];
    for (std::size_t i = 0; i < survey.walks.size(); ++i) {
        const Walk& walk = survey.walks[i];
        text << "  " << walk.id << ", " << walk.source << ": " << counted(marks[i], "mark", "marks");
        std::size_t places = 0;
        double way_m = 0.0;
        for (const TrackSegment& segment : walk.segments) {
            places += segment.size();
            way_m += length_m(segment);
        }
        if (places == 0)
            text << ", no track";
        else
            text << ", " << counted(walk.segments.size(), "stretch", "stretches") << " of track with "
                 << counted(places, "place", "places") << ", " << ground_distance(Metres::of(way_m), units);
        if (walk.bearings_from != North::not_told) text << ", bearings from " << to_text(walk.bearings_from) << " north";
        text << '\n';
    }
}

void tell_ground(const Ground& ground, LengthUnits units, std::ostringstream& text) {
    if (ground == Ground{}) {
        text << "  no ground: where the field ends is not known\n";
        return;
    }
    text << "  ground: "
         << (ground.boundary.empty() ? "no boundary" : "a field of " + ground_area(area_m2(ground.boundary), units)) << ", "
         << counted(ground.barriers.size(), "barrier", "barriers") << ", "
         << counted(ground.keep_clear.size(), "keep-clear area", "keep-clear areas") << '\n';
}

void tell_marks(const Survey& survey, std::ostringstream& text) {
    std::map<SignKind, std::size_t> kinds;
    std::map<std::string, std::size_t> left_out;
    for (const Mound& mound : survey.mounds) {
        ++kinds[mound.kind];
        if (const auto reason = why_not_used(survey, mound)) ++left_out[*reason];
    }
    std::size_t out = 0;
    for (const auto& [reason, count] : left_out) out += count;
    text << "Marks: " << survey.mounds.size() << ", of which " << survey.mounds.size() - out << " take part.\n";
    for (const auto& [kind, count] : kinds) text << "  " << to_text(kind) << ": " << count << '\n';
    constexpr std::size_t most_reasons = 12;  // "the same mound as ..." names a mark each
    std::size_t told = 0;
    for (const auto& [reason, count] : left_out)
        if (told++ < most_reasons) text << "  left out, " << reason << ": " << count << '\n';
    if (left_out.size() > most_reasons) text << "  and for " << left_out.size() - most_reasons << " other reasons\n";
}

void tell_notes(const Survey& survey, std::ostringstream& text) {
    constexpr std::size_t few = 5;
    std::size_t with_rest = 0;
    std::string examples;
    for (const Mound& mound : survey.mounds) {
        if (mound.note.empty()) continue;
        const NoteReading reading = survey.note_rules.empty() ? read_note(mound.note) : corrected_reading(survey, mound);
        if (reading.rest.empty() || ++with_rest > few) continue;
        examples += "  " + mound.name + ": " + quoted_for_display(reading.rest) + "\n";
    }
    if (with_rest == 0) return;
    text << "Notes with words that were not understood: " << with_rest << (with_rest > few ? ", of which:\n" : ":\n")
         << examples;
}

struct OfKind {
    std::size_t all = 0, accepted = 0, refused = 0;
    std::string lines;
};

void tell_findings(const std::vector<AnsweredFinding>& findings, std::size_t most_a_kind, std::ostringstream& text) {
    if (findings.empty()) {
        text << "Findings: none.\n";
        return;
    }
    std::map<FindingKind, OfKind> kinds;
    for (const auto& [finding, answer] : findings) {
        OfKind& kind = kinds[finding.kind];
        if (answer) ++(*answer == Answer::accepted ? kind.accepted : kind.refused);
        if (++kind.all > most_a_kind) continue;
        kind.lines += "    " + finding.found + (finding.proposed.empty() ? "" : " " + finding.proposed) + " (" +
                      std::to_string(finding.sure.in_100()) + " in 100" + (answer ? ", " + to_text(*answer) : "") + ")\n";
    }
    text << "Findings: " << findings.size() << ".\n";
    for (const auto& [kind, of_kind] : kinds) {
        text << "  " << to_text(kind) << ": " << of_kind.all;
        if (of_kind.accepted > 0) text << ", accepted: " << of_kind.accepted;
        if (of_kind.refused > 0) text << ", refused: " << of_kind.refused;
        text << '\n' << of_kind.lines;
        if (of_kind.all > most_a_kind) text << "    and " << of_kind.all - most_a_kind << " more\n";
    }
}

}  // namespace

std::string read_summary(const FieldSurvey& field, const std::vector<AnsweredFinding>& findings, std::size_t most_a_kind,
                         LengthUnits units) {
    std::ostringstream text;
    text << field.field_name << '\n';
    tell_walks(field.survey, units, text);
    tell_ground(field.survey.ground, units, text);
    tell_marks(field.survey, text);
    tell_notes(field.survey, text);
    if (!field.findings.empty())
        text << "While reading: " << counted(field.findings.size(), "remark", "remarks") << ", listed above.\n";
    tell_findings(findings, most_a_kind, text);
    return text.str();
}

}  // namespace plugside
