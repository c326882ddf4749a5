#include "app/stages/work_account.h"

#include <algorithm>
#include <map>

#include "app/window/look_sheet.h"
#include "core/sets/planned_use.h"
#include "core/survey/refusal.h"

namespace plugside {

namespace {

UtcTime time_now() { return std::chrono::time_point_cast<std::chrono::milliseconds>(std::chrono::system_clock::now()); }

std::vector<MethodLook> looks_of(const Survey& survey, const WorkOrder& work, const Plan& plan, UtcTime now,
                                 const Progress& progress) {
    std::vector<Method> methods = built_in_methods();
    methods.insert(methods.end(), work.own_methods.begin(), work.own_methods.end());
    std::vector<MethodLook> looks;
    for (const Method& method : methods) {
        if (progress.stopped()) break;
        WorkOrder with = work;
        with.method = method.id;
        with.set_methods.clear();
        const JudgedPlan judged = judge(survey, with, plan, now);
        looks.push_back({method.id, judged.sets.size(), judged.stopped().size(), judged.held_back().size(), judged.asks()});
    }
    return looks;
}

void spend(WorkJudged& all, const Survey& survey, const Budget& budget, const Plan& plan) {
    const std::vector<SetChoice> choices = choices_of(survey, plan);
    all.unit = budget.traps ? BudgetUnit::traps : budget.minutes ? BudgetUnit::minutes : BudgetUnit::sets;
    all.curve = budget_curve(plan, choices, all.unit);
    all.animals = plan.estimate.expected;
    if (budget.traps) all.spent = spend_budget(plan, choices, all.unit, *budget.traps);
    if (!budget.traps && budget.minutes) all.spent = spend_budget(plan, choices, all.unit, *budget.minutes);
}

template <typename T>
void add_once(std::vector<T>& to, const T& what) {
    if (std::find(to.begin(), to.end(), what) == to.end()) to.push_back(what);
}

void take(CautionGroup& group, const JudgedSet& set, const Judgement& judgement) {
    const bool holds = judgement.verdict == Verdict::holds;
    if (group.sets.empty() || (holds && !group.holds)) group.because = judgement.because;
    group.holds = group.holds || holds;
    group.sets.push_back(set.set);
    add_once(group.methods, set.method);
    for (const Question question : judgement.ask) add_once(group.ask, question);
    if (judgement.signed_off) ++group.signed_sets;
    if (!judgement.where) return;
    const auto same = [&](const ReachReason& reason) {
        return reason.system == judgement.where->system && reason.keep_clear == judgement.where->keep_clear;
    };
    if (std::none_of(group.where.begin(), group.where.end(), same)) group.where.push_back(*judgement.where);
}

}  // namespace

std::vector<CautionGroup> caution_groups(const JudgedPlan& judged) {
    std::vector<CautionGroup> groups;
    std::map<std::string, std::size_t> at;
    for (const JudgedSet& set : judged.sets)
        for (const Judgement* judgement : set.shown()) {
            const auto [found, is_new] = at.try_emplace(judgement->caution, groups.size());
            if (is_new) groups.push_back({judgement->caution, judgement->weight, false, {}, {}, {}, {}, {}, 0});
            take(groups[found->second], set, *judgement);
        }
    // what holds before what is not known, within one weight
    std::stable_sort(groups.begin(), groups.end(), [](const CautionGroup& a, const CautionGroup& b) {
        return a.weight != b.weight ? a.weight < b.weight : a.holds > b.holds;
    });
    return groups;
}

WorkAccount::WorkAccount(FieldSession& session, Choices& choices, QObject* parent)
    : QObject(parent), session_(session), choices_(choices), clock_(time_now) {
    connect(&session_, &FieldSession::survey_edited, this, &WorkAccount::follow);
    connect(&session_, &FieldSession::plan_changed, this, &WorkAccount::follow);
    connect(&session_, &FieldSession::field_replaced, this, [this] {
        work_.stop();
        judged_.reset();
        judged_field_.reset();
        asked_field_.reset();
        asked_plan_.reset();
        follow();
    });
    connect(&choices_, &Choices::units_changed, this, [this] {
        asked_field_.reset();
        follow();
    });
}

void WorkAccount::set_clock(Clock clock) {
    clock_ = std::move(clock);
    asked_field_.reset();
    follow();
}

const WorkOrder& WorkAccount::work() const {
    static const WorkOrder none;
    return session_.field() ? *session_.field()->survey.work : none;
}

std::optional<JudgedPlan> WorkAccount::judged_now() const {
    constexpr std::size_t judged_in_no_time = 200;  // sets
    if (holds()) return judged_->judged;
    const auto plan = session_.plan();
    if (!session_.plan_is_current() || plan->sets.size() > judged_in_no_time) return std::nullopt;
    return judge(session_.field()->survey, work(), *plan, now());
}

const JudgedSet* WorkAccount::judged_set(std::size_t set) const {
    if (!judged_ || judged_->plan != session_.plan()) return nullptr;
    const auto& sets = judged_->judged.sets;
    const auto found = std::find_if(sets.begin(), sets.end(), [set](const JudgedSet& one) { return one.set == set; });
    return found == sets.end() ? nullptr : &*found;
}

void WorkAccount::follow() {
    if (session_.plan_is_current() && (asked_field_ != session_.field() || asked_plan_ != session_.plan())) start();
    Q_EMIT changed();
}

void WorkAccount::start() {
    asked_field_ = session_.field();
    asked_plan_ = session_.plan();
    const auto applying = [this, field = asked_field_, plan = asked_plan_](WorkJudged made) -> BackgroundWork::Apply {
        return [this, field, plan, all = std::make_shared<const WorkJudged>(std::move(made))] {
            if (session_.field() != field || session_.plan() != plan) return;
            judged_ = all;
            judged_field_ = field;
            Q_EMIT changed();
        };
    };
    work_.start_in_stages(
        [field = asked_field_, plan = asked_plan_, now = now(), units = choices_.units(), applying](
            const Progress& progress, const BackgroundWork::Meanwhile& meanwhile) -> BackgroundWork::Apply {
            const Survey& survey = field->survey;
            WorkJudged all;
            all.plan = plan;
            all.judged = judge(survey, *survey.work, *plan, now);
            if (progress.stopped()) return {};
            all.label = label_checks(survey, *survey.work, *plan, now, {}, units);
            all.load = what_to_load(survey, *survey.work, *plan, now);
            if (progress.stopped()) return {};
            spend(all, survey, survey.work->budget, *plan);
            meanwhile(applying(all));
            all.looks = looks_of(survey, *survey.work, *plan, now, progress);
            if (progress.stopped()) return {};
            return applying(std::move(all));
        });
}

void WorkAccount::edit(WorkOrder order, const QString& words) {
    if (session_.field()) session_.edit(HeldWork(std::move(order)), words);
}

std::optional<QString> WorkAccount::edit_rows(const std::vector<WorkRow>& rows, const QString& words) {
    std::vector<WorkRow> all = rows_of(work());
    for (const WorkRow& row : rows) {
        std::erase_if(all, [&](const WorkRow& one) { return one.name == row.name; });
        if (!row.value.empty()) all.push_back(row);
    }
    WorkReading reading = work_order_of(all);
    if (!reading.problems.empty())
        return tr("%1 was found, %2 was expected.")
            .arg(QString::fromStdString(reading.problems.front().found),
                 QString::fromStdString(Words::shown(reading.problems.front().expected)));
    // an order that was kept was worked out from other wishes
    if (!reading.work.walking.alike(work().walking)) reading.work.walking.kept.clear();
    edit(std::move(reading.work), words);
    return std::nullopt;
}

QString WorkAccount::line() const {
    if (!session_.plan()) return tr("after the plan");
    if (work().method.empty() && work().set_methods.empty()) return tr("none chosen yet");
    if (!judged_) return tr("being judged");
    const auto questions = static_cast<long long>(judged_->judged.asks().size());
    std::size_t stops = 0;
    std::size_t held = 0;
    for (const CautionGroup& group : caution_groups(judged_->judged)) {
        if (group.holds && group.weight == CautionWeight::stop) ++stops;
        if (group.holds && group.weight == CautionWeight::hold_back && group.open()) ++held;
    }
    QStringList parts;
    if (questions > 0) parts << counted(questions, tr("%1 question open"), tr("%1 questions open"));
    if (stops > 0) parts << counted(static_cast<long long>(stops), tr("%1 stop"), tr("%1 stops"));
    if (held > 0) parts << counted(static_cast<long long>(held), tr("%1 to sign"), tr("%1 to sign"));
    return parts.isEmpty() ? tr("chosen, answered") : parts.join(QStringLiteral(", "));
}

}  // namespace plugside
