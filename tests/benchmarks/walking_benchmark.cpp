// Coverage, neighbours and walking order, by the number of points or places.
#include <benchmark/benchmark.h>

#include <cmath>
#include <cstdint>
#include <ctime>
#include <numbers>
#include <optional>
#include <random>

#include "core/geometry/delaunay.h"
#include "core/walking/coverage.h"
#include "core/walking/visiting_order.h"
#include "core/walking/walking_ways.h"

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

// Bent lines of two to seven vertices, each up to a third of the field long.
Ground with_barriers(int barriers, double side_m) {
    std::mt19937_64 random(50);
    std::uniform_real_distribution<double> anywhere(0.0, side_m), turn(-0.6, 0.6), heading(0.0, 2.0 * std::numbers::pi),
        step(5.0, side_m / 16.0);
    Ground ground;
    for (int i = 0; i < barriers; ++i) {
        Barrier barrier{"ditch", {{{anywhere(random), anywhere(random)}}}};
        double way = heading(random);
        for (std::size_t more = 1 + random() % 6; more > 0; --more, way += turn(random))
            barrier.line.vertices.push_back(barrier.line.vertices.back() +
                                            LocalVector{std::sin(way), std::cos(way)} * step(random));
        ground.barriers.push_back(barrier);
    }
    return ground;
}

double processor_seconds() { return static_cast<double>(std::clock()) / static_cast<double>(CLOCKS_PER_SEC); }

// True ways around fifty barriers, from a start and back: ways, then the order. Beside it when the first usable order was there.
void walking_order_among_barriers(benchmark::State& state) {
    const auto count = static_cast<std::size_t>(state.range(0));
    const std::vector<LocalPoint> places = scattered(count);
    const Ground ground = with_barriers(50, 10.0 * std::sqrt(static_cast<double>(count)));
    double first = 0.0;
    double shorter = 0.0;
    for (auto step : state) {
        const double begin = processor_seconds();
        std::optional<double> told;
        const WalkingWays ways(ground);
        VisitingOptions options;
        options.ways = &ways;
        options.start = options.end = LocalPoint{0, 0};
        std::vector<std::size_t> first_order;
        options.better = [&](const std::vector<std::size_t>& order) {
            if (told) return;
            told = processor_seconds() - begin;
            first_order = order;
        };
        const std::vector<std::size_t> order = visiting_order(places, options);
        benchmark::DoNotOptimize(order.data());
        state.PauseTiming();
        first = *told;
        shorter = 1.0 - tour_length(places, order, options).value() / tour_length(places, first_order, options).value();
        state.ResumeTiming();
    }
    state.counters["first_order_cpu_s"] = first;
    state.counters["shorter_than_first_%"] = 100.0 * shorter;
}
BENCHMARK(walking_order_among_barriers)->Arg(80)->Arg(1300)->Arg(5000)->Unit(benchmark::kMillisecond);

}  // namespace
}  // namespace plugside
