#include "core/simulation/mounds_on_runs.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace plugside {

namespace {

constexpr double least_between_plugs_m = 0.4;
constexpr double depth_wobble_m = 0.02;
constexpr double depth_memory_m = 4.0;

struct LateralDrawer {
    const FieldScales& scales;
    Random& random;
    double system_depth_m;
    double wobble_m = 0.0;
    bool right = true;

    // The mound of a lateral that leaves the run at `junction`, `travelled_m` after the last one.
    TrueMound draw(LocalPoint junction, Bearing along, double travelled_m) {
        const double memory = std::exp(-travelled_m / depth_memory_m);
        wobble_m = memory * wobble_m + random.normal(0.0, depth_wobble_m * std::sqrt(1.0 - memory * memory));
        const double depth = std::clamp(system_depth_m + wobble_m, least_depth_m, most_depth_m);
        const double slope = std::clamp(random.normal(scales.slope_degrees, scales.slope_sd_degrees), 28.0, 65.0);
        if (!random.chance(scales.side_keeping)) right = !right;
        const double lean = random.normal(0.0, scales.lean_sd_degrees);
        const Bearing lateral = along.turned((right ? 90.0 : -90.0) + lean);
        TrueMound mound;
        mound.run_junction = junction;
        mound.plug = junction + lateral.unit() * (depth / std::tan(slope * std::numbers::pi / 180.0));
        mound.fan = lateral.turned(random.normal(0.0, scales.fan_spread_degrees));
        return mound;
    }
};

std::optional<Bearing> direction_at(const Polyline& run, std::size_t i) {
    const std::size_t last = run.vertices.size() - 1;
    return Bearing::along(run.vertices[std::min(i + 1, last)] - run.vertices[i > 0 ? i - 1 : 0]);
}

}  // namespace

void put_mounds_on(const GrownSystem& grown, const FieldScales& scales, FieldTruth& truth, Random& random) {
    const std::size_t system = truth.systems;
    const double depth = std::clamp(random.normal(scales.depth_m, scales.depth_between_sd_m), least_depth_m, most_depth_m);
    LateralDrawer drawer{scales, random, depth};
    std::vector<TrueMound> mounds;
    for (std::size_t number = 0; number < grown.runs.size(); ++number) {
        const Polyline& run = grown.runs[number];
        double travelled = 0.0;  // since the last lateral, or the run's start
        double stretched = 0.0;  // the same, where metres count for less the farther apart mounds stand
        double next = random.uniform(0.2, 1.0) * random.gamma_about(scales.spacing_m, scales.spacing_variation);
        for (std::size_t i = 1; i < run.vertices.size(); ++i) {
            const double step = distance_m(run.vertices[i - 1], run.vertices[i]);
            travelled += step;
            stretched += grown.spacing_factors.empty() ? step : step / grown.spacing_factors[number][i];
            if (stretched < next) continue;
            const auto along = direction_at(run, i);
            if (!along) continue;
            TrueMound mound = drawer.draw(run.vertices[i], *along, travelled);
            mound.system = system;
            travelled = 0.0;
            stretched = 0.0;
            next = random.gamma_about(scales.spacing_m, scales.spacing_variation);
            const bool too_near = std::any_of(mounds.begin(), mounds.end(), [&](const TrueMound& other) {
                return distance_m(other.plug, mound.plug) < least_between_plugs_m;
            });
            if (!too_near) mounds.push_back(mound);
        }
    }
    if (mounds.empty()) return;
    truth.mounds.insert(truth.mounds.end(), mounds.begin(), mounds.end());
    for (const Polyline& run : grown.runs) truth.runs.push_back({system, run, Metres::of(depth)});
    ++truth.systems;
}

}  // namespace plugside
