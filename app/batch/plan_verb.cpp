// plugside-batch plan: walks and ground in, a plan out.
#include <chrono>
#include <cstdio>
#include <filesystem>
#include <functional>

#include "app/batch/drawing_program.h"
#include "app/batch/not_seen_summary.h"
#include "app/batch/outcome_words.h"
#include "app/batch/output_names.h"
#include "app/batch/picture_output.h"
#include "app/batch/plan_summary.h"
#include "app/batch/terminal_progress.h"
#include "app/batch/verbs.h"
#include "app/batch/work_files.h"
#include "app/batch/work_summary.h"
#include "app/sheets/sheet_files.h"
#include "core/plan/make_plan.h"
#include "geo/read/field_reader.h"
#include "geo/write/geopackage_layers.h"
#include "geo/write/waypoints.h"

namespace plugside {

namespace {

namespace fs = std::filesystem;

struct PlanOrder {
    std::vector<fs::path> inputs;
    std::optional<fs::path> layers;
    std::optional<fs::path> waypoints;
    std::optional<fs::path> picture;
    std::optional<fs::path> sheets;
    std::optional<fs::path> phone;
    Paper paper = Paper::letter;
    Language language = Language::english;
    LengthUnits units = LengthUnits::feet_and_inches;
    bool each_system = false;
    WorkFiles work;
    std::optional<std::string> method;
    std::optional<CalendarDay> day;

    [[nodiscard]] bool draws() const { return picture || sheets || phone || language != Language::english; }
};

tl::expected<PlanOrder, CallError> order_of(const Call& call) {
    PlanOrder order;
    order.inputs.assign(call.places.begin(), call.places.end());
    if (const auto ground = call.value("ground")) order.inputs.emplace_back(*ground);
    order.layers = call.value("out");
    order.waypoints = call.value("waypoints");
    order.picture = call.value("picture");
    const std::string units = call.value("units").value_or("feet");
    if (units != "feet" && units != "metres")
        return tl::unexpected(CallError{"option --units wants feet or metres, not " + quoted_for_display(units)});
    if (units == "metres") order.units = LengthUnits::metres;
    order.sheets = call.value("sheets");
    order.phone = call.value("phone");
    const std::string paper = call.value("paper").value_or("letter");
    if (paper != "letter" && paper != "a4")
        return tl::unexpected(CallError{"option --paper wants letter or a4, not " + quoted_for_display(paper)});
    if (paper == "a4") order.paper = Paper::a4;
    const std::string language = call.value("language").value_or("en");
    const auto told = language_from_code(QString::fromStdString(language));
    if (!told) return tl::unexpected(CallError{"option --language wants en or es, not " + quoted_for_display(language)});
    order.language = *told;
    order.each_system = call.has("summary");
    order.work.conditions = call.value("conditions");
    order.work.label = call.value("label");
    order.method = call.value("method");
    if (const auto text = call.value("day")) {
        order.day = day_from_text(*text);
        if (!order.day)
            return tl::unexpected(CallError{"option --day wants a day as 2025-04-10, not " + quoted_for_display(*text)});
    }
    return order;
}

// The field planned, and judged as it is to be worked.
struct PlannedWork {
    const FieldSurvey& field;
    const Plan& plan;
    const JudgedPlan& judged;
    UtcTime now;

