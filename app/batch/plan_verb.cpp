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
    return order;
}

// Writes what was ordered; the names of the files written come back for the summary.
tl::expected<std::vector<fs::path>, Refusal> write_outputs(const PlanOrder& order, const FieldSurvey& field,
                                                           const Plan& plan, TerminalProgress& terminal,
                                                           const std::stop_token& stop) {
    std::vector<fs::path> written;
    const auto write = [&](const std::optional<fs::path>& file,
                           const std::function<tl::expected<void, Refusal>(const fs::path&)>& writer) {
        if (!file) return tl::expected<void, Refusal>();
        auto outcome =
            stop.stop_requested()
                ? tl::unexpected(Refusal{Refusal::Code::stopped, file->string(), "", "a stop", "time to write it"})
                : writer(*file);
        if (outcome) written.push_back(*file);
        return outcome;
    };
    auto outcome = write(order.layers, [&](const fs::path& file) {
        return write_geopackage(field, plan, file, order.units, terminal.piece(0.7, 0.95, stop));
    });
    if (outcome)
        outcome =
            write(order.waypoints, [&](const fs::path& file) { return write_waypoints(field, plan, file, order.units); });
    if (outcome)
        outcome = write(order.picture, [&](const fs::path& file) { return write_picture(field, plan, file, order.units); });
    const SheetInput input{field,
                           plan,
                           order.units,
                           order.language,
                           order.paper,
                           {},
                           std::chrono::floor<std::chrono::milliseconds>(std::chrono::system_clock::now())};
    if (outcome)
        outcome = write(order.sheets,
                        [&](const fs::path& file) { return write_sheets(input, file, terminal.piece(0.95, 0.99, stop)); });
    if (outcome)
        outcome = write(order.phone, [&](const fs::path& file) {
            return write_phone_page(input, file, terminal.piece(0.99, 1.0, stop));
        });
    if (!outcome) return tl::unexpected(outcome.error());
    return written;
}

int run_plan(const Call& call, const std::stop_token& stop) {
    const auto order = order_of(call);
    if (!order) return tell_call_error("plan", order.error());
    std::vector<fs::path> outputs;
    for (const auto& output : {order->layers, order->waypoints, order->picture, order->sheets, order->phone})
        if (output) outputs.push_back(*output);
    if (const auto names = check_output_names(outputs, order->inputs); !names) return tell_refusal(names.error());

    std::optional<DrawingProgram> drawing;
    if (order->draws()) {
        drawing.emplace();
        if (order->language != Language::english) speak(order->language);
    }
    TerminalProgress terminal;
    const auto field = read_field(order->inputs, terminal.piece(0.0, 0.2, stop));
    if (!field) {
        terminal.finish();
        return tell_refusal(field.error());
    }
    const auto plan = make_plan(field->survey, {}, terminal.piece(0.2, 0.66, stop));
    if (!plan) {
        terminal.finish();
        return tell_stopped();
    }
    const auto unseen = not_seen(field->survey, *plan, {}, terminal.piece(0.66, 0.7, stop));
    const auto written = write_outputs(*order, *field, *plan, terminal, stop);
    terminal.finish();
    for (const ReadFinding& finding : field->findings)
        std::fprintf(stderr, "%s, %s: %s\n", finding.file.c_str(), finding.place.c_str(), finding.sentence.c_str());
    if (!written) return tell_refusal(written.error());
    std::fputs(summary_of(*field, *plan, order->units, order->each_system).c_str(), stdout);
    std::fputs(not_seen_summary(unseen, order->units).c_str(), stdout);
    for (const fs::path& file : *written) std::printf("Written: %s\n", file.string().c_str());
    return exit_done;
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
          {"summary", "", "say a line on each system, too"}},
         "A WALK is any file that the verb read takes: GPX, tables, photographs, layers, a survey or plan\n"
         "written before. What was not understood in a file is listed on stderr. Every chance is the plan's\n"
         "own estimate; where to put what is for the label, local rules and licensed practice to decide."},
        run_plan};
    return verb;
}

}  // namespace plugside
