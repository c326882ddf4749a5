#include "core/sets/caution_rules.h"

#include <algorithm>
#include <cassert>
#include <map>
#include <set>

#include "core/sets/near_set.h"
#include "core/sets/planned_use.h"
#include "core/sets/rule_case.h"
#include "core/sets/set_choices.h"
#include "core/words/words.h"

namespace plugside {

namespace {

void take_likelier(SystemSurroundings& around, std::size_t area, std::optional<ReachReason> reason) {
    if (!reason) return;
    reason->keep_clear = area;
    const auto [found, is_new] = around.within_100_ft.try_emplace(area, *reason);
    if (!is_new && reason->chance > found->second.chance) found->second = std::move(*reason);
}

SystemSurroundings surroundings_of(const Survey& survey, const WorkOrder& work, const Plan& plan, std::size_t system,
                                   UtcTime now) {
    const std::vector<SystemReach> reaches = reaches_of(survey, plan, system);
    const LabelLimits& label = work.label;
    SystemSurroundings around;
    const auto take_least = [](std::optional<Metres>& least, std::optional<Metres> other) {
        if (other && (!least || *other < *least)) least = other;
    };
    for (std::size_t a = 0; a < survey.ground.keep_clear.size(); ++a) {
        const KeepClearArea& area = survey.ground.keep_clear[a];
        const bool building = area.kind == KeepClearKind::building;
        const bool well = area.kind == KeepClearKind::well;
        for (const SystemReach& reach : reaches) {
            if (building || well || area.kind == KeepClearKind::play_area)
                take_likelier(around, a, reach.why_within(near_the_system, area.area));
            if (building && label.building_distance && may_be_lived_in(work.conditions, area.name, now))
                take_least(around.nearest_building, reach.nearest(area.area, label.building_distance));
            if (well && label.water_distance)
                take_least(around.nearest_water, reach.nearest(area.area, label.water_distance));
        }
    }
    return around;
}

// The rule of each row of the table, in the table's order.
const std::vector<CautionRule>& rules_in_order() {
    static const std::vector<CautionRule> rules = [] {
        std::vector<CautionRule> in_order;
        for (const Caution& caution : all_cautions("en"))
            for (const auto* group : {&rules_of_the_map(), &rules_of_conditions(), &rules_of_the_label()})
                for (const CautionRule& rule : *group)
                    if (caution.id == rule.id) in_order.push_back(rule);
        assert(in_order.size() == all_cautions("en").size());
        return in_order;
    }();
    return rules;
}

// Judges sets one by one and keeps what is the same for several.
class Judge {
public:
    Judge(const Survey& survey, const WorkOrder& work, const Plan& plan, UtcTime now, const std::vector<Application>& season)
        : survey_(survey),
          work_(work),
          plan_(plan),
          now_(now),
          checks_(label_checks(survey, work, plan, now, season, LengthUnits::metres)) {
        for (std::size_t i = 0; i < survey.mounds.size(); ++i)
            if (!survey.mounds[i].mentions.empty()) noted_.push_back(i);
        const auto& licence = work.licence;
        const auto believed = believed_for(Question::licence);
        if (licence.value && licence.at && now - *licence.at <= *believed) licence_ = licence.value;
    }

    JudgedSet judged(std::size_t set, const std::string& method_id) {
        const ProbeSite& site = plan_.probes.at(plan_.sets.at(set).probe);
        const RuleCase situation{
            survey_, plan_,  site, work_.conditions, work_.label, licence_, method(method_id), around(site.system),
            checks_, noted_, now_};
        JudgedSet judged;
        judged.set = set;
        judged.method = situation.method ? method_id : std::string();
        for (std::size_t r = 0; r < rules_in_order().size(); ++r) {
            const CautionRule& rule = rules_in_order()[r];
            Ruling ruling = rule.judge(situation);
            Judgement judgement{rule.id,
                                all_cautions("en")[r].weight,
                                ruling.verdict,
                                std::move(ruling.because),
                                std::move(ruling.ask),
                                std::move(ruling.where),
                                std::nullopt};
            if (judgement.weight == CautionWeight::hold_back && judgement.verdict != Verdict::does_not_hold)
                if (const SignedOverride* entry = signature_on(work_, judgement.caution, judged.method, site.key))
                    judgement.signed_off = *entry;
            judged.judgements.push_back(std::move(judgement));
        }
        return judged;
    }

private:
    const std::optional<Method>& method(const std::string& id) {
        const auto [found, is_new] = methods_.try_emplace(id);
        if (is_new && !id.empty()) found->second = find_method(work_, id);
        return found->second;
    }
    const SystemSurroundings& around(std::size_t system) {
        const auto [found, is_new] = around_.try_emplace(system);
        if (is_new) found->second = surroundings_of(survey_, work_, plan_, system, now_);
        return found->second;
    }

