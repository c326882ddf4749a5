#include "geo/read/plan_rows.h"

#include <algorithm>
#include <cmath>

#include "core/survey/survey.h"
#include "core/words/words.h"
#include "geo/read/answer_rows.h"
#include "geo/read/numbers.h"

namespace plugside {

namespace {

// The walk of that name, made if there is none.
std::size_t walk_named(NamedWalks& walks, const std::string& id, const std::string& source) {
    const auto found = std::find(walks.ids.begin(), walks.ids.end(), id);
    if (found != walks.ids.end()) return static_cast<std::size_t>(found - walks.ids.begin());
    walks.ids.push_back(id);
    walks.walks.push_back({source, {}, {}});
    walks.walks.back().id = id;
    return walks.ids.size() - 1;
}

// ["2026-03-01T09:30:00Z",null]: exactly what the writer of walk_tracks makes; nothing for anything else.
std::optional<std::vector<std::optional<UtcTime>>> times_in(std::string_view list) {
    if (list.size() < 2 || list.front() != '[' || list.back() != ']') return std::nullopt;
    list = list.substr(1, list.size() - 2);
    std::vector<std::optional<UtcTime>> times;
    while (!list.empty()) {
        const auto comma = std::min(list.find(','), list.size());
        const std::string_view entry = trimmed(list.substr(0, comma));
        if (entry == "null") {
            times.emplace_back();
        } else {
            if (entry.size() < 2 || entry.front() != '"' || entry.back() != '"') return std::nullopt;
            const auto time = parse_utc_time(entry.substr(1, entry.size() - 2));
            if (!time) return std::nullopt;
            times.emplace_back(time);
        }
        list.remove_prefix(std::min(comma + 1, list.size()));
    }
    return times;
}

std::vector<GeographicTrackPoint> segment_of(const GeographicLine& line, const std::string& times_text, const ReadRow& row,
                                             FindingList& findings) {
    std::vector<GeographicTrackPoint> segment;
    for (const GeographicPoint place : line) segment.push_back({place, std::nullopt});
    if (times_text.empty()) return segment;
    const auto times = times_in(times_text);
    const bool doubled = times && times->size() == 1 && line.size() == 2 && line[0] == line[1];
    if (doubled) segment.pop_back();
    if (!times || times->size() != segment.size()) {
        findings.add(row.place, Words::later("the times do not fit the track's points; the track is read without times"));
        return segment;
    }
    for (std::size_t i = 0; i < segment.size(); ++i) segment[i].time = (*times)[i];
    return segment;
}

Refusal refused(const std::string& file, const ReadRow& row, Refusal::Code code, const std::string& found,
                const std::string& expected) {
    return {code, file, row.place, found, expected};
}

void read_words(const ReadLayer& layer, const ReadRow& row, Mound& mound, FindingList& findings) {
    const std::string kind = text_of(layer.value(row, "kind"));
    if (const auto known = sign_kind_from_text(kind))
        mound.kind = *known;
    else if (!kind.empty())
        findings.add(row.place,
                     Words::tell("the kind {1} is not known; taken as a gopher mound", {quoted_for_display(kind)}));
    const std::string freshness = text_of(layer.value(row, "freshness"));
    if (const auto known = freshness_from_text(freshness))
        mound.freshness = *known;
    else if (!freshness.empty())
        findings.add(row.place, Words::tell("the freshness {1} is not known", {quoted_for_display(freshness)}));
}

// Facts that are none are passed over: they only help to judge a place.
void read_receiver(const ReadLayer& layer, const ReadRow& row, Mound& mound) {
    const auto number = [&](const char* column) -> std::optional<double> {
        const auto value = number_of(layer.value(row, column));
        if (!value || !std::isfinite(*value) || *value < 0.0) return std::nullopt;
        return value;
    };
    ReceiverFacts facts{number("hdop"), std::nullopt, text_of(layer.value(row, "fix")), number("accuracy_m")};
    constexpr double most_satellites = 1000.0;
    if (const auto count = number("satellites"); count && *count <= most_satellites)
        facts.satellites = static_cast<int>(*count);
    if (facts != ReceiverFacts{}) mound.receiver = std::move(facts);
}

// What a person set aside stays aside; what the ground and the kind decide is decided anew. Files of earlier versions have the
// reason among all others alone.
std::optional<std::string> set_aside_in(const ReadLayer& layer, const ReadRow& row, SignKind kind) {
    const bool own_column =
        std::find(layer.columns.begin(), layer.columns.end(), "set_aside_because") != layer.columns.end();
    const std::string reason = text_of(layer.value(row, own_column ? "set_aside_because" : "not_used_because"));
    if (reason.empty() || (!own_column && (reason == outside_the_field || !is_gopher_sign(kind)))) return std::nullopt;
    return reason;
}

tl::expected<GeographicMark, Refusal> mark_of(const ReadLayer& layer, const ReadRow& row, const std::string& file,
                                              FindingList& findings) {
    if (row.shape.points.size() != 1)
        return tl::unexpected(refused(file, row, Refusal::Code::malformed, Words::later("a mound that is not one point"),
                                      Words::later("one point")));
    GeographicMark mark;
    mark.at = row.shape.points.front();
    mark.file = file;
    mark.place = row.place;
    mark.mound.name = text_of(layer.value(row, "mound_id"));
    mark.mound.note = text_of(layer.value(row, "note"));
    read_words(layer, row, mark.mound, findings);
    if (const auto* time = std::get_if<UtcTime>(&layer.value(row, "time"))) mark.mound.time = *time;
    if (const auto fan = number_of(layer.value(row, "fan_bearing"))) {
        if (!(*fan >= 0.0 && *fan <= 360.0))
            return tl::unexpected(refused(file, row, Refusal::Code::out_of_range,
                                          Words::tell("fan_bearing {1}", {std::to_string(*fan)}),
                                          Words::later("degrees from 0 to 360")));
        mark.fan_degrees = *fan;
    }
    if (const auto sd = number_of(layer.value(row, "position_sd_m"))) {
        if (!(*sd > 0.0) || !std::isfinite(*sd))
            return tl::unexpected(refused(file, row, Refusal::Code::out_of_range,
                                          Words::tell("position_sd_m {1}", {std::to_string(*sd)}),
                                          Words::later("metres above 0")));
        mark.mound.position_sd = Metres::of(*sd);
    }
    if (const auto sd = number_of(layer.value(row, "shared_sd_m"))) {
        if (!(*sd > 0.0) || !std::isfinite(*sd))
            return tl::unexpected(refused(file, row, Refusal::Code::out_of_range,
                                          Words::tell("shared_sd_m {1}", {std::to_string(*sd)}),
                                          Words::later("metres above 0")));
        mark.mound.shared_sd = Metres::of(*sd);
    }
    if (const std::string picture = text_of(layer.value(row, "picture")); !picture.empty())
        mark.mound.picture = std::filesystem::path(picture).filename().string();
    read_receiver(layer, row, mark.mound);
    mark.mound.set_aside_because = set_aside_in(layer, row, mark.mound.kind);
    mark.record = record_of(layer, row, mark, findings);
    return mark;
}

void read_north(const ReadLayer& layer, const ReadRow& row, GeographicWalk& walk, FindingList& findings) {
    const std::string told = text_of(layer.value(row, "bearings_from"));
    if (told.empty()) return;
    if (const auto north = north_from_text(told))
        walk.bearings_from = *north;
    else
        findings.add(row.place,
                     Words::tell("the north {1} is not known; the bearings are taken as true", {quoted_for_display(told)}));
}

std::optional<ProbeKey> probe_key(const ReadLayer& layer, const ReadRow& row) {
    const auto kind = probe_kind_from_text(text_of(layer.value(row, "probe_kind")));
    const std::string from = text_of(layer.value(row, "from_mound"));
    if (!kind || from.empty()) return std::nullopt;
    return ProbeKey{*kind, from, text_of(layer.value(row, "to_mound"))};
}

std::optional<LadderPlace> ladder_place(const ReadLayer& layer, const ReadRow& row, const char* along, const char* across) {
    const auto a = number_of(layer.value(row, along));
    const auto b = number_of(layer.value(row, across));
    if (!a || !b || !std::isfinite(*a) || !std::isfinite(*b)) return std::nullopt;
    return LadderPlace{Metres::of(*a), Metres::of(*b)};
}

// What the row says of its site; nothing, with a finding, when it cannot be told.
std::optional<SetDecision> decision_in(const ReadLayer& layer, const ReadRow& row, const char* along, const char* across,
                                       FindingList& findings) {
    const auto key = probe_key(layer, row);
    const auto choice = set_choice_from_text(text_of(layer.value(row, "decision")));
    if (!key || !choice) {
        findings.add(row.place, Words::later("a decision was not understood; the site counts as proposed"));
        return std::nullopt;
    }
    SetDecision decision{*key, *choice, std::nullopt};
    if (*choice == SetChoice::moved) decision.moved_to = ladder_place(layer, row, along, across);
    return decision;
}

}  // namespace

std::string text_of(const Value& value) {
    const auto* text = std::get_if<std::string>(&value);
    if (text != nullptr) return *text;
    const auto* whole = std::get_if<std::int64_t>(&value);  // a column of names that are all numbers
    return whole != nullptr ? std::to_string(*whole) : std::string();
}

std::optional<double> number_of(const Value& value) {
    if (const auto* number = std::get_if<double>(&value)) return *number;
    if (const auto* whole = std::get_if<std::int64_t>(&value)) return static_cast<double>(*whole);
    return std::nullopt;
}

NamedWalks walks_from(const ReadLayer& layer, const std::string& file_name, FindingList& findings) {
    NamedWalks walks;
    for (const ReadRow& row : layer.rows) {
        const std::string source = text_of(layer.value(row, "source"));
        const std::size_t walk =
            walk_named(walks, text_of(layer.value(row, "walk_id")), source.empty() ? file_name : source);
        read_north(layer, row, walks.walks[walk], findings);
        const std::string times = text_of(layer.value(row, "times"));
        if (row.shape.lines.empty() && !times.empty()) walks.walks[walk].segments.emplace_back();
        const bool one_line = row.shape.lines.size() == 1;
        for (const GeographicLine& line : row.shape.lines)
            walks.walks[walk].segments.push_back(segment_of(line, one_line ? times : "", row, findings));
    }
    return walks;
}

tl::expected<void, Refusal> add_marks(const ReadLayer& layer, const std::string& file, NamedWalks& walks,
                                      FindingList& findings) {
    const std::string source = std::filesystem::path(file).filename().string();
    for (const ReadRow& row : layer.rows) {
        auto mark = mark_of(layer, row, file, findings);
        if (!mark) return tl::unexpected(mark.error());
        const std::size_t walk = walk_named(walks, text_of(layer.value(row, "walk_id")), source);
        walks.walks[walk].marks.push_back(std::move(*mark));
    }
    return {};
}

std::vector<SetDecision> decisions_from(const ReadLayer& set_decisions, const ReadLayer& set_points, FindingList& findings) {
    std::vector<SetDecision> decisions;
    for (const ReadRow& row : set_decisions.rows)
        if (auto decision = decision_in(set_decisions, row, "moved_along_m", "moved_across_m", findings))
            decisions.push_back(std::move(*decision));
    for (const ReadRow& row : set_points.rows) {
        auto seen = decision_in(set_points, row, "along_m", "across_m", findings);
        if (!seen) continue;
        const auto known = std::find_if(decisions.begin(), decisions.end(),
                                        [&](const SetDecision& decision) { return decision.probe == seen->probe; });
        if (known == decisions.end()) {
            if (seen->choice != SetChoice::proposed) decisions.push_back(std::move(*seen));
        } else if (seen->choice == SetChoice::proposed) {
            decisions.erase(known);
        } else if (known->choice != seen->choice || (known->moved_to && seen->moved_to)) {
            *known = std::move(*seen);
        }
    }
    return decisions;
}

}  // namespace plugside
