#include "core/walking/line_passes.h"

#include <algorithm>
#include <cmath>

#include "core/geometry/polyline.h"

namespace plugside {

namespace {

constexpr double longest_step_m = 2.0;
constexpr double one_pass_m = 5.0;

}  // namespace

std::vector<LinePasses::Step> LinePasses::steps_of(const std::vector<std::vector<TravelPiece>>& walks) {
    std::vector<Step> steps;
    for (std::size_t w = 0; w < walks.size(); ++w)
        for (std::size_t p = 0; p < walks[w].size(); ++p) {
            const auto& v = walks[w][p].line.vertices;
            const auto& way = walks[w][p].way_m;
            if (v.size() == 1) steps.push_back({w, p, v[0], v[0], way[0], way[0]});
            for (std::size_t i = 1; i < v.size(); ++i) {
                const double parts = std::max(1.0, std::ceil(distance_m(v[i - 1], v[i]) / longest_step_m));
                for (double k = 0.0; k < parts; k += 1.0)
                    steps.push_back({w, p, v[i - 1] + (v[i] - v[i - 1]) * (k / parts),
                                     v[i - 1] + (v[i] - v[i - 1]) * ((k + 1.0) / parts),
                                     std::lerp(way[i - 1], way[i], k / parts),
                                     std::lerp(way[i - 1], way[i], (k + 1.0) / parts)});
            }
        }
    return steps;
}

std::vector<LocalPoint> LinePasses::middles_of(const std::vector<Step>& steps) {
    std::vector<LocalPoint> middles;
    middles.reserve(steps.size());
    for (const Step& step : steps) middles.push_back(midpoint(step.from, step.to));
    return middles;
}

LinePasses::LinePasses(const std::vector<std::vector<TravelPiece>>& walks)
    : steps_(steps_of(walks)), near_(middles_of(steps_)) {}

std::vector<LinePass> LinePasses::near(LocalPoint place, Metres reach) const {
    std::vector<NearPlaces::Found> found = near_.within(place, reach.value() + 0.5 * longest_step_m);
    std::sort(found.begin(), found.end(), [](const auto& a, const auto& b) { return a.index < b.index; });
    std::vector<LinePass> passes;
    for (const auto& f : found) {
        const Step& step = steps_[f.index];
        const double m = distance_to_segment_m(place, step.from, step.to);
        if (m >= reach.value()) continue;
        if (!passes.empty()) {
            LinePass& last = passes.back();
            if (last.walk == step.walk && last.piece == step.piece && step.from_way_m - last.to_way_m < one_pass_m) {
                last.to_way_m = step.to_way_m;
                last.distance_m = std::min(last.distance_m, m);
                continue;
            }
        }
        passes.push_back({step.walk, step.piece, step.from_way_m, step.to_way_m, m});
    }
    return passes;
}

bool LinePasses::any_within(LocalPoint place, Metres reach) const {
    for (const auto& f : near_.within(place, reach.value() + 0.5 * longest_step_m))
        if (distance_to_segment_m(place, steps_[f.index].from, steps_[f.index].to) <= reach.value()) return true;
    return false;
}

}  // namespace plugside
