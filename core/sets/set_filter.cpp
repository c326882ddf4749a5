#include "core/sets/set_filter.h"

#include <algorithm>

#include "core/sets/cautions.h"

namespace plugside {

bool lets_all_through(const SetFilter& filter) { return filter == SetFilter{}; }

bool lets_through(const SetFilter& filter, const Plan& plan, std::size_t set, SetChoice choice) {
    const SetPoint& point = plan.sets[set];
    const ProbeSite& site = plan.probes[point.probe];
    if (filter.undecided && choice != SetChoice::proposed) return false;
    if (filter.cautioned && !std::any_of(point.cautions.begin(), point.cautions.end(),
                                         [](const std::string& id) { return !holds_at_every_set(id); }))
        return false;
    if (filter.under && site.hit.in_100() >= *filter.under) return false;
    if (filter.at_least && site.hit.in_100() < *filter.at_least) return false;
    return !filter.system || (site.system < plan.systems.size() && plan.systems[site.system].letter == *filter.system);
}

std::vector<std::size_t> sets_through(const SetFilter& filter, const Plan& plan, const std::vector<SetChoice>& choices) {
    std::vector<std::size_t> through;
    for (std::size_t s = 0; s < plan.sets.size(); ++s)
        if (lets_through(filter, plan, s, choices[s])) through.push_back(s);
    return through;
}

}  // namespace plugside
