#include "core/plan/plan_nearby.h"

#include <algorithm>
#include <functional>
#include <iterator>
#include <set>
#include <string>
#include <utility>

#include "core/plan/lay_out.h"

namespace plugside {

namespace {

constexpr std::size_t left_out = static_cast<std::size_t>(-1);

double nearest_m(LocalPoint place, const std::vector<LocalPoint>& touched) {
    double nearest = distance_m(place, touched.front());
    for (const LocalPoint other : touched) nearest = std::min(nearest, distance_m(place, other));
    return nearest;
}

struct Patch {
    std::vector<std::size_t> mounds;  // of the survey, ascending
    std::vector<double> away_m;       // of each
    double reach_m = 0.0;
};

const Mound& mound_of(const Survey& survey, const EditInHand& edit, std::size_t mound) {
    return edit.mound && edit.mound->first == mound ? edit.mound->second : survey.mounds[mound];
}

// `frame`: ground and facts as the edit would have them, without marks.
Patch patch_about(const Survey& survey, const EditInHand& edit, const Survey& frame, const std::vector<LocalPoint>& touched,
                  std::size_t most_marks) {
    std::vector<std::pair<double, std::size_t>> by_distance;
    by_distance.reserve(survey.mounds.size());
    for (std::size_t i = 0; i < survey.mounds.size(); ++i)
        by_distance.emplace_back(nearest_m(mound_of(survey, edit, i).plug, touched), i);
    std::make_heap(by_distance.begin(), by_distance.end(), std::greater<>());
    std::vector<std::pair<std::size_t, double>> taken;
    for (auto end = by_distance.end(); end != by_distance.begin() && taken.size() < most_marks; --end) {
        std::pop_heap(by_distance.begin(), end, std::greater<>());
        const auto& [away, mound] = *(end - 1);
        if (!why_not_used(frame, mound_of(survey, edit, mound))) taken.emplace_back(mound, away);
    }
    Patch patch;
    std::sort(taken.begin(), taken.end());
    for (const auto& [mound, away] : taken) {
        patch.mounds.push_back(mound);
        patch.away_m.push_back(away);
        patch.reach_m = std::max(patch.reach_m, away);
    }
    return patch;
}

// Without the marks, and without the tracks, which a first look does not measure.
Survey frame_of(const Survey& survey, const EditInHand& edit) {
    Survey frame;
    frame.revision = survey.revision;
    frame.ground = edit.ground ? *edit.ground : survey.ground;
    frame.known = survey.known;
    if (edit.said) frame.known.push_back(*edit.said);
    return frame;
}

// The survey of these mounds alone.
Survey survey_of(const Survey& survey, const EditInHand& edit, Survey frame, const Patch& patch) {
    Survey part = std::move(frame);
    std::set<std::string> names;
    for (const std::size_t i : patch.mounds) {
        part.mounds.push_back(mound_of(survey, edit, i));
        names.insert(part.mounds.back().name);
    }
    std::erase_if(part.known, [&](const KnownFact& fact) {
        return !std::all_of(fact.marks.begin(), fact.marks.end(),
                            [&](const std::string& mark) { return names.contains(mark); });
    });
    std::copy_if(survey.decisions.begin(), survey.decisions.end(), std::back_inserter(part.decisions),
                 [&](const SetDecision& decision) {
                     return names.contains(decision.probe.from_mound) &&
                            (decision.probe.to_mound.empty() || names.contains(decision.probe.to_mound));
                 });
    return part;
}

// Takes what belongs to other systems out of the plan and numbers the rest anew.
void keep_systems(const std::vector<bool>& kept, Plan& plan) {
    std::vector<std::size_t> number(kept.size(), left_out);
    std::size_t next = 0;
    for (std::size_t s = 0; s < kept.size(); ++s)
        if (kept[s]) number[s] = next++;
    std::vector<BurrowSystem> systems;
    for (std::size_t s = 0; s < kept.size(); ++s)
        if (kept[s]) systems.push_back(std::move(plan.systems[s]));
    plan.systems = std::move(systems);
    for (MoundInPlan& mound : plan.mounds)
        if (mound.system) {
            if (kept[*mound.system])
                mound.system = number[*mound.system];
            else
                mound.system.reset();
        }
    std::erase_if(plan.runs, [&](const MainRun& run) { return !kept[run.system]; });
    for (MainRun& run : plan.runs) run.system = number[run.system];
    std::vector<std::size_t> probe_number(plan.probes.size(), left_out);
    std::vector<ProbeSite> probes;
    for (std::size_t p = 0; p < plan.probes.size(); ++p) {
        if (!kept[plan.probes[p].system]) continue;
        probe_number[p] = probes.size();
        probes.push_back(std::move(plan.probes[p]));
        probes.back().system = number[probes.back().system];
    }
    plan.probes = std::move(probes);
    std::erase_if(plan.sets, [&](const SetPoint& set) { return probe_number[set.probe] == left_out; });
    for (SetPoint& set : plan.sets) set.probe = probe_number[set.probe];
    plan.alternatives = {};  // they compare systems of which some may be gone
}

}  // namespace

std::optional<NearbyPlan> plan_nearby(const Survey& survey, const EditInHand& edit, const std::vector<LocalPoint>& touched,
                                      const PlanOptions& options, const NearbyWishes& wishes, const Progress& progress) {
    NearbyPlan nearby;
    nearby.plan.revision = survey.revision;
    nearby.plan.first_look = true;
    if (touched.empty()) return nearby;
    Survey frame = frame_of(survey, edit);
    Patch patch = patch_about(survey, edit, frame, touched, wishes.most_marks);
    const Survey part = survey_of(survey, edit, std::move(frame), patch);
    const LinkWeights& weights = learnt_link_weights();
    const Progress silent{progress.stop, {}};
    auto posterior =
        infer_systems(part, options, weights, weigh_links(part, options, weights, silent), Thoroughness::first_look, silent);
    if (!posterior) return std::nullopt;
    static const SystemLetters no_letters;
    auto plan = laid_out(part, *posterior, options, weights, Thoroughness::first_look,
                         wishes.letters ? *wishes.letters : no_letters, silent);
    if (!plan) return std::nullopt;
    std::vector<bool> kept(plan->systems.size(), patch.mounds.size() < wishes.most_marks);
    for (std::size_t s = 0; s < kept.size(); ++s)
        for (const std::size_t mound : plan->systems[s].mounds)
            if (patch.away_m[mound] <= 0.5 * patch.reach_m) kept[s] = true;
    keep_systems(kept, *plan);
    nearby.mounds = std::move(patch.mounds);
    nearby.plan = std::move(*plan);
    return nearby;
}

std::optional<NearbyPlan> plan_nearby(const Survey& survey, const std::vector<LocalPoint>& touched,
                                      const PlanOptions& options, const NearbyWishes& wishes, const Progress& progress) {
    return plan_nearby(survey, EditInHand{}, touched, options, wishes, progress);
}

}  // namespace plugside
