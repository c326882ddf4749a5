#include "core/plan/lay_out.h"

#include <algorithm>
#include <utility>

#include "core/plan/plan_parts.h"
#include "core/probing/probe_site.h"
#include "core/runs/main_run.h"
#include "core/sets/cautions.h"
#include "core/sets/set_plan.h"
#include "core/sets/visits.h"
#include "core/systems/alternatives.h"
#include "core/words/words.h"

namespace plugside {

namespace {

// What the survey's marks cannot tell, said before anybody relies on it.
void add_notices(const Survey& survey, const SystemPosterior& posterior, Plan& plan) {
    if (posterior.marks.empty()) {
        plan.notices.push_back(survey.mounds.empty()
                                   ? Words::tell("There is no mound in this survey, so there is nothing to plan.")
                                   : Words::tell("No mark of this survey is a gopher's mound inside the field, so there "
                                                 "is nothing to plan."));
        return;
    }
    const auto with_fan =
        std::count_if(posterior.marks.begin(), posterior.marks.end(), [](const Mark& mark) { return mark.fan.has_value(); });
    if (with_fan == 0)
        plan.notices.push_back(
            Words::tell("No mark has a fan bearing: runs and probe points rest on the mounds' places alone."));
    else if (2 * with_fan < static_cast<std::ptrdiff_t>(posterior.marks.size()))
        plan.notices.push_back(
            Words::tell("Fewer than half of the mounds have a fan bearing: the runs are less sure than they could be."));
    const bool one_place = std::all_of(posterior.marks.begin(), posterior.marks.end(), [&](const Mark& mark) {
        return distance_m(mark.plug, posterior.marks.front().plug) < 0.01;
    });
    if (one_place && posterior.marks.size() > 1)
        plan.notices.push_back(
            Words::tell("All mounds are marked at one place: check the receiver, the systems mean nothing."));
    if (posterior.likeness)
        for (std::string& unlike : unlike_sentences(*posterior.likeness, posterior.marks.size(), learnt_likeness_limits()))
            plan.notices.push_back(std::move(unlike));
    for (const FactConflict& conflict : posterior.conflicts) plan.notices.push_back(conflict.sentence);
    if (!posterior.convergence.converged)
        plan.notices.push_back(
            Words::tell("The chains that obey what was told have not settled: take the chances of this plan as rough."));
    if (posterior.marks.size() > 1 && posterior.marks.size() < 15)
        plan.notices.push_back(Words::tell("With so few mounds the survey's own scales are mostly our assumption."));
}

// The draws that tell the number of animals, for counting them in any part later. Takes them out of the posterior.
std::shared_ptr<const DrawnSystems> drawn_systems(SystemPosterior& posterior) {
    if (posterior.marks.empty()) return nullptr;
    DrawnSystems drawn;
    drawn.interval = posterior.estimate.interval;
    drawn.plug.reserve(posterior.marks.size());
    for (const Mark& mark : posterior.marks) {
        drawn.plug.push_back(mark.plug);
        drawn.mound.push_back(mark.mound);
    }
    drawn.tree = std::move(posterior.drawn_for_number);
    return std::make_shared<const DrawnSystems>(std::move(drawn));
}

}  // namespace

std::optional<Plan> laid_out(const Survey& survey, SystemPosterior& posterior, const PlanOptions& options,
                             const LinkWeights& weights, Thoroughness thoroughness, const SystemLetters& letters,
                             const Progress& progress) {
    const bool whole = thoroughness == Thoroughness::whole;
    Plan plan;
    plan.revision = survey.revision;
    plan.first_look = !whole;
    plan.estimate = posterior.estimate;
    plan.mounds = mounds_in_plan(survey, posterior, options);
    plan.alternatives = alternatives_of(posterior);
    plan.drawn = drawn_systems(posterior);
    progress.say(0.8, Words::later("laying out runs"));
    plan.runs = main_runs(posterior, weights, options);
    plan.systems = systems_in_plan(survey, posterior, plan.runs, whole ? OutlineForm::exact : OutlineForm::rough, progress);
    keep_letters(letters, survey, plan.systems);
    if (progress.stopped()) return std::nullopt;
    progress.say(0.88, Words::later("placing ladders"));
    plan.probes = probe_sites(survey, posterior, plan.runs, options, {.between_where_wanting = !whole, .marks = {}});
    SetChoiceResult chosen = choose_sets(survey, plan, posterior, options);
    plan.sets = std::move(chosen.sets);
    plan.expected_reached_by_sets = std::move(chosen.expected_reached);
    add_notices(survey, posterior, plan);
    plan.notices.insert(plan.notices.end(), chosen.notices.begin(), chosen.notices.end());
    progress.say(0.92, Words::later("finding the way past the sets"));
    order_visits(survey, plan, chosen.proposed, whole ? WayForm::short_way : WayForm::rough_way);
    for (SetPoint& set : plan.sets) set.cautions = cautions_for(survey, plan, plan.probes[set.probe]);
    if (progress.stopped()) return std::nullopt;
    return plan;
}

}  // namespace plugside
