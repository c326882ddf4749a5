#include "geo/write/truth_layers.h"

#include <algorithm>

#include "geo/write/layer_file.h"
#include "geo/write/survey_layers.h"

namespace plugside {

namespace {

LayerContent true_mound_layer(const SimulatedField& field, const LocalFrame& frame) {
    LayerContent layer{"true_mounds",
                       ShapeKind::point,
                       {{"plug_lon", ColumnKind::number},
                        {"plug_lat", ColumnKind::number},
                        {"fan_bearing", ColumnKind::number},
                        {"system_id", ColumnKind::whole_number},
                        {"mark", ColumnKind::text},
                        {"junction_lon", ColumnKind::number},
                        {"junction_lat", ColumnKind::number}},
                       {}};
    for (const TrueMound& mound : field.truth.mounds) {
        const GeographicPoint plug = frame.to_geographic(mound.plug);
        const GeographicPoint junction = frame.to_geographic(mound.run_junction);
        layer.rows.push_back(
            {plug,
             {plug.longitude_degrees, plug.latitude_degrees, frame.true_bearing(mound.fan, mound.plug).degrees(),
              id_of(mound.system), mound.seen_as ? Value(field.survey.mounds[*mound.seen_as].name) : Value(),
              junction.longitude_degrees, junction.latitude_degrees}});
    }
    return layer;
}

LayerContent true_run_layer(const FieldTruth& truth, const LocalFrame& frame) {
    LayerContent layer{
        "true_runs", ShapeKind::line, {{"system_id", ColumnKind::whole_number}, {"depth_m", ColumnKind::number}}, {}};
    for (const TrueRun& run : truth.runs)
        layer.rows.push_back({to_geographic(frame, run.line.vertices), {id_of(run.system), run.depth.value()}});
    return layer;
}

LayerContent truth_summary_layer(const FieldTruth& truth) {
    const auto seen = std::count_if(truth.mounds.begin(), truth.mounds.end(),
                                    [](const TrueMound& mound) { return mound.seen_as.has_value(); });
    LayerContent layer{"truth_summary",
                       ShapeKind::none,
                       {{"systems", ColumnKind::whole_number},
                        {"tunnel_diameter_m", ColumnKind::number},
                        {"mounds", ColumnKind::whole_number},
                        {"mounds_seen", ColumnKind::whole_number}},
                       {}};
    layer.rows.push_back({{},
                          {static_cast<std::int64_t>(truth.systems), truth.tunnel_diameter.value(),
                           static_cast<std::int64_t>(truth.mounds.size()), std::int64_t{seen}}});
    return layer;
}

}  // namespace

tl::expected<void, Refusal> write_truth(const SimulatedField& field, const LocalFrame& frame,
                                        const std::filesystem::path& file) {
    return write_layer_file(
        file, {true_mound_layer(field, frame), true_run_layer(field.truth, frame), truth_summary_layer(field.truth)},
        latest_time(field.survey));
}

}  // namespace plugside
