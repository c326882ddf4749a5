// A walk's file read, judged and written as a survey, by the number of track points; a fifth as many marks.
#include <benchmark/benchmark.h>

#include <cstdlib>
#include <filesystem>
#include <random>

#include "core/mending/answered_findings.h"
#include "core/walking/coverage.h"
#include "geo/read/field_reader.h"
#include "geo/write/survey_file.h"
#include "geo/write/walk_gpx.h"

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

// To and fro on lines 10 m apart, a fix a second and a metre, a mound beside every fifth.
Survey to_and_fro(std::size_t points) {
    constexpr std::size_t line = 1000;
    std::mt19937_64 random(points);
    std::normal_distribution<double> error(0.0, 0.3);
    std::uniform_real_distribution<double> aside(-4.0, 4.0);
    Survey survey;
    survey.walks.push_back({"walk 1", "walk.gpx", {TrackSegment{}}});
    for (std::size_t i = 0; i < points; ++i) {
        const std::size_t row = i / line, along = row % 2 == 0 ? i % line : line - 1 - i % line;
        const LocalPoint here{static_cast<double>(along) + error(random), 10.0 * static_cast<double>(row) + error(random)};
        const UtcTime time{std::chrono::seconds(1772350000 + static_cast<long long>(i))};
        survey.walks[0].segments[0].push_back({here, time});
        if (i % 5 != 0) continue;
        Mound mound;
        mound.name = "M" + std::to_string(i / 5);
        mound.plug = here + LocalVector{0.0, aside(random)};
        mound.time = time;
        mound.fan = Bearing::degrees(aside(random) * 45.0);
        mound.freshness = Freshness::fresh;
        survey.mounds.push_back(mound);
    }
    return survey;
}

void read_judge_write(benchmark::State& state) {
    const Folder folder;
    const auto made = to_and_fro(static_cast<std::size_t>(state.range(0)));
    if (!write_walk(made, LocalFrame::centred_on({-120.0, 38.25}), "To and fro", folder / "walk.gpx")) std::abort();
    for (auto step : state) {
        const auto field = read_field({folder / "walk.gpx"});
        SurveyJudged judged{*answered_findings(field->survey, field->of_reading), {}, {}};
        judged.coverage = coverage_of(field->survey.walks, field->survey.ground.boundary, NotSeenOptions{}.walked_reach);
        if (!write_survey(*field, judged, folder / "survey.gpkg")) std::abort();
    }
}
BENCHMARK(read_judge_write)->Arg(10000)->Arg(100000)->Unit(benchmark::kMillisecond);

void read_back(benchmark::State& state) {
    const Folder folder;
    FieldSurvey field;
    field.frame = LocalFrame::centred_on({-120.0, 38.25});
    field.survey = to_and_fro(static_cast<std::size_t>(state.range(0)));
    for (const Mound& mound : field.survey.mounds) {
        Mend mend;
        mend.kind = MendKind::turn_fans;
        mend.marks = {mound.name};
        mend.turn_degrees = 12.0;
        field.survey.answers.push_back({own_mend_id(MendKind::turn_fans, mound.name), Answer::accepted, mend});
    }
    put_right(field.survey);
    if (!write_survey(field, {}, folder / "survey.gpkg")) std::abort();
    for (auto step : state) benchmark::DoNotOptimize(read_field({folder / "survey.gpkg"}));
}
BENCHMARK(read_back)->Arg(10000)->Arg(100000)->Unit(benchmark::kMillisecond);

}  // namespace
}  // namespace plugside
