#include "app/stages/method_page.h"

#include <QApplication>
#include <QVBoxLayout>
#include <algorithm>

#include "app/stages/rows_layout.h"
#include "app/window/dresser.h"
#include "app/window/look_sheet.h"

namespace plugside {

MethodPage::MethodPage(FieldSession& session, Choices& choices, WorkAccount& work, QWidget* parent)
    : QWidget(parent), session_(session), choices_(choices), work_(work) {
    dress_by_parts(*this);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(8);
    auto* title = label_in_role("title", this);
    title->setText(tr("Method"));
    column->addWidget(title);
    empty_ = label_in_role("body", this);
    empty_->setText(tr("How the work is done is chosen once a walk is open."));
    column->addWidget(empty_);
    filled_ = new QWidget(this);
    dress_by_parts(*filled_);
    column->addWidget(filled_, 1);
    auto* inside = new QVBoxLayout(filled_);
    inside->setContentsMargins(0, 0, 0, 0);
    inside->setSpacing(8);
    chosen_ = label_in_role("quiet", filled_);
    inside->addWidget(chosen_);
    auto* keys = RowsLayout::natural(5);
    const QStringList names{tr("conditions (N)"), tr("methods (M)"), tr("label (L)"), tr("what speaks against (A)"),
                            tr("to load (O)")};
    for (std::size_t i = 0; i < part_keys_.size(); ++i) {
        auto* key = new QPushButton(names[static_cast<qsizetype>(i)], filled_);
        key->setProperty("way", true);
        key->setCheckable(true);
        part_keys_[i] = key;
        keys->addWidget(key);
        connect(key, &QPushButton::clicked, this, [this, i] { show_part(static_cast<MethodPart>(i)); });
    }
    inside->addLayout(keys);
    methods_ = new MethodsView(session, choices, work, filled_);
    against_ = new AgainstView(session, choices, work, filled_);
    load_ = new LoadView(session, choices, work, filled_);
    for (QWidget* part : std::initializer_list<QWidget*>{methods_, against_, load_}) inside->addWidget(part, 1);
    connect(&work_, &WorkAccount::changed, this, &MethodPage::refresh);
    connect(&session_, &FieldSession::field_replaced, this, &MethodPage::refresh);
    lay_part();
    refresh();
}

ConditionsView& MethodPage::conditions() {
    if (conditions_ == nullptr) {
        conditions_ = new ConditionsView(session_, choices_, work_, filled_);
        conditions_->setVisible(part_ == MethodPart::conditions);
        static_cast<QVBoxLayout*>(filled_->layout())->addWidget(conditions_, 1);
    }
    return *conditions_;
}

LabelView& MethodPage::label() {
    if (label_ == nullptr) {
        label_ = new LabelView(session_, choices_, work_, filled_);
        label_->setVisible(part_ == MethodPart::label);
        static_cast<QVBoxLayout*>(filled_->layout())->addWidget(label_, 1);
    }
    return *label_;
}

std::array<QWidget*, 5> MethodPage::parts() const { return {conditions_, methods_, label_, against_, load_}; }

void MethodPage::show_part(MethodPart part) {
    const QWidget* focus = QApplication::focusWidget();
    if (part == MethodPart::conditions) conditions().order_anew();
    part_ = part;
    if (part == MethodPart::label) static_cast<void>(label());
    against_->look(part == MethodPart::against);
    // the focus does not stay behind in a part that goes away
    if (focus != nullptr && isAncestorOf(focus))
        part_keys_[static_cast<std::size_t>(part)]->setFocus(Qt::ShortcutFocusReason);
    lay_part();
    if (!session_.field()) return;
    switch (part) {
        case MethodPart::conditions: conditions().take_focus(); break;
        case MethodPart::methods: methods_->take_focus(); break;
        case MethodPart::label: label().take_focus(); break;
        case MethodPart::against: against_->take_focus(); break;
        case MethodPart::load: load_->take_focus(); break;
    }
}

void MethodPage::lay_part() {
    for (std::size_t i = 0; i < part_keys_.size(); ++i) {
        part_keys_[i]->setChecked(static_cast<std::size_t>(part_) == i);
        if (QWidget* part = parts()[i]) part->setVisible(static_cast<std::size_t>(part_) == i);
    }
}

void MethodPage::refresh() {
    const bool open = session_.field() != nullptr;
    empty_->setVisible(!open);
    filled_->setVisible(open);
    if (!open) return;
    const auto method = find_method(work_.work(), work_.work().method);
    chosen_->setText(method ? tr("%1: %2").arg(QString::fromStdString(method->name), work_.line())
                            : tr("no method for the whole field: %1").arg(work_.line()));
}

}  // namespace plugside
