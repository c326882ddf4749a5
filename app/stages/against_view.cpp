#include "app/stages/against_view.h"

#include <algorithm>

#include "app/stages/caution_view.h"
#include "app/stages/rows_layout.h"
#include "app/window/dresser.h"
#include "app/window/look_sheet.h"
#include "app/words/language.h"
#include "core/sets/cautions.h"

namespace plugside {

namespace {

QString text(const std::string& words) { return QString::fromStdString(words); }

const SignedOverride* signature_of(const WorkOrder& work, const CautionGroup& group) {
    for (const SignedOverride& entry : work.signed_off)
        if (entry.caution == group.caution && !entry.probe &&
            std::find(group.methods.begin(), group.methods.end(), entry.method) != group.methods.end())
            return &entry;
    return nullptr;
}

}  // namespace

AgainstView::AgainstView(FieldSession& session, Choices& choices, WorkAccount& work, QWidget* parent)
    : QWidget(parent), session_(session), choices_(choices), work_(work) {
    dress_by_parts(*this);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(6);
    head_ = label_in_role("body", this);
    column->addWidget(head_);
    list_ = new QVBoxLayout;
    list_->setSpacing(10);
    column->addLayout(list_);
    column->addStretch(0);
    connect(&work_, &WorkAccount::changed, this, &AgainstView::refresh);
    connect(&choices_, &Choices::theme_changed, this, [this] {
        for (CautionView* shown : findChildren<CautionView*>()) shown->use(choices_.style());
    });
    refresh();
}

void AgainstView::refresh() {
    const auto judged = work_.judged();
    if (!judged) {
        head_->setText(session_.field() ? tr("What speaks against the sets is being judged.") : QString());
        if (shown_of_) {
            groups_.clear();
            shown_of_.reset();
            build();
        }
        return;
    }
    if (judged == shown_of_) return;
    const bool another_plan = !shown_of_ || shown_of_->plan != judged->plan;
    shown_of_ = judged;
    groups_ = caution_groups(judged->judged);
    if (another_plan && !looked_at_.empty()) {
        looked_at_.clear();
        Q_EMIT reasons_shown(nullptr);
    }
    build();
}

void AgainstView::build() {
    built_ = isVisible();
    while (QLayoutItem* item = list_->takeAt(0)) {
        if (item->widget() != nullptr) {
            item->widget()->hide();
            item->widget()->deleteLater();
        }
        delete item;
    }
    std::size_t stops = 0;
    std::size_t held = 0;
    for (const CautionGroup& group : groups_) {
        if (group.holds && group.weight == CautionWeight::stop) ++stops;
        if (group.weight == CautionWeight::hold_back && group.open()) ++held;
        if (built_) add_group(group);
    }
    QStringList parts;
    const bool chosen = !work_.work().method.empty() || !work_.work().set_methods.empty();
    if (!chosen) parts << tr("No method is chosen: only what speaks against every method is judged.");
    if (stops > 0)
        parts << counted(static_cast<long long>(stops), tr("%1 stop holds: with these sets the plan is not handed out."),
                         tr("%1 stops hold: with these sets the plan is not handed out."));
    if (held > 0)
        parts << counted(static_cast<long long>(held), tr("%1 hold-back wants an answer or a signed reason."),
                         tr("%1 hold-backs want an answer or a signed reason."));
    parts << tr("Label, local rules and a licensed applicator decide.");
    head_->setText(parts.join(QLatin1Char(' ')));
}

void AgainstView::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    if (!built_) build();
}

QString AgainstView::sets_words(const CautionGroup& group) const {
    constexpr std::size_t most = 12;
    QStringList numbers;
    for (std::size_t i = 0; i < std::min(most, group.sets.size()); ++i) numbers << QString::number(group.sets[i] + 1);
    const auto count = static_cast<long long>(group.sets.size());
    const QString list = numbers.join(QStringLiteral(", "));
    if (group.sets.size() > most) return tr("%1 sets: %2 and more").arg(count).arg(list);
    return count == 1 ? tr("set %1").arg(list) : tr("%1 sets: %2").arg(count).arg(list);
}

