#include "core/plan/make_plan.h"

#include <algorithm>
#include <cmath>
#include <set>
#include <thread>

#include "core/geometry/area_operations.h"
#include "core/plan/plan_with_posterior.h"
#include "core/probing/probe_site.h"
#include "core/runs/main_run.h"
#include "core/runs/take_off.h"
#include "core/sets/cautions.h"
#include "core/sets/set_plan.h"
#include "core/systems/alternatives.h"
#include "core/walking/coverage.h"

namespace plugside {

namespace {

// How far a system's outline is drawn about its runs and plugs: our assumption, for the eye only.
constexpr double outline_reach_m = 1.0;

std::string letter_of(std::size_t number) {
    std::string letters;
    for (++number; number > 0; number = (number - 1) / 26)
        letters.insert(letters.begin(), static_cast<char>('A' + (number - 1) % 26));
    return letters;
}

std::vector<MoundInPlan> mounds_in_plan(const Survey& survey, const SystemPosterior& posterior, const PlanOptions& options) {
    std::vector<MoundInPlan> mounds(survey.mounds.size());
    for (std::size_t i = 0; i < mounds.size(); ++i) {
        const Mound& mound = survey.mounds[i];
        mounds[i].not_used_because = why_not_used(survey, mound);
        const TakeOff take_off = take_off_of(mound.plug, mound.fan, mound.position_sd, options);
        mounds[i].take_off = take_off.at;
        mounds[i].take_off_sd_along = Metres::of(take_off.sd_along_m);
        mounds[i].take_off_sd_across = Metres::of(take_off.sd_across_m);
    }
    for (std::size_t i = 0; i < posterior.marks.size(); ++i) {
        mounds[posterior.marks[i].mound].system = posterior.system[i];
        mounds[posterior.marks[i].mound].belongs = Probability::of(posterior.belongs[i]);
    }
    return mounds;
}

Freshness freshest(Freshness a, Freshness b) {
    const auto order = [](Freshness f) {
        switch (f) {
            case Freshness::fresh: return 0;
            case Freshness::unknown: return 1;
            case Freshness::older: return 2;
            case Freshness::crushed: return 3;
        }
        return 1;
    };
    return order(b) < order(a) ? b : a;
}

// Lines whose ends lie in the same cells as those of an earlier one add nothing to an outline a metre about them; thousands of
// marks in one heap would keep the union busy for minutes.
void drop_repeated(std::vector<Polyline>& lines) {
    constexpr double cell_m = 0.1;
    const auto cell = [](LocalPoint p) { return std::pair(std::llround(p.east_m / cell_m), std::llround(p.north_m / cell_m)); };
    std::set<std::pair<std::pair<long long, long long>, std::pair<long long, long long>>> seen;
    std::erase_if(lines, [&](const Polyline& line) {
        return !seen.emplace(cell(line.vertices.front()), cell(line.vertices.back())).second;
    });
}

std::vector<BurrowSystem> systems_in_plan(const Survey& survey, const SystemPosterior& posterior,
                                          const std::vector<MainRun>& runs) {
    std::vector<BurrowSystem> systems(posterior.systems);
    for (std::size_t s = 0; s < systems.size(); ++s) {
        systems[s].letter = letter_of(s);
        systems[s].single = Probability::of(posterior.single[s]);
        systems[s].freshest = Freshness::crushed;
    }
    std::vector<std::vector<Polyline>> lines(systems.size());
    for (std::size_t i = 0; i < posterior.marks.size(); ++i) {
        BurrowSystem& system = systems[posterior.system[i]];
        const Mark& mark = posterior.marks[i];
        system.mounds.push_back(mark.mound);
        system.freshest = freshest(system.freshest, survey.mounds[mark.mound].freshness);
        lines[posterior.system[i]].push_back({{mark.plug, mark.take_off}});
    }
    for (const MainRun& run : runs) {
        systems[run.system].run_length = systems[run.system].run_length + length(run.line);
        const auto& vertices = run.line.vertices;
        lines[run.system].push_back({{vertices.front(), vertices[vertices.size() / 2], vertices.back()}});
    }
    for (std::size_t s = 0; s < systems.size(); ++s) {
        std::sort(systems[s].mounds.begin(), systems[s].mounds.end());
        drop_repeated(lines[s]);
        systems[s].outline = outline_about(lines[s], Metres::of(outline_reach_m));
        if (!systems[s].outline.empty()) systems[s].label_at = point_inside(systems[s].outline);
    }
    return systems;
}

// What the survey's marks cannot tell, said before anybody relies on it.
void add_notices(const Survey& survey, const SystemPosterior& posterior, Plan& plan) {
    if (posterior.marks.empty()) {
        plan.notices.push_back(survey.mounds.empty() ? "There is no mound in this survey, so there is nothing to plan."
                                                     : "No mark of this survey is a gopher's mound inside the field, so there "
                                                       "is nothing to plan.");
        return;
    }
    const auto with_fan = std::count_if(posterior.marks.begin(), posterior.marks.end(),
                                        [](const Mark& mark) { return mark.fan.has_value(); });
    if (with_fan == 0)
        plan.notices.push_back("No mark has a fan bearing: runs and probe points rest on the mounds' places alone.");
    else if (2 * with_fan < static_cast<std::ptrdiff_t>(posterior.marks.size()))
        plan.notices.push_back("Fewer than half of the mounds have a fan bearing: the runs are less sure than they could be.");
    const bool one_place = std::all_of(posterior.marks.begin(), posterior.marks.end(), [&](const Mark& mark) {
        return distance_m(mark.plug, posterior.marks.front().plug) < 0.01;
    });
    if (one_place && posterior.marks.size() > 1)
        plan.notices.push_back("All mounds are marked at one place: check the receiver, the systems mean nothing.");
    if (posterior.likeness)
        for (std::string& unlike : unlike_sentences(*posterior.likeness, posterior.marks.size(), learnt_likeness_limits()))
            plan.notices.push_back(std::move(unlike));
    for (const FactConflict& conflict : posterior.conflicts) plan.notices.push_back(conflict.sentence);
    if (!posterior.convergence.converged)
        plan.notices.push_back("The chains that obey what was told have not settled: take the chances of this plan as rough.");
    if (posterior.marks.size() > 1 && posterior.marks.size() < 15)
        plan.notices.push_back("With so few mounds the survey's own scales are mostly our assumption.");
}

// The draws that tell the number of animals, for counting them in any part later. Takes them out of the posterior.
std::shared_ptr<const DrawnSystems> drawn_systems(SystemPosterior& posterior) {
    if (posterior.marks.empty()) return nullptr;
    DrawnSystems drawn;
    drawn.interval = posterior.estimate.interval;
    drawn.plug.reserve(posterior.marks.size());
    for (const Mark& mark : posterior.marks) drawn.plug.push_back(mark.plug);
    drawn.tree = std::move(posterior.drawn_for_number);
    return std::make_shared<const DrawnSystems>(std::move(drawn));
}

bool has_track(const Survey& survey) {
    return std::any_of(survey.walks.begin(), survey.walks.end(), [](const Walk& walk) { return !walk.segments.empty(); });
}

void add_coverage(const Survey& survey, std::optional<Coverage> coverage, Plan& plan) {
    if (!survey.ground.boundary.empty()) plan.area_field_m2 = area_m2(survey.ground.boundary);
    if (!has_track(survey)) {
        plan.notices.push_back("The walk has no track, so what was not looked at is not known.");
    } else if (!coverage) {
        plan.notices.push_back("The area walked could not be computed from this track and boundary.");
    } else {
        plan.area_walked_m2 = coverage->walked_area_m2;
        plan.unwalked = std::move(coverage->unwalked);
    }
}

}  // namespace

std::optional<PlanWithPosterior> make_plan_with_posterior(const Survey& survey, const PlanOptions& options,
                                                          const LinkWeights& weights, const Progress& progress) {
    std::optional<Coverage> coverage;  // does not depend on the systems: measured beside them
    std::jthread measuring;
    if (has_track(survey))
        measuring = std::jthread([&] {
            coverage = coverage_of(survey.walks, survey.ground.boundary, options.seen_from_track, {progress.stop, {}});
        });
    std::optional<SystemPosterior> posterior = infer_systems(survey, options, weights, progress);
    if (!posterior || progress.stopped()) return std::nullopt;
    Plan plan;
    plan.revision = survey.revision;
    plan.estimate = posterior->estimate;
    plan.mounds = mounds_in_plan(survey, *posterior, options);
    plan.alternatives = alternatives_of(*posterior);
    plan.drawn = drawn_systems(*posterior);
    progress.say(0.8, "laying out runs");
    plan.runs = main_runs(*posterior, weights, options);
    plan.systems = systems_in_plan(survey, *posterior, plan.runs);
    if (progress.stopped()) return std::nullopt;
    progress.say(0.88, "placing ladders");
    plan.probes = probe_sites(survey, *posterior, plan.runs, options);
    SetChoiceResult chosen = choose_sets(survey, plan, *posterior, options);
    plan.sets = std::move(chosen.sets);
    plan.expected_reached_by_sets = std::move(chosen.expected_reached);
    add_notices(survey, *posterior, plan);
    plan.notices.insert(plan.notices.end(), chosen.notices.begin(), chosen.notices.end());
    progress.say(0.92, "finding the way past the sets");
    order_visits(survey, plan);
    for (SetPoint& set : plan.sets) set.cautions = cautions_for(survey, plan, plan.probes[set.probe]);
    progress.say(0.95, "measuring what was walked");
    if (measuring.joinable()) measuring.join();
    if (progress.stopped()) return std::nullopt;
    add_coverage(survey, std::move(coverage), plan);
    progress.say(1.0, "done");
    return PlanWithPosterior{std::move(plan), std::move(*posterior)};
}

std::optional<Plan> make_plan(const Survey& survey, const PlanOptions& options, const Progress& progress) {
    auto made = make_plan_with_posterior(survey, options, learnt_link_weights(), progress);
    if (!made) return std::nullopt;
    return std::move(made->plan);
}

}  // namespace plugside
