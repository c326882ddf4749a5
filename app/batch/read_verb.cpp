// plugside-batch read: whatever the handhelds gave in, one survey out, judged, with what was not looked at.
#include <algorithm>
#include <cstdio>
#include <filesystem>
#include <limits>

#include "app/batch/not_seen_summary.h"
#include "app/batch/outcome_words.h"
#include "app/batch/output_names.h"
#include "app/batch/read_choices.h"
#include "app/batch/read_summary.h"
#include "app/batch/terminal_progress.h"
#include "app/batch/verbs.h"
#include "app/commands/answer_command.h"
#include "core/mending/answered_findings.h"
#include "geo/read/field_reader.h"
#include "geo/read/north_of_walk.h"
#include "geo/write/survey_file.h"

namespace plugside {

namespace {

namespace fs = std::filesystem;

constexpr double sure_enough = 0.95;  // what --accept-sure accepts; our assumption
constexpr std::size_t few_a_kind = 5;

struct ReadOrder {
    std::vector<fs::path> inputs;
    std::optional<fs::path> out;
    ReadChoices choices;
    North north = North::not_told;
    bool accept_sure = false;
    std::size_t most_a_kind = few_a_kind;
    LengthUnits units = LengthUnits::feet_and_inches;
};

tl::expected<ReadOrder, CallError> order_of(const Call& call) {
    ReadOrder order;
    order.inputs.assign(call.places.begin(), call.places.end());
    order.out = call.value("out");
    order.accept_sure = call.has("accept-sure");
    if (call.has("every-finding")) order.most_a_kind = std::numeric_limits<std::size_t>::max();
    if (const auto text = call.value("north")) {
        const auto north = north_from_text(*text);
        if (!north || *north == North::not_told)
            return tl::unexpected(CallError{"option --north wants true or magnetic, not " + quoted_for_display(*text)});
        order.north = *north;
    }
    const std::string units = call.value("units").value_or("feet");
    if (units != "feet" && units != "metres")
        return tl::unexpected(CallError{"option --units wants feet or metres, not " + quoted_for_display(units)});
    if (units == "metres") order.units = LengthUnits::metres;
    auto choices = read_choices(call, order.inputs);
    if (!choices) return tl::unexpected(choices.error());
    order.choices = std::move(*choices);
    return order;
}

// What was done to the fans, a sentence a walk.
tl::expected<std::string, Refusal> turn_to_north(FieldSurvey& field, North north) {
    std::string sentences;
    if (north == North::not_told) return sentences;
    for (std::size_t walk = 0; walk < field.survey.walks.size(); ++walk) {
        if (north == North::magnetic_north) {
            const auto turn = turn_of_magnetic_walk(field.survey, walk, field.frame);
            if (!turn) return tl::unexpected(turn.error());
            if (*turn) sentences += field.survey.walks[walk].id + ": " + (*turn)->sentence + "\n";
        }
        if (auto told = tell_north(field.survey, walk, field.frame, north); !told) return tl::unexpected(told.error());
    }
    return sentences;
}

// Accepts what is open and all but certain; how many.
std::size_t accept_what_is_sure(Survey& survey, const std::vector<AnsweredFinding>& findings) {
    std::vector<AnswerChange> changes;
    for (const auto& [finding, answer] : findings)
        if (!answer && finding.mend && finding.sure.value() >= sure_enough)
            changes.push_back({finding.id, MendAnswer{finding.id, Answer::accepted, *finding.mend}});
    if (!changes.empty()) change_answers(survey, changes);
    return changes.size();
}

bool has_track(const Survey& survey) {
    return std::any_of(survey.walks.begin(), survey.walks.end(), [](const Walk& walk) { return !walk.segments.empty(); });
}

// Nothing when stopped.
std::optional<SurveyJudged> judged(FieldSurvey& field, bool accept_sure, std::size_t& accepted, TerminalProgress& terminal,
                                   const std::stop_token& stop) {
    SurveyJudged result;
    auto findings = answered_findings(field.survey, field.of_reading, terminal.piece(0.4, 0.5, stop));
    if (findings && accept_sure) {
        accepted = accept_what_is_sure(field.survey, *findings);
        if (accepted > 0) findings = answered_findings(field.survey, field.of_reading, terminal.piece(0.5, 0.6, stop));
    }
    if (!findings) return std::nullopt;
    result.findings = std::move(*findings);
    if (has_track(field.survey)) {
        result.coverage = coverage_of(field.survey.walks, field.survey.ground.boundary, NotSeenOptions{}.walked_reach,
                                      terminal.piece(0.6, 0.65, stop));
        if (stop.stop_requested()) return std::nullopt;
        result.not_seen = not_seen(field.survey, {}, {}, terminal.piece(0.65, 0.8, stop));
    }
    if (stop.stop_requested()) return std::nullopt;
    return result;
}

int run_read(const Call& call, const std::stop_token& stop) {
    const auto order = order_of(call);
    if (!order) return tell_call_error("read", order.error());
    if (order->out)
        if (const auto names = check_output_names({*order->out}, order->inputs); !names) return tell_refusal(names.error());
    TerminalProgress terminal;
    auto field = read_field(order->inputs, order->choices, terminal.piece(0.0, 0.4, stop));
    if (!field) {
        terminal.finish();
        return tell_refusal(field.error());
    }
    const auto turned = turn_to_north(*field, order->north);
    if (!turned) {
        terminal.finish();
        return tell_refusal(turned.error());
    }
    std::size_t accepted = 0;
    const auto result = judged(*field, order->accept_sure, accepted, terminal, stop);
    if (!result) {
        terminal.finish();
        return tell_stopped();
    }
    tl::expected<void, Refusal> written;
    if (order->out) written = write_survey(*field, *result, *order->out, terminal.piece(0.8, 1.0, stop));
    terminal.finish();
    for (const ReadFinding& finding : field->findings)
        std::fprintf(stderr, "%s, %s: %s\n", finding.file.c_str(), finding.place.c_str(), finding.sentence.c_str());
    if (!written) return tell_refusal(written.error());
    std::fputs(read_summary(*field, result->findings, order->most_a_kind, order->units).c_str(), stdout);
    if (order->accept_sure) std::printf("Accepted, as right with 95 in 100 or more: %zu.\n", accepted);
    std::fputs(turned->c_str(), stdout);
    std::fputs(not_seen_summary(result->not_seen, order->units).c_str(), stdout);
    if (order->out) std::printf("Written: %s\n", order->out->string().c_str());
    return exit_done;
}

std::vector<OptionRule> options() {
    std::vector<OptionRule> rules{{"out", "SURVEY.gpkg", "write the survey with its findings and what was not walked"},
                                  {"accept-sure", "", "accept every finding that is right with 95 in 100 or more"},
                                  {"north", "true|magnetic", "which north bare bearings were read from; true unless told"}};
    for (OptionRule& rule : read_choice_options()) rules.push_back(std::move(rule));
    rules.push_back({"every-finding", "", "tell every finding, not the first of each kind"});
    rules.push_back({"units", "feet|metres", "of the summary; feet (and inches) unless told"});
    return rules;
}

}  // namespace

const Verb& read_verb() {
    static const Verb verb{
        {"read", "FILE", 1, 1000, "From whatever the handhelds gave to one survey, judged, with what was not seen.",
         options(),
         "Files: GPX, tables, photographs, layers (GeoPackage, Shapefile, GeoJSON, KML, FlatGeobuf), plans\n"
         "and surveys written before. Nothing is changed unless told; what is accepted can be taken back\n"
         "after SURVEY.gpkg is read. What was not understood in a file is listed on stderr."},
        run_read};
    return verb;
}

}  // namespace plugside
