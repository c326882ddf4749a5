// What to load and how long the work takes, and what a budget of traps or minutes reaches: the animals reached against the sets, drawn.
#pragma once

#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QWidget>

#include "app/stages/work_account.h"

namespace plugside {

// Animals reached against what is spent, as steps from the origin; a line at the budget and one at the animals of the field.
class ReachCurve : public QWidget {
    Q_OBJECT

public:
    ReachCurve(Choices& choices, QWidget* parent = nullptr);
    void show_curve(std::shared_ptr<const WorkJudged> judged, std::optional<double> budget);
    [[nodiscard]] QSize sizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    Choices& choices_;
    std::shared_ptr<const WorkJudged> judged_;
    std::optional<double> budget_;
};

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
    QComboBox* unit_;
    QLineEdit* amount_;
    QLabel* wrong_;
    QLabel* spent_;
    QPushButton* keep_;
    ReachCurve* curve_;
};

}  // namespace plugside
