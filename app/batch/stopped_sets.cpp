#include "app/batch/stopped_sets.h"

#include <algorithm>

#include "app/batch/work_summary.h"
#include "core/plan/make_plan.h"
#include "core/words/words.h"

namespace plugside {

namespace {

void drop(Survey& survey, const ProbeKey& probe) {
    const auto decided = std::find_if(survey.decisions.begin(), survey.decisions.end(),
                                      [&](const SetDecision& decision) { return decision.probe == probe; });
    if (decided != survey.decisions.end())
        *decided = {probe, SetChoice::dropped, {}};
    else
        survey.decisions.push_back({probe, SetChoice::dropped, {}});
}

// Every stop that holds at the set, with why, each once.
std::string why_stopped(const JudgedSet& set) {
    std::vector<std::string> reasons;
    for (const Judgement& judgement : set.judgements)
        if (judgement.weight == CautionWeight::stop && judgement.verdict == Verdict::holds) {
            std::string reason = judgement.because + " (" + judgement.caution + ")";
            if (std::find(reasons.begin(), reasons.end(), reason) == reasons.end()) reasons.push_back(std::move(reason));
        }
    std::string text;
    for (const std::string& reason : reasons) text += (text.empty() ? "" : " ") + reason;
    return text;
}

}  // namespace

std::optional<WithoutStops> without_stopped_sets(const Survey& survey, const Plan& plan, const JudgedPlan& judged,
                                                 UtcTime now, const Progress& progress) {
    WithoutStops result{survey, plan, judged, {}};
    std::size_t stood_in = 0;
    for (bool first = true; result.judged.has_stops(); first = false) {
        for (const JudgedSet& set : result.judged.sets) {
            if (!set.stopped()) continue;
            const SetPoint& point = result.plan.sets.at(set.set);
            if (first)
                result.told.push_back(Words::tell("Dropped {1}: {2}", {code_of(result.plan, point), why_stopped(set)}));
            else
                ++stood_in;
            drop(result.survey, result.plan.probes.at(point.probe).key);
        }
        ++result.survey.revision;
        auto next = make_plan(result.survey, {}, Progress{progress.stop, {}});
        if (!next) return std::nullopt;
        result.plan = std::move(*next);
        result.judged = judge(result.survey, *result.survey.work, result.plan, now);
        progress.say(
            static_cast<double>(result.survey.decisions.size()) / static_cast<double>(result.plan.probes.size() + 1),
            Words::later("dropping sets that meet a stop"));
    }
    if (stood_in == 1)
        result.told.push_back(Words::tell("1 place that stood in for them met a stop, too, and was dropped."));
    else if (stood_in > 1)
        result.told.push_back(
            Words::tell("{1} places that stood in for them met a stop, too, and were dropped.", {std::to_string(stood_in)}));
    if (result.judged.sets.empty()) result.told.push_back(Words::tell("No set is left."));
    return result;
}

}  // namespace plugside
