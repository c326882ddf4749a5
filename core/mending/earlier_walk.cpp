#include "core/mending/earlier_walk.h"

#include <algorithm>
#include <cmath>
#include <set>

#include "core/geometry/near_places.h"
#include "core/mending/double_marks.h"
#include "core/mending/drift_filter.h"

namespace plugside {

namespace {

constexpr double farthest_m = 9.5;
constexpr std::size_t most_candidates = 80;

class LaterWalk {
public:
    LaterWalk(const Survey& survey, const WalkMarks& walk, const EarlierWalkOptions& options,
              const std::vector<std::size_t>& later, const std::vector<std::size_t>& earlier)
        : survey_(survey), walk_(walk), options_(options), later_(later) {
        std::vector<LocalPoint> places;
        for (const std::size_t i : earlier) places.push_back(walk.marks[i].place.at);
        const NearPlaces near(places);
        for (std::size_t k = 0; k < later.size(); ++k) steps_.push_back(step(k, near, earlier));
    }

    bool match(const Progress& progress, std::vector<MarkedBefore>& matches) {
        if (later_.empty()) return true;
        const PlaceError& error = walk_.marks[later_.front()].place.error;
        DriftScales scales{error.shared_m, error.memory_s, 0.4};
        // the share from the walk's first stretch: enough to tell it to a few in a hundred
        const std::vector<DriftStep> first(
            steps_.begin(), steps_.begin() + static_cast<std::ptrdiff_t>(std::min<std::size_t>(steps_.size(), 600)));
        for (int round = 0; round < 3; ++round) {
            if (progress.stopped()) return false;
            double expected = 0.0;
            for (const auto& step : follow_drift(first, scales))
                for (const Resting& resting : step) expected += resting.chance;
            scales.share = std::clamp(expected / static_cast<double>(first.size()), 0.02, 0.95);
        }
        const auto rests = follow_drift(steps_, scales, progress);
        if (rests.empty()) return false;
        for (std::size_t k = 0; k < steps_.size(); ++k)
            for (std::size_t c = 0; c < rests[k].size(); ++c)
                if (rests[k][c].chance >= options_.least_chance)
                    matches.push_back({later_[k], steps_[k].candidates[c].mark, rests[k][c].chance, rests[k][c].offset});
        return true;
    }

private:
    [[nodiscard]] DriftStep step(std::size_t k, const NearPlaces& near, const std::vector<std::size_t>& earlier) const {
        DriftStep result;
        const WalkMark& here = walk_.marks[later_[k]];
        const Mound& mound = survey_.mounds[here.mound];
        if (k > 0) {
            const PlacedMark& last = walk_.marks[later_[k - 1]].place;
            // another walker's marks are shifted by another receiver
            result.seconds_since_last =
                last.walk == here.place.walk ? seconds_between(last, here.place).value_or(30.0) : 1e9;
        }
        constexpr double other_drift_m = 0.25;  // of the earlier walk's marks from one to the next: our assumption
        result.sd_m = std::sqrt(2.0 * here.place.error.own_m * here.place.error.own_m + other_drift_m * other_drift_m);
        for (const NearPlaces::Found& found : near.nearest(mound.plug, most_candidates)) {
            if (found.distance_m > farthest_m) break;
            const WalkMark& there = walk_.marks[earlier[found.index]];
            const Mound& before = survey_.mounds[there.mound];
            result.candidates.push_back({earlier[found.index], mound.plug - before.plug,
                                         same_fan_ratio(mound.fan, before.fan, options_.fan_sd_degrees) / there.density_m2});
        }
        return result;
    }

    const Survey& survey_;
    const WalkMarks& walk_;
    const EarlierWalkOptions& options_;
    const std::vector<std::size_t>& later_;
    std::vector<DriftStep> steps_;
};

}  // namespace

std::vector<MarkedBefore> marked_before(const Survey& survey, const WalkMarks& walk, const EarlierWalkOptions& options,
                                        const Progress& progress) {
    const std::vector<std::size_t> visit = visits_of(survey, walk);
    std::size_t visits = 0;
    for (const std::size_t v : visit) visits = std::max(visits, v + 1);
    std::vector<std::vector<std::size_t>> of_visit(visits);  // in each, walk after walk, by the clock
    for (std::size_t i = 0; i < walk.marks.size(); ++i)
        if (is_gopher_sign(survey.mounds[walk.marks[i].mound].kind)) of_visit[visit[walk.marks[i].place.walk]].push_back(i);
    std::vector<MarkedBefore> matches;
    std::vector<std::size_t> earlier;
    for (const std::vector<std::size_t>& later : of_visit) {
        if (!earlier.empty() && !LaterWalk(survey, walk, options, later, earlier).match(progress, matches)) return {};
        earlier.insert(earlier.end(), later.begin(), later.end());
    }
    std::sort(matches.begin(), matches.end(), [](const MarkedBefore& a, const MarkedBefore& b) {
        return a.chance != b.chance ? a.chance > b.chance : std::pair(a.later, a.earlier) < std::pair(b.later, b.earlier);
    });
    std::set<std::size_t> matched;
    std::set<std::pair<std::size_t, std::size_t>> taken;  // an earlier mark, once a visit
    std::vector<MarkedBefore> kept;
    for (const MarkedBefore& match : matches) {
        const std::pair earlier_of_visit(match.earlier, visit[walk.marks[match.later].place.walk]);
        if (matched.contains(match.later) || taken.contains(earlier_of_visit)) continue;
        matched.insert(match.later);
        taken.insert(earlier_of_visit);
        kept.push_back(match);
    }
    return kept;
}

}  // namespace plugside
