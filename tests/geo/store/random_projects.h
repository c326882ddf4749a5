// Random projects and random acts on them, for properties: every member of every part takes every kind of value that it may have.
#pragma once

#include <rapidcheck.h>

#include <algorithm>
#include <memory>
#include <string>
#include <vector>

#include "core/sets/work_order.h"
#include "geo/store/project.h"
#include "tests/geo/example_field.h"

namespace plugside::testing_support {

// Any bytes, also zeros and what is no UTF-8: files hold them.
inline std::string any_text() {
    return *rc::gen::oneOf(rc::gen::arbitrary<std::string>(), rc::gen::just(std::string("ne\0ver", 6)),
                           rc::gen::just(std::string("\xff\xfe caf\xc3\xa9 \"'; DROP")), rc::gen::just(std::string()));
}
inline double any_metres() {
    const double sizes[] = {1e-9, 1.0 / 3.0, 1.0, 777.0, 40000.0};
    return *rc::gen::inRange(-100000, 100000) * 1e-5 *
           *rc::gen::elementOf(std::vector<double>(std::begin(sizes), std::end(sizes)));
}
inline double above_0() { return 0.01 + *rc::gen::inRange(0, 1000000) / 7.0; }
inline bool any_flag() { return *rc::gen::arbitrary<bool>(); }
inline int up_to(int most) { return *rc::gen::inRange(0, most + 1); }
template <typename Word>
Word any_word(Word last) {
    return static_cast<Word>(up_to(static_cast<int>(last)));
}
template <typename Make>
auto maybe(const Make& make) {
    return any_flag() ? std::optional(make()) : std::nullopt;
}
template <typename Make>
auto some(int most, const Make& make) {
    std::vector<decltype(make())> list;
    for (int i = up_to(most); i > 0; --i) list.push_back(make());
    return list;
}
inline LocalPoint any_place() {
    const double east = any_metres();
    return {east, any_metres()};
}
inline std::vector<LocalPoint> any_places() { return some(6, any_place); }
inline Bearing any_bearing() { return Bearing::degrees(*rc::gen::inRange(0, 3600000) / 9999.7); }
inline UtcTime any_time() {
    return UtcTime{std::chrono::milliseconds(*rc::gen::inRange<std::int64_t>(-62'135'596'800'000, 253'402'300'800'000))};
}
inline Polygon any_area() {
    Polygon area;
    area.outer.vertices = any_places();
    area.holes = some(2, [] { return Ring{any_places()}; });
    return area;
}
inline Gap any_gap() { return {any_text(), any_place(), Metres::of(above_0())}; }

inline RecordedMark any_record() {
    return {any_place(),           maybe(any_bearing), any_word(SignKind::other), any_word(Freshness::crushed),
            Metres::of(above_0()), maybe(any_text)};
}

inline Mound any_mound(std::size_t number, std::size_t walks) {
    Mound mound;
    mound.name = any_text() + std::to_string(number);  // unique by the number behind
    mound.name.insert(0, "#");
    mound.plug = any_place();
    mound.fan = maybe(any_bearing);
    mound.kind = any_word(SignKind::other);
    mound.freshness = any_word(Freshness::crushed);
    mound.position_sd = Metres::of(above_0());
    mound.shared_sd = maybe([] { return Metres::of(above_0()); });
    mound.note = any_text();
    mound.time = maybe(any_time);
    mound.walk = static_cast<std::size_t>(up_to(static_cast<int>(walks) - 1));
    mound.set_aside_because = maybe(any_text);
    mound.recorded = maybe(any_record);
    mound.picture = maybe(any_text);
    mound.receiver = maybe([] {
        return ReceiverFacts{maybe(above_0), maybe([] { return up_to(40); }), any_text(), maybe(above_0)};
    });
    mound.mentions = some(2, [] { return NoteMention{any_word(MentionCategory::wildlife), any_text()}; });
    return mound;
}

inline Walk any_walk() {
    const auto fix = [] { return TrackPoint{any_place(), maybe(any_time)}; };
    return {any_text(), any_text(), some(3, [&] { return some(8, fix); }), any_word(North::magnetic_north)};
}

inline Ground any_ground() {
    Ground ground;
    ground.boundary.parts = some(2, any_area);
    ground.barriers = some(2, [] { return Barrier{any_text(), Polyline{any_places()}}; });
    ground.keep_clear = some(2, [] {
        return KeepClearArea{any_text(), any_text(), any_word(KeepClearKind::other), any_area()};
    });
    ground.crossings = some(2, any_gap);
    ground.gates = some(2, any_gap);
    ground.untreated.parts = some(2, any_area);
    return ground;
}

inline Mend any_mend() {
    Mend mend;
    mend.kind = any_word(MendKind::freshness);
    mend.marks = some(3, any_text);
    mend.to = any_places();
    mend.fan = maybe(any_bearing);
    mend.turn_degrees = any_metres();
    mend.sign = maybe([] { return any_word(SignKind::other); });
    mend.freshness = maybe([] { return any_word(Freshness::crushed); });
    mend.because = any_text();
    mend.position_sd = maybe([] { return Metres::of(above_0()); });
    return mend;
}

inline KnownFact any_fact() {
    KnownFact fact;
    fact.kind = any_word(FactKind::caught_here);
    fact.marks = {"a" + any_text(), "b" + any_text()};
    fact.line = maybe([] { return Polyline{{any_place(), any_place(), any_place()}}; });
    if (fact.kind == FactKind::not_a_gopher || fact.kind == FactKind::caught_here) fact.marks.pop_back();
    if (fact.kind == FactKind::no_run_across) fact.line = Polyline{{any_place(), any_place()}};
    fact.log_strength = maybe(above_0);
    fact.said_by = any_text();
    fact.said_at = maybe(any_time);
    return fact;
}

inline Finding any_finding() {
    Finding finding;
    finding.id = any_text();
    finding.kind = any_word(FindingKind::compass_offset);
    finding.marks = some(2, any_text);
    finding.at = any_place();
    finding.found = any_text();
    finding.why = any_text();
    finding.proposed = any_text();
    finding.mend = maybe(any_mend);
    finding.sure = Probability::of(up_to(1000) / 1000.0);
    return finding;
}

inline std::vector<SetDecision> any_decisions() {
    int number = 0;
    return some(5, [&number] {
        const ProbeKey key{any_word(ProbeKind::between_mounds), any_text() + std::to_string(++number) + "#", any_text()};
        return SetDecision{key, any_word(SetChoice::moved), maybe([] {
                               return LadderPlace{Metres::of(any_metres()), Metres::of(any_metres())};
                           })};
    });
}

inline std::vector<MendAnswer> any_answers() {
    int number = 0;
    return some(4, [&number] {
        return MendAnswer{any_text() + "#" + std::to_string(++number), any_word(Answer::refused), any_mend()};
    });
}

inline std::vector<Mound> any_mounds(std::size_t walks) {
    std::size_t number = 0;
    return some(12, [&] { return any_mound(++number, walks); });
}

inline WorkOrder any_work() {
    WorkOrder work;
    if (any_flag()) return work;
    work.conditions.frost = {maybe(any_flag), maybe(any_time)};
    work.conditions.utilities_ticket = any_text();
    work.method = any_text();
    work.licence.value = maybe([] { return Licence{any_word(LicenceKind::other), any_text(), any_text(), {}}; });
    work.licence.at = maybe(any_time);
    work.signed_off = some(3, [] {
        return SignedOverride{any_text(), any_text(), maybe([] { return ProbeKey{ProbeKind::plug_side, any_text(), ""}; }),
                              any_text(), any_text(), any_time()};
    });
    work.budget = {maybe([] { return up_to(500); }), maybe(above_0)};
    return work;
}

inline FieldSurvey any_field() {
    FieldSurvey field;
    field.field_name = any_text();
    field.frame = LocalFrame::centred_on(
        {*rc::gen::inRange(-1800000, 1800000) / 10000.1, *rc::gen::inRange(-899000, 899000) / 10000.1});
    field.survey.revision = *rc::gen::arbitrary<std::uint64_t>();
    field.survey.walks = some(3, any_walk);
    field.survey.walks.push_back(any_walk());
    field.survey.mounds = any_mounds(field.survey.walks.size());
    field.survey.ground = any_ground();
    field.survey.decisions = any_decisions();
    field.survey.known = some(3, any_fact);
    field.survey.answers = any_answers();
    field.survey.note_rules = some(3, [] { return NoteRule{any_text(), any_text(), any_text(), any_text()}; });
    field.survey.work = any_work();
    field.findings = some(3, [] { return ReadFinding{any_text(), any_text(), any_text()}; });
    field.of_reading = some(2, any_finding);
    return field;
}

inline ColumnRole any_role() { return any_word(ColumnRole::picture); }
inline TimeWriting any_times() { return {any_word(DateOrder::month_first), up_to(2880) - 1440}; }

inline TableGuess any_table() {
    return {any_flag() ? ';' : '\t',
            any_flag() ? ',' : '.',
            any_word(TextEncoding::latin_1),
            any_flag(),
            some(4, any_role),
            any_text(),
            any_flag(),
            any_times(),
            some(2, any_text)};
}

inline LayerGuess any_layer() {
    return {any_text(),
            any_word(PointUse::not_used),
            any_word(LineUse::not_used),
            any_word(PolygonUse::not_used),
            some(3, any_text),
            some(3, any_role),
            any_times(),
            any_flag(),
            any_text()};
}

// Beside the project, below it, and elsewhere.
inline std::filesystem::path any_file(const std::filesystem::path& folder) {
    const std::string name =
        *rc::gen::elementOf(std::vector<std::string>{"walk.gpx", "..walk", "caf\xc3\xa9 \xff.csv", "b;c.tif"});
    const std::vector<std::filesystem::path> places{folder, folder / "photos" / "first day", folder.parent_path(),
                                                    "/media/card"};
    return *rc::gen::elementOf(places) / name;
}

inline ProjectPicture any_picture(const std::filesystem::path& folder) {
    return {any_file(folder),
            any_flag(),
            {maybe(any_text), maybe([] {
                 return PicturePlacement{any_place(), {any_metres(), any_metres()}, {any_metres(), any_metres()}};
             }),
             maybe(any_text),
             some(4, [] { return PlacementPair{{any_metres(), any_metres()}, any_place()}; }),
             any_word(PlacementKind::affine)}};
}

inline Project any_project(const std::filesystem::path& folder) {
    Project project;
    project.field = std::make_shared<const FieldSurvey>(any_field());
    const auto file = [&] { return any_file(folder); };
    project.steps = some(3, [&] { return some(3, file); });
    for (int i = up_to(2); i > 0; --i) project.tables[file()] = any_table();
    for (int i = up_to(2); i > 0; --i) project.layers[file()] = some(2, any_layer);
    for (int i = up_to(2); i > 0; --i) project.norths[any_text()] = any_word(North::magnetic_north);
    project.pictures = some(2, [&] { return any_picture(folder); });
    project.imagery_tone = up_to(1000) / 1000.0;
    project.units = any_word(LengthUnits::metres);
    project.not_handed_out = any_flag();
    return project;
}

// One part of the project as another one might have it.
inline Project after_an_act(const Project& before, const std::filesystem::path& folder) {
    Project now = before;
    auto field = std::make_shared<FieldSurvey>(*before.field);
    Survey& survey = field->survey;
    ++survey.revision;
    switch (up_to(13)) {
        case 0: survey.decisions = any_decisions(); break;
        case 1: survey.ground = any_ground(); break;
        case 2: survey.known = some(3, any_fact); break;
        case 3: survey.answers = any_answers(); break;
        case 4:
            if (!survey.mounds.empty()) survey.mounds[survey.mounds.size() / 2].plug = any_place();
            break;
        case 5: survey.mounds = any_mounds(survey.walks.size()); break;
        case 6: survey.walks.push_back(any_walk()); break;
        case 7: survey.note_rules = some(3, [] { return NoteRule{any_text(), any_text(), any_text(), any_text()}; }); break;
        case 8: std::reverse(survey.mounds.begin(), survey.mounds.end()); break;
        case 9: field = std::make_shared<FieldSurvey>(any_field()); break;
        case 10: now.pictures = some(2, [&] { return any_picture(folder); }); break;
        case 12: survey.work = any_work(); break;
        case 11: now.units = any_word(LengthUnits::metres); break;
        default: now.steps = some(3, [&] { return some(3, [&] { return any_file(folder); }); }); break;
    }
    now.field = std::move(field);
    return now;
}

}  // namespace plugside::testing_support
