#include "geo/write/survey_layers.h"

#include <algorithm>
#include <array>

#include "geo/read/numbers.h"

namespace plugside {

namespace {

Value text_or_null(const std::string& text) { return text.empty() ? Value() : Value(text); }

Value walk_id(const Survey& survey, const Mound& mound) {
    return mound.walk < survey.walks.size() ? Value(survey.walks[mound.walk].id) : Value();
}

// What was recorded of a mended mark; nulls of any other.
std::array<Value, 7> recorded_values(const Mound& mound, const LocalFrame& frame) {
    if (!mound.recorded) return {};
    const RecordedMark& recorded = *mound.recorded;
    const GeographicPoint at = frame.to_geographic(recorded.plug);
    return {at.longitude_degrees,
            at.latitude_degrees,
            recorded.fan ? Value(frame.true_bearing(*recorded.fan, recorded.plug).degrees()) : Value(),
            to_text(recorded.kind),
            to_text(recorded.freshness),
            recorded.position_sd.value(),
            value_or_null(recorded.set_aside_because)};
}

// `in_plan`: null where there is no plan.
Row mound_row(const Survey& survey, const Mound& mound, const MoundInPlan* in_plan, const LocalFrame& frame) {
    const std::optional<std::string> not_used = in_plan != nullptr ? in_plan->not_used_because : why_not_used(survey, mound);
    Row row{frame.to_geographic(mound.plug), {}};
    row.values = {mound.name, in_plan != nullptr && in_plan->system ? id_of(*in_plan->system) : Value(), to_text(mound.kind),
                  to_text(mound.freshness),
                  mound.fan ? Value(frame.true_bearing(*mound.fan, mound.plug).degrees()) : Value()};
    if (in_plan != nullptr && !not_used) {
        const GeographicPoint take_off = frame.to_geographic(in_plan->take_off);
        row.values.insert(row.values.end(),
                          {take_off.longitude_degrees, take_off.latitude_degrees, in_plan->take_off_sd_along.value(),
                           in_plan->take_off_sd_across.value(), in_plan->belongs.value()});
    } else {
        row.values.resize(row.values.size() + 5);
    }
    row.values.insert(row.values.end(), {walk_id(survey, mound), mound.position_sd.value(),
                                         mound.shared_sd ? Value(mound.shared_sd->value()) : Value(),
                                         text_or_null(mound.note), value_or_null(mound.time), std::int64_t{not_used ? 0 : 1},
                                         value_or_null(not_used), value_or_null(mound.picture)});
    const ReceiverFacts receiver = mound.receiver.value_or(ReceiverFacts{});
    row.values.insert(row.values.end(), {value_or_null(receiver.hdop),
                                         receiver.satellites ? Value(std::int64_t{*receiver.satellites}) : Value(),
                                         text_or_null(receiver.fix), value_or_null(receiver.accuracy_m)});
    row.values.push_back(value_or_null(mound.set_aside_because));
    const auto recorded = recorded_values(mound, frame);
    row.values.insert(row.values.end(), recorded.begin(), recorded.end());
    return row;
}

// ["2026-03-01T09:30:00Z",null]
std::string times_of(const TrackSegment& segment) {
    std::string list = "[";
    for (const TrackPoint& point : segment) {
        if (list.size() > 1) list += ',';
        if (point.time)
            list.append("\"").append(format_utc_time(*point.time)).append("\"");
        else
            list += "null";
    }
    return list + "]";
}

Shape track_shape(const TrackSegment& segment, const LocalFrame& frame) {
    if (segment.empty()) return {};
    GeographicLine line;
    for (const TrackPoint& point : segment) line.push_back(frame.to_geographic(point.at));
    if (line.size() == 1) line.push_back(line.front());  // a line has two vertices at least
    return std::vector<GeographicLine>{line};
}

}  // namespace

LayerContent mound_layer(const Survey& survey, const Plan* plan, const LocalFrame& frame) {
    LayerContent layer{"mounds",
                       ShapeKind::point,
                       {{"mound_id", ColumnKind::text},
                        {"system_id", ColumnKind::whole_number},
                        {"kind", ColumnKind::text},
                        {"freshness", ColumnKind::text},
                        {"fan_bearing", ColumnKind::number},
                        {"take_off_lon", ColumnKind::number},
                        {"take_off_lat", ColumnKind::number},
                        {"take_off_sd_along_m", ColumnKind::number},
                        {"take_off_sd_across_m", ColumnKind::number},
                        {"belongs", ColumnKind::number},
                        {"walk_id", ColumnKind::text},
                        {"position_sd_m", ColumnKind::number},
                        {"shared_sd_m", ColumnKind::number},
                        {"note", ColumnKind::text},
                        {"time", ColumnKind::time},
                        {"used", ColumnKind::whole_number},
                        {"not_used_because", ColumnKind::text},
                        {"picture", ColumnKind::text},
                        {"hdop", ColumnKind::number},
                        {"satellites", ColumnKind::whole_number},
                        {"fix", ColumnKind::text},
                        {"accuracy_m", ColumnKind::number},
                        {"set_aside_because", ColumnKind::text},
                        {"recorded_lon", ColumnKind::number},
                        {"recorded_lat", ColumnKind::number},
                        {"recorded_fan_bearing", ColumnKind::number},
                        {"recorded_kind", ColumnKind::text},
                        {"recorded_freshness", ColumnKind::text},
                        {"recorded_position_sd_m", ColumnKind::number},
                        {"recorded_set_aside_because", ColumnKind::text}},
                       {}};
    layer.rows.reserve(survey.mounds.size());
    for (std::size_t i = 0; i < survey.mounds.size(); ++i)
        layer.rows.push_back(mound_row(survey, survey.mounds[i], plan != nullptr ? &plan->mounds[i] : nullptr, frame));
    return layer;
}

LayerContent walk_track_layer(const Survey& survey, const LocalFrame& frame) {
    LayerContent layer{"walk_tracks",
                       ShapeKind::lines,
                       {{"walk_id", ColumnKind::text},
                        {"source", ColumnKind::text},
                        {"segment", ColumnKind::whole_number},
                        {"times", ColumnKind::text},
                        {"bearings_from", ColumnKind::text}},
                       {}};
    for (const Walk& walk : survey.walks) {
        const Value north = walk.bearings_from == North::not_told ? Value() : Value(to_text(walk.bearings_from));
        if (walk.segments.empty()) layer.rows.push_back({{}, {walk.id, walk.source, {}, {}, north}});
        for (std::size_t i = 0; i < walk.segments.size(); ++i)
            layer.rows.push_back(
                {track_shape(walk.segments[i], frame), {walk.id, walk.source, id_of(i), times_of(walk.segments[i]), north}});
    }
    return layer;
}

LayerContent set_decision_layer(const Survey& survey) {
    LayerContent layer{"set_decisions",
                       ShapeKind::none,
                       {{"probe_kind", ColumnKind::text},
                        {"from_mound", ColumnKind::text},
                        {"to_mound", ColumnKind::text},
                        {"decision", ColumnKind::text},
                        {"moved_along_m", ColumnKind::number},
                        {"moved_across_m", ColumnKind::number}},
                       {}};
    for (const SetDecision& decision : survey.decisions) {
        const auto& moved = decision.moved_to;
        layer.rows.push_back(
            {{},
             {to_text(decision.probe.kind), decision.probe.from_mound, text_or_null(decision.probe.to_mound),
              to_text(decision.choice), moved ? Value(moved->along.value()) : Value(),
              moved ? Value(moved->across.value()) : Value()}});
    }
    return layer;
}

namespace {

LayerContent gap_layer(const char* name, const std::vector<Gap>& gaps, const LocalFrame& frame) {
    LayerContent layer{name, ShapeKind::point, {{"name", ColumnKind::text}, {"width_m", ColumnKind::number}}, {}};
    for (const Gap& gap : gaps)
        layer.rows.push_back({frame.to_geographic(gap.at), {text_or_null(gap.name), gap.width.value()}});
    return layer;
}

}  // namespace

std::vector<LayerContent> ground_layers(const Ground& ground, const LocalFrame& frame) {
    LayerContent boundaries{"field_boundaries", ShapeKind::polygons, {{"area_m2", ColumnKind::number}}, {}};
    if (!ground.boundary.empty())
        boundaries.rows.push_back({to_geographic(frame, ground.boundary), {area_m2(ground.boundary)}});
    LayerContent barriers{"barriers", ShapeKind::lines, {{"name", ColumnKind::text}}, {}};
    for (const Barrier& barrier : ground.barriers)
        barriers.rows.push_back(
            {std::vector<GeographicLine>{to_geographic(frame, barrier.line.vertices)}, {text_or_null(barrier.name)}});
    LayerContent keep_clear{"keep_clear_areas",
                            ShapeKind::polygons,
                            {{"name", ColumnKind::text}, {"reason", ColumnKind::text}, {"kind", ColumnKind::text}},
                            {}};
    for (const KeepClearArea& area : ground.keep_clear)
        keep_clear.rows.push_back({std::vector<GeographicPolygon>{to_geographic(frame, area.area)},
                                   {text_or_null(area.name), text_or_null(area.reason), to_text(area.kind)}});
    LayerContent untreated{"untreated_areas", ShapeKind::polygons, {{"area_m2", ColumnKind::number}}, {}};
    if (!ground.untreated.empty())
        untreated.rows.push_back({to_geographic(frame, ground.untreated), {area_m2(ground.untreated)}});
    std::vector<LayerContent> layers;
    layers.push_back(std::move(boundaries));
    layers.push_back(std::move(barriers));
    layers.push_back(std::move(keep_clear));
    layers.push_back(gap_layer("crossings", ground.crossings, frame));
    layers.push_back(gap_layer("gates", ground.gates, frame));
    layers.push_back(std::move(untreated));
    return layers;
}

UtcTime latest_time(const Survey& survey) {
    UtcTime latest{};
    for (const Mound& mound : survey.mounds) latest = std::max(latest, mound.time.value_or(latest));
    for (const Walk& walk : survey.walks)
        for (const TrackSegment& segment : walk.segments)
            for (const TrackPoint& point : segment) latest = std::max(latest, point.time.value_or(latest));
    return latest;
}

}  // namespace plugside
