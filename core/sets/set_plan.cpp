#include "core/sets/set_plan.h"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <queue>
#include <tuple>

#include "core/sets/expected_reach.h"
#include "core/words/words.h"

namespace plugside {

namespace {

// How much a set at a mound of that age is worth beside a fresh one: our assumption.
double worth_of(Freshness freshness) {
    switch (freshness) {
        case Freshness::fresh: return 1.0;
        case Freshness::unknown: return 0.9;
        case Freshness::older: return 0.8;
        case Freshness::crushed: return 0.7;
    }
    return 0.9;
}

std::string method_of(ProbeKind kind) {
    return kind == ProbeKind::plug_side ? Words::later("trap in the lateral, or in the run it leads to")
                                        : Words::later("two traps in the run, one facing each way");
}

// Two gains that differ by less are the same: a field that lies turned elsewhere differs in the last digits.
double comparable(double gain) { return std::round(gain * 1e9); }

class Chooser {
public:
    Chooser(const Survey& survey, const Plan& plan, const SystemPosterior& posterior, const PlanOptions& options)
        : plan_(plan),
          posterior_(posterior),
          options_(options),
          mark_of_(survey.mounds.size(), 0),
          reach_(posterior),
          taken_in_(plan.systems.size()),
          proposed_in_(plan.systems.size(), 0) {
        for (std::size_t i = 0; i < posterior.marks.size(); ++i) mark_of_[posterior.marks[i].mound] = i;
        for (const ProbeSite& site : plan.probes) {
            kept_clear_.push_back(nothing_is_set_at(survey.ground, site.middle_as_proposed));
            const double age = worth_of(survey.mounds[site.from_mound].freshness);
            chance_.push_back(age *
                              site.hit_as_proposed.value());  // a move changes neither which places are proposed nor numbers
        }
    }

    // What would be proposed had nobody decided, in the order of ranks.
    std::vector<std::size_t> propose() {
        std::vector<std::size_t> all;
        for (std::size_t p = 0; p < plan_.probes.size(); ++p)
            if (!kept_clear_[p]) all.push_back(p);
        std::vector<std::size_t> proposed;
        const auto room = static_cast<std::size_t>(std::max(0, options_.most_sets.value_or(static_cast<int>(all.size()))));
        // first on different stretches; where a system has no room for that, at other mounds at least
        for (const double apart : {1.0, 0.0}) take_greedily(all, apart * plan_.estimate.link_length.value(), room, proposed);
        for (const std::size_t p : proposed) ++proposed_in_[plan_.probes[p].system];
        return proposed;
    }

    // The best replacement in a system, given the sets that stand; keeps apart from those that were taken before.
    std::optional<std::size_t> replacement(std::size_t system, const std::vector<std::size_t>& sites) {
        for (const double apart : {1.0, 0.0}) {
            std::optional<std::size_t> best;
            for (const std::size_t p : sites)
                if (!kept_clear_[p] && stands_apart(p, apart * plan_.estimate.link_length.value()) &&
                    (!best || comparable(gain(p)) > comparable(gain(*best))))
                    best = p;
            if (!best) continue;
            take(*best);
            taken_in_[system].push_back(*best);
            return best;
        }
        return std::nullopt;
    }

    // Begins the account of standing sets anew: what is taken stays taken, what stands is told with `take`.
    void forget_reach() { reach_ = ExpectedReach(posterior_); }
    void take(std::size_t p) { reach_.take(mark_of_[plan_.probes[p].from_mound], chance_[p]); }
    void mark_taken(std::size_t p) { taken_in_[plan_.probes[p].system].push_back(p); }
    [[nodiscard]] int proposed_in(std::size_t system) const { return proposed_in_[system]; }
    [[nodiscard]] std::size_t proposed() const {
        return static_cast<std::size_t>(std::accumulate(proposed_in_.begin(), proposed_in_.end(), 0));
    }
    [[nodiscard]] double gain(std::size_t p) const { return reach_.gain(mark_of_[plan_.probes[p].from_mound], chance_[p]); }
    [[nodiscard]] std::size_t mark_of(std::size_t mound) const { return mark_of_[mound]; }

private:
    // Lazy greedy: a gain only falls, so the site whose fresh gain still leads is the best.
    void take_greedily(const std::vector<std::size_t>& sites, double apart_m, std::size_t room,
                       std::vector<std::size_t>& proposed) {
        using Bound = std::tuple<double, std::size_t>;  // gain, then the earlier site
        std::priority_queue<Bound> open;
        const auto last = plan_.probes.size();
        for (const std::size_t p : sites) open.emplace(comparable(gain(p)), last - p);
        while (!open.empty() && proposed.size() < room) {
            const std::size_t p = last - std::get<1>(open.top());
            const double bound = std::get<0>(open.top());
            open.pop();
            if (!stands_apart(p, apart_m) || !wanted(p)) continue;
            const double now = comparable(gain(p));
            if (now < bound) {
                open.emplace(now, last - p);
                continue;
            }
            take(p);
            mark_taken(p);
            proposed.push_back(p);
        }
    }