    [[nodiscard]] bool is_worked_as_told() const { return !(*field.survey.work == WorkOrder{}); }
};

// What goes to the field with the person: it stays here while a stop holds.
std::vector<fs::path> handed_out(const PlanOrder& order) {
    std::vector<fs::path> files;
    for (const auto& file : {order.waypoints, order.sheets, order.phone})
        if (file) files.push_back(*file);
    return files;
}

// Writes what was ordered, but nothing to hand out where a stop holds; the names of the files written come back for the summary.
tl::expected<std::vector<fs::path>, Refusal> write_outputs(const PlanOrder& order, const PlannedWork& work,
                                                           TerminalProgress& terminal, const std::stop_token& stop) {
    const FieldSurvey& field = work.field;
    const Plan& plan = work.plan;
    std::vector<fs::path> written;
    using Outcome = tl::expected<void, Refusal>;
    Outcome outcome;
    const auto write = [&](const std::optional<fs::path>& file, const std::function<Outcome(const fs::path&)>& writer) {
        if (!file || !outcome) return;
        outcome = stop.stop_requested()
                      ? tl::unexpected(Refusal{Refusal::Code::stopped, file->string(), "", "a stop", "time to write it"})
                      : writer(*file);
        if (outcome) written.push_back(*file);
    };
    write(order.layers, [&](const fs::path& file) {
        return write_geopackage(field, plan, file, order.units, terminal.piece(0.7, 0.95, stop));
    });
    write(order.picture, [&](const fs::path& file) { return write_picture(field, plan, file, order.units); });
    if (!work.judged.has_stops()) {
        SheetInput input{field, plan, order.units, order.language, order.paper, {}, work.now};
        if (work.is_worked_as_told()) input.work = *field.survey.work;
        write(order.waypoints, [&](const fs::path& file) { return write_waypoints(field, plan, file, order.units); });
        write(order.sheets,
              [&](const fs::path& file) { return write_sheets(input, file, terminal.piece(0.95, 0.99, stop)); });
        write(order.phone,
              [&](const fs::path& file) { return write_phone_page(input, file, terminal.piece(0.99, 1.0, stop)); });
    }
    if (!outcome) return tl::unexpected(outcome.error());
    return written;
}

// On stderr, since something that was asked for was not done.
int tell_stops(const PlanOrder& order, const JudgedPlan& judged) {
    if (!judged.has_stops()) return exit_done;
    std::fprintf(stderr,
                 "This plan is not to be handed out: %s. Change the method, the place or what stands against it, or drop "
                 "these sets, and plan again.\n",
                 stops_counted(judged).c_str());
    for (const fs::path& file : handed_out(order)) {
        std::error_code error;
        std::fprintf(stderr, "Not written: %s%s\n", file.string().c_str(),
                     fs::exists(file, error) ? " (what lies there is older)" : "");
    }
    return exit_stops_hold;
}

void tell_plan(const PlanOrder& order, const PlannedWork& work) {
    const bool as_told = work.is_worked_as_told();
    std::fputs(summary_of(work.field, work.plan, order.units, order.each_system, !as_told).c_str(), stdout);
    if (as_told || work.judged.has_stops())
        std::fputs(summary_of_work(work.field.survey, work.plan, work.judged, work.now).c_str(), stdout);
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

tl::expected<void, Refusal> check_names(const PlanOrder& order) {
    std::vector<fs::path> outputs = handed_out(order);
    for (const auto& output : {order.layers, order.picture})
        if (output) outputs.push_back(*output);
    std::vector<fs::path> inputs = order.inputs;
    for (const auto& input : {order.work.conditions, order.work.label})
        if (input) inputs.push_back(*input);
    return check_output_names(outputs, inputs);
}

int run_plan(const Call& call, const std::stop_token& stop) {
    const auto order = order_of(call);
    if (!order) return tell_call_error("plan", order.error());
    if (const auto names = check_names(*order); !names) return tell_refusal(names.error());

    std::optional<DrawingProgram> drawing;
    if (order->draws()) {
        drawing.emplace();
        if (order->language != Language::english) speak(order->language);
    }
    TerminalProgress terminal;
    auto field = read_field(order->inputs, terminal.piece(0.0, 0.2, stop));
    if (!field) {
        terminal.finish();
        return tell_refusal(field.error());
    }
    auto work_order = work_of(*order, field->survey);
    if (!work_order) {
        terminal.finish();
        return work_order.error();
    }
    field->survey.work = std::move(*work_order);
    const auto plan = make_plan(field->survey, {}, terminal.piece(0.2, 0.64, stop));
    if (!plan) {
        terminal.finish();
        return tell_stopped();
    }
    const UtcTime now = time_of_work(*order);
    const JudgedPlan judged = judge(field->survey, *field->survey.work, *plan, now);
    const auto unseen = not_seen(field->survey, *plan, {}, terminal.piece(0.66, 0.7, stop));
    const PlannedWork work{*field, *plan, judged, now};
    const auto written = write_outputs(*order, work, terminal, stop);
    terminal.finish();
    for (const ReadFinding& finding : field->findings)
        std::fprintf(stderr, "%s, %s: %s\n", finding.file.c_str(), finding.place.c_str(), finding.sentence.c_str());
    if (!written) return tell_refusal(written.error());
    tell_plan(*order, work);
    std::fputs(not_seen_summary(unseen, order->units).c_str(), stdout);
    for (const fs::path& file : *written) std::printf("Written: %s\n", file.string().c_str());
    return tell_stops(*order, judged);
}

}  // namespace

const Verb& plan_verb() {
    static const Verb verb{
        {"plan",
         "WALK",
         1,
         1000,
         "From walks and the ground to systems, runs, probe and set points.",
         {{"ground", "FILE", "boundary, barriers and keep-clear areas (any file of layers)"},
          {"out", "PLAN.gpkg", "write every layer of the plan"},
          {"waypoints", "SETS.gpx", "write the set points for a handheld"},
          {"picture", "MAP.png", "draw the map"},
          {"sheets", "SHEETS.pdf", "field sheets to print: map, cautions, what to load, list, a card a set, log"},
          {"paper", "letter|a4", "of the sheets; letter unless told"},
          {"phone", "PHONE.html", "the sheets as one page for a phone"},
          {"language", "en|es", "of what is written; English unless told"},
          {"units", "feet|metres", "of instructions and summary; feet (and inches) unless told"},
          {"summary", "", "say a line on each system, too"},
          {"conditions", "FILE", "answers under which the work is done, a line each: name = value"},
          {"method", "NAME", "way of working: " + all_method_ids({})},
          {"label", "FILE", "figures typed from the label in hand, and the dose, a line each: name = value"},
          {"day", "DAY", "of the work, as 2025-04-10, by which answers are old; today unless told"}},
         "A WALK is any file that the verb read takes: GPX, tables, photographs, layers, a survey or plan\n"
         "written before. What was not understood in a file is listed on stderr. Every chance is the plan's\n"
         "own estimate; where to put what is for the label, local rules and licensed practice to decide.\n"
         "While a stop holds at a set, waypoints, sheets and phone page are not written (layers and picture are), and\n"
         "the exit code is 4: such a plan is not to be handed out. No product's label comes with this program."},
        run_plan};
    return verb;
}

}  // namespace plugside
