#include "core/sets/reach_of_sets.h"

#include <algorithm>
#include <limits>

namespace plugside {

namespace {

constexpr std::uint32_t no_label = std::numeric_limits<std::uint32_t>::max();
constexpr double no_weight = 1e-13;  // of outcomes that are left out

bool has_draws(const Plan& plan) { return plan.drawn && !plan.drawn->tree.empty(); }

// The mark of each set, by the marks of the draws; without draws, the number of its system.
std::vector<std::uint32_t> label_places(const Plan& plan) {
    std::vector<std::uint32_t> of_mound(plan.mounds.size(), no_label);
    const bool drawn = has_draws(plan);
    if (drawn) {
        for (std::size_t i = 0; i < plan.drawn->mound.size(); ++i)
            if (plan.drawn->mound[i] < of_mound.size()) of_mound[plan.drawn->mound[i]] = static_cast<std::uint32_t>(i);
    }
    std::vector<std::uint32_t> places;
    places.reserve(plan.sets.size());
    for (const SetPoint& set : plan.sets) {
        const ProbeSite& site = plan.probes[set.probe];
        places.push_back(drawn ? of_mound.at(site.from_mound) : static_cast<std::uint32_t>(site.system));
    }
    return places;
}

// Chances of 0, 1, 2, ... hits of independent trials, from `first` on; outcomes of no weight are left out at both ends.
struct HitCounts {
    std::size_t first = 0;
    std::vector<double> chance{1.0};

    void add(double hit) {
        chance.push_back(0.0);
        for (std::size_t k = chance.size(); k-- > 0;)
            chance[k] = chance[k] * (1.0 - hit) + (k > 0 ? chance[k - 1] * hit : 0.0);
        while (chance.size() > 1 && chance.back() < no_weight) chance.pop_back();
        std::size_t light = 0;
        while (light + 1 < chance.size() && chance[light] < no_weight) ++light;
        chance.erase(chance.begin(), chance.begin() + static_cast<std::ptrdiff_t>(light));
        first += light;
    }
};

}  // namespace

ReachOfSets::ReachOfSets(const Plan& plan) {
    const std::vector<std::uint32_t> places = label_places(plan);
    const bool drawn = has_draws(plan);
    draws_ = drawn ? plan.drawn->tree.size() : 1;
    level_ = plan.drawn ? plan.drawn->interval : plan.estimate.interval;
    slot_.resize(places.size() * draws_);
    std::vector<std::uint32_t> slot_of(std::max(drawn ? plan.drawn->plug.size() : std::size_t{0}, plan.systems.size()) + 1,
                                       no_label);
    std::uint32_t next = 0;
    for (std::size_t d = 0; d < draws_; ++d) {
        begins_.push_back(next);
        std::vector<std::uint32_t> used;
        for (std::size_t s = 0; s < places.size(); ++s) {
            // a set whose mound takes no part in the draws is an animal of its own
            const bool known = places[s] != no_label;
            std::uint32_t own = next;
            if (known) {
                const std::uint32_t label = drawn ? plan.drawn->tree[d][places[s]] : places[s];
                if (slot_of[label] == no_label) {
                    slot_of[label] = next++;
                    used.push_back(label);
                }
                own = slot_of[label];
            } else {
                ++next;
            }
            slot_[s * draws_ + d] = own;
        }
        for (const std::uint32_t label : used) slot_of[label] = no_label;
    }
    begins_.push_back(next);
    missed_.assign(next, 1.0);
}

double ReachOfSets::gain(std::size_t set, double chance) const {
    double missed = 0.0;
    for (std::size_t d = 0; d < draws_; ++d) missed += missed_[slot_[set * draws_ + d]];
    return chance * missed / static_cast<double>(draws_);
}

void ReachOfSets::take(std::size_t set, double chance) {
    reached_ += gain(set, chance);
    for (std::size_t d = 0; d < draws_; ++d) missed_[slot_[set * draws_ + d]] *= 1.0 - chance;
}

CountInterval ReachOfSets::interval() const {
    std::vector<double> chance;  // of each number reached, over all draws
    for (std::size_t d = 0; d < draws_; ++d) {
        HitCounts counts;
        for (std::size_t i = begins_[d]; i < begins_[d + 1]; ++i)
            if (missed_[i] < 1.0) counts.add(1.0 - missed_[i]);
        const std::size_t end = counts.first + counts.chance.size();
        if (chance.size() < end) chance.resize(end, 0.0);
        for (std::size_t k = 0; k < counts.chance.size(); ++k)
            chance[counts.first + k] += counts.chance[k] / static_cast<double>(draws_);
    }
    const double tail = 0.5 * (1.0 - level_);
    constexpr double rounding = 1e-9;
    const auto first_with = [&](double share) {
        double sum = 0.0;
        for (std::size_t k = 0; k < chance.size(); ++k) {
            sum += chance[k];
            if (sum >= share - rounding) return static_cast<double>(k);
        }
        return static_cast<double>(chance.empty() ? 0 : chance.size() - 1);
    };
    return {reached_, first_with(tail), first_with(1.0 - tail)};
}

}  // namespace plugside
