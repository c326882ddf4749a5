// A project of 5,000 marks and a track of 100,000 fixes: one act put into its file, and the whole of it written and opened.
// Beside each other in one run: the yardstick is a small file written anew and synced, which is what the disk itself takes.
#include <benchmark/benchmark.h>
#include <fcntl.h>
#include <unistd.h>

#include <cstdlib>
#include <filesystem>
#include <random>

#include "geo/store/project_store.h"

namespace plugside {
namespace {

class Folder {
public:
    Folder() {
        std::string pattern = (std::filesystem::temp_directory_path() / "plugside-benchmark-XXXXXX").string();
        if (mkdtemp(pattern.data()) == nullptr) std::abort();
        path_ = pattern;
    }
    ~Folder() {
        std::error_code ignored;
        std::filesystem::remove_all(path_, ignored);
    }
    Folder(const Folder&) = delete;
    Folder& operator=(const Folder&) = delete;
    [[nodiscard]] std::filesystem::path operator/(const char* name) const { return path_ / name; }

private:
    std::filesystem::path path_;
};

std::shared_ptr<const Project> large_project() {
    constexpr std::size_t marks = 5000, fixes = 100000;
    std::mt19937_64 random(5);
    std::uniform_real_distribution<double> metres(-500.0, 500.0);
    auto field = std::make_shared<FieldSurvey>();
    field->field_name = "Large field";
    field->frame = LocalFrame::centred_on({-120.0, 38.0});
    Survey& survey = field->survey;
    survey.walks.push_back({"walk 1", "walk.gpx", {TrackSegment{}}});
    for (std::size_t i = 0; i < fixes; ++i) {
        const UtcTime time{std::chrono::seconds(1772350000 + static_cast<long long>(i))};
        survey.walks[0].segments[0].push_back({{metres(random), metres(random)}, time});
    }
    for (std::size_t i = 0; i < marks; ++i) {
        Mound mound;
        mound.name = "M" + std::to_string(i);
        mound.plug = {metres(random), metres(random)};
        mound.fan = Bearing::degrees(metres(random));
        mound.note = "fan " + std::to_string(i % 360) + " fresh";
        survey.mounds.push_back(mound);
    }
    for (int i = 0; i < 200; ++i)
        survey.decisions.push_back({{ProbeKind::plug_side, "M" + std::to_string(i), ""}, SetChoice::kept, std::nullopt});
    Project project;
    project.field = std::move(field);
    return std::make_shared<const Project>(std::move(project));
}

using Act = void (*)(Survey&, int);

void one_act(benchmark::State& state, Act act) {
    const Folder folder;
    auto store = ProjectStore::make(folder / "field.plugside", large_project());
    if (!store) std::abort();
    Project now = *store->project();
    int number = 0;
    for (auto _ : state) {
        state.PauseTiming();  // the edit itself, which copies the survey
        auto field = std::make_shared<FieldSurvey>(*now.field);
        ++field->survey.revision;
        act(field->survey, ++number);
        now.field = std::move(field);
        auto shared = std::make_shared<const Project>(now);
        state.ResumeTiming();
        if (!store->keep(std::move(shared))) std::abort();
    }
}

void decision(benchmark::State& state) {
    one_act(state, [](Survey& survey, int number) {
        decide(survey, {{ProbeKind::plug_side, "M" + std::to_string(number % 5000), ""},
                        number % 2 == 0 ? SetChoice::kept : SetChoice::dropped,
                        std::nullopt});
    });
}

void moved_mark(benchmark::State& state) {
    one_act(state, [](Survey& survey, int number) {
        survey.mounds[static_cast<std::size_t>(number) * 37 % survey.mounds.size()].plug = {1.0 * number, 2.0};
    });
}

void drawn_barrier(benchmark::State& state) {
    one_act(state, [](Survey& survey, int number) {
        survey.ground.barriers = {{"ditch", {{{0.0, 0.0}, {1.0 * number, 5.0}}}}};
    });
}

void nothing_changed(benchmark::State& state) {
    one_act(state, [](Survey& survey, int) { --survey.revision; });
}

void whole_project_written(benchmark::State& state) {
    const Folder folder;
    const auto project = large_project();
    for (auto _ : state)
        if (!ProjectStore::make(folder / "field.plugside", project)) std::abort();
    state.counters["bytes"] = static_cast<double>(std::filesystem::file_size(folder / "field.plugside"));
}

void opened(benchmark::State& state) {
    const Folder folder;
    if (!ProjectStore::make(folder / "field.plugside", large_project())) std::abort();
    for (auto _ : state)
        if (!ProjectStore::open(folder / "field.plugside")) std::abort();
}

void yardstick_small_file_synced(benchmark::State& state) {
    const Folder folder;
    const std::string text(8192, 'x');
    for (auto _ : state) {
        const int file = ::open((folder / "small").c_str(), O_CREAT | O_WRONLY | O_TRUNC, 0600);
        if (file < 0 || ::write(file, text.data(), text.size()) < 0 || ::fsync(file) != 0) std::abort();
        ::close(file);
    }
}

BENCHMARK(decision)->UseRealTime()->Unit(benchmark::kMillisecond);
BENCHMARK(moved_mark)->UseRealTime()->Unit(benchmark::kMillisecond);
BENCHMARK(drawn_barrier)->UseRealTime()->Unit(benchmark::kMillisecond);
BENCHMARK(nothing_changed)->UseRealTime()->Unit(benchmark::kMillisecond);
BENCHMARK(whole_project_written)->UseRealTime()->Unit(benchmark::kMillisecond);
BENCHMARK(opened)->UseRealTime()->Unit(benchmark::kMillisecond);
BENCHMARK(yardstick_small_file_synced)->UseRealTime()->Unit(benchmark::kMillisecond);

}  // namespace
}  // namespace plugside
