// plugside-batch simulate: a made-up field with its walk and, apart from it, what is really there.
#include <cstdio>
#include <filesystem>
#include <limits>

#include "app/batch/outcome_words.h"
#include "app/batch/sample_fields.h"
#include "app/batch/verbs.h"
#include "core/simulation/field_picture.h"
#include "geo/write/ground_layers.h"
#include "geo/write/picture_file.h"
#include "geo/write/truth_layers.h"
#include "geo/write/walk_gpx.h"

namespace plugside {

namespace {

namespace fs = std::filesystem;

constexpr const char* imagery_name = "imagery.tif";

tl::expected<SampleField, CallError> made_to_order(const Call& call) {
    if (const auto name = call.value("sample")) {
        const SampleField* sample = find_sample(*name);
        if (!sample) return tl::unexpected(CallError{"there is no sample " + quoted_for_display(*name)});
        for (const char* fixed : {"seed", "kind", "mounds", "with-ground"})
            if (call.has(fixed))
                return tl::unexpected(CallError{"--sample fixes what --" + std::string(fixed) + " would choose"});
        return *sample;
    }
    SampleField made{"made-up-field", "Made-up field", {}};
    if (!call.has("seed")) return tl::unexpected(CallError{"--seed or --sample is needed"});
    const auto seed = whole_number("seed", *call.value("seed"), 0, std::numeric_limits<std::uint64_t>::max());
    if (!seed) return tl::unexpected(seed.error());
    made.options.seed = *seed;
    if (const auto word = call.value("kind")) {
        const auto kind = field_kind_from_word(*word);
        if (!kind)
            return tl::unexpected(
                CallError{"option --kind wants one of " + all_field_kind_words() + ", not " + quoted_for_display(*word)});
        made.options.kind = *kind;
    }
    if (const auto text = call.value("mounds")) {
        const auto mounds = whole_number("mounds", *text, 0, 1000000);
        if (!mounds) return tl::unexpected(mounds.error());
        made.options.mounds_wanted = static_cast<std::size_t>(*mounds);
    }
    made.options.with_ground = call.has("with-ground");
    made.title = "Made-up field, " + to_text(made.options.kind) + ", seed " + std::to_string(made.options.seed);
    return made;
}

tl::expected<void, Refusal> write_field(const SampleField& made, const SimulatedField& field, const fs::path& folder) {
    const LocalFrame frame = LocalFrame::centred_on(made_up_place());
    auto outcome = write_walk(field.survey, frame, made.title, folder / "walk.gpx");
    if (outcome && made.options.with_ground) outcome = write_ground(field.survey.ground, frame, folder / "ground.gpkg");
    if (outcome) outcome = write_truth(field, frame, folder / "truth.gpkg");
    return outcome;
}

int run_simulate(const Call& call, const std::stop_token& stop) {
    const auto made = made_to_order(call);
    if (!made) return tell_call_error("simulate", made.error());
    if (!call.has("out")) return tell_call_error("simulate", {"--out is needed: a folder to write to"});
    const fs::path folder = *call.value("out");
    std::error_code error;
    fs::create_directories(folder, error);
    if (!fs::is_directory(folder, error))
        return tell_refusal({Refusal::Code::cannot_write, folder.string(), "", "no folder that could be made or used",
                             "a folder that can be written to"});
    const SimulatedField field = made_field(*made);
    if (stop.stop_requested()) return tell_stopped();
    if (const auto outcome = write_field(*made, field, folder); !outcome) return tell_refusal(outcome.error());
    if (call.has("imagery")) {
        const FieldPicture picture = picture_of_field(field, {.seed = made->options.seed}, stop);
        if (stop.stop_requested()) return tell_stopped();
        const auto written = write_picture(picture, LocalFrame::centred_on(made_up_place()), folder / imagery_name);
        if (!written) return tell_refusal(written.error());
    }
    std::printf("%s: %zu marks of %zu mounds (simulated), %zu animals.\n", made->title.c_str(), field.survey.mounds.size(),
                field.truth.mounds.size(), field.truth.systems);
    for (const char* name : {"walk.gpx", "ground.gpkg", "truth.gpkg"})
        if (made->options.with_ground || std::string(name) != "ground.gpkg")
            std::printf("Written: %s\n", (folder / name).string().c_str());
    if (call.has("imagery")) std::printf("Written: %s\n", (folder / imagery_name).string().c_str());
    return exit_done;
}

}  // namespace

const Verb& simulate_verb() {
    static const Verb verb{
        {"simulate",
         "",
         0,
         0,
         "A made-up field: a walk as a handheld would give it and, beside it, the truth.",
         {{"seed", "N", "which field; the same seed gives the same files"},
          {"out", "DIR", "folder for walk.gpx, truth.gpkg and perhaps ground.gpkg; made where it is missing"},
          {"kind", "KIND", all_field_kind_words()},
          {"mounds", "N", "about how many mounds; 300 unless told"},
          {"with-ground", "", "with a boundary, a ditch as barrier, a house as keep-clear area"},
          {"imagery", "", "also imagery.tif: what a camera above the field would have seen"},
          {"sample", "NAME", "makes a sample project's files again: creek-meadow, school-field"}},
         "All is invented: the place, about 41.0 N 104.9 W, is a round pair of degrees and no real farm."},
        run_simulate};
    return verb;
}

}  // namespace plugside
