#include "core/sets/budget.h"

#include <utility>

#include "core/sets/budget_search.h"
#include "core/sets/reach_of_sets.h"

namespace plugside {

namespace {

// The sets that a budget may be spent on, as items.
struct Offer {
    std::vector<std::size_t> set;  // of each item
    std::vector<CoverItem> items;
    std::size_t draws = 0;
};

Offer offer_of(const Plan& plan, const std::vector<SetChoice>& choices, BudgetUnit unit, const EffortOptions& effort) {
    Offer offer;
    const ReachOfSets reach(plan);
    offer.draws = reach.draws();
    for (std::size_t s = 0; s < plan.sets.size(); ++s) {
        if (choices[s] == SetChoice::dropped) continue;
        const ProbeSite& site = plan.probes[plan.sets[s].probe];
        CoverItem item{site.hit.value(), cost_of(site, unit, effort), stands(choices[s]), {}};
        for (std::size_t d = 0; d < offer.draws; ++d) item.animals.push_back(reach.animal(s, d));
        offer.set.push_back(s);
        offer.items.push_back(std::move(item));
    }
    return offer;
}

}  // namespace

int traps_at(const ProbeSite& site) { return site.key.kind == ProbeKind::plug_side ? 1 : 2; }

double cost_of(const ProbeSite& site, BudgetUnit unit, const EffortOptions& effort) {
    switch (unit) {
        case BudgetUnit::sets: return 1.0;
        case BudgetUnit::traps: return traps_at(site);
        case BudgetUnit::minutes: return minutes_at(site, effort);
    }
    return 1.0;
}

BudgetSpent spend_budget(const Plan& plan, const std::vector<SetChoice>& choices, BudgetUnit unit, double budget,
                         const EffortOptions& effort) {
    Offer offer = offer_of(plan, choices, unit, effort);
    const CoverChoice choice = best_within(AnimalCover(std::move(offer.items), offer.draws), budget);
    BudgetSpent spent{{}, choice.reached, choice.cost, choice.bound, choice.exact};
    for (const std::size_t item : choice.items) spent.sets.push_back(offer.set[item]);
    return spent;
}

std::vector<BudgetStep> budget_curve(const Plan& plan, const std::vector<SetChoice>& choices, BudgetUnit unit,
                                     const EffortOptions& effort) {
    Offer offer = offer_of(plan, choices, unit, effort);
    AnimalCover cover(std::move(offer.items), offer.draws);
    std::vector<BudgetStep> curve;
    double cost = 0.0;
    double reached = 0.0;
    for (const std::size_t item : greedy_order(cover)) {
        cost += cover.items()[item].cost;
        reached += cover.gain(item);
        cover.take(item);
        curve.push_back({offer.set[item], cost, reached});
    }
    return curve;
}

}  // namespace plugside
