#include "app/stages/load_view.h"

#include <QVBoxLayout>
#include <cmath>

#include "app/stages/row_edit.h"
#include "app/stages/rows_layout.h"
#include "app/window/look_sheet.h"
#include "app/words/language.h"

namespace plugside {

LoadView::LoadView(FieldSession& session, Choices& choices, WorkAccount& work, QWidget* parent)
    : QWidget(parent), session_(session), choices_(choices), work_(work) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(6);
    load_ = label_in_role("body", this);
    time_ = label_in_role("quiet", this);
    column->addWidget(load_);
    column->addWidget(time_);
    auto* heading = label_in_role("heading", this);
    heading->setText(tr("With a budget of"));
    column->addWidget(heading);
    auto* row = RowsLayout::natural(6);
    amount_ = new QLineEdit(this);
    amount_->setAccessibleName(tr("how many traps or minutes there are"));
    amount_->setMinimumWidth(80);
    unit_ = page_choice(tr("what the budget counts"), this);
    unit_->addItem(tr("traps"), static_cast<int>(BudgetUnit::traps));
    unit_->addItem(tr("minutes"), static_cast<int>(BudgetUnit::minutes));
    row->addWidget(amount_);
    row->addWidget(unit_);
    column->addLayout(row);
    wrong_ = label_in_role("stop", this);
    wrong_->hide();
    column->addWidget(wrong_);
    spent_ = label_in_role("body", this);
    column->addWidget(spent_);
    keep_ = new QPushButton(tr("keep these sets"), this);
    keep_->setProperty("way", true);
    auto* keys = RowsLayout::natural(6);
    keys->addWidget(keep_);
    column->addLayout(keys);
    curve_ = new ReachCurve(choices_, this);
    column->addWidget(curve_);
    column->addStretch(0);
    const auto entered = [this] { enter_budget(static_cast<BudgetUnit>(unit_->currentData().toInt()), amount_->text()); };
    connect(amount_, &QLineEdit::editingFinished, this, entered);
    connect(unit_, &PageChoice::settled, this, entered);
    connect(keep_, &QPushButton::clicked, this, &LoadView::keep_spent);
    connect(&work_, &WorkAccount::changed, this, &LoadView::refresh);
    refresh();
}

void LoadView::enter_budget(BudgetUnit unit, const QString& amount) {
    WorkOrder order = work_.work();
    order.budget = {};
    bool read = true;
    const QString typed = QString(amount).trimmed().replace(QLatin1Char(','), QLatin1Char('.'));
    if (!typed.isEmpty() && unit == BudgetUnit::traps) order.budget.traps = typed.toInt(&read);
    if (!typed.isEmpty() && unit == BudgetUnit::minutes) order.budget.minutes = typed.toDouble(&read);
    const bool below = order.budget.traps.value_or(0) < 0 || !(order.budget.minutes.value_or(0.0) >= 0.0) ||
                       order.budget.minutes.value_or(0.0) > 1e6;
    wrong_->setVisible(!read || below);
    if (!read || below) {
        wrong_->setText(tr("“%1” is no number of traps or minutes.").arg(amount));
        return;
    }
    work_.edit(std::move(order), tr("budget"));
}

void LoadView::keep_spent() {
    const auto judged = work_.judged();
    if (!work_.holds() || !judged->spent) return;
    const auto plan = judged->plan;
    std::vector<SetDecision> decisions;
    const std::vector<SetChoice> choices = choices_of(session_.field()->survey, *plan);
    for (const std::size_t set : judged->spent->sets)
        if (choices.at(set) == SetChoice::proposed)
            decisions.push_back({plan->probes.at(plan->sets.at(set).probe).key, SetChoice::kept, {}});
    session_.decide_on_all(decisions, tr("keep what the budget reaches"));
}

std::optional<double> LoadView::budget() const {
    const Budget& budget = work_.work().budget;
    if (budget.traps) return *budget.traps;
    return budget.minutes;
}

void LoadView::show_budget() {
    if (!amount_->hasFocus()) amount_->setText(budget() ? in_their_digits(QString::number(*budget())) : QString());
    if (work_.work().budget.minutes) unit_->show_item(1);
    if (work_.work().budget.traps) unit_->show_item(0);
}

void LoadView::refresh() {
    if (!session_.field()) return;
    show_budget();
    const auto judged = work_.judged();
    keep_->setVisible(judged && judged->spent && !judged->spent->sets.empty());
    curve_->show_curve(judged, budget());
    if (!judged) {
        load_->setText(tr("What to load is being counted."));
        time_->clear();
        spent_->clear();
        return;
    }
    const Load& load = judged->load;
    QStringList lines;
    lines << counted(load.sets, tr("%1 set stands"), tr("%1 sets stand"));
    for (const LoadLine& line : load.lines) lines << QString::fromStdString(line.sentence);
    for (const std::string& notice : load.notices) lines << QString::fromStdString(notice);
    load_->setText(lines.join(QLatin1Char('\n')));
    const WorkTime& time = load.time;
    time_->setText(
        tr("About %1 minutes (%2 to %3, %4 in 100), pushing about %5 holes (%6 to %7), without the way between sets. %8")
            .arg(std::lround(time.minutes))
            .arg(std::lround(time.low))
            .arg(std::lround(time.high))
            .arg(std::lround(100.0 * time.level))
            .arg(std::lround(time.holes))
            .arg(time.holes_low)
            .arg(time.holes_high)
            .arg(QString::fromStdString(time.assumption)));
    spent_->setText(
        !judged->spent
            ? tr("Without a budget: %1 would reach about %2 of %3 animals.")
                  .arg(amount_words(judged->unit, judged->curve.empty() ? 0.0 : judged->curve.back().cost),
                       decimal(judged->curve.empty() ? 0.0 : judged->curve.back().reached, 1), decimal(judged->animals, 1))
            : tr("%1 of it go into %2, which reach about %3 of %4 animals; no choice within it reaches more than %5.")
                  .arg(amount_words(judged->unit, judged->spent->cost),
                       amount_words(BudgetUnit::sets, static_cast<double>(judged->spent->sets.size())),
                       decimal(judged->spent->reached, 1), decimal(judged->animals, 1),
                       decimal(judged->spent->most_possible, 1)));
}

void LoadView::take_focus() { amount_->setFocus(Qt::ShortcutFocusReason); }

}  // namespace plugside
