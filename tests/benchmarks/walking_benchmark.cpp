// Coverage, neighbours and walking order, by the number of points or places.
#include <benchmark/benchmark.h>

#include <cmath>
#include <cstdint>
#include <random>

#include "core/geometry/delaunay.h"
#include "core/walking/coverage.h"
#include "core/walking/visiting_order.h"

namespace plugside {
namespace {

std::vector<LocalPoint> scattered(std::size_t count) {
    std::mt19937_64 random(count);
    std::uniform_real_distribution<double> anywhere(0.0, 10.0 * std::sqrt(static_cast<double>(count)));
    std::vector<LocalPoint> places(count);
    for (LocalPoint& p : places) p = {anywhere(random), anywhere(random)};
    return places;
}

// A walk that turns at random within 400 m x 400 m and so crosses itself ever more often: the case in which one buffer of
// the whole takes a minute at 20,000 points.
Walk wandering_walk(std::size_t points) {
    std::mt19937_64 random(4);
    std::normal_distribution<double> turn(0.0, 0.3);
    Walk walk{"walk 1", "walk.gpx", {{TrackPoint{{200, 200}, std::nullopt}}}};
    for (double heading = 0.0; walk.segments[0].size() < points;) {
        heading += turn(random);
        const LocalPoint here = walk.segments[0].back().at;
        const LocalPoint next = here + LocalVector{1.4 * std::sin(heading), 1.4 * std::cos(heading)};
        const bool inside = next.east_m > 0 && next.east_m < 400 && next.north_m > 0 && next.north_m < 400;
        if (!inside) heading += 1.5;
        walk.segments[0].push_back({inside ? next : here, std::nullopt});
    }
    return walk;
}

void coverage(benchmark::State& state) {
    const std::vector<Walk> walks{wandering_walk(static_cast<std::size_t>(state.range(0)))};
    const MultiPolygon field{{{{{{0, 0}, {400, 0}, {400, 400}, {0, 400}}}, {}}}};
    for (auto step : state) benchmark::DoNotOptimize(coverage_of(walks, field, Metres::of(5.0)));
}
BENCHMARK(coverage)->Arg(1000)->Arg(5000)->Arg(20000)->Unit(benchmark::kMillisecond);

void neighbours(benchmark::State& state) {
    const std::vector<LocalPoint> places = scattered(static_cast<std::size_t>(state.range(0)));
    for (auto step : state) benchmark::DoNotOptimize(delaunay_edges(places));
}
BENCHMARK(neighbours)->Arg(300)->Arg(5000)->Arg(20000)->Unit(benchmark::kMillisecond);

void walking_order(benchmark::State& state) {
    const std::vector<LocalPoint> places = scattered(static_cast<std::size_t>(state.range(0)));
    for (auto step : state) benchmark::DoNotOptimize(visiting_order(places));
}
BENCHMARK(walking_order)->Arg(80)->Arg(1300)->Arg(5000)->Unit(benchmark::kMillisecond);

}  // namespace
}  // namespace plugside
