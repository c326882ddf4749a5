#include "app/batch/work_summary.h"

#include <map>
#include <sstream>
#include <utility>
#include <vector>

#include "core/sets/cautions.h"
#include "core/sets/set_code.h"

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

std::string sets_counted(std::size_t count) { return std::to_string(count) + (count == 1 ? " set" : " sets"); }

std::string some_of(const Names& names) {
    constexpr std::size_t shown = 6;
    std::string text;
    for (std::size_t i = 0; i < names.size() && i < shown; ++i) text += (i == 0 ? "" : ", ") + names[i];
    return names.size() > shown ? text + " and " + std::to_string(names.size() - shown) + " more" : text;
}

std::map<std::string, FoundOfRule> found_by_rule(const Plan& plan, const JudgedPlan& judged) {
    std::map<std::string, FoundOfRule> rules;
    for (const JudgedSet& set : judged.sets) {
        const SetPoint& point = plan.sets.at(set.set);
        const std::string name = set_code({plan.systems.at(plan.probes.at(point.probe).system).letter, point.visit_order});
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

void tell(const std::string& head, const Caution& caution, const Found& found, bool with_why, std::ostringstream& text) {
    if (found.sets == 0) return;
    text << head << " (" << caution.id << ", " << sets_counted(found.sets) << "): " << caution.sentence << '\n';
    constexpr std::size_t most = 4;
    for (std::size_t i = 0; with_why && i < found.because.size() && i < most; ++i)
        text << "  " << some_of(found.because[i].second) << ": " << found.because[i].first << '\n';
    if (with_why && found.because.size() > most)
        text << "  and for " << found.because.size() - most << " more reasons at other sets.\n";
}

void tell_methods(const Survey& survey, const JudgedPlan& judged, std::ostringstream& text) {
    std::map<std::string, std::size_t> sets_of;
    for (const JudgedSet& set : judged.sets) ++sets_of[set.method];
    for (const auto& [id, sets] : sets_of) {
        const auto method = find_method(*survey.work, id);
        text << "  " << (method ? method->name + " (" + id + ")" : std::string("no method chosen")) << ": "
             << sets_counted(sets) << '\n';
    }
}

}  // namespace

std::string summary_of_work(const Survey& survey, const Plan& plan, const JudgedPlan& judged, UtcTime now) {
    std::ostringstream text;
    text << "Judged for " << day_shown(std::chrono::floor<std::chrono::days>(now)) << ":\n";
    tell_methods(survey, judged, text);
    std::map<std::string, FoundOfRule> rules = found_by_rule(plan, judged);
    const auto tell_all = [&](CautionWeight weight, Found FoundOfRule::*which, const char* head, bool with_why) {
        for (const Caution& caution : all_cautions())
            if (caution.weight == weight) tell(head, caution, rules[caution.id].*which, with_why, text);
    };
    tell_all(CautionWeight::stop, &FoundOfRule::holds, "Stop", true);
    tell_all(CautionWeight::hold_back, &FoundOfRule::holds, "Hold back", true);
    tell_all(CautionWeight::stop, &FoundOfRule::not_known, "Not known, may be a stop", true);
    tell_all(CautionWeight::hold_back, &FoundOfRule::not_known, "Not known, may hold back", true);
    tell_all(CautionWeight::hold_back, &FoundOfRule::signed_off, "Held back, signed", true);
    tell_all(CautionWeight::mind, &FoundOfRule::holds, "Mind", false);
    const std::vector<Question> asked = judged.asks();
    if (!asked.empty()) text << "Asked for:\n";
    for (const Question question : asked) text << "  " << to_text(question) << ": " << asked_as(question) << '\n';
    text << judged.stopped().size() << " of " << sets_counted(judged.sets.size()) << " meet a stop, "
         << judged.held_back().size() << " a hold-back that nobody signed. The label, local rules and a licensed applicator "
         << "decide.\n";
    return text.str();
}

std::string stops_counted(const JudgedPlan& judged) {
    const std::size_t stopped = judged.stopped().size();
    return std::to_string(stopped) + " of the " + sets_counted(judged.sets.size()) + (stopped == 1 ? " meets" : " meet") +
           " a stop";
}

}  // namespace plugside
