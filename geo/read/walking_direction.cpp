#include "geo/read/walking_direction.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace plugside {

namespace {

constexpr double least_m = 4.0;
constexpr std::chrono::minutes longest_gap{10};
constexpr double metres_a_degree = 111'195.0;  // of a sphere of 6371 km; only directions over a few metres are taken from it

// The step from one place to another in metres east and north, the short way round.
LocalVector step(GeographicPoint from, GeographicPoint to) {
    const double east = std::remainder(to.longitude_degrees - from.longitude_degrees, 360.0);
    const double narrower = std::cos(from.latitude_degrees * std::numbers::pi / 180.0);
    return {east * narrower * metres_a_degree, (to.latitude_degrees - from.latitude_degrees) * metres_a_degree};
}

}  // namespace

TrackTimes::TrackTimes(const std::vector<std::vector<GeographicTrackPoint>>& segments) {
    for (const auto& segment : segments)
        for (const GeographicTrackPoint& point : segment)
            if (point.time) fixes_.push_back({*point.time, point.at});
    std::stable_sort(fixes_.begin(), fixes_.end(), [](const Fix& a, const Fix& b) { return a.time < b.time; });
}

std::optional<Bearing> TrackTimes::walking_direction(GeographicPoint mark, std::optional<UtcTime> time) const {
    if (!time || fixes_.empty()) return std::nullopt;
    const auto after =
        std::upper_bound(fixes_.begin(), fixes_.end(), *time, [](UtcTime t, const Fix& fix) { return t < fix.time; });
    GeographicPoint from = mark;
    GeographicPoint to = mark;
    for (auto fix = after; fix != fixes_.begin() && *time - (fix - 1)->time <= longest_gap; --fix) {
        from = (fix - 1)->at;
        if (step(from, mark).length_m() >= least_m) break;
    }
    for (auto fix = after; fix != fixes_.end() && fix->time - *time <= longest_gap; ++fix) {
        to = fix->at;
        if (step(mark, to).length_m() >= least_m) break;
    }
    const LocalVector walked = step(from, to);
    if (!(walked.length_m() >= least_m)) return std::nullopt;
    return Bearing::along(walked);
}

}  // namespace plugside
