#include "app/batch/plan_summary.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <sstream>

#include "app/batch/work_summary.h"
#include "core/plan/alternative_words.h"
#include "core/sets/cautions.h"
#include "core/words/words.h"

namespace plugside {

namespace {

std::string number(std::size_t count) { return std::to_string(count); }

std::string marks_counted(std::size_t count) {
    return count == 1 ? Words::tell("1 mark") : Words::tell("{1} marks", {number(count)});
}
std::string mounds_counted(std::size_t count) {
    return count == 1 ? Words::tell("1 mound") : Words::tell("{1} mounds", {number(count)});
}
std::string systems_counted(std::size_t count) {
    return count == 1 ? Words::tell("1 system") : Words::tell("{1} systems", {number(count)});
}
std::string runs_counted(std::size_t count) {
    return count == 1 ? Words::tell("1 run") : Words::tell("{1} runs", {number(count)});
}
std::string probe_sites_counted(std::size_t count) {
    return count == 1 ? Words::tell("1 probe site") : Words::tell("{1} probe sites", {number(count)});
}

void tell_marks(const FieldSurvey& field, const Plan& plan, std::ostringstream& text) {
    const auto used = static_cast<std::size_t>(std::count_if(
        plan.mounds.begin(), plan.mounds.end(), [](const MoundInPlan& mound) { return mound.system.has_value(); }));
    text << Words::tell("{1}: {2}, {3} used.", {field.field_name, marks_counted(plan.mounds.size()), number(used)}) << '\n';
    std::map<std::string, std::size_t> left_out;
    for (const MoundInPlan& mound : plan.mounds)
        if (mound.not_used_because) ++left_out[*mound.not_used_because];
    for (const auto& [reason, count] : left_out)
        text << "  " << Words::tell("left out, {1}: {2}", {reason_shown(reason), number(count)}) << '\n';
}

std::string expected_told(double expected) {
    std::ostringstream told;
    told << std::round(expected * 10.0) / 10.0;
    return Words::decimal(told.str());
}

void tell_animals(const Plan& plan, LengthUnits units, std::ostringstream& text) {
    const SystemsEstimate& estimate = plan.estimate;
    std::string where = Words::tell("area walked unknown: no track");
    if (plan.area_walked_m2 && plan.area_field_m2)
        where = Words::tell("on {1} walked of {2}",
                            {ground_area(*plan.area_walked_m2, units), ground_area(*plan.area_field_m2, units)});
    else if (plan.area_walked_m2)
        where = Words::tell("on {1} walked", {ground_area(*plan.area_walked_m2, units)});
    text << Words::tell("Animals: {1} to {2} ({3} in 100), expected {4}, {5}.",
                        {std::to_string(estimate.low), std::to_string(estimate.high),
                         std::to_string(std::lround(estimate.interval * 100.0)), expected_told(estimate.expected), where})
         << '\n';
    text << systems_counted(plan.systems.size()) << ", " << runs_counted(plan.runs.size()) << ", "
         << probe_sites_counted(plan.probes.size()) << ", " << sets_counted(plan.sets.size()) << ".\n";
}

void tell_systems(const Plan& plan, LengthUnits units, std::ostringstream& text) {
    std::vector<std::size_t> sets(plan.systems.size(), 0);
    for (const SetPoint& set : plan.sets) ++sets.at(plan.probes.at(set.probe).system);
    for (std::size_t i = 0; i < plan.systems.size(); ++i) {
        const BurrowSystem& system = plan.systems[i];
        text << "  "
             << Words::tell("{1}: {2}, one animal's with {3} in 100, {4} of run, {5}",
                            {system.letter, mounds_counted(system.mounds.size()), std::to_string(system.single.in_100()),
                             ground_distance(system.run_length, units), sets_counted(sets[i])})
             << '\n';
    }
}

void tell_alternatives(const FieldSurvey& field, const Plan& plan, bool each, std::ostringstream& text) {
    constexpr std::size_t few = 3;
    const Alternatives& alternatives = plan.alternatives;
    const std::size_t all = alternatives.joined.size() + alternatives.split.size();
    if (all > few && !each)
        text << Words::tell("What else may be true, of {1}:", {number(all)}) << '\n';
    else if (all > 0)
        text << Words::tell("What else may be true:") << '\n';
    for (const std::string& words : likeliest_alternatives(field.survey, plan, each ? all : few))
        text << "  " << words << '\n';
    const std::size_t doubtful = alternatives.doubtful.size();
    if (doubtful > 0)
        text << (doubtful == 1 ? Words::tell("1 mound may well be another system's")
                               : Words::tell("{1} mounds may well be another system's", {number(doubtful)}))
             << (each ? ":" : ".") << '\n';
    if (each)
        for (const DoubtfulMound& mound : alternatives.doubtful)
            text << "  " << words_for(mound, field.survey, plan) << '\n';
}

std::string weight_told(CautionWeight weight, const std::string& sets, const std::string& sentence) {
    switch (weight) {
        case CautionWeight::stop: return Words::tell("Stop ({1}): {2}", {sets, sentence});
        case CautionWeight::hold_back: return Words::tell("Hold back ({1}): {2}", {sets, sentence});
        case CautionWeight::mind: break;
    }
    return Words::tell("Mind ({1}): {2}", {sets, sentence});
}

void tell_cautions(const Plan& plan, std::ostringstream& text) {
    std::map<std::string, std::size_t> sets_with;
    for (const SetPoint& set : plan.sets)
        for (const std::string& id : set.cautions) ++sets_with[id];
    for (const Caution& caution : all_cautions())
        if (const auto found = sets_with.find(caution.id); found != sets_with.end())
            text << weight_told(caution.weight, sets_counted(found->second), caution.sentence) << '\n';
}

}  // namespace

std::string summary_of(const FieldSurvey& field, const Plan& plan, LengthUnits units, bool each_system, bool with_cautions) {
    std::ostringstream text;
    tell_marks(field, plan, text);
    tell_animals(plan, units, text);
    if (each_system) tell_systems(plan, units, text);
    tell_alternatives(field, plan, each_system, text);
    for (const std::string& notice : plan.notices) text << notice << '\n';
    if (!field.findings.empty())
        text << (field.findings.size() == 1
                     ? Words::tell("1 finding while reading, see above.")
                     : Words::tell("{1} findings while reading, see above.", {number(field.findings.size())}))
             << '\n';
    if (with_cautions) tell_cautions(plan, text);
    return text.str();
}

}  // namespace plugside