    // Usual sets are wanted anyway, more only where one brings enough; a budget is spent on whatever brings most.
    [[nodiscard]] bool wanted(std::size_t p) const {
        const auto here = static_cast<int>(taken_in_[plan_.probes[p].system].size());
        return options_.most_sets || here < options_.sets_per_system || gain(p) >= options_.least_gain_of_extra_set;
    }

    [[nodiscard]] bool stands_apart(std::size_t candidate, double least_m) const {
        const ProbeSite& site = plan_.probes[candidate];
        const auto& taken = taken_in_[site.system];
        return std::all_of(taken.begin(), taken.end(), [&](std::size_t p) {
            const ProbeSite& other = plan_.probes[p];
            return p != candidate && distance_m(site.middle_as_proposed, other.middle_as_proposed) >= least_m &&
                   site.from_mound != other.from_mound && site.to_mound != other.from_mound &&
                   other.to_mound != site.from_mound;
        });
    }

    const Plan& plan_;
    const SystemPosterior& posterior_;
    const PlanOptions& options_;
    std::vector<std::size_t> mark_of_;  // of each mound
    std::vector<bool> kept_clear_;      // of each probe
    std::vector<double> chance_;        // of each probe: that a set there reaches its animal
    ExpectedReach reach_;
    std::vector<std::vector<std::size_t>> taken_in_;  // of each system: probes taken
    std::vector<int> proposed_in_;
};

// The probes to set by rank: what is proposed, then a person's own places, then what stands in for dropped ones.
std::vector<std::size_t> chosen_probes(const Survey& survey, const Plan& plan, Chooser& chooser) {
    const auto choice_on = [&](std::size_t p) {
        const auto decision = decision_on(survey, plan.probes[p].key);
        return decision ? decision->choice : SetChoice::proposed;
    };
    std::vector<std::size_t> chosen = chooser.propose();
    if (survey.decisions.empty()) return chosen;
    std::vector<bool> is_chosen(plan.probes.size(), false);
    for (const std::size_t p : chosen) is_chosen[p] = true;
    std::vector<std::vector<std::size_t>> sites_in(plan.systems.size());
    for (std::size_t p = 0; p < plan.probes.size(); ++p) {
        sites_in[plan.probes[p].system].push_back(p);
        if (is_chosen[p] || choice_on(p) == SetChoice::proposed) continue;
        chosen.push_back(p);
        chooser.mark_taken(p);
    }
    std::vector<int> standing(plan.systems.size(), 0);
    chooser.forget_reach();
    for (const std::size_t p : chosen)
        if (choice_on(p) != SetChoice::dropped) {
            ++standing[plan.probes[p].system];
            chooser.take(p);
        }
    for (std::size_t s = 0; s < plan.systems.size(); ++s)
        for (; standing[s] < chooser.proposed_in(s); ++standing[s]) {
            const auto p = chooser.replacement(s, sites_in[s]);
            if (!p) break;
            chosen.push_back(*p);
        }
    return chosen;
}

}  // namespace

SetChoiceResult choose_sets(const Survey& survey, const Plan& plan, const SystemPosterior& posterior,
                            const PlanOptions& options) {
    Chooser chooser(survey, plan, posterior, options);
    const std::vector<std::size_t> chosen = chosen_probes(survey, plan, chooser);
    SetChoiceResult result;
    result.proposed = chooser.proposed();
    std::vector<bool> has_set(plan.systems.size(), false);
    ExpectedReach reach(posterior);
    for (const std::size_t p : chosen) {
        const ProbeSite& site = plan.probes[p];
        SetPoint set;
        set.probe = p;
        set.rank = static_cast<int>(result.sets.size()) + 1;
        const auto decision = decision_on(survey, site.key);
        set.choice = decision ? decision->choice : SetChoice::proposed;
        set.method = method_of(site.key.kind);
        if (set.choice != SetChoice::dropped) reach.take(chooser.mark_of(site.from_mound), site.hit.value());
        has_set[site.system] = true;
        result.sets.push_back(std::move(set));
        result.expected_reached.push_back(reach.reached());
    }
    if (options.most_sets) return result;
    constexpr std::size_t most_named = 40;  // a longer list is read by nobody
    std::string without;
    std::size_t count = 0;
    for (std::size_t s = 0; s < plan.systems.size(); ++s)
        if (!has_set[s] && ++count <= most_named) without += (count > 1 ? ", " : "") + plan.systems[s].letter;
    if (count > most_named) without = Words::tell("{1} and {2} more", {without, std::to_string(count - most_named)});
    if (!without.empty())
        result.notices.push_back(Words::tell(
            "No set is proposed for {1}: no mound there shows a fan, no neighbour is near enough, or all lies in "
            "a keep-clear area. Look at these mounds again.",
            {without}));
    return result;
}

}  // namespace plugside
