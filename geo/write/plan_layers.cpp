#include "geo/write/plan_layers.h"

#include <algorithm>

#include "core/plan/alternative_words.h"
#include "core/probing/instruction.h"
#include "core/words/words.h"

namespace plugside {

namespace {

Value mound_name_or_null(const Survey& survey, const std::optional<std::size_t>& mound) {
    return mound ? Value(survey.mounds[*mound].name) : Value();
}

std::string joined(const std::vector<std::string>& parts, const char* between) {
    std::string text;
    for (const std::string& part : parts) text.append(text.empty() ? "" : between).append(part);
    return text;
}

std::vector<GeographicPolygon> filled(std::vector<GeographicPolygon> shape) {
    std::erase_if(shape, [](const GeographicPolygon& part) { return part.rings.front().size() < 3; });
    return shape;
}

}  // namespace

LayerContent system_layer(const Plan& plan, const LocalFrame& frame) {
    LayerContent layer{"burrow_systems",
                       ShapeKind::polygons,
                       {{"system_id", ColumnKind::whole_number},
                        {"letter", ColumnKind::text},
                        {"mound_count", ColumnKind::whole_number},
                        {"probability_single", ColumnKind::number},
                        {"area_m2", ColumnKind::number},
                        {"run_length_m", ColumnKind::number},
                        {"freshest", ColumnKind::text}},
                       {}};
    for (std::size_t i = 0; i < plan.systems.size(); ++i) {
        const BurrowSystem& system = plan.systems[i];
        layer.rows.push_back(
            {filled(to_geographic(frame, system.outline)),
             {id_of(i), system.letter, static_cast<std::int64_t>(system.mounds.size()), system.single.value(),
              area_m2(system.outline), system.run_length.value(), to_text(system.freshest)}});
    }
    return layer;
}

LayerContent run_layer(const Survey& survey, const Plan& plan, const LocalFrame& frame) {
    LayerContent layer{"main_runs",
                       ShapeKind::line,
                       {{"run_id", ColumnKind::whole_number},
                        {"system_id", ColumnKind::whole_number},
                        {"from_mound", ColumnKind::text},
                        {"to_mound", ColumnKind::text},
                        {"probability", ColumnKind::number},
                        {"sd_m", ColumnKind::number}},
                       {}};
    for (std::size_t i = 0; i < plan.runs.size(); ++i) {
        const MainRun& run = plan.runs[i];
        const auto widest = std::max_element(run.sd_m.begin(), run.sd_m.end());
        layer.rows.push_back(
            {to_geographic(frame, run.line.vertices),
             {id_of(i), id_of(run.system), survey.mounds[run.from_mound].name, survey.mounds[run.to_mound].name,
              run.probability.value(), widest == run.sd_m.end() ? Value() : Value(*widest)}});
    }
    return layer;
}

LayerContent probe_layer(const Survey& survey, const Plan& plan, const LocalFrame& frame, LengthUnits units) {
    LayerContent layer{"probe_points",
                       ShapeKind::point,
                       {{"probe_id", ColumnKind::whole_number},
                        {"system_id", ColumnKind::whole_number},
                        {"kind", ColumnKind::text},
                        {"from_mound", ColumnKind::text},
                        {"to_mound", ColumnKind::text},
                        {"along_m", ColumnKind::number},
                        {"across_m", ColumnKind::number},
                        {"axis_bearing", ColumnKind::number},
                        {"ladder_angle_deg", ColumnKind::number},
                        {"ladder_half_m", ColumnKind::number},
                        {"step_m", ColumnKind::number},
                        {"hit_probability", ColumnKind::number},
                        {"expected_rungs", ColumnKind::number},
                        {"instruction", ColumnKind::text}},
                       {}};
    layer.rows.reserve(plan.probes.size());
    for (std::size_t i = 0; i < plan.probes.size(); ++i) {
        const ProbeSite& site = plan.probes[i];
        const LocalPoint origin = survey.mounds[site.from_mound].plug;
        layer.rows.push_back(
            {frame.to_geographic(site.middle),
             {id_of(i), id_of(site.system), to_text(site.key.kind), survey.mounds[site.from_mound].name,
              mound_name_or_null(survey, site.to_mound), site.ladder.along.value(), site.ladder.across.value(),
              frame.true_bearing(site.axis, origin).degrees(), site.ladder.angle_degrees, site.ladder.half_length.value(),
              site.ladder.step.value(), site.hit.value(), site.expected_rungs, instruction(site, survey, units)}});
    }
    return layer;
}

LayerContent set_layer(const Plan& plan, const LocalFrame& frame) {
    LayerContent layer{"set_points",
                       ShapeKind::point,
                       {{"set_id", ColumnKind::whole_number},
                        {"probe_id", ColumnKind::whole_number},
                        {"system_id", ColumnKind::whole_number},
                        {"method", ColumnKind::text},
                        {"rank", ColumnKind::whole_number},
                        {"visit_order", ColumnKind::whole_number},
                        {"decision", ColumnKind::text},
                        {"cautions", ColumnKind::text},
                        {"probe_kind", ColumnKind::text},
                        {"from_mound", ColumnKind::text},
                        {"to_mound", ColumnKind::text},
                        {"along_m", ColumnKind::number},
                        {"across_m", ColumnKind::number}},
                       {}};
    for (std::size_t i = 0; i < plan.sets.size(); ++i) {
        const SetPoint& set = plan.sets[i];
        const ProbeSite& site = plan.probes[set.probe];
        layer.rows.push_back(
            {frame.to_geographic(site.middle),
             {id_of(i), id_of(set.probe), id_of(site.system), Words::shown(set.method), std::int64_t{set.rank},
              std::int64_t{set.visit_order}, to_text(set.choice), joined(set.cautions, ", "), to_text(site.key.kind),
              site.key.from_mound, site.key.to_mound.empty() ? Value() : Value(site.key.to_mound), site.ladder.along.value(),
              site.ladder.across.value()}});
    }
    return layer;
}

LayerContent alternative_layer(const Survey& survey, const Plan& plan) {
    LayerContent layer{"system_alternatives",
                       ShapeKind::none,
                       {{"kind", ColumnKind::text},
                        {"system_id", ColumnKind::whole_number},
                        {"other_system_id", ColumnKind::whole_number},
                        {"mounds", ColumnKind::text},
                        {"probability", ColumnKind::number},
                        {"probability_kept", ColumnKind::number},
                        {"words", ColumnKind::text}},
                       {}};
    for (const JoinedSystems& joined : plan.alternatives.joined)
        layer.rows.push_back({{},
                              {std::string("one animal"), id_of(joined.first), id_of(joined.second), Value(),
                               joined.one.value(), Value(), words_for(joined, plan)}});
    for (const SplitSystem& split : plan.alternatives.split) {
        std::vector<std::string> names;
        for (const std::size_t mound : split.apart) names.push_back(survey.mounds[mound].name);
        layer.rows.push_back({{},
                              {std::string("two animals"), id_of(split.system), Value(), joined(names, ", "),
                               split.two.value(), Value(), words_for(split, survey, plan)}});
    }
    for (const DoubtfulMound& doubtful : plan.alternatives.doubtful)
        layer.rows.push_back(
            {{},
             {std::string("doubtful mound"), id_of(doubtful.system),
              doubtful.runner_up ? Value(id_of(*doubtful.runner_up)) : Value(), survey.mounds[doubtful.mound].name,
              doubtful.runner_up ? Value(doubtful.of_runner_up.value()) : Value(), doubtful.belongs.value(),
              words_for(doubtful, survey, plan)}});
    return layer;
}

LayerContent area_layer(const char* name, const MultiPolygon& area, const LocalFrame& frame) {
    LayerContent layer{name, ShapeKind::polygons, {{"area_m2", ColumnKind::number}}, {}};
    for (const Polygon& part : area.parts) {
        auto shape = filled({to_geographic(frame, part)});
        if (!shape.empty()) layer.rows.push_back({std::move(shape), {area_m2(part)}});
    }
    return layer;
}

LayerContent round_layer() {
    return {"rounds",
            ShapeKind::none,
            {{"round_id", ColumnKind::whole_number},
             {"set_id", ColumnKind::whole_number},
             {"checked_at", ColumnKind::time},
             {"found", ColumnKind::text},
             {"note", ColumnKind::text}},
            {}};
}

LayerContent summary_layer(const FieldSurvey& field, const Plan& plan) {
    LayerContent layer{"survey_summary",
                       ShapeKind::none,
                       {{"field_name", ColumnKind::text},
                        {"systems_expected", ColumnKind::number},
                        {"systems_most_likely", ColumnKind::whole_number},
                        {"systems_low", ColumnKind::whole_number},
                        {"systems_high", ColumnKind::whole_number},
                        {"interval", ColumnKind::number},
                        {"area_walked_m2", ColumnKind::number},
                        {"area_field_m2", ColumnKind::number},
                        {"mounds_recorded", ColumnKind::whole_number},
                        {"mounds_used", ColumnKind::whole_number},
                        {"link_length_m", ColumnKind::number},
                        {"mounds_per_system", ColumnKind::number},
                        {"notices", ColumnKind::text},
                        {"survey_revision", ColumnKind::whole_number},
                        {"plugside_version", ColumnKind::text}},
                       {}};
    const SystemsEstimate& estimate = plan.estimate;
    const auto used = std::count_if(plan.mounds.begin(), plan.mounds.end(),
                                    [](const MoundInPlan& mound) { return !mound.not_used_because; });
    layer.rows.push_back(
        {{},
         {field.field_name, estimate.expected, std::int64_t{estimate.most_likely}, std::int64_t{estimate.low},
          std::int64_t{estimate.high}, estimate.interval, value_or_null(plan.area_walked_m2),
          value_or_null(plan.area_field_m2), static_cast<std::int64_t>(field.survey.mounds.size()), std::int64_t{used},
          estimate.link_length.value(), estimate.mounds_per_system, joined(plan.notices, "\n"),
          static_cast<std::int64_t>(field.survey.revision), std::string(PLUGSIDE_VERSION)}});
    return layer;
}

}  // namespace plugside
