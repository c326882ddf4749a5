// Fields with sets for the tests of field sheets: made by hand, so that a test knows what has to stand on paper.
#pragma once

#include <QProcess>
#include <chrono>

#include "app/sheets/sheet_input.h"
#include "tests/app/example_plan.h"

namespace plugside {

// 1 October 2026, noon UTC.
inline UtcTime made_in_october() { return std::chrono::sys_days(std::chrono::year{2026} / 10 / 1) + std::chrono::hours(12); }

// The example field with a set between M001 and M002 besides: row across the tape 42 cm from the plug, 15 cm to its right.
inline ExampleField field_with_both_kinds() {
    ExampleField example = example_field();
    ProbeSite site;
    site.key = {ProbeKind::between_mounds, "M001", "M002"};
    site.from_mound = 0;
    site.to_mound = 1;
    site.axis = Bearing::degrees(90.0);
    site.ladder = {Metres::of(0.42), Metres::of(0.15), 90.0, Metres::of(0.46), Metres::of(0.057)};
    for (int step = 0; step <= 8; ++step)
        for (const double side : {-1.0, 1.0})
            if (step > 0 || side > 0.0) site.rungs.push_back(Metres::of(side * 0.057 * step));
    site.middle = example.field.survey.mounds[0].plug + LocalVector{0.42, -0.15};
    for (const Metres rung : site.rungs) site.rung_places.push_back(site.middle + LocalVector{0.0, -rung.value()});
    site.hit = Probability::of(0.931);
    site.expected_rungs = 5.2;
    site.run_offset = Metres::of(0.03);
    site.run_offset_sd = Metres::of(0.1);
    example.plan.probes.push_back(site);
    SetPoint set;
    set.probe = example.plan.probes.size() - 1;
    set.rank = set.visit_order = 4;
    set.cautions = {"building", "protected-species"};
    example.plan.sets.push_back(set);
    return example;
}

// So many plug-side sets, five to a row, 8 m apart.
inline ExampleField field_with_sets(int count) {
    ExampleField example = example_field();
    example.plan.sets.clear();
    example.plan.probes.clear();
    for (int i = 0; i < count; ++i) {
        const LocalPoint plug{8.0 * (i % 5), 30.0 + 8.0 * (i / 5)};
        Survey& survey = example.field.survey;
        survey.mounds.push_back(example_mound(("N" + std::to_string(i + 1)).c_str(), plug, 37.0 * i, Freshness::fresh));
        example.plan.mounds.push_back(example.plan.mounds.front());
        example.plan.probes.push_back(example_site(survey, survey.mounds.size() - 1));
        SetPoint set;
        set.probe = static_cast<std::size_t>(i);
        set.rank = set.visit_order = i + 1;
        if (i % 3 == 0) set.cautions = {"building", "well", "play-area"};
        example.plan.sets.push_back(set);
    }
    return example;
}

inline SheetInput sheets_of(const ExampleField& example, Language language = Language::english,
                            LengthUnits units = LengthUnits::feet_and_inches, Paper paper = Paper::letter) {
    return {example.field, example.plan, units, language, paper, {}, made_in_october()};
}

// What another program says on its standard output; nothing when it is missing or fails.
inline std::optional<QByteArray> output_of(const QString& program, const QStringList& words, int seconds = 120) {
    QProcess process;
    process.start(program, words);
    if (!process.waitForFinished(seconds * 1000) || process.exitCode() != 0) return std::nullopt;
    return process.readAllStandardOutput();
}

}  // namespace plugside
