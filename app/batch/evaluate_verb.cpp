// plugside-batch evaluate: what the plans of made-up fields are worth, as a table and as a report to read.
#include <cstdio>
#include <filesystem>
#include <limits>
#include <sstream>
#include <vector>

#include "app/batch/evaluation.h"
#include "app/batch/evaluation_report.h"
#include "app/batch/left_out_weights.h"
#include "app/batch/outcome_words.h"
#include "app/batch/output_names.h"
#include "app/batch/sample_fields.h"
#include "app/batch/terminal_progress.h"
#include "app/batch/verbs.h"
#include "geo/write/safe_file.h"

namespace plugside {

namespace {

tl::expected<std::vector<FieldKind>, CallError> kinds_from(const std::string& words) {
    std::vector<FieldKind> kinds;
    std::istringstream list(words);
    for (std::string word; std::getline(list, word, ',');) {
        const auto kind = field_kind_from_word(word);
        if (!kind)
            return tl::unexpected(CallError{"option --kinds wants a list out of " + all_field_kind_words() + ", not " +
                                            quoted_for_display(word)});
        kinds.push_back(*kind);
    }
    return kinds;
}

tl::expected<EvaluationOptions, CallError> options_of(const Call& call) {
    EvaluationOptions options;
    options.kinds = all_field_kinds();
    const auto seeds = whole_number("seeds", call.value("seeds").value_or("6"), 1, 100000);
    if (!seeds) return tl::unexpected(seeds.error());
    options.seeds = *seeds;
    if (const auto words = call.value("fields")) {
        if (call.has("seeds")) return tl::unexpected(CallError{"options --fields and --seeds exclude each other"});
        const auto fields = whole_number("fields", *words, 1, 100000);
        if (!fields) return tl::unexpected(fields.error());
        options.fields = *fields;
    }
    const auto first =
        whole_number("first-seed", call.value("first-seed").value_or("1"), 0, std::numeric_limits<std::uint32_t>::max());
    if (!first) return tl::unexpected(first.error());
    options.first_seed = *first;
    const auto mounds = whole_number("mounds", call.value("mounds").value_or("300"), 1, 100000);
    if (!mounds) return tl::unexpected(mounds.error());
    options.mounds = static_cast<std::size_t>(*mounds);
    if (const auto words = call.value("kinds")) {
        const auto kinds = kinds_from(*words);
        if (!kinds) return tl::unexpected(kinds.error());
        options.kinds = *kinds;
    }
    return options;
}

int run_evaluate(const Call& call, const std::stop_token& stop) {
    auto options = options_of(call);
    if (!options) return tell_call_error("evaluate", options.error());
    const auto out = call.value("out");
    const auto report = call.value("report");
    std::vector<std::filesystem::path> outputs;
    for (const auto& output : {out, report})
        if (output) outputs.emplace_back(*output);
    if (const auto names = check_output_names(outputs, {}); !names) return tell_refusal(names.error());
    options->weights = [](FieldKind kind) { return WeightsOfKind{&weights_without(kind), true}; };
    options->reference = [](const Survey& survey, FieldKind /*kind*/, const Progress& progress) -> std::optional<Plan> {
        auto made = make_plan_with_posterior(survey, {}, first_form_weights(), progress);
        if (!made) return std::nullopt;
        return std::move(made->plan);
    };
    TerminalProgress terminal;
    const auto results = evaluate_fields(*options, stop, [&](std::size_t done, std::size_t of) {
        terminal.say(static_cast<double>(done) / static_cast<double>(of),
                     "field " + std::to_string(done) + " of " + std::to_string(of));
    });
    terminal.finish();
    if (!results) return tell_stopped();
    std::fputs(table_of(*results).c_str(), stdout);
    if (out)
        if (const auto written = write_text_file(*out, csv_of(*results)); !written) return tell_refusal(written.error());
    if (report)
        if (const auto written = write_text_file(*report, report_of(*results)); !written)
            return tell_refusal(written.error());
    for (const auto& output : outputs) std::printf("Written: %s\n", output.string().c_str());
    return exit_done;
}

}  // namespace

const Verb& evaluate_verb() {
    static const Verb verb{{"evaluate",
                            "",
                            0,
                            0,
                            "Plans made-up fields, each kind with what was learnt without it, and scores the plans against the truth.",
                            {{"fields", "N", "fields in all, spread evenly over the kinds"},
                             {"seeds", "N", "or: fields of each kind; 6 unless told"},
                             {"first-seed", "K", "seeds K, K+1, ...; 1 unless told"},
                             {"kinds", "LIST", "out of " + all_field_kind_words() + ", with commas; all unless told"},
                             {"mounds", "N", "about how many mounds a field; 300 unless told"},
                             {"out", "TABLE.csv", "write a row a field"},
                             {"report", "REPORT.html", "write a page with diagrams, whole in itself"}},
                            ""},
                           run_evaluate};
    return verb;
}

}  // namespace plugside
