#include "geo/read/field_assembler.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <filesystem>

#include "core/survey/refusal.h"
#include "core/words/words.h"
#include "geo/read/field_extent.h"
#include "geo/read/notes_grammar.h"
#include "geo/read/work_rows.h"

namespace plugside {

namespace {

constexpr double same_place_m = 0.01;

std::uint64_t cell_at(std::int64_t east, std::int64_t north) {
    return static_cast<std::uint64_t>(east) * 0x9E3779B97F4A7C15ULL ^ static_cast<std::uint64_t>(north);
}

std::array<std::int64_t, 2> cell_of(LocalPoint at) {
    return {static_cast<std::int64_t>(std::floor(at.east_m / same_place_m)),
            static_cast<std::int64_t>(std::floor(at.north_m / same_place_m))};
}

LocalPoint as_read(const Mound& mound) { return mound.recorded ? mound.recorded->plug : mound.plug; }

// "M7 (2)" is a mark that called itself M7; "M012" may be one without a name.
bool could_be_named(const std::string& mound, const std::string& given) {
    if (mound == given) return true;
    if (given.empty())
        return mound.size() > 3 && mound.front() == 'M' && mound.find_first_not_of("0123456789", 1) == std::string::npos;
    return mound.rfind(given + " (", 0) == 0 && mound.back() == ')';
}

bool same_line(const std::vector<LocalPoint>& a, const std::vector<LocalPoint>& b) {
    return a.size() == b.size() && std::equal(a.begin(), a.end(), b.begin(),
                                              [](LocalPoint p, LocalPoint q) { return distance_m(p, q) <= same_place_m; });
}

bool same_polygon(const Polygon& a, const Polygon& b) {
    if (!same_line(a.outer.vertices, b.outer.vertices) || a.holes.size() != b.holes.size()) return false;
    return std::equal(a.holes.begin(), a.holes.end(), b.holes.begin(),
                      [](const Ring& p, const Ring& q) { return same_line(p.vertices, q.vertices); });
}

bool same_segment(const TrackSegment& a, const TrackSegment& b) {
    return a.size() == b.size() && std::equal(a.begin(), a.end(), b.begin(), [](const TrackPoint& p, const TrackPoint& q) {
               return p.time == q.time && distance_m(p.at, q.at) <= same_place_m;
           });
}

}  // namespace

std::string MarkNames::unique(const std::string& name, const GeographicMark& mark, FindingList& findings) {
    if (name.empty()) {
        findings.add(mark.place, Words::later("the mark has no name; such marks are called M001, M002 and so on, in order"));
        return numbered();
    }
    if (used_.insert(name).second) return name;
    std::size_t& last = repeats_.try_emplace(name, 1).first->second;
    std::string other;
    do other = name + " (" + std::to_string(++last) + ")";
    while (!used_.insert(other).second);
    findings.add(mark.place, Words::tell("the name {1} is used before; the mark is called {2}",
                                         {quoted_for_display(name), quoted_for_display(other)}));
    return other;
}

std::string MarkNames::numbered() {
    for (;;) {
        const std::string digits = std::to_string(++nameless_);
        std::string name = "M";
        name.append(digits.size() < 3 ? 3 - digits.size() : 0, '0').append(digits);
        if (!given_.contains(name) && used_.insert(name).second) return name;
    }
}

KnownMarks::KnownMarks(const Survey& survey) : found_(survey.mounds.size(), false) {
    for (std::size_t i = 0; i < survey.mounds.size(); ++i) {
        const auto [east, north] = cell_of(as_read(survey.mounds[i]));
        by_cell_.emplace(cell_at(east, north), i);
    }
}

std::optional<std::size_t> KnownMarks::find(const Survey& survey, const std::string& source, const GeographicMark& mark,
                                            LocalPoint at) {
    const auto [east, north] = cell_of(at);
    std::optional<std::size_t> best;
    for (std::int64_t across = -1; across <= 1; ++across)
        for (std::int64_t up = -1; up <= 1; ++up) {
            const auto [begin, end] = by_cell_.equal_range(cell_at(east + across, north + up));
            for (auto entry = begin; entry != end; ++entry) {
                const Mound& mound = survey.mounds[entry->second];
                if (found_[entry->second] || survey.walks[mound.walk].source != source || mound.time != mark.mound.time)
                    continue;
                if (!could_be_named(mound.name, mark.mound.name) || distance_m(as_read(mound), at) > same_place_m) continue;
                if (!best || entry->second < *best) best = entry->second;
            }
        }
    if (best) found_[*best] = true;
    return best;
}

FieldAssembler::FieldAssembler(FieldSurvey field, const std::vector<GeographicFile>& files,
                               std::vector<CoordinateFault> faults)
    : field_(std::move(field)),
      known_(field_.survey),
      faults_(std::move(faults)),
      marks_of_fault_(faults_.size()),
      walks_before_(field_.survey.walks.size()),
      decisions_before_(field_.survey.decisions.size()),
      boundary_before_(field_.survey.ground.boundary.parts.size()),
      barriers_before_(field_.survey.ground.barriers.size()),
      keep_clear_before_(field_.survey.ground.keep_clear.size()) {
    for (const Mound& mound : field_.survey.mounds) names_.take(mound.name);
    for (const GeographicFile& file : files)
        for (const GeographicWalk& walk : file.walks)
            for (const GeographicMark& mark : walk.marks) names_.reserve(mark.mound.name);
}

void FieldAssembler::add(GeographicFile file) {
    FindingList findings(std::filesystem::path(file.file).filename().string());
    Renamed renamed;
    again_ = 0;
    Renamed walk_ids;
    for (GeographicWalk& walk : file.walks) {
        const std::size_t to = add_walk(walk, renamed, findings);
        if (!walk.id.empty()) walk_ids.emplace(walk.id, field_.survey.walks[to].id);
    }
    if (again_ > 0)
        findings.add(
            "", Words::tell("{1} marks of the file are there already; they are not added again", {std::to_string(again_)}));
    add_ground(file.ground);
    for (SetDecision& decision : file.decisions) add_decision(std::move(decision), renamed);
    for (GeographicFact& fact : file.known) add_fact(std::move(fact), renamed);
    const std::string name = std::filesystem::path(file.file).filename().string();
    for (GeographicAnswer& answer : file.answers) answers_.add_answer(std::move(answer), name, renamed);
    for (GeographicRule& rule : file.note_rules) answers_.add_rule(std::move(rule), name, renamed, walk_ids);
    for (GeographicFinding& finding : file.of_reading) answers_.add_finding(std::move(finding), name, renamed);
    add_work(*file.work, renamed, findings);
    field_.survey.revision = std::max(field_.survey.revision, file.revision);
    for (ReadFinding& finding : file.findings) field_.findings.push_back(std::move(finding));
    for (ReadFinding& finding : findings.listed()) field_.findings.push_back(std::move(finding));
    if (field_.field_name.empty()) field_.field_name = file.title;
}

FieldSurvey FieldAssembler::field(const std::string& name) {
    if (field_.field_name.empty()) field_.field_name = name;
    add_faults();
    anything_new_ = answers_.settle(field_) || anything_new_;
    return std::move(field_);
}

// Marks that are there already stay with the walk they are in, and new ones of the file join them there.
std::size_t FieldAssembler::add_walk(GeographicWalk& walk, Renamed& renamed, FindingList& findings) {
    Survey& survey = field_.survey;
    std::optional<std::size_t> joined;
    std::vector<std::pair<GeographicMark*, LocalPoint>> fresh;
    for (GeographicMark& mark : walk.marks) {
        const LocalPoint at = field_.frame.to_local(mark.at);
        const auto there = walks_before_ > 0 ? known_.find(survey, walk.source, mark, as_recorded(mark)) : std::nullopt;
        if (!there) {
            fresh.emplace_back(&mark, at);
            continue;
        }
        ++again_;
        joined = joined.value_or(survey.mounds[*there].walk);
        if (survey.mounds[*there].name != mark.mound.name) renamed.emplace(mark.mound.name, survey.mounds[*there].name);
        if (mark.fault) marks_of_fault_[*mark.fault].push_back(*there);
    }
    const std::vector<GeographicWalk> only{GeographicWalk{walk.source, std::move(walk.segments), {}}};
    for (std::size_t i = 0; i < walks_before_ && !joined; ++i) {
        if (survey.walks[i].source != walk.source) continue;
        const bool same_track = !only[0].segments.empty() && !survey.walks[i].segments.empty() &&
                                only[0].segments[0].size() == survey.walks[i].segments[0].size() &&
                                distance_m(field_.frame.to_local(only[0].segments[0].front().at),
                                           survey.walks[i].segments[0].front().at) <= same_place_m;
        if (same_track) joined = i;
    }
    if (!joined) {
        joined = survey.walks.size();
        survey.walks.push_back({"walk " + std::to_string(survey.walks.size() + 1), walk.source, {}, walk.bearings_from});
        anything_new_ = true;
    }
    add_segments(only[0], *joined);
    for (auto& [mark, at] : fresh) add_mark(std::move(*mark), at, *joined, renamed, findings);
    return *joined;
}

LocalPoint FieldAssembler::as_recorded(const GeographicMark& mark) const {
    const bool moved = mark.record && is_about(field_.frame.centre(), mark.record->at);
    return field_.frame.to_local(moved ? mark.record->at : mark.at);
}

void FieldAssembler::add_segments(const GeographicWalk& walk, std::size_t to) {
    auto& segments = field_.survey.walks[to].segments;
    const std::size_t before = to < walks_before_ ? segments.size() : 0;
    for (const auto& segment : walk.segments) {
        TrackSegment points;
        points.reserve(segment.size());
        for (const GeographicTrackPoint& point : segment) points.push_back({field_.frame.to_local(point.at), point.time});
        const auto old = segments.begin() + static_cast<std::ptrdiff_t>(before);
        if (std::any_of(segments.begin(), old, [&](const TrackSegment& known) { return same_segment(known, points); }))
            continue;
        segments.push_back(std::move(points));
        anything_new_ = true;
    }
}

void FieldAssembler::add_mark(GeographicMark mark, LocalPoint at, std::size_t walk, Renamed& renamed,
                              FindingList& findings) {
    const std::string given = mark.mound.name;
    Mound mound = std::move(mark.mound);
    mound.name = names_.unique(given, mark, findings);
    if (mound.name != given) renamed.emplace(given, mound.name);
    mound.plug = at;
    // The named edge: a note tells degrees from true north, core reckons on the plane.
    if (mark.fan_degrees) mound.fan = field_.frame.plane_bearing(Bearing::degrees(*mark.fan_degrees), mound.plug);
    mound.walk = walk;
    mound.mentions = read_note(mound.note).mentions;
    if (mark.fault) marks_of_fault_[*mark.fault].push_back(field_.survey.mounds.size());
    if (mark.record)
        answers_.add_record(field_.survey.mounds.size(), std::move(*mark.record),
                            std::filesystem::path(mark.file).filename().string(), mark.place);
    field_.survey.mounds.push_back(std::move(mound));
    anything_new_ = true;
}

void FieldAssembler::add_ground(const GeographicGround& ground) {
    Ground& all = field_.survey.ground;
    const auto add = [&](auto& known, std::size_t before, auto piece, const auto& same) {
        const auto old = known.begin() + static_cast<std::ptrdiff_t>(before);
        if (std::any_of(known.begin(), old, [&](const auto& other) { return same(other, piece); })) return;
        known.push_back(std::move(piece));
        anything_new_ = true;
    };
    for (const GeographicPolygon& part : ground.boundary)
        add(all.boundary.parts, boundary_before_, to_local(field_.frame, part), same_polygon);
    for (const GeographicBarrier& barrier : ground.barriers)
        add(all.barriers, barriers_before_, Barrier{barrier.name, to_local(field_.frame, barrier.line)},
            [](const Barrier& a, const Barrier& b) {
                return a.name == b.name && same_line(a.line.vertices, b.line.vertices);
            });
    for (const GeographicKeepClear& area : ground.keep_clear)
        add(all.keep_clear, keep_clear_before_,
            KeepClearArea{area.name, area.reason, area.kind, to_local(field_.frame, area.area)},
            [](const KeepClearArea& a, const KeepClearArea& b) {
                return a.name == b.name && a.reason == b.reason && a.kind == b.kind && same_polygon(a.area, b.area);
            });
    const auto add_gaps = [&](const std::vector<GeographicGap>& gaps, std::vector<Gap>& to) {
        for (const GeographicGap& gap : gaps)
            add(to, to.size(), Gap{gap.name, field_.frame.to_local(gap.at), Metres::of(gap.width_m)},
                [](const Gap& a, const Gap& b) { return a.name == b.name && distance_m(a.at, b.at) <= same_place_m; });
    };
    add_gaps(ground.crossings, all.crossings);
    add_gaps(ground.gates, all.gates);
    for (const GeographicPolygon& part : ground.untreated)
        add(all.untreated.parts, all.untreated.parts.size(), to_local(field_.frame, part), same_polygon);
}

void FieldAssembler::add_fact(GeographicFact read, const Renamed& renamed) {
    KnownFact fact = std::move(read.fact);
    for (std::string& mark : fact.marks)
        if (const auto found = renamed.find(mark); found != renamed.end()) mark = found->second;
    if (read.line) fact.line = Polyline{to_local(field_.frame, *read.line)};
    const auto same = [&](const KnownFact& other) {
        const bool lines = other.line && fact.line ? same_line(other.line->vertices, fact.line->vertices)
                                                   : other.line.has_value() == fact.line.has_value();
        return lines && other.kind == fact.kind && other.marks == fact.marks;
    };
    auto& known = field_.survey.known;
    if (std::any_of(known.begin(), known.end(), same)) return;
    known.push_back(std::move(fact));
    anything_new_ = true;
}

// A decision names marks as its own file does. One that the field had before stays as it is.
void FieldAssembler::add_decision(SetDecision decision, const Renamed& renamed) {
    for (std::string* name : {&decision.probe.from_mound, &decision.probe.to_mound})
        if (const auto found = renamed.find(*name); !name->empty() && found != renamed.end()) *name = found->second;
    auto& decisions = field_.survey.decisions;
    const auto old = decisions.begin() + static_cast<std::ptrdiff_t>(decisions_before_);
    const auto same_site = [&](const SetDecision& earlier) { return earlier.probe == decision.probe; };
    if (std::any_of(decisions.begin(), old, same_site)) return;
    decisions.erase(std::remove_if(old, decisions.end(), same_site), decisions.end());
    decisions.push_back(std::move(decision));
    anything_new_ = true;
}

// A field has one order of work: what it has already stays.
void FieldAssembler::add_work(const WorkOrder& work, const Renamed& renamed, FindingList& findings) {
    const HeldWork told = renamed_marks(work, [&renamed](const std::string& name) {
        const auto found = renamed.find(name);
        return found == renamed.end() ? name : found->second;
    });
    HeldWork& now = field_.survey.work;
    if (told == HeldWork() || told == now) return;
    if (now != HeldWork()) {
        findings.add("", Words::later("the file's work order is not used: the field has another already"));
        return;
    }
    now = told;
    anything_new_ = true;
}

void FieldAssembler::add_faults() {
    for (std::size_t i = 0; i < faults_.size(); ++i) {
        if (marks_of_fault_[i].empty()) continue;
        std::vector<std::string> names;
        LocalVector sum;
        for (const std::size_t mound : marks_of_fault_[i]) {
            names.push_back(field_.survey.mounds[mound].name);
            sum = sum + (as_read(field_.survey.mounds[mound]) - LocalPoint{});
        }
        Finding finding = finding_of(faults_[i], std::move(names),
                                     LocalPoint{} + sum * (1.0 / static_cast<double>(marks_of_fault_[i].size())));
        const bool told = std::any_of(field_.of_reading.begin(), field_.of_reading.end(),
                                      [&](const Finding& earlier) { return earlier.id == finding.id; });
        if (told) continue;
        field_.findings.push_back(
            {faults_[i].file, "",
             Words::tell("{1}; set aside until answered", {finding.found.substr(0, finding.found.size() - 1)})});
        field_.of_reading.push_back(std::move(finding));
    }
}

}  // namespace plugside