    const Survey& survey_;
    const WorkOrder& work_;
    const Plan& plan_;
    UtcTime now_;
    std::vector<LabelCheck> checks_;
    std::vector<std::size_t> noted_;
    std::optional<Licence> licence_;
    std::map<std::string, std::optional<Method>> methods_;
    std::map<std::size_t, SystemSurroundings> around_;
};

std::vector<Question> in_order_of_questions(const std::set<Question>& asked) {
    std::vector<Question> in_order;
    for (const Question question : all_questions())
        if (asked.contains(question)) in_order.push_back(question);
    return in_order;
}

template <typename Test>
std::vector<std::size_t> sets_that(const JudgedPlan& plan, Test test) {
    std::vector<std::size_t> sets;
    for (const JudgedSet& set : plan.sets)
        if (test(set)) sets.push_back(set.set);
    return sets;
}

}  // namespace

Ruling it_holds(std::string because) { return {Verdict::holds, std::move(because), {}, {}}; }
Ruling it_does_not(std::string because) { return {Verdict::does_not_hold, std::move(because), {}, {}}; }

Ruling not_known(const RuleCase& situation, std::vector<Question> ask) {
    std::string because;
    for (const Question question : ask) {
        if (!because.empty()) because += " ";
        if (is_questioned(situation.conditions, question, situation.now) && answered_at(situation.conditions, question)) {
            because +=
                Words::tell("The answer of {1} is too old: {2}",
                            {day_shown(std::chrono::floor<std::chrono::days>(*answered_at(situation.conditions, question))),
                             asked_as(question)});
        } else {
            because += Words::tell("Not known: {1}", {asked_as(question)});
        }
    }
    return {Verdict::not_known, std::move(because), std::move(ask), {}};
}

Ruling not_concerned(const RuleCase& situation) {
    assert(situation.method);
    switch (situation.method->stuff) {
        case Stuff::trap: return it_does_not(Words::tell("This method sets traps."));
        case Stuff::bait: return it_does_not(Words::tell("This method sets bait."));
        case Stuff::fumigant: break;
    }
    return it_does_not(Words::tell("This method sets a fumigant."));
}

bool is_open(const Judgement& judgement) { return judgement.verdict != Verdict::does_not_hold && !judgement.signed_off; }

bool JudgedSet::stopped() const {
    return std::any_of(judgements.begin(), judgements.end(), [](const Judgement& judgement) {
        return judgement.weight == CautionWeight::stop && judgement.verdict == Verdict::holds;
    });
}

bool JudgedSet::held_back() const {
    return std::any_of(judgements.begin(), judgements.end(), [](const Judgement& judgement) {
        return judgement.weight == CautionWeight::hold_back && judgement.verdict == Verdict::holds && !judgement.signed_off;
    });
}

std::vector<Question> JudgedSet::asks() const {
    std::set<Question> asked;
    for (const Judgement& judgement : judgements) asked.insert(judgement.ask.begin(), judgement.ask.end());
    return in_order_of_questions(asked);
}

std::vector<const Judgement*> JudgedSet::shown() const {
    std::vector<const Judgement*> all;
    for (const Judgement& judgement : judgements)
        if (judgement.verdict != Verdict::does_not_hold) all.push_back(&judgement);
    std::stable_sort(all.begin(), all.end(), [](const Judgement* a, const Judgement* b) {
        return std::pair(a->weight, a->verdict) < std::pair(b->weight, b->verdict);
    });
    return all;
}

bool JudgedPlan::has_stops() const { return !stopped().empty(); }

std::vector<std::size_t> JudgedPlan::stopped() const {
    return sets_that(*this, [](const JudgedSet& set) { return set.stopped(); });
}

std::vector<std::size_t> JudgedPlan::held_back() const {
    return sets_that(*this, [](const JudgedSet& set) { return set.held_back(); });
}

std::vector<Question> JudgedPlan::asks() const {
    std::set<Question> asked;
    for (const JudgedSet& set : sets)
        for (const Judgement& judgement : set.judgements) asked.insert(judgement.ask.begin(), judgement.ask.end());
    return in_order_of_questions(asked);
}

JudgedPlan judge(const Survey& survey, const WorkOrder& work, const Plan& plan, UtcTime now,
                 const std::vector<Application>& season) {
    Judge judge(survey, work, plan, now, season);
    const std::vector<SetChoice> choices = choices_of(survey, plan);
    JudgedPlan judged;
    for (std::size_t s = 0; s < plan.sets.size(); ++s)
        if (choices[s] != SetChoice::dropped)
            judged.sets.push_back(judge.judged(s, method_at(work, plan.probes[plan.sets[s].probe].key)));
    return judged;
}

JudgedSet judge_set(const Survey& survey, const WorkOrder& work, const Plan& plan, std::size_t set, UtcTime now,
                    const std::optional<std::string>& method, const std::vector<Application>& season) {
    return Judge(survey, work, plan, now, season)
        .judged(set, method ? *method : method_at(work, plan.probes.at(plan.sets.at(set).probe).key));
}

}  // namespace plugside
