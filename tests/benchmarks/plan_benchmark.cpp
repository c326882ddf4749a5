// A whole plan by the number of mounds, beside a yardstick of the same run: a kd-tree over the same places and the eight
// nearest of each. The counter `yardsticks` is the plan's time over the yardstick's: it says more than seconds on a machine
// that others use too.
#include <benchmark/benchmark.h>

#include <chrono>
#include <cstddef>
#include <nanoflann.hpp>
#include <stop_token>
#include <vector>

#include "core/plan/make_plan.h"
#include "core/plan/plan_nearby.h"
#include "core/simulation/burrow_simulator.h"

namespace plugside {
namespace {

using Clock = std::chrono::steady_clock;

struct Cloud {
    const std::vector<Mound>& mounds;
    [[nodiscard]] std::size_t kdtree_get_point_count() const { return mounds.size(); }
    [[nodiscard]] double kdtree_get_pt(std::size_t i, std::size_t axis) const {
        return axis == 0 ? mounds[i].plug.east_m : mounds[i].plug.north_m;
    }
    template <class Box>
    bool kdtree_get_bbox(Box&) const {
        return false;
    }
};

double seconds_since(Clock::time_point begin) { return std::chrono::duration<double>(Clock::now() - begin).count(); }

double yardstick_seconds(const std::vector<Mound>& mounds) {
    using Tree = nanoflann::KDTreeSingleIndexAdaptor<nanoflann::L2_Simple_Adaptor<double, Cloud>, Cloud, 2, std::size_t>;
    const auto begin = Clock::now();
    const Cloud cloud{mounds};
    Tree tree(2, cloud);
    tree.buildIndex();
    std::size_t found[8] = {};
    double squared[8] = {};
    for (const Mound& mound : mounds) {
        const double query[2] = {mound.plug.east_m, mound.plug.north_m};
        benchmark::DoNotOptimize(tree.knnSearch(query, 8, found, squared));
    }
    return seconds_since(begin);
}

void plan(benchmark::State& state) {
    SimulationOptions options;
    options.mounds_wanted = static_cast<std::size_t>(state.range(0));
    options.with_ground = true;
    const Survey survey = simulate_field(options).survey;
    double plan_seconds = 0.0;
    double yardstick = 0.0;
    for (auto step : state) {
        const auto begin = Clock::now();
        benchmark::DoNotOptimize(make_plan(survey));
        plan_seconds += seconds_since(begin);
        state.PauseTiming();
        yardstick += yardstick_seconds(survey.mounds);
        state.ResumeTiming();
    }
    state.counters["marks"] = static_cast<double>(survey.mounds.size());
    state.counters["yardsticks"] = plan_seconds / yardstick;
}
BENCHMARK(plan)->Arg(300)->Arg(5000)->Arg(20000)->Unit(benchmark::kMillisecond);

// Until a first look can be shown.
void first_look(benchmark::State& state) {
    SimulationOptions options;
    options.mounds_wanted = static_cast<std::size_t>(state.range(0));
    options.with_ground = true;
    const Survey survey = simulate_field(options).survey;
    for (auto step : state) {
        std::stop_source enough;
        const auto begin = Clock::now();
        double seconds = 0.0;
        const PlanWishes wishes{{}, [&](const Plan&) {
                                    seconds = seconds_since(begin);
                                    enough.request_stop();
                                }};
        benchmark::DoNotOptimize(make_plan(survey, {}, {enough.get_token(), {}}, wishes));
        state.SetIterationTime(seconds);
    }
    state.counters["marks"] = static_cast<double>(survey.mounds.size());
}
BENCHMARK(first_look)->Arg(300)->Arg(5000)->Arg(20000)->Unit(benchmark::kMillisecond)->UseManualTime();

// A mound that is being moved, while the hand is on it.
void nearby(benchmark::State& state) {
    SimulationOptions options;
    options.mounds_wanted = static_cast<std::size_t>(state.range(0));
    options.with_ground = true;
    Survey survey = simulate_field(options).survey;
    std::size_t next = 0;
    for (auto step : state) {
        next = (next + 997) % survey.mounds.size();
        Mound& mound = survey.mounds[next];
        const LocalPoint before = mound.plug;
        mound.plug = before + LocalVector{0.4, 0.3};
        benchmark::DoNotOptimize(plan_nearby(survey, {before, mound.plug}));
    }
    state.counters["marks"] = static_cast<double>(survey.mounds.size());
}
BENCHMARK(nearby)->Arg(300)->Arg(5000)->Unit(benchmark::kMillisecond)->UseRealTime();

// The coarse form of a whole plan, without a track.
void coarse_plan(benchmark::State& state) {
    SimulationOptions options;
    options.mounds_wanted = static_cast<std::size_t>(state.range(0));
    Survey survey = simulate_field(options).survey;
    survey.walks.resize(1);
    survey.walks.front().segments.clear();
    for (Mound& mound : survey.mounds) mound.walk = 0;
    for (auto step : state) benchmark::DoNotOptimize(make_plan(survey));
    state.counters["marks"] = static_cast<double>(survey.mounds.size());
}
BENCHMARK(coarse_plan)->Arg(100000)->Arg(1000000)->Unit(benchmark::kMillisecond)->UseRealTime();

}  // namespace
}  // namespace plugside
