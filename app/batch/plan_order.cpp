#include "app/batch/plan_order.h"

#include <algorithm>

#include "app/batch/output_names.h"

namespace plugside {

namespace {

namespace fs = std::filesystem;

// The value of an option that is one of two words; `first` where it is not told.
tl::expected<bool, CallError> is_second(const Call& call, const char* option, const char* first, const char* second) {
    const std::string told = call.value(option).value_or(first);
    if (told == first || told == second) return told == second;
    return tl::unexpected(CallError{std::string("option --") + option + " wants " + first + " or " + second + ", not " +
                                    quoted_for_display(told)});
}

std::string known_endings() {
    std::string text;
    for (const HandOutFormat format : all_hand_out_formats)
        if (format != HandOutFormat::gpx_route) text.append(text.empty() ? "" : ", ").append(ending_of(format));
    return text;
}

tl::expected<void, CallError> take_formats(const Call& call, HandOut& what) {
    if (const auto file = call.value("out")) what.files.push_back({HandOutFormat::geopackage, *file});
    if (const auto file = call.value("waypoints")) what.files.push_back({HandOutFormat::gpx_waypoints, *file});
    if (const auto file = call.value("route")) what.files.push_back({HandOutFormat::gpx_route, *file});
    for (const std::string& file : call.values("export")) {
        const auto format = format_of_ending(file);
        if (!format)
            return tl::unexpected(CallError{"option --export wants a name that ends in one of " + known_endings() +
                                            ", not " + quoted_for_display(file)});
        what.files.push_back({*format, file});
    }
    what.sheets = call.value("sheets").value_or("");
    what.phone = call.value("phone").value_or("");
    if (call.has("with-private")) what.private_rows = PrivateRows::included;
    return {};
}

std::vector<fs::path> all_files(const HandOut& what) {
    std::vector<fs::path> files;
    for (const auto& [format, file] : what.files)
        for (const fs::path& one : files_of(format, file)) files.push_back(one);
    for (const fs::path& file : {what.sheets, what.phone})
        if (!file.empty()) files.push_back(file);
    return files;
}

}  // namespace

bool PlanOrder::draws() const {
    return picture || !what.sheets.empty() || !what.phone.empty() || what.sheet_language != Language::english;
}

HandOut PlanOrder::only_to_go_on() const {
    HandOut left = what;
    std::erase_if(left.files, [](const HandOutFile& one) { return one.format != HandOutFormat::geopackage; });
    left.sheets.clear();
    left.phone.clear();
    return left;
}

std::vector<fs::path> PlanOrder::kept_back() const {
    HandOut gone = what;
    std::erase_if(gone.files, [](const HandOutFile& one) { return one.format == HandOutFormat::geopackage; });
    return all_files(gone);
}

std::vector<OptionRule> plan_options() {
    return {{"ground", "FILE", "boundary, barriers and keep-clear areas (any file of layers)"},
            {"out", "PLAN.gpkg", "write every layer of the plan, to go on from"},
            {"waypoints", "SETS.gpx", "write the set points for a handheld"},
            {"route", "SETS.gpx", "write the set points as one route"},
            {"export", "FILE", "write the plan as its ending says, any number of times: " + known_endings(), true},
            {"with-private", "", "names of people, licence numbers, reasons and notes go out, too"},
            {"picture", "MAP.png", "draw the map"},
            {"sheets", "SHEETS.pdf", "field sheets to print: map, cautions, what to load, list, a card a set, log"},
            {"paper", "letter|a4", "of the sheets; letter unless told"},
            {"phone", "PHONE.html", "the sheets as one page for a phone"},
            {"language", "en|es", "of what is written and said; English unless told"},
            {"units", "feet|metres", "of instructions and summary; feet (and inches) unless told"},
            {"summary", "", "say a line on each system, too"},
            {"conditions", "FILE", "answers under which the work is done, a line each: name = value"},
            {"method", "NAME", "way of working: " + all_method_ids({})},
            {"label", "FILE", "figures typed from the label in hand, and the dose, a line each: name = value"},
            {"drop-stopped", "", "drop the sets that meet a stop, and plan again without them"},
            {"day", "DAY", "of the work, as 2025-04-10, by which answers are old; today unless told"}};
}

tl::expected<PlanOrder, CallError> plan_order_of(const Call& call) {
    PlanOrder order;
    order.inputs.assign(call.places.begin(), call.places.end());
    if (const auto ground = call.value("ground")) order.inputs.emplace_back(*ground);
    if (const auto formats = take_formats(call, order.what); !formats) return tl::unexpected(formats.error());
    order.picture = call.value("picture");
    const auto metres = is_second(call, "units", "feet", "metres");
    const auto a4 = is_second(call, "paper", "letter", "a4");
    const auto spanish = is_second(call, "language", "en", "es");
    for (const auto* told : {&metres, &a4, &spanish})
        if (!*told) return tl::unexpected(told->error());
    order.what.units = *metres ? LengthUnits::metres : LengthUnits::feet_and_inches;
    order.what.paper = *a4 ? Paper::a4 : Paper::letter;
    order.what.sheet_language = *spanish ? Language::spanish : Language::english;
    order.each_system = call.has("summary");
    order.drop_stopped = call.has("drop-stopped");
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

tl::expected<void, Refusal> check_names(const PlanOrder& order) {
    std::vector<fs::path> outputs = all_files(order.what);
    if (order.picture) outputs.push_back(*order.picture);
    std::vector<fs::path> inputs = order.inputs;
    for (const auto& input : {order.work.conditions, order.work.label})
        if (input) inputs.push_back(*input);
    return check_output_names(outputs, inputs);
}

}  // namespace plugside
