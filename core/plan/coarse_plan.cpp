#include "core/plan/coarse_plan.h"

#include <algorithm>
#include <cmath>
#include <set>
#include <utility>

#include "core/geometry/near_places.h"
#include "core/plan/plan_parts.h"
#include "core/probing/probe_site.h"
#include "core/sets/cautions.h"
#include "core/sets/set_plan.h"
#include "core/sets/visits.h"
#include "core/systems/coarse_systems.h"
#include "core/words/words.h"

namespace plugside {

namespace {

// Measured on simulated fields of every kind (300 mounds, 28 fields): the share of mounds that a mound of a coarse system
// rightly holds beside it, and the share of coarse systems that are one animal's.
constexpr double coarse_belongs = 0.75;
constexpr double coarse_single = 0.64;

constexpr std::size_t spacing_sample = 2000;

// The middle of the second-neighbour distances of marks taken evenly along the curve.
double spacing_at_a_glance(const std::vector<Mark>& marks) {
    std::vector<LocalPoint> take_offs;
    take_offs.reserve(marks.size());
    for (const Mark& mark : marks) take_offs.push_back(mark.take_off);
    const NearPlaces near(take_offs);
    std::vector<double> second;
    const std::size_t step = std::max<std::size_t>(1, marks.size() / spacing_sample);
    for (std::size_t i = 0; i < marks.size(); i += step)
        if (const auto found = near.nearest(take_offs[i], 3); found.size() == 3) second.push_back(found[2].distance_m);
    SurveyScales scales;
    if (second.empty()) return scales.spacing_m;
    const auto middle = second.begin() + static_cast<std::ptrdiff_t>(second.size() / 2);
    std::nth_element(second.begin(), middle, second.end());
    return *middle > 0.0 ? *middle : scales.spacing_m;
}

SystemsEstimate estimate_of(const CoarseSystems& found, double spacing_m, std::size_t marks) {
    SystemsEstimate estimate;
    estimate.expected = found.expected;
    estimate.most_likely = static_cast<int>(std::lround(found.expected));
    estimate.low = static_cast<int>(std::lround(found.low));
    estimate.high = static_cast<int>(std::lround(found.high));
    estimate.interval = found.interval;
    estimate.link_length = Metres::of(spacing_m);
    estimate.mounds_per_system = static_cast<double>(marks) / found.expected;
    return estimate;
}

std::optional<SystemPosterior> coarse_posterior(const Survey& survey, const PlanOptions& options, const Progress& progress) {
    SystemPosterior posterior;
    posterior.marks = marks_of(survey, options);
    if (posterior.marks.empty()) return posterior;
    if (progress.stopped()) return std::nullopt;
    std::vector<CoarseMark> marks;
    marks.reserve(posterior.marks.size());
    for (const Mark& mark : posterior.marks) marks.push_back({mark.take_off, mark.fan});
    CoarseOptions coarse;
    const std::vector<Barrier> barriers = barriers_to_runs(survey.ground);
    coarse.barriers = barriers;
    Progress part{progress.stop, [&](double share, std::string_view doing) { progress.say(0.2 + 0.3 * share, doing); }};
    auto found = coarse_systems(marks, coarse, part);
    if (!found) return std::nullopt;
    posterior.scales.spacing_m = spacing_at_a_glance(posterior.marks);
    posterior.estimate = estimate_of(*found, posterior.scales.spacing_m, marks.size());
    posterior.system = std::move(found->system);
    posterior.systems = static_cast<std::uint32_t>(found->systems);
    std::vector<std::size_t> size(posterior.systems, 0);
    for (const std::uint32_t system : posterior.system) ++size[system];
    for (const std::uint32_t system : posterior.system) posterior.belongs.push_back(size[system] > 1 ? coarse_belongs : 1.0);
    for (const std::size_t marks_in : size) posterior.single.push_back(marks_in > 1 ? coarse_single : 1.0);
    posterior.expected_index = coarse_belongs;
    return posterior;
}

int age_rank(Freshness freshness) {
    switch (freshness) {
        case Freshness::fresh: return 0;
        case Freshness::unknown: return 1;
        case Freshness::older: return 2;
        case Freshness::crushed: return 3;
    }
    return 1;
}

// The marks of one system that get a ladder: freshest first, first those apart from each other.
void add_preferred(const Survey& survey, const SystemPosterior& posterior, std::vector<std::size_t> candidates,
                   std::size_t wanted, std::vector<std::size_t>& chosen) {
    std::sort(candidates.begin(), candidates.end(), [&](std::size_t a, std::size_t b) {
        const Mark& x = posterior.marks[a];
        const Mark& y = posterior.marks[b];
        return std::pair(age_rank(x.freshness), x.key) < std::pair(age_rank(y.freshness), y.key);
    });
    const std::size_t before = chosen.size();
    for (const double apart_m : {posterior.scales.spacing_m, 0.0})
        for (const std::size_t i : candidates) {
            if (chosen.size() - before >= wanted) return;
            const bool stands_apart =
                std::all_of(chosen.begin() + static_cast<std::ptrdiff_t>(before), chosen.end(), [&](std::size_t j) {
                    return i != j && distance_m(posterior.marks[i].plug, posterior.marks[j].plug) >= apart_m;
                });
            if (stands_apart && !nothing_is_set_at(survey.ground, posterior.marks[i].take_off)) chosen.push_back(i);
        }
}

std::vector<std::size_t> marks_with_ladders(const Survey& survey, const SystemPosterior& posterior,
                                            const PlanOptions& options) {
    std::vector<std::vector<std::size_t>> candidates(posterior.systems);
    std::set<std::string> decided;
    for (const SetDecision& decision : survey.decisions)
        if (decision.probe.kind == ProbeKind::plug_side) decided.insert(decision.probe.from_mound);
    std::vector<std::size_t> chosen;
    for (std::size_t i = 0; i < posterior.marks.size(); ++i) {
        if (!posterior.marks[i].fan) continue;
        if (!decided.empty() && decided.contains(survey.mounds[posterior.marks[i].mound].name))
            chosen.push_back(i);
        else
            candidates[posterior.system[i]].push_back(i);
    }
    const auto wanted = static_cast<std::size_t>(std::max(0, options.sets_per_system)) + 1;  // one in reserve
    for (std::vector<std::size_t>& of_system : candidates)
        add_preferred(survey, posterior, std::move(of_system), wanted, chosen);
    return chosen;
}

void add_notices(const Survey& survey, const SystemPosterior& posterior, Plan& plan) {
    if (posterior.marks.empty()) return;
    plan.notices.push_back(
        Words::tell("This survey is planned in a coarse form, because it is very large: mounds are grouped by a plain rule. "
                    "It tells no runs, no places between mounds and no chance that holds for one system more than for "
                    "another. Plan a part of the field alone to see these."));
    if (!survey.known.empty())
        plan.notices.push_back(Words::tell("What was told of systems and runs is not heeded in the coarse form."));
}

}  // namespace

std::optional<PlanWithPosterior> make_coarse_plan(const Survey& survey, const PlanOptions& options, const Progress& progress,
                                                  const SystemLetters& letters) {
    progress.say(0.0, Words::later("ordering the marks"));
    std::optional<SystemPosterior> posterior = coarse_posterior(survey, options, progress);
    if (!posterior) return std::nullopt;
    Plan plan;
    plan.revision = survey.revision;
    plan.coarse = true;
    plan.estimate = posterior->estimate;
    plan.mounds = mounds_in_plan(survey, *posterior, options);
    progress.say(0.55, Words::later("outlining systems"));
    plan.systems = systems_in_plan(survey, *posterior, {}, OutlineForm::rough, progress);
    keep_letters(letters, survey, plan.systems);
    if (progress.stopped()) return std::nullopt;
    progress.say(0.65, Words::later("placing ladders"));
    plan.probes = probe_sites(survey, *posterior, {}, options,
                              {.between_where_wanting = false, .marks = marks_with_ladders(survey, *posterior, options)});
    if (progress.stopped()) return std::nullopt;
    progress.say(0.8, Words::later("choosing sets"));
    SetChoiceResult chosen = choose_sets(survey, plan, *posterior, options);
    plan.sets = std::move(chosen.sets);
    plan.expected_reached_by_sets = std::move(chosen.expected_reached);
    add_notices(survey, *posterior, plan);
    plan.notices.insert(plan.notices.end(), chosen.notices.begin(), chosen.notices.end());
    progress.say(0.9, Words::later("finding the way past the sets"));
    order_visits(survey, plan, chosen.proposed, WayForm::along_curve);
    for (SetPoint& set : plan.sets) {
        if (progress.stopped()) return std::nullopt;
        set.cautions = cautions_for(survey, plan, plan.probes[set.probe]);
    }
    return PlanWithPosterior{std::move(plan), std::move(*posterior)};
}

}  // namespace plugside
