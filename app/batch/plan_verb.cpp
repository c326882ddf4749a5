// plugside-batch plan: walks and ground in, a plan out.
#include <chrono>
#include <cstdio>
#include <filesystem>

#include "app/batch/drawing_program.h"
#include "app/batch/not_seen_summary.h"
#include "app/batch/outcome_words.h"
#include "app/batch/picture_output.h"
#include "app/batch/plan_order.h"
#include "app/batch/plan_summary.h"
#include "app/batch/stopped_sets.h"
#include "app/batch/terminal_progress.h"
#include "app/batch/verbs.h"
#include "app/batch/work_summary.h"
#include "core/plan/make_plan.h"
#include "core/words/words.h"
#include "geo/read/field_reader.h"

namespace plugside {

namespace {

namespace fs = std::filesystem;

// The field planned, and judged as it is to be worked.
struct PlannedWork {
    FieldSurvey field;
    Plan plan;
    JudgedPlan judged;
    UtcTime now;
    std::vector<std::string> dropped;  // a sentence a set

    [[nodiscard]] bool is_worked_as_told() const { return !(*field.survey.work == WorkOrder{}); }
};

// Writes what was ordered, all of it or nothing, but nothing to hand out where a stop holds. Gives what this plan had that could not be carried.
tl::expected<std::vector<std::string>, Refusal> write_outputs(const PlanOrder& order, const PlannedWork& work,
                                                              TerminalProgress& terminal, const std::stop_token& stop) {
    StagedFiles files;
    const HandOut what = work.judged.has_stops() ? order.only_to_go_on() : order.what;
    if (order.picture) {
        const auto picture = files.write(
            *order.picture, [&](const fs::path& file) { return write_picture(work.field, work.plan, file, what.units); });
        if (!picture) return tl::unexpected(picture.error());
    }
    const auto remarks = stage_hand_out(what, work.field, work.plan, work.now, files, terminal.piece(0.7, 1.0, stop));
    if (!remarks) return tl::unexpected(remarks.error());
    if (stop.stop_requested()) return tl::unexpected(Refusal{Refusal::Code::stopped, "", "", "", ""});
    if (const auto placed = files.commit(); !placed) return tl::unexpected(placed.error());
    return remarks;
}

// On stderr, since something that was asked for was not done.
int tell_stops(const PlanOrder& order, const JudgedPlan& judged) {
    if (!judged.has_stops()) return exit_done;
    std::fprintf(stderr, "%s\n", not_to_be_handed_out(judged).c_str());
    for (const fs::path& file : order.kept_back()) {
        std::error_code error;
        std::fprintf(stderr, "%s\n",
                     (fs::exists(file, error) ? Words::tell("Not written: {1} (what lies there is older)", {file.string()})
                                              : Words::tell("Not written: {1}", {file.string()}))
                         .c_str());
    }
    return exit_stops_hold;
}

void tell_plan(const PlanOrder& order, const PlannedWork& work) {
    const bool as_told = work.is_worked_as_told();
    std::fputs(summary_of(work.field, work.plan, order.what.units, order.each_system, !as_told).c_str(), stdout);
    for (const std::string& sentence : work.dropped) std::printf("%s\n", sentence.c_str());
    if (as_told || work.judged.has_stops())
        std::fputs(summary_of_work(work.field.survey, work.plan, work.judged, work.now).c_str(), stdout);
}

// The files, what each format does not carry, and what is true of all of them once.
void tell_written(const PlanOrder& order, const PlannedWork& work, const std::vector<std::string>& remarks) {
    const HandOut what = work.judged.has_stops() ? order.only_to_go_on() : order.what;
    const auto say = [](const std::string& line) { std::printf("%s\n", line.c_str()); };
    if (order.picture) say(Words::tell("Written: {1}", {order.picture->string()}));
    const std::vector<fs::path> names = what.told_names();
    for (std::size_t i = 0; i < names.size(); ++i) {
        const bool formats = i < what.files.size();
        const std::size_t many = formats ? files_of(what.files[i].format, what.files[i].file).size() : 1;
        say(many == 1 ? Words::tell("Written: {1}", {names[i].string()})
                      : Words::tell("Written: {1} ({2} files)", {names[i].string(), std::to_string(many)}));
        std::string limits;
        if (formats)
            for (const std::string& sentence : limits_of(what.files[i].format)) limits += " " + sentence;
        if (!limits.empty()) say(" " + limits);
    }
    if (!what.files.empty())
        for (const std::string& sentence : true_of_all(what.private_rows)) say(sentence);
    for (const std::string& remark : remarks) say(remark);
}

// The survey's work as this call has it; an exit code where it is refused.
tl::expected<WorkOrder, int> work_of(const PlanOrder& order, const Survey& survey) {
    auto work = read_work(order.work, *survey.work);
    if (!work) {
        for (const Refusal& problem : work.error()) tell_refusal(problem);
        return tl::unexpected<int>(exit_refused);
    }
    if (order.method && !find_method(*work, *order.method))
        return tl::unexpected(tell_call_error("plan", {"option --method wants one of " + all_method_ids(*work) + ", not " +
                                                       quoted_for_display(*order.method)}));
    if (order.method) work->method = *order.method;
    return std::move(*work);
}

// Noon of the day told, else now.
UtcTime time_of_work(const PlanOrder& order) {
    if (order.day) return UtcTime(*order.day) + std::chrono::hours(12);
    return std::chrono::floor<std::chrono::milliseconds>(std::chrono::system_clock::now());
}

// Read, planned, judged, and without the sets that meet a stop where that was asked for; else an exit code.
tl::expected<PlannedWork, int> planned(const PlanOrder& order, TerminalProgress& terminal, const std::stop_token& stop) {
    const auto ends_with = [&](int code) {
        terminal.finish();
        return tl::unexpected<int>(code);
    };
    auto field = read_field(order.inputs, terminal.piece(0.0, 0.2, stop));
    if (!field) {
        terminal.finish();
        return tl::unexpected<int>(tell_refusal(field.error()));
    }
    auto work_order = work_of(order, field->survey);
    if (!work_order) return ends_with(work_order.error());
    field->survey.work = std::move(*work_order);
    auto plan = make_plan(field->survey, {}, terminal.piece(0.2, 0.6, stop));
    if (!plan) return ends_with(tell_stopped());
    const UtcTime now = time_of_work(order);
    JudgedPlan judged = judge(field->survey, *field->survey.work, *plan, now);
    PlannedWork work{std::move(*field), std::move(*plan), std::move(judged), now, {}};
    if (!order.drop_stopped) return work;
    auto without = without_stopped_sets(work.field.survey, work.plan, work.judged, now, terminal.piece(0.6, 0.65, stop));
    if (!without) return ends_with(tell_stopped());
    work.field.survey = std::move(without->survey);
    work.plan = std::move(without->plan);
    work.judged = std::move(without->judged);
    work.dropped = std::move(without->told);
    return work;
}

int run_plan(const Call& call, const std::stop_token& stop) {
    const auto order = plan_order_of(call);
    if (!order) return tell_call_error("plan", order.error());
    if (const auto names = check_names(*order); !names) return tell_refusal(names.error());

    std::optional<DrawingProgram> drawing;
    if (order->draws()) {
        drawing.emplace();
        if (order->what.sheet_language != Language::english) speak(order->what.sheet_language);
    }
    TerminalProgress terminal;
    const auto work = planned(*order, terminal, stop);
    if (!work) return work.error();
    const auto unseen = not_seen(work->field.survey, work->plan, {}, terminal.piece(0.66, 0.7, stop));
    const auto written = write_outputs(*order, *work, terminal, stop);
    terminal.finish();
    for (const ReadFinding& finding : work->field.findings)
        std::fprintf(stderr, "%s, %s: %s\n", finding.file.c_str(), finding.place.c_str(), finding.sentence.c_str());
    if (!written) return tell_refusal(written.error());
    tell_plan(*order, *work);
    std::fputs(not_seen_summary(unseen, order->what.units).c_str(), stdout);
    tell_written(*order, *work, *written);
    return tell_stops(*order, work->judged);
}

}  // namespace

const Verb& plan_verb() {
    static const Verb verb{
        {"plan", "WALK", 1, 1000, "From walks and the ground to systems, runs, probe and set points.", plan_options(),
         "A WALK is any file that the verb read takes: GPX, tables, photographs, layers, a survey or plan\n"
         "written before. What was not understood in a file is listed on stderr. Every chance is the plan's\n"
         "own estimate; where to put what is for the label, local rules and licensed practice to decide.\n"
         "All files are written, or none. While a stop holds at a set, only the GeoPackage and the picture are,\n"
         "and the exit code is 4: such a plan is not to be handed out. With --drop-stopped those sets are\n"
         "dropped, and the next best places that meet no stop stand in. No product's label comes with\n"
         "this program."},
        run_plan};
    return verb;
}

}  // namespace plugside
