#include "core/systems/marks.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <tuple>
#include <unordered_map>

#include "core/geometry/near_places.h"
#include "core/geometry/space_curve.h"
#include "core/runs/take_off.h"
#include "core/systems/keyed_random.h"
#include "core/systems/two_threads.h"

namespace plugside {

namespace {

constexpr double corner_step_m = 1024.0;

void order_along_curve(std::vector<Mark>& marks, const Survey& survey) {
    double west = std::numeric_limits<double>::infinity();
    double south = west;
    for (const Mark& mark : marks) {
        west = std::min(west, mark.plug.east_m);
        south = std::min(south, mark.plug.north_m);
    }
    // a corner that stays when the outermost mark is nudged
    west = std::floor(west / corner_step_m) * corner_step_m;
    south = std::floor(south / corner_step_m) * corner_step_m;
    const auto rank = [&](const Mark& mark) {
        const Mound& mound = survey.mounds[mark.mound];
        return std::tuple(along_curve(mark.plug.east_m - west, mark.plug.north_m - south), mark.plug.east_m,
                          mark.plug.north_m, mark.fan ? mark.fan->degrees() : -1.0, mark.freshness, mound.kind, mound.time,
                          std::string_view(mound.name));
    };
    std::sort(marks.begin(), marks.end(), [&](const Mark& a, const Mark& b) { return rank(a) < rank(b); });
}

void give_keys(std::vector<Mark>& marks) {
    constexpr std::size_t surroundings = 5;
    std::vector<LocalPoint> plugs;
    plugs.reserve(marks.size());
    for (const Mark& mark : marks) plugs.push_back(mark.plug);
    const NearPlaces near(plugs);
    std::unordered_map<std::uint64_t, std::uint64_t> times_used;
    on_two_threads(marks.size(), {}, [&](std::size_t from, std::size_t to) {
        for (std::size_t i = from; i < to; ++i) {
            std::uint64_t key = 0x5EEDULL;
            for (const NearPlaces::Found& found : near.nearest(plugs[i], surroundings + 1))
                if (found.index != i) key = mixed(key, static_cast<std::uint64_t>(std::llround(found.distance_m * 1000.0)));
            marks[i].key = key;
        }
    });
    for (Mark& mark : marks)
        if (const std::uint64_t earlier = times_used[mark.key]++; earlier > 0) mark.key = mixed(mark.key, earlier);
}

}  // namespace

std::vector<Mark> marks_of(const Survey& survey, const PlanOptions& options) {
    std::vector<Mark> marks;
    for (std::size_t i = 0; i < survey.mounds.size(); ++i) {
        const Mound& mound = survey.mounds[i];
        if (why_not_used(survey, mound)) continue;
        const TakeOff take_off = take_off_of(mound.plug, mound.fan, mound.position_sd, options);
        marks.push_back({.mound = i,
                         .plug = mound.plug,
                         .take_off = take_off.at,
                         .fan = mound.fan,
                         .position_sd_m = mound.position_sd.value(),
                         .shared_sd_m = mound.shared_sd ? std::optional(mound.shared_sd->value()) : std::nullopt,
                         .sd_m = std::hypot(take_off.sd_along_m, take_off.sd_across_m) / std::sqrt(2.0),
                         .freshness = mound.freshness,
                         .time = mound.time,
                         .walk = mound.walk,
                         .key = 0});
    }
    order_along_curve(marks, survey);
    give_keys(marks);
    return marks;
}

}  // namespace plugside
