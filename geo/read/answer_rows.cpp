#include "geo/read/answer_rows.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <unordered_map>

#include "core/words/words.h"
#include "geo/read/json_lists.h"
#include "geo/read/plan_rows.h"

namespace plugside {

namespace {

bool is_null(const Value& value) { return std::holds_alternative<std::monostate>(value); }

// Cells of one row; remembers whether any held something that it cannot mean.
class Cells {
public:
    Cells(const ReadLayer& layer, const ReadRow& row) : layer_(layer), row_(row) {}

    [[nodiscard]] bool understood() const { return wrong_.empty(); }
    // "turn_degrees \"inf\"": the first cell at fault.
    [[nodiscard]] const std::string& wrong() const { return wrong_; }

    [[nodiscard]] std::string text(const char* column) const { return text_of(layer_.value(row_, column)); }

    // Nothing for null.
    std::optional<double> number(const char* column, double least, double most) {
        const Value& value = layer_.value(row_, column);
        if (is_null(value)) return std::nullopt;
        const auto number = number_of(value);
        if (number && *number >= least && *number <= most) return number;
        blame(column, number ? std::to_string(*number) : text_of(value));
        return std::nullopt;
    }
    template <typename Word>
    std::optional<Word> word(const char* column, std::optional<Word> (*from_text)(const std::string&)) {
        if (is_null(layer_.value(row_, column))) return std::nullopt;
        const auto word = from_text(text(column));
        if (!word) blame(column, text(column));
        return word;
    }
    // Empty for null.
    std::vector<std::string> names(const char* column) {
        if (is_null(layer_.value(row_, column))) return {};
        auto names = names_in_json(text(column));
        if (!names) blame(column, text(column));
        return names.value_or(std::vector<std::string>{});
    }
    std::vector<GeographicPoint> places(const char* column) {
        if (is_null(layer_.value(row_, column))) return {};
        auto places = places_in_json(text(column));
        if (!places) blame(column, text(column));
        return places.value_or(std::vector<GeographicPoint>{});
    }
    void demand(bool there, const char* column) {
        if (!there) blame(column, "");
    }

private:
    void blame(const char* column, const std::string& found) {
        if (wrong_.empty()) wrong_ = std::string(column) + " " + quoted_for_display(found);
    }

