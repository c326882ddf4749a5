#include "core/sets/why_here.h"

#include <algorithm>
#include <tuple>

namespace plugside {

WhyHere why_here(const Plan& plan, std::size_t set) {
    const std::size_t here = plan.sets.at(set).probe;
    const ProbeSite& site = plan.probes.at(here);
    WhyHere why;
    why.mounds.push_back(site.from_mound);
    if (site.to_mound) why.mounds.push_back(*site.to_mound);
    const auto is_one = [&](std::size_t mound) {
        return std::find(why.mounds.begin(), why.mounds.end(), mound) != why.mounds.end();
    };
    for (std::size_t r = 0; r < plan.runs.size(); ++r)
        if (plan.runs[r].system == site.system && (is_one(plan.runs[r].from_mound) || is_one(plan.runs[r].to_mound)))
            why.runs.push_back(r);
    std::stable_sort(why.runs.begin(), why.runs.end(), [&](std::size_t a, std::size_t b) {
        const auto rank = [&](const MainRun& run) {
            return std::tuple(site.to_mound && is_one(run.from_mound) && is_one(run.to_mound), run.probability.value());
        };
        return rank(plan.runs[a]) > rank(plan.runs[b]);
    });
    std::vector<std::optional<std::size_t>> set_of(plan.probes.size());
    for (std::size_t s = 0; s < plan.sets.size(); ++s) set_of[plan.sets[s].probe] = s;
    for (std::size_t p = 0; p < plan.probes.size(); ++p)
        if (p != here && plan.probes[p].system == site.system) why.others.push_back({p, set_of[p]});
    std::stable_sort(why.others.begin(), why.others.end(), [&](const OtherPlace& a, const OtherPlace& b) {
        const auto rank = [&](const OtherPlace& other) {
            const ProbeSite& place = plan.probes[other.probe];
            return std::tuple(other.set.has_value(), -place.hit.in_100(), place.expected_rungs);
        };
        return rank(a) < rank(b);
    });
    return why;
}

}  // namespace plugside
