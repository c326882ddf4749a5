#include "geo/write/answer_layers.h"

#include <string>
#include <unordered_map>

#include "geo/read/json_lists.h"

namespace plugside {

namespace {

Value text_or_null(const std::string& text) { return text.empty() ? Value() : Value(text); }

std::string json_of_places(const std::vector<LocalPoint>& places, const LocalFrame& frame) {
    std::vector<GeographicPoint> geographic;
    for (const LocalPoint place : places) geographic.push_back(frame.to_geographic(place));
    return json_of(geographic);
}

using PlacesByName = std::unordered_map<std::string, LocalPoint>;

// Where a mend's bearing is taken: at its first mark; at the middle of the plane for one that the survey does not have.
LocalPoint place_of_bearing(const Mend& mend, const PlacesByName& places) {
    const auto found = mend.marks.empty() ? places.end() : places.find(mend.marks.front());
    return found == places.end() ? LocalPoint{} : found->second;
}

Row answer_row(const MendAnswer& answer, const PlacesByName& places, const LocalFrame& frame) {
    const Mend& mend = answer.mend;
    const LocalPoint at = place_of_bearing(mend, places);
    return {{},
            {answer.finding, to_text(answer.answer), to_text(mend.kind), json_of(mend.marks),
             mend.to.empty() ? Value() : Value(json_of_places(mend.to, frame)),
             mend.fan ? Value(frame.true_bearing(*mend.fan, at).degrees()) : Value(), mend.turn_degrees,
             mend.sign ? Value(to_text(*mend.sign)) : Value(), mend.freshness ? Value(to_text(*mend.freshness)) : Value(),
             text_or_null(mend.because), mend.position_sd ? Value(mend.position_sd->value()) : Value()}};
}

}  // namespace

LayerContent finding_layer(const std::vector<AnsweredFinding>& findings, const LocalFrame& frame) {
    LayerContent layer{"findings",
                       ShapeKind::point,
                       {{"finding_id", ColumnKind::text},
                        {"kind", ColumnKind::text},
                        {"marks", ColumnKind::text},
                        {"found", ColumnKind::text},
                        {"why", ColumnKind::text},
                        {"proposed", ColumnKind::text},
                        {"probability", ColumnKind::number},
                        {"answer", ColumnKind::text}},
                       {}};
    layer.rows.reserve(findings.size());
    for (const auto& [finding, answer] : findings)
        layer.rows.push_back(
            {frame.to_geographic(finding.at),
             {finding.id, to_text(finding.kind), json_of(finding.marks), finding.found, text_or_null(finding.why),
              text_or_null(finding.proposed), finding.sure.value(), answer ? Value(to_text(*answer)) : Value()}});
    return layer;
}

LayerContent fact_layer(const Survey& survey, const LocalFrame& frame) {
    LayerContent layer{"known_facts",
                       ShapeKind::none,
                       {{"kind", ColumnKind::text},
                        {"marks", ColumnKind::text},
                        {"line", ColumnKind::text},
                        {"log_strength", ColumnKind::number},
                        {"said_by", ColumnKind::text},
                        {"said_at", ColumnKind::number}},
                       {}};
    for (const KnownFact& fact : survey.known)
        layer.rows.push_back(
            {{},
             {to_text(fact.kind), fact.marks.empty() ? Value() : Value(json_of(fact.marks)),
              fact.line ? Value(json_of_places(fact.line->vertices, frame)) : Value(),
              fact.log_strength ? Value(*fact.log_strength) : Value(), text_or_null(fact.said_by),
              fact.said_at ? Value(static_cast<double>(fact.said_at->time_since_epoch().count()) / 1000.0) : Value()}});
    return layer;
}

LayerContent answer_layer(const Survey& survey, const LocalFrame& frame) {
    LayerContent layer{"finding_answers",
                       ShapeKind::none,
                       {{"finding_id", ColumnKind::text},
                        {"answer", ColumnKind::text},
                        {"mend", ColumnKind::text},
                        {"marks", ColumnKind::text},
                        {"to_places", ColumnKind::text},
                        {"fan_bearing", ColumnKind::number},
                        {"turn_degrees", ColumnKind::number},
                        {"sign", ColumnKind::text},
                        {"freshness", ColumnKind::text},
                        {"because", ColumnKind::text},
                        {"position_sd_m", ColumnKind::number}},
                       {}};
    if (survey.answers.empty()) return layer;
    PlacesByName places;
    for (const Mound& mound : survey.mounds) places.emplace(mound.name, mound.plug);
    layer.rows.reserve(survey.answers.size());
    for (const MendAnswer& answer : survey.answers) layer.rows.push_back(answer_row(answer, places, frame));
    return layer;
}

LayerContent note_rule_layer(const Survey& survey) {
    LayerContent layer{"note_rules",
                       ShapeKind::none,
                       {{"walk_id", ColumnKind::text},
                        {"words", ColumnKind::text},
                        {"means", ColumnKind::text},
                        {"mark", ColumnKind::text}},
                       {}};
    for (const NoteRule& rule : survey.note_rules)
        layer.rows.push_back({{}, {text_or_null(rule.walk), rule.words, text_or_null(rule.means), text_or_null(rule.mark)}});
    return layer;
}

}  // namespace plugside