void AgainstView::add_group(const CautionGroup& group) {
    const Caution* caution = find_caution(group.caution);
    if (caution == nullptr) return;
    auto* box = new QWidget(this);
    auto* column = new QVBoxLayout(box);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(3);
    column->addWidget(new CautionView(*caution, choices_.style(), box));
    auto* because = label_in_role("body", box);
    because->setText(group.holds ? text(group.because) : tr("Not known: %1").arg(text(group.because)));
    column->addWidget(because);
    if (!group.ask.empty()) {
        QStringList asked;
        for (const Question question : group.ask) asked << text(asked_as(question));
        auto* ask = label_in_role("quiet", box);
        ask->setText(tr("Asked: %1").arg(asked.join(QLatin1Char(' '))));
        column->addWidget(ask);
    }
    auto* show = new QPushButton(sets_words(group), box);
    show->setProperty("way", true);
    show->setAccessibleName(tr("on the map: %1").arg(text(caution->sentence)));
    show->setToolTip(group.where.empty() ? tr("shows these sets on the map, one after the other")
                                         : tr("shows the part of the system on the map that is the reason"));
    auto* keys = RowsLayout::natural(6);
    keys->addWidget(show);
    column->addLayout(keys);
    connect(show, &QPushButton::clicked, this, [this, id = group.caution] { show_on_map(id); });
    if (group.weight == CautionWeight::hold_back) add_signing(group, column, box);
    list_->addWidget(box);
}

void AgainstView::add_signing(const CautionGroup& group, QVBoxLayout* column, QWidget* parent) {
    auto* keys = RowsLayout::natural(6);
    if (const SignedOverride* entry = signature_of(work_.work(), group)) {
        auto* said = label_in_role("body", parent);
        said->setText(tr("Signed by %1, %2: %3").arg(text(entry->name), moment_words(entry->at), text(entry->reason)));
        column->addWidget(said);
        auto* back = new QPushButton(tr("take the signature back"), parent);
        back->setProperty("way", true);
        keys->addWidget(back);
        column->addLayout(keys);
        connect(back, &QPushButton::clicked, this, [this, id = group.caution] { take_signature_back(id); });
        return;
    }
    auto* name = new QLineEdit(signer_, parent);
    name->setPlaceholderText(tr("your name"));
    name->setAccessibleName(tr("name of who signs"));
    auto* reason = new QLineEdit(parent);
    reason->setPlaceholderText(tr("why it is done all the same"));
    reason->setAccessibleName(tr("reason that is signed"));
    auto* key = new QPushButton(tr("sign"), parent);
    key->setProperty("way", true);
    auto* wrong = label_in_role("stop", parent);
    wrong->hide();
    column->addWidget(name);
    column->addWidget(reason);
    keys->addWidget(key);
    column->addLayout(keys);
    column->addWidget(wrong);
    const auto signing = [this, name, reason, wrong, id = group.caution] {
        const auto refused = sign(id, name->text(), reason->text());
        wrong->setText(refused.value_or(QString()));
        wrong->setVisible(refused.has_value());
    };
    connect(key, &QPushButton::clicked, this, signing);
    connect(reason, &QLineEdit::returnPressed, this, signing);
}

const CautionGroup* AgainstView::group_of(const std::string& caution) const {
    const auto found =
        std::find_if(groups_.begin(), groups_.end(), [&](const CautionGroup& one) { return one.caution == caution; });
    return found == groups_.end() ? nullptr : &*found;
}

void AgainstView::show_on_map(const std::string& caution) {
    const CautionGroup* group = group_of(caution);
    const auto plan = session_.plan();
    if (group == nullptr || group->sets.empty() || !plan || !shown_of_ || shown_of_->plan != plan) return;
    looked_set_ = looked_at_ == caution ? (looked_set_ + 1) % group->sets.size() : 0;
    looked_at_ = caution;
    choices_.pick_set(plan->probes.at(plan->sets.at(group->sets[looked_set_]).probe).key);
    Q_EMIT reasons_shown(group->where.empty() ? nullptr : std::make_shared<const std::vector<ReachReason>>(group->where));
}

std::optional<QString> AgainstView::sign(const std::string& caution, const QString& name, const QString& reason) {
    const CautionGroup* group = group_of(caution);
    if (group == nullptr) return std::nullopt;
    WorkOrder order = work_.work();
    for (const std::string& method : group->methods)
        if (const auto refused = plugside::sign(order, {caution, method, std::nullopt, name.trimmed().toStdString(),
                                                        reason.trimmed().toStdString(), work_.now()}))
            return text(*refused);
    signer_ = name.trimmed();
    work_.edit(std::move(order), tr("signature of %1").arg(signer_));
    return std::nullopt;
}

void AgainstView::take_signature_back(const std::string& caution) {
    const CautionGroup* group = group_of(caution);
    if (group == nullptr) return;
    WorkOrder order = work_.work();
    std::erase_if(order.signed_off, [&](const SignedOverride& entry) {
        return entry.caution == caution && !entry.probe &&
               std::find(group->methods.begin(), group->methods.end(), entry.method) != group->methods.end();
    });
    work_.edit(std::move(order), tr("signature taken back"));
}

void AgainstView::take_focus() {
    for (int i = 0; i < list_->count(); ++i)
        if (auto* key = list_->itemAt(i)->widget()->findChild<QPushButton*>()) {
            key->setFocus(Qt::ShortcutFocusReason);
            return;
        }
}

}  // namespace plugside
