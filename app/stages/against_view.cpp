#include "app/stages/against_view.h"

#include <algorithm>

#include "app/stages/caution_view.h"
#include "app/stages/lined_button.h"
#include "app/stages/page_choice.h"
#include "app/stages/rows_layout.h"
#include "app/window/dresser.h"
#include "app/window/look_sheet.h"
#include "app/words/language.h"
#include "core/sets/cautions.h"

namespace plugside {

namespace {

QString text(const std::string& words) { return QString::fromStdString(words); }

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
    built_ = looked_at_now_;
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

// Before it is shown: what is made while its page is being laid out is not measured with it.
void AgainstView::look(bool now) {
    looked_at_now_ = now;
    if (now && !built_) build();
}

QString AgainstView::sets_words(const std::vector<std::size_t>& sets) const {
    constexpr std::size_t most = 12;
    QStringList numbers;
    for (std::size_t i = 0; i < std::min(most, sets.size()); ++i) numbers << QString::number(sets[i] + 1);
    const auto count = static_cast<long long>(sets.size());
    const QString list = numbers.join(QStringLiteral(", "));
    if (sets.size() > most) return tr("%1 sets: %2 and more").arg(count).arg(list);
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
    because->setText(text(group.because));  // it says itself what is not known
    column->addWidget(because);
    if (!group.ask.empty()) {
        QStringList asked;
        for (const Question question : group.ask) asked << text(asked_as(question));
        auto* ask = label_in_role("quiet", box);
        ask->setText(tr("Asked: %1").arg(asked.join(QLatin1Char(' '))));
        column->addWidget(ask);
    }
    auto* show = new LinedButton(sets_words(group.sets), box);
    show->setProperty("way", true);
    show->setAccessibleName(tr("on the map: %1").arg(text(caution->sentence)));
    show->setToolTip(group.where.empty() ? tr("shows these sets on the map, one after the other")
                                         : tr("shows the part of the system on the map that is the reason"));
    column->addWidget(show);
    connect(show, &QPushButton::clicked, this, [this, id = group.caution] { show_on_map(id); });
    if (group.weight == CautionWeight::hold_back) add_signing(group, column, box);
    list_->addWidget(box);
}

std::vector<AgainstView::Signature> AgainstView::signatures_of(const CautionGroup& group) const {
    std::vector<Signature> all;
    for (const SignedOverride& entry : work_.work().signed_off) {
        if (entry.caution != group.caution ||
            std::find(group.methods.begin(), group.methods.end(), entry.method) == group.methods.end())
            continue;
        std::optional<std::size_t> of_set;
        for (const std::size_t set : group.sets)
            if (entry.probe && shown_of_->plan->probes.at(shown_of_->plan->sets.at(set).probe).key == *entry.probe)
                of_set = set;
        if (entry.probe && !of_set) continue;
        auto same = std::find_if(all.begin(), all.end(), [&](const Signature& one) {
            return one.entry->at == entry.at && one.entry->name == entry.name &&
                   one.entry->probe.has_value() == entry.probe.has_value();
        });
        if (same == all.end()) same = all.insert(all.end(), {&entry, {}});
        if (of_set) same->sets.push_back(*of_set);
    }
    return all;
}

QString AgainstView::words_of(const Signature& signature) const {
    const SignedOverride& entry = *signature.entry;
    if (signature.sets.empty())
        return tr("Signed by %1, %2: %3").arg(text(entry.name), moment_words(entry.at), text(entry.reason));
    return tr("Signed for %4 by %1, %2: %3")
        .arg(text(entry.name), moment_words(entry.at), text(entry.reason), sets_words(signature.sets));
}

QStringList AgainstView::signatures(const std::string& caution) const {
    QStringList lines;
    if (const CautionGroup* group = group_of(caution); group != nullptr && shown_of_)
        for (const Signature& signature : signatures_of(*group)) lines << words_of(signature);
    return lines;
}

void AgainstView::add_signing(const CautionGroup& group, QVBoxLayout* column, QWidget* parent) {
    for (const Signature& signature : signatures_of(group)) {
        auto* said = label_in_role("body", parent);
        said->setText(words_of(signature));
        column->addWidget(said);
        auto* back = new QPushButton(tr("take the signature back"), parent);
        back->setProperty("way", true);
        auto* row = RowsLayout::natural(6);
        row->addWidget(back);
        column->addLayout(row);
        connect(back, &QPushButton::clicked, this,
                [this, id = group.caution, at = signature.entry->at] { take_signature_back(id, at); });
    }
    if (group.open()) add_sign_form(group, column, parent);
}

void AgainstView::add_sign_form(const CautionGroup& group, QVBoxLayout* column, QWidget* parent) {
    auto* keys = RowsLayout::natural(6);
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
    auto* what = page_choice(tr("what the signature covers"), parent);
    what->addItem(tr("for all these sets"));
    what->addItem(tr("for the set at hand"));
    what->addItem(tr("for the animal at hand"));
    keys->addWidget(what);
    keys->addWidget(key);
    column->addLayout(keys);
    column->addWidget(wrong);
    const auto signing = [this, name, reason, wrong, what, id = group.caution] {
        const auto refused = sign(id, name->text(), reason->text(), static_cast<SignedFor>(what->currentIndex()));
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

// The sets at hand that the caution concerns; empty where that is the whole field, or none.
std::vector<std::size_t> AgainstView::sets_signed_for(const CautionGroup& group, SignedFor what) const {
    std::vector<std::size_t> sets;
    if (what == SignedFor::field || !choices_.set() || !shown_of_) return sets;
    const Plan& plan = *shown_of_->plan;
    const auto site_of = [&](std::size_t set) -> const ProbeSite& { return plan.probes.at(plan.sets.at(set).probe); };
    std::optional<std::size_t> animal;
    for (std::size_t set = 0; set < plan.sets.size(); ++set)
        if (site_of(set).key == *choices_.set()) animal = site_of(set).system;
    for (const std::size_t set : group.sets)
        if (what == SignedFor::set ? site_of(set).key == *choices_.set() : animal && site_of(set).system == *animal)
            sets.push_back(set);
    return sets;
}

std::optional<QString> AgainstView::sign(const std::string& caution, const QString& name, const QString& reason,
                                         SignedFor what) {
    const CautionGroup* group = group_of(caution);
    if (group == nullptr) return std::nullopt;
    std::vector<std::optional<ProbeKey>> places;
    for (const std::size_t set : sets_signed_for(*group, what))
        places.emplace_back(shown_of_->plan->probes.at(shown_of_->plan->sets.at(set).probe).key);
    if (what == SignedFor::field) places.emplace_back(std::nullopt);
    if (places.empty()) return tr("The set at hand is none of these. Show one of them on the map, then sign.");
    WorkOrder order = work_.work();
    const UtcTime now = work_.now();
    for (const auto& place : places)
        for (const std::string& method : group->methods)
            if (!place || method == method_at(order, *place))
                if (const auto refused = plugside::sign(
                        order, {caution, method, place, name.trimmed().toStdString(), reason.trimmed().toStdString(), now}))
                    return text(*refused);
    signer_ = name.trimmed();
    work_.edit(std::move(order), tr("signature of %1").arg(signer_));
    return std::nullopt;
}

void AgainstView::take_signature_back(const std::string& caution, std::optional<UtcTime> at) {
    const CautionGroup* group = group_of(caution);
    if (group == nullptr) return;
    WorkOrder order = work_.work();
    std::erase_if(order.signed_off, [&](const SignedOverride& entry) {
        return entry.caution == caution && (!at || entry.at == *at) &&
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
