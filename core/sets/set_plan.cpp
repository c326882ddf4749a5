#include "core/sets/set_plan.h"

#include <algorithm>
#include <cmath>
#include <map>

#include "core/walking/visiting_order.h"

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

// A set at the edge of an animal's system may be another's: sure marks first.
double worth_of(const Survey& survey, const Plan& plan, const ProbeSite& site) {
    double worth = worth_of(survey.mounds[site.from_mound].freshness) * plan.mounds[site.from_mound].belongs.value();
    if (site.to_mound)
        worth = 0.5 * worth +
                0.5 * worth_of(survey.mounds[*site.to_mound].freshness) * plan.mounds[*site.to_mound].belongs.value();
    return worth * site.hit_as_proposed.value();  // a move does not change which places are proposed, nor their numbers
}

std::string method_of(ProbeKind kind) {
    return kind == ProbeKind::plug_side ? "trap in the lateral, or in the run it leads to"
                                        : "two traps in the run, one facing each way";
}

bool kept_clear(const Ground& ground, LocalPoint place) {
    return std::any_of(ground.keep_clear.begin(), ground.keep_clear.end(),
                       [&](const KeepClearArea& area) { return contains(area.area, place); });
}

class SystemChooser {
public:
    SystemChooser(const Survey& survey, const Plan& plan, std::vector<std::size_t> sites)
        : survey_(survey), plan_(plan), sites_(std::move(sites)) {
        std::erase_if(sites_, [&](std::size_t p) { return kept_clear(survey.ground, plan.probes[p].middle_as_proposed); });
        std::stable_sort(sites_.begin(), sites_.end(), [&](std::size_t a, std::size_t b) {
            return worth_of(survey, plan, plan.probes[a]) > worth_of(survey, plan, plan.probes[b]);
        });
    }

    // The next best site that keeps away from those taken; distance counts less when nothing else is left.
    [[nodiscard]] std::optional<std::size_t> next(const std::vector<std::size_t>& taken) const {
        for (const double apart : {1.0, 0.0})
            for (const std::size_t candidate : sites_)
                if (stands_apart(candidate, taken, apart * plan_.estimate.link_length.value())) return candidate;
        return std::nullopt;
    }
    [[nodiscard]] const std::vector<std::size_t>& sites() const { return sites_; }

private:
    [[nodiscard]] bool stands_apart(std::size_t candidate, const std::vector<std::size_t>& taken, double least_m) const {
        const ProbeSite& site = plan_.probes[candidate];
        return std::all_of(taken.begin(), taken.end(), [&](std::size_t p) {
            const ProbeSite& other = plan_.probes[p];
            return p != candidate && distance_m(site.middle_as_proposed, other.middle_as_proposed) >= least_m &&
                   site.from_mound != other.from_mound && site.to_mound != other.from_mound &&
                   other.to_mound != site.from_mound;
        });
    }

    const Survey& survey_;
    const Plan& plan_;
    std::vector<std::size_t> sites_;
};

struct Chosen {
    std::size_t probe = 0;
    int turn = 0;  // first, second, ... choice of its system; replacements and a person's own places count on from there
};

std::vector<Chosen> choose_in_system(const Survey& survey, const SystemChooser& chooser, const Plan& plan, int wanted) {
    const auto choice_on = [&](std::size_t p) {
        const auto decision = decision_on(survey, plan.probes[p].key);
        return decision ? decision->choice : SetChoice::proposed;
    };
    std::vector<Chosen> chosen;
    std::vector<std::size_t> taken;
    int standing = 0;
    const auto take = [&](std::size_t p) {
        chosen.push_back({p, static_cast<int>(chosen.size())});
        taken.push_back(p);
        if (choice_on(p) != SetChoice::dropped) ++standing;
    };
    for (int i = 0; i < wanted; ++i)  // what would be proposed had nobody decided: keeps the numbers
        if (const auto p = chooser.next(taken)) take(*p);
    for (const std::size_t p : chooser.sites()) {
        const bool decided = choice_on(p) != SetChoice::proposed;
        if (decided && std::find(taken.begin(), taken.end(), p) == taken.end()) take(p);
    }
    while (standing < wanted) {
        const auto p = chooser.next(taken);
        if (!p) break;
        take(*p);
    }
    return chosen;
}

}  // namespace

SetChoiceResult choose_sets(const Survey& survey, const Plan& plan, const PlanOptions& options) {
    std::vector<std::vector<std::size_t>> sites_of(plan.systems.size());
    for (std::size_t p = 0; p < plan.probes.size(); ++p) sites_of[plan.probes[p].system].push_back(p);
    std::vector<Chosen> chosen;
    SetChoiceResult result;
    std::string without;
    for (std::size_t s = 0; s < plan.systems.size(); ++s) {
        const SystemChooser chooser(survey, plan, std::move(sites_of[s]));
        const std::vector<Chosen> here = choose_in_system(survey, chooser, plan, options.sets_per_system);
        chosen.insert(chosen.end(), here.begin(), here.end());
        if (here.empty()) without += (without.empty() ? "" : ", ") + plan.systems[s].letter;
    }
    if (!without.empty())
        result.notices.push_back(
            "No set is proposed for " + without +
            ": no mound there shows a fan, no neighbour is near enough, or all lies in a keep-clear area. "
            "Look at these mounds again.");
    std::stable_sort(chosen.begin(), chosen.end(), [&](const Chosen& a, const Chosen& b) {
        if (a.turn != b.turn) return a.turn < b.turn;
        return worth_of(survey, plan, plan.probes[a.probe]) > worth_of(survey, plan, plan.probes[b.probe]);
    });
    for (const Chosen& one : chosen) {
        SetPoint set;
        set.probe = one.probe;
        set.rank = static_cast<int>(result.sets.size()) + 1;
        const auto decision = decision_on(survey, plan.probes[one.probe].key);
        set.choice = decision ? decision->choice : SetChoice::proposed;
        set.method = method_of(plan.probes[one.probe].key.kind);
        result.sets.push_back(std::move(set));
    }
    return result;
}

void order_visits(const Survey& survey, Plan& plan) {
    std::vector<std::size_t> standing;
    std::vector<LocalPoint> places;
    for (std::size_t i = 0; i < plan.sets.size(); ++i)
        if (plan.sets[i].choice != SetChoice::dropped) {
            standing.push_back(i);
            places.push_back(plan.probes[plan.sets[i].probe].middle);
        }
    VisitingOptions options;
    for (const Walk& walk : survey.walks) {
        if (options.start) break;
        for (const TrackSegment& segment : walk.segments)
            if (!segment.empty() && !options.start) options.start = segment.front().at;
    }
    int visit = 0;
    for (const std::size_t place : visiting_order(places, options)) plan.sets[standing[place]].visit_order = ++visit;
    for (SetPoint& set : plan.sets)
        if (set.choice == SetChoice::dropped) set.visit_order = ++visit;
}

}  // namespace plugside