    const ReadLayer& layer_;
    const ReadRow& row_;
    std::string wrong_;
};

constexpr double most_turn_degrees = 360.0;
constexpr double largest_error_m = 1e6;
constexpr double smallest_error_m = 1e-6;

bool is_of_coordinates(FindingKind kind) {
    return kind == FindingKind::swapped_coordinates || kind == FindingKind::lost_sign ||
           kind == FindingKind::degrees_and_minutes;
}

Mend mend_in(Cells& cells, GeographicAnswer& answer) {
    Mend mend;
    const auto kind = cells.word("mend", mend_kind_from_text);
    cells.demand(kind.has_value(), "mend");
    mend.kind = kind.value_or(MendKind::set_aside);
    mend.marks = cells.names("marks");
    answer.to = cells.places("to_places");
    answer.fan_degrees = cells.number("fan_bearing", 0.0, 360.0);
    mend.turn_degrees = cells.number("turn_degrees", -most_turn_degrees, most_turn_degrees).value_or(0.0);
    mend.sign = cells.word("sign", sign_kind_from_text);
    mend.freshness = cells.word("freshness", freshness_from_text);
    mend.because = cells.text("because");
    if (const auto sd = cells.number("position_sd_m", smallest_error_m, largest_error_m)) mend.position_sd = Metres::of(*sd);
    return mend;
}

std::optional<GeographicAnswer> answer_in(const ReadLayer& layer, const ReadRow& row, FindingList& findings) {
    Cells cells(layer, row);
    GeographicAnswer read;
    read.place = row.place;
    read.answer.finding = cells.text("finding_id");
    const auto answer = answer_from_text(cells.text("answer"));
    if (read.answer.finding.empty() || !answer) {
        findings.add(row.place,
                     Words::tell("an answer was not understood ({1} to {2}); the finding counts as open",
                                 {quoted_for_display(cells.text("answer")), quoted_for_display(read.answer.finding)}));
        return std::nullopt;
    }
    read.answer.answer = *answer;
    read.answer.mend = mend_in(cells, read);
    if (cells.understood()) return read;
    const bool accepted = *answer == Answer::accepted;
    const std::string answered = quoted_for_display(read.answer.finding);
    findings.add(row.place, accepted
                                ? Words::tell("what was answered to {1} was not understood ({2}); the finding is open again",
                                              {answered, cells.wrong()})
                                : Words::tell("what was answered to {1} was not understood ({2}); the finding stays refused",
                                              {answered, cells.wrong()}));
    if (accepted) return std::nullopt;
    return GeographicAnswer{row.place, {read.answer.finding, Answer::refused, {}}, {}, {}};
}

}  // namespace

std::optional<GeographicRecord> record_of(const ReadLayer& mounds, const ReadRow& row, const GeographicMark& mark,
                                          FindingList& findings) {
    constexpr std::array columns{
        "recorded_lon",       "recorded_lat",           "recorded_fan_bearing",      "recorded_kind",
        "recorded_freshness", "recorded_position_sd_m", "recorded_set_aside_because"};
    if (std::all_of(columns.begin(), columns.end(), [&](const char* column) { return is_null(mounds.value(row, column)); }))
        return std::nullopt;
    Cells cells(mounds, row);
    const auto longitude = cells.number("recorded_lon", -180.0, 180.0);
    const auto latitude = cells.number("recorded_lat", -90.0, 90.0);
    const auto fan = cells.number("recorded_fan_bearing", 0.0, 360.0);
    const auto kind = cells.word("recorded_kind", sign_kind_from_text);
    const auto freshness = cells.word("recorded_freshness", freshness_from_text);
    const auto sd = cells.number("recorded_position_sd_m", smallest_error_m, largest_error_m);
    cells.demand(longitude.has_value(), "recorded_lon");
    cells.demand(latitude.has_value(), "recorded_lat");
    cells.demand(kind.has_value(), "recorded_kind");
    cells.demand(freshness.has_value(), "recorded_freshness");
    cells.demand(sd.has_value(), "recorded_position_sd_m");
    GeographicRecord record;
    if (cells.understood()) {
        record.at = {*longitude, *latitude};
        record.fan_degrees = fan;
        record.mark.kind = *kind;
        record.mark.freshness = *freshness;
        record.mark.position_sd = Metres::of(*sd);
        if (const std::string aside = cells.text("recorded_set_aside_because"); !aside.empty())
            record.mark.set_aside_because = aside;
        return record;
    }
    findings.add(row.place, Words::tell("what was recorded before the mark was mended was not understood ({1}); the mark "
                                        "counts as recorded as it stands",
                                        {cells.wrong()}));
    return record_as_it_stands(mark);
}

GeographicRecord record_as_it_stands(const GeographicMark& mark) {
    GeographicRecord record;
    record.at = mark.at;
    record.fan_degrees = mark.fan_degrees;
    record.mark.kind = mark.mound.kind;
    record.mark.freshness = mark.mound.freshness;
    record.mark.position_sd = mark.mound.position_sd;
    record.mark.set_aside_because = mark.mound.set_aside_because;
    return record;
}

std::vector<GeographicAnswer> answers_from(const ReadLayer& finding_answers, FindingList& findings) {
    std::vector<GeographicAnswer> answers;
    std::unordered_map<std::string, std::string> given;  // where the last answer to each finding stands
    for (const ReadRow& row : finding_answers.rows) {
        auto answer = answer_in(finding_answers, row, findings);
        if (!answer) continue;
        if (!given.insert_or_assign(answer->answer.finding, answer->place).second)
            findings.add(row.place,
                         Words::tell("a second answer to {1}; it counts", {quoted_for_display(answer->answer.finding)}));
        answers.push_back(std::move(*answer));
    }
    std::erase_if(answers, [&](const GeographicAnswer& answer) { return given.at(answer.answer.finding) != answer.place; });
    return answers;
}

std::vector<GeographicRule> rules_from(const ReadLayer& note_rules, FindingList& findings) {
    std::vector<GeographicRule> rules;
    for (const ReadRow& row : note_rules.rows) {
        const Cells cells(note_rules, row);
        GeographicRule read{row.place,
                            {cells.text("walk_id"), cells.text("words"), cells.text("means"), cells.text("mark")}};
        if (read.rule.words.empty())
            findings.add(row.place, Words::later("a correction of notes has no words that it is about; it is not used"));
        else
            rules.push_back(std::move(read));
    }
    return rules;
}

std::vector<GeographicFact> facts_from(const ReadLayer& known_facts, FindingList& findings) {
    std::vector<GeographicFact> facts;
    for (const ReadRow& row : known_facts.rows) {
        Cells cells(known_facts, row);
        const auto kind = fact_kind_from_text(cells.text("kind"));
        GeographicFact read;
        read.place = row.place;
        read.fact.kind = kind.value_or(FactKind::same_system);
        read.fact.marks = cells.names("marks");
        if (auto line = cells.places("line"); !line.empty()) read.line = std::move(line);
        read.fact.log_strength = cells.number("log_strength", 1e-9, 1e9);
        read.fact.said_by = cells.text("said_by");
        if (const auto seconds = cells.number("said_at", -1e12, 1e12))
            read.fact.said_at = UtcTime{std::chrono::milliseconds(std::llround(1000.0 * *seconds))};
        cells.demand(kind.has_value(), "kind");
        KnownFact whole = read.fact;
        if (read.line) whole.line = Polyline{std::vector<LocalPoint>(read.line->size())};
        const auto missing = what_is_missing(whole);
        if (!cells.understood())
            findings.add(row.place,
                         Words::tell("what was said of systems cannot be told from {1}; it is not used", {cells.wrong()}));
        else if (missing && read.line == std::nullopt)
            findings.add(row.place, Words::tell("what was said of systems is not whole: {1}; it is not used", {*missing}));
        else
            facts.push_back(std::move(read));
    }
    return facts;
}

std::vector<GeographicFinding> findings_of_reading(const ReadLayer& layer, FindingList& findings) {
    std::vector<GeographicFinding> of_reading;
    for (const ReadRow& row : layer.rows) {
        Cells cells(layer, row);
        const auto kind = finding_kind_from_text(cells.text("kind"));
        if (!kind || !is_of_coordinates(*kind)) continue;
        GeographicFinding read;
        read.place = row.place;
        Finding& finding = read.finding;
        finding.kind = *kind;
        finding.id = cells.text("finding_id");
        finding.marks = cells.names("marks");
        finding.found = cells.text("found");
        finding.why = cells.text("why");
        finding.proposed = cells.text("proposed");
        finding.sure = Probability::of(cells.number("probability", 0.0, 1.0).value_or(0.0));
        cells.demand(!finding.id.empty(), "finding_id");
        cells.demand(!finding.marks.empty(), "marks");
        if (!cells.understood() || row.shape.points.size() != 1) {
            findings.add(row.place,
                         Words::tell("a finding of coordinates was not understood ({1}); its marks stay as they are",
                                     {cells.understood() ? Words::tell("it is not at one point") : cells.wrong()}));
            continue;
        }
        read.at = row.shape.points.front();
        finding.mend = Mend{};
        finding.mend->kind = MendKind::take_back;
        finding.mend->marks = finding.marks;
        of_reading.push_back(std::move(read));
    }
    return of_reading;
}

}  // namespace plugside
