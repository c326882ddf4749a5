#include "app/stages/set_panels.h"

#include <QHBoxLayout>
#include <QPushButton>
#include <QVBoxLayout>

#include "app/stages/set_words.h"
#include "app/stages/sets_page.h"
#include "app/window/look_sheet.h"

namespace plugside {

namespace {

QSpinBox* limit_in_100(int value, QWidget* parent) {
    auto* limit = new QSpinBox(parent);
    limit->setRange(1, 100);
    limit->setValue(value);
    limit->setButtonSymbols(QAbstractSpinBox::NoButtons);
    return limit;
}

// The figure with a key to either side of it, for a hand on the mouse.
QHBoxLayout* limit_row(QSpinBox* limit, QWidget* parent) {
    auto* row = new QHBoxLayout;
    row->setContentsMargins(24, 0, 0, 0);
    row->setSpacing(6);
    const auto key = [&](const QString& sign, const QString& name, void (QAbstractSpinBox::*step)()) {
        auto* button = new QPushButton(sign, parent);
        button->setProperty("way", true);
        button->setAccessibleName(name);
        button->setAutoRepeat(true);
        button->setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
        QObject::connect(button, &QPushButton::clicked, limit, step);
        row->addWidget(button);
    };
    key(QStringLiteral("−"), SetsPage::tr("lower the chance asked for"), &QAbstractSpinBox::stepDown);
    row->addWidget(limit);
    key(QStringLiteral("+"), SetsPage::tr("raise the chance asked for"), &QAbstractSpinBox::stepUp);
    auto* in_100 = label_in_role("quiet", parent);
    in_100->setText(SetsPage::tr("in 100"));
    row->addWidget(in_100, 1);
    return row;
}

QString with_count(const QString& words, std::size_t count) { return QStringLiteral("%1: %2").arg(words).arg(count); }

}  // namespace

ShowOnly::ShowOnly(SetAccount& account, QWidget* parent) : QWidget(parent), account_(account) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 4, 0, 0);
    column->setSpacing(9);
    auto* head = label_in_role("heading", this);
    head->setText(tr("Go through these alone"));
    undecided_ = new QCheckBox(this);
    cautioned_ = new QCheckBox(this);
    under_ = new QCheckBox(this);
    limit_ = limit_in_100(90, this);
    limit_->setAccessibleName(tr("chance in 100"));
    of_animal_ = new QCheckBox(this);
    hidden_ = label_in_role("body", this);
    column->addWidget(head);
    column->addWidget(undecided_);
    column->addWidget(cautioned_);
    column->addWidget(under_);
    column->addLayout(limit_row(limit_, this));
    column->addWidget(of_animal_);
    column->addWidget(hidden_);
    auto* all = new QPushButton(tr("show all again"), this);
    column->addWidget(all, 0, Qt::AlignLeft);
    column->addStretch(1);
    connect(all, &QPushButton::clicked, this, [this] { account_.use({}); });
    for (QCheckBox* box : {undecided_, cautioned_, under_, of_animal_})
        connect(box, &QCheckBox::toggled, this, &ShowOnly::tell);
    connect(limit_, &QSpinBox::editingFinished, this, [this] {
        if (limit_->hasFocus()) under_->setFocus();  // letters are keys again
    });
    connect(limit_, &QSpinBox::valueChanged, this, [this] {
        if (under_->isChecked())
            tell();
        else
            refresh(animal_);
    });
    refresh({});
}

void ShowOnly::tell() {
    if (filling_) return;
    SetFilter filter;
    filter.undecided = undecided_->isChecked();
    filter.cautioned = cautioned_->isChecked();
    if (under_->isChecked()) filter.under = limit_->value();
    // an animal once asked for stays, whichever set is at hand
    if (of_animal_->isChecked()) filter.system = account_.filter().system.value_or(animal_);
    account_.use(filter);
}

