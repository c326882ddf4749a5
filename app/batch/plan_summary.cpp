#include "app/batch/plan_summary.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <sstream>

#include "core/plan/alternative_words.h"
#include "core/sets/cautions.h"

namespace plugside {

namespace {

std::string counted(std::size_t count, const std::string& one, const std::string& many) {
    return std::to_string(count) + " " + (count == 1 ? one : many);
}

void tell_marks(const FieldSurvey& field, const Plan& plan, std::ostringstream& text) {
    const auto used = static_cast<std::size_t>(std::count_if(
        plan.mounds.begin(), plan.mounds.end(), [](const MoundInPlan& mound) { return mound.system.has_value(); }));
    text << field.field_name << ": " << counted(plan.mounds.size(), "mark", "marks") << ", " << used << " used.\n";
    std::map<std::string, std::size_t> left_out;
    for (const MoundInPlan& mound : plan.mounds)
        if (mound.not_used_because) ++left_out[*mound.not_used_because];
    for (const auto& [reason, count] : left_out) text << "  left out, " << reason << ": " << count << '\n';
}

void tell_animals(const Plan& plan, LengthUnits units, std::ostringstream& text) {
    const SystemsEstimate& estimate = plan.estimate;
    text << "Animals: " << estimate.low << " to " << estimate.high << " (" << std::lround(estimate.interval * 100.0)
         << " in 100), expected " << std::round(estimate.expected * 10.0) / 10.0 << ", ";
    if (plan.area_walked_m2)
        text << "on " << ground_area(*plan.area_walked_m2, units) << " walked";
    else
        text << "area walked unknown: no track";
    if (plan.area_field_m2) text << " of " << ground_area(*plan.area_field_m2, units);
    text << ".\n";
    text << counted(plan.systems.size(), "system", "systems") << ", " << counted(plan.runs.size(), "run", "runs") << ", "
         << counted(plan.probes.size(), "probe site", "probe sites") << ", " << counted(plan.sets.size(), "set", "sets")
         << ".\n";
}

void tell_systems(const Plan& plan, LengthUnits units, std::ostringstream& text) {
    std::vector<std::size_t> sets(plan.systems.size(), 0);
    for (const SetPoint& set : plan.sets) ++sets.at(plan.probes.at(set.probe).system);
    for (std::size_t i = 0; i < plan.systems.size(); ++i) {
        const BurrowSystem& system = plan.systems[i];
        text << "  " << system.letter << ": " << counted(system.mounds.size(), "mound", "mounds") << ", one animal's with "
             << system.single.in_100() << " in 100, " << ground_distance(system.run_length, units) << " of run, "
             << counted(sets[i], "set", "sets") << '\n';
    }
}

void tell_alternatives(const FieldSurvey& field, const Plan& plan, bool each, std::ostringstream& text) {
    constexpr std::size_t few = 3;
    const Alternatives& alternatives = plan.alternatives;
    const std::size_t all = alternatives.joined.size() + alternatives.split.size();
    if (all > 0) text << "What else may be true" << (each || all <= few ? "" : ", of " + std::to_string(all)) << ":\n";
    for (const std::string& words : likeliest_alternatives(field.survey, plan, each ? all : few))
        text << "  " << words << '\n';
    if (!alternatives.doubtful.empty())
        text << counted(alternatives.doubtful.size(), "mound may", "mounds may") << " well be another system's"
             << (each ? ":" : ".") << '\n';
    if (each)
        for (const DoubtfulMound& doubtful : alternatives.doubtful)
            text << "  " << words_for(doubtful, field.survey, plan) << '\n';
}

const char* word_of(CautionWeight weight) {
    switch (weight) {
        case CautionWeight::stop: return "Stop";
        case CautionWeight::hold_back: return "Hold back";
        case CautionWeight::mind: return "Mind";
    }
    return "Mind";
}

void tell_cautions(const Plan& plan, std::ostringstream& text) {
    std::map<std::string, std::size_t> sets_with;
    for (const SetPoint& set : plan.sets)
        for (const std::string& id : set.cautions) ++sets_with[id];
    for (const Caution& caution : all_cautions())
        if (const auto found = sets_with.find(caution.id); found != sets_with.end())
            text << word_of(caution.weight) << " (" << counted(found->second, "set", "sets") << "): " << caution.sentence
                 << '\n';
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
        text << counted(field.findings.size(), "finding", "findings") << " while reading, see above.\n";
    if (with_cautions) tell_cautions(plan, text);
    return text.str();
}

}  // namespace plugside
