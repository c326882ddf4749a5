#include "geo/write/shown_layers.h"

#include <string_view>

#include "geo/read/numbers.h"
#include "geo/write/gpx_text.h"
#include "geo/write/plan_layers.h"
#include "geo/write/set_words.h"
#include "geo/write/survey_layers.h"

namespace plugside {

namespace {

// Only for this program's reading back.
bool only_read_back(std::string_view column) {
    return column.starts_with("recorded_") || column == "set_aside_because" || column == "times";
}

bool is_private(std::string_view column) { return column == "note" || column == "picture" || column == "source"; }

LayerContent without(LayerContent layer, PrivateRows private_rows) {
    for (std::size_t i = layer.columns.size(); i-- > 0;) {
        const std::string_view name = layer.columns[i].name;
        if (!only_read_back(name) && !(private_rows == PrivateRows::left_out && is_private(name))) continue;
        const auto place = static_cast<std::ptrdiff_t>(i);
        layer.columns.erase(layer.columns.begin() + place);
        for (Row& row : layer.rows) row.values.erase(row.values.begin() + place);
    }
    return layer;
}

LayerContent told_set_layer(const FieldSurvey& field, const Plan& plan, LengthUnits units) {
    LayerContent layer = set_layer(plan, field.frame);
    layer.columns.push_back({"name", ColumnKind::text});
    layer.columns.push_back({"hit_probability", ColumnKind::number});
    layer.columns.push_back({"instruction", ColumnKind::text});
    for (std::size_t i = 0; i < plan.sets.size(); ++i) {
        auto& values = layer.rows[i].values;
        values.emplace_back(set_name(plan.sets[i], plan));
        values.emplace_back(plan.probes[plan.sets[i].probe].hit.value());
        values.emplace_back(set_words(plan.sets[i], field.survey, plan, units));
    }
    return layer;
}

}  // namespace

LayerContent with_plain_values(LayerContent layer) {
    for (Column& column : layer.columns)
        if (column.kind == ColumnKind::time) column.kind = ColumnKind::text;
    for (Row& row : layer.rows)
        for (Value& value : row.values) {
            if (const auto* time = std::get_if<UtcTime>(&value)) value = format_utc_time(*time);
            if (auto* text = std::get_if<std::string>(&value)) *text = gpx_text::xml_characters(*text);
        }
    return layer;
}

std::vector<LayerContent> shown_layers(const FieldSurvey& field, const Plan& plan, LengthUnits units,
                                       PrivateRows private_rows) {
    const Survey& survey = field.survey;
    std::vector<LayerContent> layers;
    layers.push_back(told_set_layer(field, plan, units));
    layers.push_back(probe_layer(survey, plan, field.frame, units));
    layers.push_back(mound_layer(survey, &plan, field.frame));
    layers.push_back(system_layer(plan, field.frame));
    layers.push_back(run_layer(survey, plan, field.frame));
    layers.push_back(walk_track_layer(survey, field.frame));
    for (LayerContent& layer : ground_layers(survey.ground, field.frame)) layers.push_back(std::move(layer));
    layers.push_back(area_layer("unwalked_areas", plan.unwalked, field.frame));
    for (LayerContent& layer : layers) layer = with_plain_values(without(std::move(layer), private_rows));
    return layers;
}

}  // namespace plugside
