#include "app/batch/work_summary.h"

#include <map>
#include <sstream>
#include <utility>
#include <vector>

#include "core/sets/cautions.h"
#include "core/sets/set_code.h"
#include "core/words/words.h"

namespace plugside {

namespace {

using Names = std::vector<std::string>;

// The sets that one rule holds for (or is open, or was signed for), by the sentence that says why, in the order of the sets.
struct Found {
    std::size_t sets = 0;
    std::vector<std::pair<std::string, Names>> because;

    void add(const std::string& why, const std::string& set) {
        ++sets;
        for (auto& [sentence, names] : because)
            if (sentence == why) return names.push_back(set);
        because.push_back({why, {set}});
    }
};

struct FoundOfRule {
    Found holds;
    Found not_known;
    Found signed_off;
};

std::string some_of(const Names& names) {
    constexpr std::size_t shown = 6;
    std::string text;
    for (std::size_t i = 0; i < names.size() && i < shown; ++i) text += (i == 0 ? "" : ", ") + names[i];
    return names.size() > shown ? Words::tell("{1} and {2} more", {text, std::to_string(names.size() - shown)}) : text;
}

std::map<std::string, FoundOfRule> found_by_rule(const Plan& plan, const JudgedPlan& judged) {
    std::map<std::string, FoundOfRule> rules;
    for (const JudgedSet& set : judged.sets) {
        const SetPoint& point = plan.sets.at(set.set);
        const std::string name = code_of(plan, point);
        for (const Judgement& judgement : set.judgements) {
            if (judgement.verdict == Verdict::does_not_hold) continue;
            FoundOfRule& rule = rules[judgement.caution];
            Found& found = judgement.signed_off                      ? rule.signed_off
                           : judgement.verdict == Verdict::not_known ? rule.not_known
                                                                     : rule.holds;
            const bool by_name = judgement.signed_off.has_value();
            found.add(by_name ? judgement.signed_off->name + ": " + judgement.signed_off->reason : judgement.because, name);
        }
    }
    return rules;
}

// `head`: with {1} for the rule's id, {2} for how many sets, {3} for its sentence.
void tell(const char* head, const Caution& caution, const Found& found, bool with_why, std::ostringstream& text) {
    if (found.sets == 0) return;
    text << filled(Words::shown(head), {caution.id, sets_counted(found.sets), caution.sentence}) << '\n';
    constexpr std::size_t most = 4;
    for (std::size_t i = 0; with_why && i < found.because.size() && i < most; ++i)
        text << "  " << some_of(found.because[i].second) << ": " << found.because[i].first << '\n';
    if (with_why && found.because.size() > most)
        text << "  " << Words::tell("and for {1} more reasons at other sets.", {std::to_string(found.because.size() - most)})
             << '\n';
}

void tell_methods(const Survey& survey, const JudgedPlan& judged, std::ostringstream& text) {
    std::map<std::string, std::size_t> sets_of;
    for (const JudgedSet& set : judged.sets) ++sets_of[set.method];
    for (const auto& [id, sets] : sets_of) {
        const auto method = find_method(*survey.work, id);
        text << "  " << (method ? method->name + " (" + id + ")" : Words::tell("no method chosen")) << ": "
             << sets_counted(sets) << '\n';
    }
}

}  // namespace

std::string summary_of_work(const Survey& survey, const Plan& plan, const JudgedPlan& judged, UtcTime now) {
    std::ostringstream text;
    text << Words::tell("Judged for {1}:", {day_shown(std::chrono::floor<std::chrono::days>(now))}) << '\n';
    tell_methods(survey, judged, text);
    std::map<std::string, FoundOfRule> rules = found_by_rule(plan, judged);
    const auto tell_all = [&](CautionWeight weight, Found FoundOfRule::*which, const char* head, bool with_why) {
        for (const Caution& caution : all_cautions())
            if (caution.weight == weight) tell(head, caution, rules[caution.id].*which, with_why, text);
    };
    using enum CautionWeight;
    tell_all(stop, &FoundOfRule::holds, Words::later("Stop ({1}, {2}): {3}"), true);
    tell_all(hold_back, &FoundOfRule::holds, Words::later("Hold back ({1}, {2}): {3}"), true);
    tell_all(stop, &FoundOfRule::not_known, Words::later("Not known, may be a stop ({1}, {2}): {3}"), true);
    tell_all(hold_back, &FoundOfRule::not_known, Words::later("Not known, may hold back ({1}, {2}): {3}"), true);
    tell_all(hold_back, &FoundOfRule::signed_off, Words::later("Held back, signed ({1}, {2}): {3}"), true);
    tell_all(mind, &FoundOfRule::holds, Words::later("Mind ({1}, {2}): {3}"), false);
    const std::vector<Question> asked = judged.asks();
    if (!asked.empty()) text << Words::tell("Asked for:") << '\n';
    for (const Question question : asked) text << "  " << to_text(question) << ": " << asked_as(question) << '\n';
    text << Words::tell(
                "Sets that meet a stop: {1} of {2}; a hold-back that nobody signed: {3}. The label, local rules and a "
                "licensed applicator decide.",
                {std::to_string(judged.stopped().size()), std::to_string(judged.sets.size()),
                 std::to_string(judged.held_back().size())})
         << '\n';
    return text.str();
}

std::string sets_counted(std::size_t count) {
    return count == 1 ? Words::tell("1 set") : Words::tell("{1} sets", {std::to_string(count)});
}

std::string code_of(const Plan& plan, const SetPoint& set) {
    return set_code({plan.systems.at(plan.probes.at(set.probe).system).letter, set.visit_order});
}

std::string not_to_be_handed_out(const JudgedPlan& judged) {
    const std::size_t stopped = judged.stopped().size();
    const std::string all = sets_counted(judged.sets.size());
    return stopped == 1
               ? Words::tell(
                     "This plan is not to be handed out: 1 of {1} meets a stop. Change the method, the place or what "
                     "stands against it, or drop this set, and plan again.",
                     {all})
               : Words::tell(
                     "This plan is not to be handed out: {1} of {2} meet a stop. Change the method, the place or what "
                     "stands against it, or drop these sets, and plan again.",
                     {std::to_string(stopped), all});
}

}  // namespace plugside
