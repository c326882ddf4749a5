// What to load and how long the work takes, and what a budget of traps or minutes reaches: the animals reached against the sets, drawn.
#pragma once

#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QWidget>

#include "app/stages/page_choice.h"
#include "app/stages/reach_curve.h"
#include "app/stages/work_account.h"

namespace plugside {

class LoadView : public QWidget {
    Q_OBJECT

public:
    LoadView(FieldSession& session, Choices& choices, WorkAccount& work, QWidget* parent = nullptr);
    void enter_budget(BudgetUnit unit, const QString& amount);
    // Keeps the sets that the budget is spent on, as one act.
    void keep_spent();
    [[nodiscard]] QString load_text() const { return load_->text(); }
    [[nodiscard]] QString spent_text() const { return spent_->text(); }
    void take_focus();

private:
    void refresh();
    void show_budget();
    [[nodiscard]] std::optional<double> budget() const;

    FieldSession& session_;
    Choices& choices_;
    WorkAccount& work_;
    QLabel* load_;
    QLabel* time_;
    PageChoice* unit_;
    QLineEdit* amount_;
    QLabel* wrong_;
    QLabel* spent_;
    QPushButton* keep_;
    ReachCurve* curve_;
};

}  // namespace plugside
