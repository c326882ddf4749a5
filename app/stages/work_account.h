// What the Method step knows of the work at hand: what speaks against the sets that stand, what each method would meet here, the label's
// comparisons, what to load, and what a budget reaches.
//
// Worked out beside the window's thread after each whole plan and each edit of the work order; what was worked out from another field or
//        plan is forgotten. Meanwhile the earlier account stands and `holds` is false. What speaks against comes first, the methods after.
// Edits: `edit` puts a work order in place of the one there is, as one act of the history; nothing where nothing changes.
// Time:  answers are given at, and their age is judged by, `now`; a test may set it.
#pragma once

#include <QObject>
#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "app/planning/background_work.h"
#include "app/session/choices.h"
#include "app/session/field_session.h"
#include "core/sets/budget.h"
#include "core/sets/caution_rules.h"
#include "core/sets/material.h"
#include "core/sets/work_order_rows.h"

namespace plugside {

// What all sets that stand would meet with one method.
struct MethodLook {
    std::string id;
    std::size_t sets = 0;
    std::size_t stopped = 0;
    std::size_t held_back = 0;
    std::vector<Question> asks;
};

struct WorkJudged {
    JudgedPlan judged;
    std::vector<LabelCheck> label;
    Load load;
    std::vector<BudgetStep> curve;
    std::optional<BudgetSpent> spent;
    BudgetUnit unit = BudgetUnit::sets;
    double animals = 0.0;           // expected in the field
    std::vector<MethodLook> looks;  // built in ones and the person's own; empty until they were looked at
    std::shared_ptr<const Plan> plan;
};

// One caution and the sets it concerns, the weightiest first.
struct CautionGroup {
    std::string caution;
    CautionWeight weight = CautionWeight::mind;
    bool holds = false;                // at one set at least; else it is not known
    std::string because;               // of the first set that it holds at, or is not known at
    std::vector<Question> ask;         // each once
    std::vector<std::size_t> sets;     // indexes into plan.sets
    std::vector<std::string> methods;  // of these sets, each once
    std::vector<ReachReason> where;    // parts of systems, one a system and area
    std::size_t signed_sets = 0;
    [[nodiscard]] bool open() const { return signed_sets < sets.size(); }
};
[[nodiscard]] std::vector<CautionGroup> caution_groups(const JudgedPlan& judged);

class WorkAccount : public QObject {
    Q_OBJECT

public:
    using Clock = std::function<UtcTime()>;

    WorkAccount(FieldSession& session, Choices& choices, QObject* parent = nullptr);

    [[nodiscard]] const WorkOrder& work() const;
    [[nodiscard]] UtcTime now() const { return clock_(); }
    void set_clock(Clock clock);
    // Null until it was worked out the first time for this field.
    [[nodiscard]] std::shared_ptr<const WorkJudged> judged() const { return judged_; }
    // Whether it is of the field as it is now.
    [[nodiscard]] bool holds() const { return judged_ && judged_field_ == session_.field(); }
    [[nodiscard]] bool working() const { return work_.running(); }
    // What speaks against the field as it is now; of a small plan judged at once where that is not done yet, else nothing.
    [[nodiscard]] std::optional<JudgedPlan> judged_now() const;
    [[nodiscard]] const JudgedSet* judged_set(std::size_t set) const;
    void edit(WorkOrder order, const QString& words);
    // The same by rows (core/sets/work_order_rows.h): each in place of the one of its name, without a value it is taken away. A sentence
    // where it cannot be read; then nothing is edited.
    [[nodiscard]] std::optional<QString> edit_rows(const std::vector<WorkRow>& rows, const QString& words);
    // "3 questions open, 2 stops", for the day rail.
    [[nodiscard]] QString line() const;

Q_SIGNALS:
    void changed();  // the work order, or what is known of it

private:
    void follow();
    void start();

    FieldSession& session_;
    Choices& choices_;
    Clock clock_;
    BackgroundWork work_{nullptr, BackgroundWork::Overlap::none};
    std::shared_ptr<const WorkJudged> judged_;
    std::shared_ptr<const FieldSurvey> judged_field_;
    std::shared_ptr<const FieldSurvey> asked_field_;
    std::shared_ptr<const Plan> asked_plan_;
};

}  // namespace plugside