void ShowOnly::refresh(const std::string& animal) {
    animal_ = animal;
    filling_ = true;
    const SetFilter& filter = account_.filter();
    undecided_->setChecked(filter.undecided);
    cautioned_->setChecked(filter.cautioned);
    under_->setChecked(filter.under.has_value());
    if (filter.under) limit_->setValue(*filter.under);
    of_animal_->setChecked(filter.system.has_value());
    const std::string letter = filter.system.value_or(animal);
    SetFilter one;
    one.undecided = true;
    undecided_->setText(with_count(tr("undecided"), account_.count(one)));
    one = {};
    one.cautioned = true;
    cautioned_->setText(with_count(tr("with a caution of the place"), account_.count(one)));
    one = {};
    one.under = limit_->value();
    under_->setText(with_count(tr("chance to meet the run under"), account_.count(one)));
    one = {};
    one.system = letter;
    of_animal_->setText(with_count(tr("of animal %1").arg(QString::fromStdString(letter)), account_.count(one)));
    const std::size_t all = account_.choices().size();
    const std::size_t shown = account_.shown().size();
    hidden_->setText(lets_all_through(filter) ? tr("All %1 sets are gone through.").arg(all)
                                              : tr("%1 of %2 sets are gone through, %3 are passed over. The map shows all.")
                                                    .arg(shown)
                                                    .arg(all)
                                                    .arg(all - shown));
    filling_ = false;
}

Several::Several(SetAccount& account, QWidget* parent) : QWidget(parent), account_(account) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 4, 0, 0);
    column->setSpacing(9);
    auto* head = label_in_role("heading", this);
    head->setText(tr("Decide on several at once"));
    column->addWidget(head);
    group_ = new QButtonGroup(this);
    for (int scope = 0; scope < 3; ++scope) {
        buttons_.push_back(new QRadioButton(this));
        group_->addButton(buttons_.back(), scope);
        column->addWidget(buttons_.back());
        if (scope != 1) continue;
        limit_ = limit_in_100(95, this);
        limit_->setAccessibleName(tr("least chance in 100"));
        column->addLayout(limit_row(limit_, this));
    }
    buttons_.front()->setChecked(true);
    words_ = label_in_role("body", this);
    column->addWidget(words_);
    column->addStretch(1);
    connect(group_, &QButtonGroup::idToggled, this, [this] {
        fill();
        Q_EMIT scope_changed();
    });
    connect(limit_, &QSpinBox::editingFinished, this, [this] {
        if (limit_->hasFocus()) buttons_[1]->setFocus();  // letters are keys again
    });
    connect(limit_, &QSpinBox::valueChanged, this, [this] {
        buttons_[1]->setChecked(true);
        fill();
        Q_EMIT scope_changed();
    });
    fill();
}

void Several::take_focus() { buttons_[static_cast<std::size_t>(group_->checkedId())]->setFocus(Qt::ShortcutFocusReason); }

SetFilter Several::wish(int scope) const {
    SetFilter filter = scope == 2 ? account_.filter() : SetFilter{};
    filter.undecided = true;
    if (scope == 0) filter.system = animal_;
    if (scope == 1) filter.at_least = limit_->value();
    return filter;
}

std::vector<std::size_t> Several::scope_of(int scope) const { return account_.through(wish(scope)); }

std::vector<std::size_t> Several::scope() const { return scope_of(group_->checkedId()); }

void Several::refresh(const std::string& animal) {
    animal_ = animal;
    fill();
}

void Several::fill() {
    const QString shown = lets_all_through(account_.filter()) ? tr("all undecided") : tr("undecided of those gone through");
    const QString names[] = {tr("undecided of animal %1").arg(QString::fromStdString(animal_)),
                             tr("undecided, chance at least"), shown};
    for (int scope = 0; scope < 3; ++scope)
        buttons_[static_cast<std::size_t>(scope)]->setText(with_count(names[scope], scope_of(scope).size()));
    const auto count = static_cast<long long>(scope().size());
    words_->setText(count == 0 ? tr("There is no undecided set among these.")
                               : counted(count, tr("The next key decides %1 set. What was decided already stays."),
                                         tr("The next key decides %1 sets at once; undo takes them back together. "
                                            "What was decided already stays.")));
}

}  // namespace plugside
