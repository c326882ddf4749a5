// plugside-batch lines: ground, and perhaps a walk, in; lines for the next walk out.
#include <charconv>
#include <cstdio>
#include <filesystem>

#include "app/batch/outcome_words.h"
#include "app/batch/output_names.h"
#include "app/batch/terminal_progress.h"
#include "app/batch/verbs.h"
#include "core/walking/coverage.h"
#include "core/walking/not_seen.h"
#include "core/walking/not_seen_words.h"
#include "core/walking/walk_lines.h"
#include "geo/read/field_reader.h"
#include "geo/write/walk_route.h"

namespace plugside {

namespace {

namespace fs = std::filesystem;

struct LinesOrder {
    std::vector<fs::path> inputs;
    fs::path out;
    WalkLineOptions options;
    bool unwalked = false;
    bool with_walk = false;
    LengthUnits units = LengthUnits::feet_and_inches;
};

// Metres a second, as a person walks.
tl::expected<double, CallError> pace_of(const std::string& text) {
    double pace = 0.0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), pace);
    if (error != std::errc{} || end != text.data() + text.size() || !(pace >= 0.1 && pace <= 3.0))
        return tl::unexpected(
            CallError{"option --pace wants metres a second from 0.1 to 3, not " + quoted_for_display(text)});
    return pace;
}

tl::expected<LinesOrder, CallError> order_of(const Call& call) {
    LinesOrder order;
    order.inputs.assign(call.places.begin(), call.places.end());
    order.with_walk = !call.places.empty();
    order.unwalked = call.has("unwalked");
    if (!call.has("out")) return tl::unexpected(CallError{"--out is needed: a file for the lines"});
    order.out = *call.value("out");
    if (const auto ground = call.value("ground")) order.inputs.emplace_back(*ground);
    if (order.inputs.empty()) return tl::unexpected(CallError{"--ground or a WALK with its ground is needed"});
    if (order.unwalked && !order.with_walk)
        return tl::unexpected(CallError{"--unwalked needs the WALK that tells what was walked"});
    if (const auto text = call.value("see")) {
        const auto see = whole_number("see", *text, 1, 99);
        if (!see) return tl::unexpected(see.error());
        order.options.see = Probability::of(static_cast<double>(*see) / 100.0);
    }
    if (const auto text = call.value("walkers")) {
        const auto walkers = whole_number("walkers", *text, 1, 50);
        if (!walkers) return tl::unexpected(walkers.error());
        order.options.walkers = static_cast<std::size_t>(*walkers);
    }
    if (const auto text = call.value("pace")) {
        const auto pace = pace_of(*text);
        if (!pace) return tl::unexpected(pace.error());
        order.options.pace_m_per_s = *pace;
    }
    const std::string units = call.value("units").value_or("feet");
    if (units != "feet" && units != "metres")
        return tl::unexpected(CallError{"option --units wants feet or metres, not " + quoted_for_display(units)});
    if (units == "metres") order.units = LengthUnits::metres;
    return order;
}

std::string minutes(double seconds) { return std::to_string(static_cast<long>(seconds / 60.0 + 0.5)) + " min"; }

void tell(const WalkLines& lines, const LinesOrder& order) {
    std::printf(
        "Lines at most %s apart, to see about %d in 100 of the mounds; %s in all, %s for who takes longest, besides "
        "marking.\n",
        tape_reading(lines.spacing, order.units).c_str(), order.options.see.in_100(),
        ground_distance(lines.length, order.units).c_str(), minutes(lines.seconds).c_str());
    for (const WalkRoute& route : lines.routes)
        std::printf("  %s: %s\n", route.name.c_str(), route_in_words(route, order.units).c_str());
    for (const std::string& sentence : lines.sentences) std::printf("%s\n", sentence.c_str());
}

int run_lines(const Call& call, const std::stop_token& stop) {
    auto order = order_of(call);
    if (!order) return tell_call_error("lines", order.error());
    if (const auto names = check_output_names({order->out}, order->inputs); !names) return tell_refusal(names.error());
    TerminalProgress terminal;
    const auto field = read_field(order->inputs, terminal.piece(0.0, 0.4, stop));
    terminal.finish();
    if (!field) return tell_refusal(field.error());
    const Ground& ground = field->survey.ground;
    if (ground.boundary.empty())
        return tell_refusal({Refusal::Code::nothing_to_plan, order->inputs.back().filename().string(), "",
                             "no field boundary", "a boundary to lay lines in"});
    MultiPolygon part;
    std::string curve_words = "How far a walker sees is a default; a WALK with 40 marks or more tells it.";
    if (order->with_walk) {
        if (const auto unseen = not_seen(field->survey, {}, {}, terminal.piece(0.4, 0.8, stop))) {
            order->options.curve = unseen->detection.curve;
            curve_words = not_seen_sentences(*unseen, order->units).front();
        }
        if (stop.stop_requested()) return tell_stopped();
    }
    if (order->unwalked) {
        auto coverage =
            coverage_of(field->survey.walks, ground.boundary, NotSeenOptions{}.walked_reach, terminal.piece(0.8, 0.9, stop));
        if (!coverage) return tell_stopped();
        part = std::move(coverage->unwalked);
        terminal.finish();
        if (part.empty()) {
            std::puts("All of the field was walked: there is nothing to lay lines in, and nothing was written.");
            return exit_done;
        }
    }
    const WalkLines lines = walk_lines(ground, part, order->options);
    terminal.finish();
    if (stop.stop_requested()) return tell_stopped();
    const auto outcome =
        write_walk_route(lines, field->frame, field->field_name + ", walking lines", order->out, order->units);
    if (!outcome) return tell_refusal(outcome.error());
    for (const ReadFinding& finding : field->findings)
        std::fprintf(stderr, "%s, %s: %s\n", finding.file.c_str(), finding.place.c_str(), finding.sentence.c_str());
    std::printf("%s\n", curve_words.c_str());
    tell(lines, *order);
    std::printf("Written: %s\n", order->out.string().c_str());
    return exit_done;
}

}  // namespace

const Verb& lines_verb() {
    static const Verb verb{{"lines",
                            "WALK",
                            0,
                            1000,
                            "From the ground to lines for the next walk, as routes for a handheld.",
                            {{"ground", "FILE", "boundary, barriers and keep-clear areas (any file of layers)"},
                             {"out", "LINES.gpx", "write the lines"},
                             {"see", "N", "share of the mounds to see, in 100; 90 unless told"},
                             {"unwalked", "", "only where the WALK did not pass"},
                             {"walkers", "N", "share the lines among so many; 1 unless told"},
                             {"pace", "M/S", "of a searching walk, metres a second; 1 unless told"},
                             {"units", "feet|metres", "of the summary; feet (and inches) unless told"}},
                            "A WALK with marks tells how far this walker sees; without one a default is taken. Lines keep "
                            "clear of barriers and\n"
                            "keep-clear areas; look out for people, stock, machines and water on the way."},
                           run_lines};
    return verb;
}

}  // namespace plugside
