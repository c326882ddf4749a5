// Rows of a handed-out plan as any program may have left them: read or refused, the marks' numbers in range, and the survey put
// right, so that every answer can still be taken back.
//
// Input: a row a line, "layer<tab>column=value<tab>..."; a value begins with " (text), # (number), % (whole number); the column
// @ holds the place, "longitude latitude".
#include <cmath>
#include <cstdint>
#include <cstdlib>
#include <set>

#include "geo/read/answer_rows.h"
#include "geo/read/field_assembler.h"
#include "geo/read/field_extent.h"
#include "geo/read/json_lists.h"
#include "geo/read/numbers.h"
#include "geo/read/plan_rows.h"

namespace {

using namespace plugside;

void demand(bool holds) {
    if (!holds) std::abort();
}

std::vector<std::string_view> parts_of(std::string_view text, char between) {
    std::vector<std::string_view> parts;
    for (std::size_t at = 0; at <= text.size();) {
        const auto end = std::min(text.find(between, at), text.size());
        parts.push_back(text.substr(at, end - at));
        at = end + 1;
    }
    return parts;
}

Value value_of(std::string_view text) {
    if (text.empty()) return {};
    const std::string_view rest = text.substr(1);
    if (text.front() == '#') return rest == "inf" ? HUGE_VAL : parse_number(rest).value_or(std::nan(""));
    if (text.front() == '%') return static_cast<std::int64_t>(std::min(1e15, std::abs(parse_number(rest).value_or(0.0))));
    return std::string(rest);
}

std::optional<GeographicPoint> place_of(std::string_view text) {
    const auto parts = parts_of(text, ' ');
    if (parts.size() != 2) return std::nullopt;
    const auto longitude = parse_number(parts[0]);
    const auto latitude = parse_number(parts[1]);
    if (!longitude || !latitude || std::abs(*longitude) > 180.0 || std::abs(*latitude) > 90.0) return std::nullopt;
    return GeographicPoint{*longitude, *latitude};
}

ReadLayer layer_of(std::string_view text, std::string_view name) {
    ReadLayer layer;
    layer.name = name;
    for (const std::string_view line : parts_of(text, '\n')) {
        const auto cells = parts_of(line, '\t');
        if (cells.front() != name) continue;
        ReadRow row;
        row.place = "layer " + layer.name + ", feature " + std::to_string(layer.rows.size() + 1);
        row.values.resize(layer.columns.size());
        for (std::size_t i = 1; i < cells.size(); ++i) {
            const auto equals = std::min(cells[i].find('='), cells[i].size());
            const std::string column(cells[i].substr(0, equals));
            const std::string_view value = cells[i].substr(std::min(equals + 1, cells[i].size()));
            if (column == "@") {
                if (const auto place = place_of(value)) row.shape.points.push_back(*place);
                continue;
            }
            auto known = std::find(layer.columns.begin(), layer.columns.end(), column);
            const auto index = static_cast<std::size_t>(known - layer.columns.begin());
            if (known == layer.columns.end()) layer.columns.push_back(column);
            if (row.values.size() <= index) row.values.resize(index + 1);
            row.values[index] = value_of(value);
        }
        layer.rows.push_back(std::move(row));
    }
    for (ReadRow& row : layer.rows) row.values.resize(layer.columns.size());
    return layer;
}

bool finite(LocalPoint place) { return std::isfinite(place.east_m) && std::isfinite(place.north_m); }

void judge(const Survey& survey) {
    std::set<std::string> names, answered;
    for (const Mound& mound : survey.mounds) {
        demand(finite(mound.plug) && mound.position_sd.value() > 0.0 && names.insert(mound.name).second);
        demand(!mound.recorded || (finite(mound.recorded->plug) && mound.recorded->position_sd.value() > 0.0));
    }
    for (const MendAnswer& answer : survey.answers)
        demand(answered.insert(answer.finding).second && !answer.finding.empty());
    Survey again = survey;
    put_right(again);
    demand(again == survey);
    for (const MendAnswer& answer : survey.answers) take_answer_back(again, answer.finding);
    for (const Mound& mound : again.mounds) demand(!mound.recorded && finite(mound.plug));
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    static const LocalFrame frame = LocalFrame::centred_on({-120.0, 38.25});
    const std::string_view text(reinterpret_cast<const char*>(data), size);
    if (const auto names = names_in_json(text)) demand(names_in_json(json_of(*names)) == names);
    if (const auto places = places_in_json(text)) demand(places_in_json(json_of(*places)) == places);
    FindingList findings("plan.gpkg");
    std::vector<GeographicFile> files(1);
    GeographicFile& file = files.front();
    file.file = "plan.gpkg";
    NamedWalks walks = walks_from(layer_of(text, "walk_tracks"), "plan.gpkg", findings);
    if (const auto marks = add_marks(layer_of(text, "mounds"), "plan.gpkg", walks, findings); !marks) {
        demand(sentence(marks.error()).find('\n') == std::string::npos);
        return 0;
    }
    file.walks = std::move(walks.walks);
    file.decisions = decisions_from(layer_of(text, "set_decisions"), layer_of(text, "set_points"), findings);
    file.answers = answers_from(layer_of(text, "finding_answers"), findings);
    file.note_rules = rules_from(layer_of(text, "note_rules"), findings);
    file.of_reading = findings_of_reading(layer_of(text, "findings"), findings);
    for (const ReadFinding& finding : findings.listed()) demand(finding.sentence.find('\n') == std::string::npos);
    if (!check_reach(files, frame.centre())) return 0;
    FieldSurvey empty;
    empty.frame = frame;
    FieldAssembler assembler(std::move(empty), files, {});
    assembler.add(std::move(file));
    judge(assembler.field("plan").survey);
    return 0;
}
