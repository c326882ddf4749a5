#include "geo/write/survey_file.h"

#include <algorithm>

#include "geo/write/answer_layers.h"
#include "geo/write/layer_file.h"
#include "geo/write/plan_layers.h"
#include "geo/write/survey_layers.h"

namespace plugside {

namespace {

LayerContent judged_summary(const FieldSurvey& field, const SurveyJudged& judged) {
    LayerContent layer{"survey_summary",
                       ShapeKind::none,
                       {{"field_name", ColumnKind::text},
                        {"area_walked_m2", ColumnKind::number},
                        {"area_unwalked_m2", ColumnKind::number},
                        {"area_field_m2", ColumnKind::number},
                        {"mounds_recorded", ColumnKind::whole_number},
                        {"mounds_used", ColumnKind::whole_number},
                        {"interval", ColumnKind::number},
                        {"mounds_missed", ColumnKind::number},
                        {"mounds_missed_low", ColumnKind::number},
                        {"mounds_missed_high", ColumnKind::number},
                        {"mounds_unwalked", ColumnKind::number},
                        {"mounds_unwalked_low", ColumnKind::number},
                        {"mounds_unwalked_high", ColumnKind::number},
                        {"survey_revision", ColumnKind::whole_number},
                        {"plugside_version", ColumnKind::text}},
                       {}};
    const Survey& survey = field.survey;
    const auto used = std::count_if(survey.mounds.begin(), survey.mounds.end(),
                                    [&](const Mound& mound) { return !why_not_used(survey, mound); });
    const bool bounded = !survey.ground.boundary.empty();
    const auto& coverage = judged.coverage;
    Row row{{},
            {field.field_name, coverage ? Value(coverage->walked_area_m2) : Value(),
             coverage && bounded ? Value(coverage->unwalked_area_m2) : Value(),
             bounded ? Value(area_m2(survey.ground.boundary)) : Value(), static_cast<std::int64_t>(survey.mounds.size()),
             std::int64_t{used}}};
    if (const auto& unseen = judged.not_seen) {
        row.values.insert(row.values.end(), {unseen->interval, unseen->mounds_missed.expected, unseen->mounds_missed.low,
                                             unseen->mounds_missed.high});
        if (bounded)
            row.values.insert(row.values.end(),
                              {unseen->mounds_unwalked.expected, unseen->mounds_unwalked.low, unseen->mounds_unwalked.high});
    }
    row.values.resize(layer.columns.size() - 2);
    row.values.insert(row.values.end(), {static_cast<std::int64_t>(survey.revision), std::string(PLUGSIDE_VERSION)});
    layer.rows.push_back(std::move(row));
    return layer;
}

}  // namespace

tl::expected<void, Refusal> write_survey(const FieldSurvey& field, const SurveyJudged& judged,
                                         const std::filesystem::path& file, const Progress& progress, PrivateRows private_rows) {
    const Survey& survey = field.survey;
    const Coverage coverage = judged.coverage.value_or(Coverage{});
    std::vector<LayerContent> layers;
    layers.push_back(mound_layer(survey, nullptr, field.frame));
    layers.push_back(walk_track_layer(survey, field.frame));
    for (LayerContent& layer : ground_layers(survey.ground, field.frame)) layers.push_back(std::move(layer));
    layers.push_back(finding_layer(judged.findings, field.frame));
    layers.push_back(answer_layer(survey, field.frame));
    layers.push_back(fact_layer(survey, field.frame));
    layers.push_back(note_rule_layer(survey));
    layers.push_back(work_layer(survey, private_rows));
    layers.push_back(area_layer("walked_areas", coverage.walked, field.frame));
    layers.push_back(area_layer("unwalked_areas", coverage.unwalked, field.frame));
    layers.push_back(set_decision_layer(survey));
    layers.push_back(judged_summary(field, judged));
    return write_layer_file(file, layers, latest_time(survey), progress);
}

}  // namespace plugside
