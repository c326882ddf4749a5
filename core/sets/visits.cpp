#include "core/sets/visits.h"

#include <algorithm>
#include <limits>
#include <optional>
#include <utility>

#include "core/geometry/space_curve.h"
#include "core/walking/steady_order.h"
#include "core/words/words.h"

namespace plugside {

namespace {

constexpr std::size_t most_named = 20;  // a longer list is read by nobody

// The sets that are not dropped.
struct Standing {
    std::vector<std::size_t> sets;
    std::vector<LocalPoint> places;
};

Standing standing_sets(const Plan& plan) {
    Standing standing;
    for (std::size_t i = 0; i < plan.sets.size(); ++i)
        if (plan.sets[i].choice != SetChoice::dropped) {
            standing.sets.push_back(i);
            standing.places.push_back(plan.probes[plan.sets[i].probe].middle);
        }
    return standing;
}

bool as_proposed(const Plan& plan, const Standing& standing, std::size_t proposed) {
    return standing.sets.size() == plan.sets.size() && plan.sets.size() == proposed &&
           std::none_of(plan.sets.begin(), plan.sets.end(),
                        [](const SetPoint& set) { return set.choice == SetChoice::moved; });
}

// Of the standing sets (by index into `standing`), as they were ordered before anybody decided.
std::vector<std::size_t> order_before_decisions(const Plan& plan, const Standing& standing, std::size_t proposed,
                                                const VisitingOptions& options) {
    constexpr std::size_t not_standing = std::numeric_limits<std::size_t>::max();
    std::vector<std::size_t> index(plan.sets.size(), not_standing);
    for (std::size_t i = 0; i < standing.sets.size(); ++i) index[standing.sets[i]] = i;
    std::vector<LocalPoint> places;
    for (std::size_t s = 0; s < proposed; ++s) places.push_back(plan.probes[plan.sets[s].probe].middle_as_proposed);
    std::vector<std::size_t> earlier;
    for (const std::size_t s : visiting_order(places, options))
        if (index[s] != not_standing) earlier.push_back(index[s]);
    return earlier;
}

void name_cut_off(Plan& plan, const Standing& standing, const VisitingOptions& options) {
    const std::vector<std::size_t> cut_off = cut_off_places(standing.places, options);
    if (cut_off.empty()) return;
    std::vector<int> ranks;
    for (const std::size_t i : cut_off) ranks.push_back(plan.sets[standing.sets[i]].rank);
    std::sort(ranks.begin(), ranks.end());
    std::string named;
    for (std::size_t i = 0; i < std::min(ranks.size(), most_named); ++i)
        named += (i > 0 ? ", " : "") + std::to_string(ranks[i]);
    if (ranks.size() > most_named)
        named = Words::tell("{1} and {2} more", {named, std::to_string(ranks.size() - most_named)});
    plan.notices.push_back(
        ranks.size() == 1
            ? Words::tell("No gate is drawn on the way to set {1}: a barrier, a building or an edge of the field lies "
                          "between. Draw a gate where one gets across, and the walking order goes through it.",
                          {named})
            : Words::tell("No gate is drawn on the way to sets {1}: a barrier, a building or an edge of the field "
                          "lies between. Draw a gate where one gets across, and the walking order goes through it.",
                          {named}));
}

std::vector<std::size_t> walked_order(const Survey& survey, Plan& plan, const Standing& standing, std::size_t proposed,
                                      WayForm form) {
    VisitingOptions options;
    options.start = where_the_walk_began(survey);
    options.shuffles = std::clamp<std::size_t>(4 * standing.places.size(), 300, 20'000);
    if (form == WayForm::rough_way) options.most_moves = 0;
    const WalkingWays ways = ways_to_places(survey.ground, standing.places, options.start);
    options.ways = &ways;
    name_cut_off(plan, standing, options);
    if (as_proposed(plan, standing, proposed)) return visiting_order(standing.places, options);
    return steady_order(standing.places, order_before_decisions(plan, standing, proposed, options), options);
}

}  // namespace

std::optional<LocalPoint> where_the_walk_began(const Survey& survey) {
    for (const Walk& walk : survey.walks)
        for (const TrackSegment& segment : walk.segments)
            if (!segment.empty()) return segment.front().at;
    return std::nullopt;
}

WalkingWays ways_to_places(const Ground& ground, const std::vector<LocalPoint>& places,
                           const std::optional<LocalPoint>& start) {
    WalkingWays ways(ground);
    VisitingOptions inside;
    inside.start = start;
    inside.ways = &ways;
    if (start && cut_off_places(places, inside).size() == places.size())
        return WalkingWays(ground, {.stay_inside = false});
    return ways;
}

void order_visits(const Survey& survey, Plan& plan, std::size_t proposed, WayForm form) {
    const Standing standing = standing_sets(plan);
    std::vector<std::size_t> order;
    if (form == WayForm::along_curve) {
        const std::vector<std::uint32_t> along = order_along_curve(standing.places);
        order.assign(along.begin(), along.end());
    } else {
        order = walked_order(survey, plan, standing, proposed, form);
    }
    int visit = 0;
    for (const std::size_t i : order) plan.sets[standing.sets[i]].visit_order = ++visit;
    for (SetPoint& set : plan.sets)
        if (set.choice == SetChoice::dropped) set.visit_order = ++visit;
}

}  // namespace plugside
