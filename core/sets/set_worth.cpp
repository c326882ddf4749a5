#include "core/sets/set_worth.h"

#include <algorithm>
#include <cmath>

namespace plugside {

namespace {

double hit_of(const Plan& plan, std::size_t set) { return plan.probes[plan.sets[set].probe].hit.value(); }

}  // namespace

double minutes_at(const ProbeSite& site, const EffortOptions& options) {
    return site.expected_rungs * options.minutes_a_hole + options.minutes_to_place;
}

SetWorth worth_of(const Plan& plan, std::size_t set, const ReachOfSets& kept, const EffortOptions& options) {
    return {set, kept.gain(set, hit_of(plan, set)), minutes_at(plan.probes[plan.sets[set].probe], options)};
}

std::vector<SetWorth> undecided_by_worth(const Plan& plan, const std::vector<SetChoice>& choices, const ReachOfSets& kept,
                                         const EffortOptions& options) {
    std::vector<SetWorth> undecided;
    for (std::size_t s = 0; s < plan.sets.size(); ++s)
        if (choices[s] == SetChoice::proposed) undecided.push_back(worth_of(plan, s, kept, options));
    const auto comparable = [](const SetWorth& worth) { return std::round(worth.animals_a_minute() * 1e9); };
    std::stable_sort(undecided.begin(), undecided.end(),
                     [&](const SetWorth& a, const SetWorth& b) { return comparable(a) > comparable(b); });
    return undecided;
}

ReachOfSets reach_of_chosen(const Plan& plan, const std::vector<SetChoice>& choices, bool and_undecided) {
    ReachOfSets reach(plan);
    for (std::size_t s = 0; s < plan.sets.size(); ++s)
        if (stands(choices[s])) reach.take(s, hit_of(plan, s));
    if (and_undecided) take_undecided(plan, choices, reach);
    return reach;
}

void take_undecided(const Plan& plan, const std::vector<SetChoice>& choices, ReachOfSets& reach) {
    for (std::size_t s = 0; s < plan.sets.size(); ++s)
        if (choices[s] == SetChoice::proposed) reach.take(s, hit_of(plan, s));
}

}  // namespace plugside
