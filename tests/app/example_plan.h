// A small field made by hand, with every kind of thing the painter and the slip have to show. Nothing of it was computed: it
// serves tests that want to know exactly what is there.
#pragma once

#include "core/plan/plan.h"
#include "geo/read/field_survey.h"

namespace plugside {

struct ExampleField {
    FieldSurvey field;
    Plan plan;
};

inline Mound example_mound(const char* name, LocalPoint plug, std::optional<double> fan, Freshness freshness) {
    Mound mound;
    mound.name = name;
    mound.plug = plug;
    if (fan) mound.fan = Bearing::degrees(*fan);
    mound.freshness = freshness;
    return mound;
}

inline MainRun example_run(std::size_t from, std::size_t to, LocalPoint a, LocalPoint b, double chance) {
    return {0, from, to, Polyline{{a, midpoint(a, b), b}}, {0.1, 0.3, 0.1}, Probability::of(chance)};
}

inline ProbeSite example_site(const Survey& survey, std::size_t mound) {
    ProbeSite site;
    site.key = {ProbeKind::plug_side, survey.mounds[mound].name, ""};
    site.from_mound = mound;
    site.axis = survey.mounds[mound].fan.value_or(Bearing()).reversed();
    site.ladder = {Metres::of(0.35), Metres::of(0.0), 0.0, Metres::of(0.2), Metres::of(0.05)};
    for (const double rung : {0.0, 0.05, -0.05, 0.1, -0.1, 0.15, -0.15, 0.2, -0.2}) site.rungs.push_back(Metres::of(rung));
    site.middle = survey.mounds[mound].plug + site.axis.unit() * 0.35;
    for (const Metres rung : site.rungs) site.rung_places.push_back(site.middle + site.axis.unit() * rung.value());
    site.hit = Probability::of(0.97);
    site.expected_rungs = 3.1;
    site.run_offset_sd = Metres::of(0.08);
    return site;
}

// Six mounds in a row 10 m apart from west to east, fans to the north, east, south, west, and two without one; a mole's
// sign. Runs along the row: likely (.95), doubtful (.65), unlikely (.3). Three sets.
inline ExampleField example_field() {
    ExampleField example;
    Survey& survey = example.field.survey;
    example.field.field_name = "Example field";
    example.field.frame = LocalFrame::centred_on({-104.9, 41.0});
    survey.walks.push_back({"walk 1", "example.gpx", {{{{-30.0, -8.0}, {}}, {{30.0, -8.0}, {}}}}});
    survey.mounds = {example_mound("M001", {-25.0, 0.0}, 0.0, Freshness::fresh),
                     example_mound("M002", {-15.0, 0.0}, 90.0, Freshness::fresh),
                     example_mound("M003", {-5.0, 0.0}, 180.0, Freshness::older),
                     example_mound("M004", {5.0, 0.0}, 270.0, Freshness::fresh),
                     example_mound("M005", {15.0, 0.0}, std::nullopt, Freshness::older),
                     example_mound("M006", {25.0, 0.0}, std::nullopt, Freshness::crushed),
                     example_mound("X001", {0.0, 12.0}, std::nullopt, Freshness::unknown)};
    survey.mounds.back().kind = SignKind::mole;
    Plan& plan = example.plan;
    plan.estimate.low = 1;
    plan.estimate.high = 3;
    plan.estimate.most_likely = 2;
    plan.mounds.resize(survey.mounds.size());
    for (std::size_t i = 0; i < 6; ++i) plan.mounds[i].system = 0;
    plan.mounds.back().not_used_because = "a mole's sign";
    BurrowSystem system;
    system.letter = "A";
    system.mounds = {0, 1, 2, 3, 4, 5};
    system.outline.parts = {{Ring{{{-27.0, -4.0}, {27.0, -4.0}, {27.0, 4.0}, {-27.0, 4.0}}}, {}}};
    system.label_at = {0.0, 3.0};
    system.run_length = Metres::of(40.0);
    plan.systems.push_back(system);
    plan.runs = {example_run(0, 1, {-25.0, -3.0}, {-15.0, -3.0}, 0.95), example_run(2, 3, {-5.0, -3.0}, {5.0, -3.0}, 0.65),
                 example_run(4, 5, {15.0, -3.0}, {25.0, -3.0}, 0.3)};
    for (const std::size_t mound : {std::size_t{0}, std::size_t{1}, std::size_t{3}}) {
        plan.probes.push_back(example_site(survey, mound));
        SetPoint set;
        set.probe = plan.probes.size() - 1;
        set.rank = set.visit_order = static_cast<int>(plan.probes.size());
        plan.sets.push_back(set);
    }
    plan.area_walked_m2 = 600.0;
    return example;
}

}  // namespace plugside
