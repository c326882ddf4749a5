// A made-up field that fills every layer: two walks, all kinds of signs, ground with a hole, decisions of every choice (one
// on a site that no plan proposes any more), and a plan written by hand. Nothing here is computed by the code under test.
#pragma once

#include <gtest/gtest.h>

#include <chrono>
#include <cmath>

#include "core/sets/work_order.h"
#include "core/plan/plan.h"
#include "geo/read/field_survey.h"

namespace plugside::testing_support {

inline UtcTime morning(int seconds, int milliseconds = 0) {
    using namespace std::chrono;
    return UtcTime{sys_days{year{2026} / 3 / 1}} + hours(9) + std::chrono::seconds(seconds) +
           std::chrono::milliseconds(milliseconds);
}

inline Mound example_mound(const std::string& name, LocalPoint plug, std::size_t walk) {
    Mound mound;
    mound.name = name;
    mound.plug = plug;
    mound.walk = walk;
    return mound;
}

inline std::vector<Mound> example_mounds() {
    std::vector<Mound> mounds;
    mounds.push_back(example_mound("M001", {12.25, -40.5}, 0));
    mounds.back().fan = Bearing::degrees(135.0);
    mounds.back().freshness = Freshness::fresh;
    mounds.back().note = "fan 135 fresh";
    mounds.back().time = morning(12, 345);
    mounds.push_back(example_mound("M002", {17.5, -38.0}, 0));
    mounds.back().fan = Bearing::degrees(0.0);
    mounds.back().freshness = Freshness::older;
    mounds.back().position_sd = Metres::of(0.75);
    mounds.back().shared_sd = Metres::of(2.7);
    mounds.back().time = morning(59, 999);
    mounds.back().picture = "IMG 0007.jpg";
    mounds.back().receiver = ReceiverFacts{1.5, 9, "3d", 2.25};
    mounds.push_back(example_mound("Märk <3> & \"four\"", {22.0, -36.25}, 0));
    mounds.back().freshness = Freshness::crushed;
    mounds.push_back(example_mound("M004", {61.0, 20.0}, 1));
    mounds.back().kind = SignKind::surface_plug;
    mounds.push_back(example_mound("M005", {66.0, 22.0}, 1));
    mounds.back().fan = Bearing::degrees(301.5);
    int north = 30;
    for (const SignKind kind : {SignKind::mole, SignKind::ground_squirrel, SignKind::vole, SignKind::other}) {
        mounds.push_back(example_mound("other " + to_text(kind), {-20.0, static_cast<double>(north += 4)}, 1));
        mounds.back().kind = kind;
    }
    return mounds;
}

inline std::vector<Walk> example_walks() {
    Walk first{"walk 1", "morning.gpx", {}};
    first.segments.push_back({{{0.0, 0.0}, morning(0)}, {{5.0, -20.0}, morning(7, 250)}, {{12.0, -41.0}, std::nullopt}});
    first.segments.push_back({{{30.0, 1.0}, morning(90)}});  // a segment of one place
    first.segments.push_back({{{30.0, 1.0}, std::nullopt}, {{30.0, 1.0}, std::nullopt}, {{60.0, 20.0}, std::nullopt}});
    first.bearings_from = North::magnetic_north;
    return {first, Walk{"walk 2", "afternoon.gpx", {}}};
}

inline Polygon rectangle(double west, double south, double east, double north) {
    return {{{{west, south}, {east, south}, {east, north}, {west, north}}}, {}};
}

inline Ground example_ground() {
    Ground ground;
    Polygon field = rectangle(-50.0, -60.0, 100.0, 80.0);
    field.holes.push_back(rectangle(80.0, 60.0, 90.0, 70.0).outer);
    ground.boundary.parts = {field, rectangle(120.0, 0.0, 140.0, 20.0)};
    ground.barriers = {{"ditch", {{{40.0, -60.0}, {41.0, 0.0}, {43.5, 80.0}}}}, {"", {{{-50.0, 0.0}, {-40.0, 0.0}}}}};
    ground.keep_clear = {{"house", "people live there", KeepClearKind::building, rectangle(70.0, 50.0, 78.0, 58.0)},
                         {"", "", KeepClearKind::other, rectangle(-45.0, -55.0, -40.0, -50.0)}};
    ground.crossings = {{"culvert", {43.0, 60.0}, Metres::of(1.5)}};
    ground.gates = {{"", {-50.0, 0.0}, Metres::of(3.0)}, {"north gate", {20.0, 80.0}, Metres::of(4.0)}};
    ground.untreated.parts = {rectangle(0.0, 60.0, 20.0, 75.0)};
    return ground;
}

inline std::vector<SetDecision> example_decisions() {
    return {{{ProbeKind::plug_side, "M001", ""}, SetChoice::kept, std::nullopt},
            {{ProbeKind::between_mounds, "M001", "M002"}, SetChoice::moved, LadderPlace{Metres::of(2.5), Metres::of(-0.3)}},
            {{ProbeKind::plug_side, "M002", ""}, SetChoice::dropped, std::nullopt},
            {{ProbeKind::plug_side, "M005", ""}, SetChoice::kept, std::nullopt}};  // no plan proposes it
}

// The plane's centre is not the middle of the marks: nothing may depend on which plane the survey lies on.
inline FieldSurvey example_field(GeographicPoint centre = {-120.0001, 38.25}) {
    FieldSurvey field;
    field.field_name = "Upper hay piece";
    field.frame = LocalFrame::centred_on(centre);
    field.survey.revision = 7;
    field.survey.walks = example_walks();
    field.survey.mounds = example_mounds();
    field.survey.ground = example_ground();
    field.survey.decisions = example_decisions();
    return field;
}

inline Mend example_mend(MendKind kind, std::vector<std::string> marks) {
    Mend mend;
    mend.kind = kind;
    mend.marks = std::move(marks);
    return mend;
}

// The same with answers of every kind, marks that stand mended, and a finding of coordinates.
inline FieldSurvey answered_field(GeographicPoint centre = {-120.0001, 38.25}) {
    FieldSurvey field = example_field(centre);
    Mend one = example_mend(MendKind::one_mound, {"M001", "M002"});
    one.to = {{14.5, -39.25}};
    one.position_sd = Metres::of(0.375);
    Mend moved = example_mend(MendKind::move, {"other mole", "no such mark"});
    moved.to = {{-19.5, 35.25}, {1.0, 2.0}};
    Mend fan = example_mend(MendKind::fan, {"other ground squirrel"});
    fan.fan = Bearing::degrees(200.25);
    Mend no_fan = example_mend(MendKind::fan, {"M002"});
    Mend turned = example_mend(MendKind::turn_fans, {"M001", "M002", "M005"});
    turned.turn_degrees = -12.625;
    Mend sign = example_mend(MendKind::sign, {"other other"});
    sign.sign = SignKind::mole;
    Mend fresh = example_mend(MendKind::freshness, {"other vole"});
    fresh.freshness = Freshness::fresh;
    Mend aside = example_mend(MendKind::set_aside, {"other vole"});
    aside.because = "marked by \"mistake\",\nas it seems";
    field.survey.mounds[4].set_aside_because = "until answered";
    field.survey.answers = {{"double mark: M002, M001", Answer::refused, one},
                            {"own move: other mole", Answer::accepted, moved},
                            {"own fan: other ground squirrel", Answer::accepted, fan},
                            {"compass offset: walk 1", Answer::accepted, turned},
                            {"own fan: M002", Answer::accepted, no_fan},
                            {"own sign: other other", Answer::accepted, sign},
                            {"own freshness: other vole", Answer::accepted, fresh},
                            {"own set aside: other vole", Answer::accepted, aside},
                            {"lost sign: M005", Answer::accepted, example_mend(MendKind::take_back, {"M005"})},
                            {"far from track: M004", Answer::refused, Mend{}}};
    field.survey.known = {
        {FactKind::different_systems, {"M001", "M004"}, {}, {}, "", {}},
        {FactKind::probe_nothing, {"M001", "M002"}, {}, 2.5, "the \"foreman\"", UtcTime{std::chrono::seconds(1772357400)}},
        {FactKind::no_run_across, {}, Polyline{{{5.0, 5.0}, {25.0, 5.5}}}, {}, "", {}}};
    field.survey.note_rules = {{"walk 1", "gr", "fresh"}, {"", "xyzzy \"b\"", ""}, {"walk 2", "bk", "crushed", "M004"}};
    WorkOrder work;
    work.method = "paired-traps";
    work.conditions.utilities_ticket = "12-3 \"b\"\n of two lines";
    work.set_methods = {{{ProbeKind::between_mounds, "M001", "M002"}, "trap-in-lateral"}};
    work.signed_off = {{"kill-trap-law", "", {}, "A. Nobody", "asked the office", UtcTime{std::chrono::seconds(1772357400)}}};
    work.budget.traps = 12;
    field.survey.work = std::move(work);
    Finding lost;
    lost.id = "lost sign: M005";
    lost.kind = FindingKind::lost_sign;
    lost.marks = {"M005"};
    lost.at = {66.0, 22.0};
    lost.found = "Of M005 of afternoon.gpx the sign of the longitude (east or west) looks lost.";
    lost.why = "It lies in the field with the sign turned.";
    lost.proposed = "Take it back.";
    lost.sure = Probability::of(0.875);
    lost.mend = example_mend(MendKind::take_back, {"M005"});
    field.of_reading = {lost};
    put_right(field.survey);
    return field;
}

inline ProbeSite example_probe(ProbeKind kind, std::size_t from, std::optional<std::size_t> to, const Survey& survey) {
    ProbeSite site;
    site.key = {kind, survey.mounds[from].name, to ? survey.mounds[*to].name : ""};
    site.from_mound = from;
    site.to_mound = to;
    site.ladder = {Metres::of(0.31), Metres::of(0.02), to ? 90.0 : 0.0, Metres::of(0.3), Metres::of(0.05)};
    site.rungs = {Metres::of(0.0), Metres::of(0.05), Metres::of(-0.05)};
    site.hit = Probability::of(0.925);
    site.expected_rungs = 3.125;
    site.axis = to ? *Bearing::along(survey.mounds[*to].plug - survey.mounds[from].plug) : Bearing::degrees(315.0);
    site.middle = survey.mounds[from].plug + site.axis.unit() * 0.31;
    return site;
}

inline Plan example_plan(const FieldSurvey& field) {
    const Survey& survey = field.survey;
    Plan plan;
    plan.revision = survey.revision;
    plan.estimate = {2.25, 2, 1, 4, 0.90, Metres::of(5.5), 2.5, 400};
    for (std::size_t i = 0; i < survey.mounds.size(); ++i) {
        MoundInPlan mound;
        mound.take_off = survey.mounds[i].plug + LocalVector{-0.2, 0.15};
        mound.take_off_sd_along = Metres::of(0.09);
        mound.take_off_sd_across = Metres::of(0.07);
        mound.belongs = Probability::of(0.875);
        if (i < 5)
            mound.system = i < 3 ? 0U : 1U;
        else
            mound.not_used_because = why_not_used(survey, survey.mounds[i]);
        plan.mounds.push_back(mound);
    }
    plan.systems.push_back({"A",
                            {0, 1, 2},
                            {{rectangle(10.0, -42.0, 24.0, -34.0)}},
                            Probability::of(0.75),
                            Metres::of(11.5),
                            Freshness::fresh,
                            {15.0, -38.0}});
    plan.systems.push_back({"B",
                            {3, 4},
                            {{rectangle(60.0, 18.0, 64.0, 24.0), rectangle(65.0, 18.0, 68.0, 24.0)}},
                            Probability::of(0.5),
                            Metres::of(5.4),
                            Freshness::unknown,
                            {62.0, 20.0}});
    plan.runs.push_back(
        {0, 0, 1, {{{12.0, -40.35}, {14.5, -39.0}, {17.3, -37.85}}}, {0.1, 0.45, 0.12}, Probability::of(0.8)});
    plan.runs.push_back({1, 3, 4, {{{60.8, 20.15}, {65.8, 22.15}}}, {0.3, 0.2}, Probability::of(0.65)});
    plan.probes.push_back(example_probe(ProbeKind::plug_side, 0, std::nullopt, survey));
    plan.probes.push_back(example_probe(ProbeKind::between_mounds, 0, 1, survey));
    plan.probes.back().ladder.along = Metres::of(2.5);
    plan.probes.back().ladder.across = Metres::of(-0.3);
    plan.probes.push_back(example_probe(ProbeKind::plug_side, 1, std::nullopt, survey));
    plan.probes.push_back(example_probe(ProbeKind::between_mounds, 3, 4, survey));
    plan.probes.back().system = 1;
    plan.sets.push_back({0, 2, 3, SetChoice::kept, "trap in the main run", {"decides", "utilities"}});
    plan.sets.push_back({1, 1, 1, SetChoice::moved, "trap in the main run", {"decides"}});
    plan.sets.push_back({2, 4, 4, SetChoice::dropped, "hand bait", {}});
    plan.sets.push_back({3, 3, 2, SetChoice::proposed, "hand bait", {"decides", "utilities"}});
    plan.alternatives.joined.push_back({0, 1, Probability::of(0.3125)});
    plan.alternatives.split.push_back({0, Probability::of(0.25), {1, 2}});
    plan.alternatives.doubtful.push_back({3, 1, Probability::of(0.375), 0, Probability::of(0.125)});
    plan.alternatives.doubtful.push_back({4, 1, Probability::of(0.4375), std::nullopt, {}});
    plan.unwalked.parts = {rectangle(-50.0, 40.0, 0.0, 80.0), rectangle(120.0, 0.0, 140.0, 20.0)};
    plan.area_walked_m2 = 8123.5;
    plan.area_field_m2 = 21300.0;
    plan.notices = {"Four marks are other animals' signs.", "One mound has no fan."};
    return plan;
}

// Places equal to 1e-9 degrees, whatever planes they lie on.
inline void expect_same_place(const LocalFrame& frame_a, LocalPoint a, const LocalFrame& frame_b, LocalPoint b) {
    const GeographicPoint place_a = frame_a.to_geographic(a);
    const GeographicPoint place_b = frame_b.to_geographic(b);
    EXPECT_NEAR(std::remainder(place_a.longitude_degrees - place_b.longitude_degrees, 360.0), 0.0, 1e-9);
    EXPECT_NEAR(place_a.latitude_degrees, place_b.latitude_degrees, 1e-9);
}

inline void expect_same_vertices(const LocalFrame& frame_a, const std::vector<LocalPoint>& a, const LocalFrame& frame_b,
                                 const std::vector<LocalPoint>& b) {
    ASSERT_EQ(a.size(), b.size());
    for (std::size_t i = 0; i < a.size(); ++i) expect_same_place(frame_a, a[i], frame_b, b[i]);
}

inline void expect_same_polygon(const LocalFrame& frame_a, const Polygon& a, const LocalFrame& frame_b, const Polygon& b) {
    expect_same_vertices(frame_a, a.outer.vertices, frame_b, b.outer.vertices);
    ASSERT_EQ(a.holes.size(), b.holes.size());
    for (std::size_t i = 0; i < a.holes.size(); ++i)
        expect_same_vertices(frame_a, a.holes[i].vertices, frame_b, b.holes[i].vertices);
}

inline void expect_same_mounds(const FieldSurvey& a, const FieldSurvey& b, double fan_tolerance_degrees) {
    ASSERT_EQ(a.survey.mounds.size(), b.survey.mounds.size());
    for (std::size_t i = 0; i < a.survey.mounds.size(); ++i) {
        const Mound& one = a.survey.mounds[i];
        const Mound& other = b.survey.mounds[i];
        SCOPED_TRACE(one.name);
        EXPECT_EQ(one.name, other.name);
        expect_same_place(a.frame, one.plug, b.frame, other.plug);
        ASSERT_EQ(one.fan.has_value(), other.fan.has_value());
        if (one.fan) {
            const Bearing true_a = a.frame.true_bearing(*one.fan, one.plug);
            const Bearing true_b = b.frame.true_bearing(*other.fan, other.plug);
            EXPECT_NEAR(turn_degrees(true_a, true_b), 0.0, fan_tolerance_degrees);
        }
        EXPECT_EQ(one.kind, other.kind);
        EXPECT_EQ(one.freshness, other.freshness);
        EXPECT_EQ(one.time, other.time);
    }
}

inline void expect_same_ground(const FieldSurvey& a, const FieldSurvey& b) {
    const Ground& one = a.survey.ground;
    const Ground& other = b.survey.ground;
    ASSERT_EQ(one.boundary.parts.size(), other.boundary.parts.size());
    for (std::size_t i = 0; i < one.boundary.parts.size(); ++i)
        expect_same_polygon(a.frame, one.boundary.parts[i], b.frame, other.boundary.parts[i]);
    ASSERT_EQ(one.barriers.size(), other.barriers.size());
    for (std::size_t i = 0; i < one.barriers.size(); ++i) {
        EXPECT_EQ(one.barriers[i].name, other.barriers[i].name);
        expect_same_vertices(a.frame, one.barriers[i].line.vertices, b.frame, other.barriers[i].line.vertices);
    }
    ASSERT_EQ(one.keep_clear.size(), other.keep_clear.size());
    for (std::size_t i = 0; i < one.keep_clear.size(); ++i) {
        EXPECT_EQ(one.keep_clear[i].name, other.keep_clear[i].name);
        EXPECT_EQ(one.keep_clear[i].reason, other.keep_clear[i].reason);
        EXPECT_EQ(one.keep_clear[i].kind, other.keep_clear[i].kind);
        expect_same_polygon(a.frame, one.keep_clear[i].area, b.frame, other.keep_clear[i].area);
    }
    const auto expect_same_gaps = [&](const std::vector<Gap>& these, const std::vector<Gap>& those) {
        ASSERT_EQ(these.size(), those.size());
        for (std::size_t i = 0; i < these.size(); ++i) {
            EXPECT_EQ(these[i].name, those[i].name);
            EXPECT_EQ(these[i].width, those[i].width);
            expect_same_place(a.frame, these[i].at, b.frame, those[i].at);
        }
    };
    expect_same_gaps(one.crossings, other.crossings);
    expect_same_gaps(one.gates, other.gates);
    ASSERT_EQ(one.untreated.parts.size(), other.untreated.parts.size());
    for (std::size_t i = 0; i < one.untreated.parts.size(); ++i)
        expect_same_polygon(a.frame, one.untreated.parts[i], b.frame, other.untreated.parts[i]);
}

inline void expect_same_segments(const FieldSurvey& a, const std::vector<TrackSegment>& one, const FieldSurvey& b,
                                 const std::vector<TrackSegment>& other) {
    ASSERT_EQ(one.size(), other.size());
    for (std::size_t s = 0; s < one.size(); ++s) {
        ASSERT_EQ(one[s].size(), other[s].size());
        for (std::size_t i = 0; i < one[s].size(); ++i) {
            expect_same_place(a.frame, one[s][i].at, b.frame, other[s][i].at);
            EXPECT_EQ(one[s][i].time, other[s][i].time);
        }
    }
}

}  // namespace plugside::testing_support
