// The coarse form by the number of marks, from a thousand to a million, with a fit of its order of growth.
//
//   coarse_benchmark                       Google Benchmark
//   coarse_benchmark --partition FILE OUT  partitions places (pairs of native doubles) and writes labels (native 32-bit):
//   prints
//                                          seconds; for coarse_beside_dbscan.py, which runs another code on the same places
//   coarse_benchmark --fields MARKS OUT    writes the places of simulated fields glued together, the truth's system after
//   each
#include <benchmark/benchmark.h>

#include <chrono>
#include <cmath>
#include <cstdio>
#include <cstring>
#include <fstream>
#include <string>
#include <vector>

#include "core/simulation/burrow_simulator.h"
#include "core/simulation/random.h"
#include "core/systems/coarse_systems.h"

namespace plugside {
namespace {

// Clusters of 50 about places drawn evenly, standard deviation 12 m, one cluster to 20,000 m2.
std::vector<CoarseMark> clusters_of_fifty(std::size_t marks) {
    Random random(7);
    const double side_m = std::sqrt(static_cast<double>(marks) * 400.0);
    std::vector<CoarseMark> all;
    all.reserve(marks);
    LocalPoint middle;
    for (std::size_t i = 0; i < marks; ++i) {
        if (i % 50 == 0) middle = {random.uniform(0.0, side_m), random.uniform(0.0, side_m)};
        all.push_back({{random.normal(middle.east_m, 12.0), random.normal(middle.north_m, 12.0)}, {}});
    }
    return all;
}

void partition(benchmark::State& state) {
    const std::vector<CoarseMark> marks = clusters_of_fifty(static_cast<std::size_t>(state.range(0)));
    for (auto step : state) benchmark::DoNotOptimize(coarse_systems(marks));
    state.SetComplexityN(state.range(0));
}
BENCHMARK(partition)
    ->RangeMultiplier(10)
    ->Range(1000, 1000000)
    ->Unit(benchmark::kMillisecond)
    ->UseRealTime()
    ->Complexity(benchmark::oNLogN)
    ->Complexity(benchmark::oN);

int partition_file(const char* from, const char* to) {
    std::ifstream in(from, std::ios::binary | std::ios::ate);
    std::vector<LocalPoint> places(static_cast<std::size_t>(in.tellg()) / sizeof(LocalPoint));
    in.seekg(0);
    in.read(reinterpret_cast<char*>(places.data()), static_cast<std::streamsize>(places.size() * sizeof(LocalPoint)));
    std::vector<CoarseMark> marks(places.size());
    for (std::size_t i = 0; i < places.size(); ++i) marks[i].take_off = places[i];
    const auto begin = std::chrono::steady_clock::now();
    const auto found = coarse_systems(marks);
    std::printf("%.4f\n", std::chrono::duration<double>(std::chrono::steady_clock::now() - begin).count());
    std::ofstream out(to, std::ios::binary);
    out.write(reinterpret_cast<const char*>(found->system.data()),
              static_cast<std::streamsize>(found->system.size() * sizeof(std::uint32_t)));
    return in && out ? 0 : 1;
}

// Fields of 1,000 mounds of every kind, side by side with 200 m between them: east, north, system as three doubles a mark.
int write_fields(std::size_t marks_wanted, const char* to) {
    std::ofstream out(to, std::ios::binary);
    const std::vector<FieldKind> kinds = all_field_kinds();
    std::size_t written = 0;
    double systems_before = 0.0;
    double east_m = 0.0;
    for (std::uint64_t seed = 1; written < marks_wanted; ++seed) {
        SimulationOptions options;
        options.kind = kinds[seed % kinds.size()];
        options.seed = seed;
        options.mounds_wanted = 1000;
        const SimulatedField field = simulate_field(options);
        double east_most = east_m;
        for (const TrueMound& mound : field.truth.mounds) {
            if (!mound.seen_as || written == marks_wanted) continue;
            const LocalPoint plug = field.survey.mounds[*mound.seen_as].plug;
            const double row[3] = {east_m + plug.east_m, plug.north_m, systems_before + static_cast<double>(mound.system)};
            out.write(reinterpret_cast<const char*>(row), sizeof row);
            east_most = std::max(east_most, row[0]);
            ++written;
        }
        systems_before += static_cast<double>(field.truth.systems);
        east_m = east_most + 200.0;
    }
    return out ? 0 : 1;
}

}  // namespace
}  // namespace plugside

int main(int count, char** words) {
    if (count == 4 && std::strcmp(words[1], "--partition") == 0) return plugside::partition_file(words[2], words[3]);
    if (count == 4 && std::strcmp(words[1], "--fields") == 0) return plugside::write_fields(std::stoul(words[2]), words[3]);
    benchmark::Initialize(&count, words);
    benchmark::RunSpecifiedBenchmarks();
    return 0;
}
