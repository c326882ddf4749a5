#include "geo/write/geopackage_layers.h"

#include <cassert>

#include "core/words/words.h"
#include "geo/write/answer_layers.h"
#include "geo/write/layer_file.h"
#include "geo/write/plan_layers.h"
#include "geo/write/survey_layers.h"

namespace plugside {

tl::expected<void, Refusal> write_geopackage(const FieldSurvey& field, const Plan& plan, const std::filesystem::path& file,
                                             LengthUnits units, const Progress& progress, PrivateRows private_rows) {
    const Survey& survey = field.survey;
    assert(plan.revision == survey.revision && plan.mounds.size() == survey.mounds.size());
    const Progress judging{progress.stop, {}};
    const auto findings = answered_findings(survey, field.of_reading, judging);
    if (!findings)
        return tl::unexpected(Refusal{Refusal::Code::stopped, file.string(), "", Words::later("a request to stop"), ""});
    std::vector<LayerContent> layers;
    layers.push_back(mound_layer(survey, &plan, field.frame));
    layers.push_back(system_layer(plan, field.frame));
    layers.push_back(run_layer(survey, plan, field.frame));
    layers.push_back(probe_layer(survey, plan, field.frame, units));
    layers.push_back(set_layer(plan, field.frame));
    layers.push_back(walk_track_layer(survey, field.frame));
    for (LayerContent& layer : ground_layers(survey.ground, field.frame)) layers.push_back(std::move(layer));
    layers.push_back(area_layer("unwalked_areas", plan.unwalked, field.frame));
    layers.push_back(round_layer());
    layers.push_back(set_decision_layer(survey));
    layers.push_back(finding_layer(*findings, field.frame));
    layers.push_back(answer_layer(survey, field.frame));
    layers.push_back(fact_layer(survey, field.frame));
    layers.push_back(note_rule_layer(survey));
    layers.push_back(work_layer(survey, private_rows));
    layers.push_back(alternative_layer(survey, plan));
    layers.push_back(summary_layer(field, plan));
    return write_layer_file(file, layers, latest_time(survey), progress);
}

}  // namespace plugside
