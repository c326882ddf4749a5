#include "app/stages/methods_view.h"

#include <algorithm>
#include <cmath>

#include "app/stages/lined_button.h"
#include "app/stages/rows_layout.h"
#include "app/window/look_sheet.h"
#include "app/words/language.h"

namespace plugside {

namespace {

QString text(const std::string& words) { return QString::fromStdString(words); }

QString place_words(const Method& method) {
    const QString where = !method.serves                           ? MethodsView::tr("at any ladder")
                          : *method.serves == ProbeKind::plug_side ? MethodsView::tr("at a ladder beside a plug")
                                                                   : MethodsView::tr("at a ladder between two mounds");
    return MethodsView::tr("%1; about %2 minutes a set, give or take %3, without its probe holes")
        .arg(where, decimal(method.minutes.mean, 1), decimal(method.minutes.sd, 1));
}

QString source_shown(const MethodStep& step) {
    if (step.tag == "own") return MethodsView::tr("your own");
    if (step.tag == "memory") return MethodsView::tr("%1, quoted from memory").arg(text(step.source));
    return text(step.source);
}

QString steps_words(const Method& method, const WorkAccount& work) {
    QStringList lines;
    int number = 0;
    for (const MethodStep& step : method.steps)
        lines << MethodsView::tr("%1. %2 (%3)").arg(++number).arg(text(step.text), source_shown(step));
    QStringList tools;
    for (const std::string& tool : method.tools) tools << text(tool);
    if (!tools.isEmpty()) lines << MethodsView::tr("Tools: %1").arg(tools.join(QStringLiteral(", ")));
    QStringList needs;
    for (const ItemCount& need : method.needs)
        needs << MethodsView::tr("%1: %2").arg(text(item_shown(need.item)),
                                               decimal(need.count, need.count == std::floor(need.count) ? 0 : 1));
    if (!needs.isEmpty()) lines << MethodsView::tr("A set takes: %1").arg(needs.join(QStringLiteral(", ")));
    lines << text(cover_or_open(method, work.work().conditions, work.now()).reason);
    return lines.join(QLatin1Char('\n'));
}

QLineEdit* named_field(QVBoxLayout* column, const QString& name, QWidget* parent) {
    auto* label = label_in_role("body", parent);
    label->setText(name);
    auto* field = new QLineEdit(parent);
    field->setAccessibleName(name);
    column->addWidget(label);
    column->addWidget(field);
    return field;
}

double number_of(const QLineEdit& field) {
    bool read = false;
    const double value = QString(field.text()).trimmed().replace(QLatin1Char(','), QLatin1Char('.')).toDouble(&read);
    return read ? value : std::nan("");
}

}  // namespace

std::vector<Method> methods_to_choose(const WorkOrder& work) {
    std::vector<Method> methods = built_in_methods();
    methods.insert(methods.end(), work.own_methods.begin(), work.own_methods.end());
    return methods;
}

QString look_words(const WorkAccount& work, const std::string& method) {
    const auto judged = work.judged();
    if (!judged) return MethodsView::tr("what speaks against it here is being judged");
    const auto look =
        std::find_if(judged->looks.begin(), judged->looks.end(), [&](const MethodLook& one) { return one.id == method; });
    if (look == judged->looks.end()) return MethodsView::tr("what speaks against it here is being judged");
    QStringList parts;
    if (look->stopped > 0) parts << MethodsView::tr("stop: %1 of %2 sets").arg(look->stopped).arg(look->sets);
    if (look->held_back > 0) parts << MethodsView::tr("hold back: %1 of %2 sets").arg(look->held_back).arg(look->sets);
    if (!look->asks.empty())
        parts << counted(static_cast<long long>(look->asks.size()), MethodsView::tr("%1 question open"),
                         MethodsView::tr("%1 questions open"));
    if (parts.isEmpty())
        return MethodsView::tr(
            "No stop and no hold-back is known here; label, local rules and a licensed applicator decide.");
    return parts.join(QStringLiteral("; "));
}

OwnMethodEdit::OwnMethodEdit(WorkAccount& work, QWidget* parent) : QWidget(parent), work_(work) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 8);
    column->setSpacing(3);
    name_ = named_field(column, tr("its name"), this);
    minutes_ = named_field(column, tr("minutes a set"), this);
    spread_ = named_field(column, tr("give or take, minutes"), this);
    placements_ = named_field(column, tr("placements a set, of bait or fumigant"), this);
    tools_ = named_field(column, tr("tools, with commas between"), this);
    auto* label = label_in_role("body", this);
    label->setText(tr("steps, a line each"));
    steps_ = new QPlainTextEdit(this);
    steps_->setAccessibleName(label->text());
    steps_->setTabChangesFocus(true);
    steps_->setMinimumHeight(120);
    steps_->setMaximumHeight(260);
    column->addWidget(label);
    column->addWidget(steps_);
    wrong_ = label_in_role("stop", this);
    wrong_->hide();
    column->addWidget(wrong_);
    auto* keys = RowsLayout::natural(6);
    auto* keep = new QPushButton(tr("use these words"), this);
    auto* away = new QPushButton(tr("take this method away"), this);
    for (QPushButton* key : {keep, away}) {
        key->setProperty("way", true);
        keys->addWidget(key);
    }
    column->addLayout(keys);
    connect(keep, &QPushButton::clicked, this, &OwnMethodEdit::keep);
    connect(away, &QPushButton::clicked, this, &OwnMethodEdit::take_away);
}

void OwnMethodEdit::show_method(const Method& method) {
    id_ = method.id;
    name_->setText(text(method.name));
    minutes_->setText(in_their_digits(QString::number(method.minutes.mean)));
    spread_->setText(in_their_digits(QString::number(method.minutes.sd)));
    placements_->setText(QString::number(method.placements));
    QStringList tools;
    for (const std::string& tool : method.tools) tools << text(tool);
    tools_->setText(tools.join(QStringLiteral(", ")));
    QStringList steps;
    for (const MethodStep& step : method.steps) steps << text(step.text);
    steps_->setPlainText(steps.join(QLatin1Char('\n')));
    wrong_->hide();
}

void OwnMethodEdit::keep() {
    WorkOrder order = work_.work();
    const auto found =
        std::find_if(order.own_methods.begin(), order.own_methods.end(), [&](const Method& one) { return one.id == id_; });
    if (found == order.own_methods.end()) return;
    found->name = name_->text().trimmed().toStdString();
    found->minutes = {number_of(*minutes_), number_of(*spread_)};
    bool read = false;
    found->placements = placements_->text().trimmed().toInt(&read);
    if (!read) found->placements = -1;
    found->tools.clear();
    for (const QString& tool : tools_->text().split(QLatin1Char(','), Qt::SkipEmptyParts))
        found->tools.push_back(tool.trimmed().toStdString());
    found->steps.clear();
    for (const QString& step : steps_->toPlainText().split(QLatin1Char('\n'), Qt::SkipEmptyParts))
        found->steps.push_back({step.trimmed().toStdString(), {}, "own"});
    const auto wrong = what_is_wrong(*found);
    wrong_->setText(text(wrong.value_or(std::string())));
    wrong_->setVisible(wrong.has_value());
    if (!wrong) work_.edit(std::move(order), tr("own method"));
}

void OwnMethodEdit::take_away() {
    WorkOrder order = work_.work();
    const bool in_use = order.method == id_ || std::any_of(order.set_methods.begin(), order.set_methods.end(),
                                                           [&](const SetMethod& one) { return one.method == id_; });
    wrong_->setVisible(in_use);
    if (in_use) {
        wrong_->setText(tr("Sets are worked by it. Choose another method first."));
        return;
    }
    std::erase_if(order.own_methods, [&](const Method& one) { return one.id == id_; });
    work_.edit(std::move(order), tr("take a method away"));
}

MethodsView::MethodsView(FieldSession& session, Choices& choices, WorkAccount& work, QWidget* parent)
    : QWidget(parent), session_(session), choices_(choices), work_(work) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(6);
    says_ = label_in_role("quiet", this);
    says_->setText(
        tr("What is chosen here holds for the whole field; one set may be worked otherwise (Sets). Nothing here says "
           "that a method may be used: label, local rules and a licensed applicator decide."));
    column->addWidget(says_);
    list_ = new QVBoxLayout;
    list_->setSpacing(10);
    column->addLayout(list_);
    own_ = new OwnMethodEdit(work_, this);
    own_->hide();
    column->addStretch(0);
    connect(&work_, &WorkAccount::changed, this, &MethodsView::refresh);
    refresh();
}

MethodsView::Card MethodsView::card_of(const Method& method) {
    auto* box = new QWidget(this);
    auto* column = new QVBoxLayout(box);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(3);
    Card card{method.id,
              new LinedButton(text(method.name), box),
              label_in_role("quiet", box),
              label_in_role("body", box),
              label_in_role("body", box),
              new QPushButton(box),
              new QPushButton(tr("a variant of mine"), box)};
    card.name->setProperty("way", true);
    card.name->setCheckable(true);
    card.name->setToolTip(tr("its steps, or not"));
    for (QPushButton* key : {card.choose, card.variant}) key->setProperty("way", true);
    card.choose->setCheckable(true);
    card.place->setText(place_words(method));
    card.steps->setText(steps_words(method, work_));
    card.variant->setAccessibleName(tr("a variant of mine: %1").arg(text(method.name)));
    for (QWidget* part : std::initializer_list<QWidget*>{card.name, card.look, card.place, card.steps})
        column->addWidget(part);
    auto* keys = RowsLayout::natural(6);
    keys->addWidget(card.choose);
    keys->addWidget(card.variant);
    column->addLayout(keys);
    list_->addWidget(box);
    const std::string id = method.id;
    connect(card.name, &QPushButton::clicked, this, [this, id] { unfold(unfolded_ == id ? std::string() : id); });
    connect(card.choose, &QPushButton::clicked, this, [this, id] { choose(id); });
    connect(card.variant, &QPushButton::clicked, this, [this, id] { make_own(id); });
    return card;
}

void MethodsView::build_cards(const std::vector<Method>& methods) {
    own_->setParent(this);
    own_->hide();
    while (QLayoutItem* item = list_->takeAt(0)) {
        if (item->widget() != nullptr && item->widget() != own_) {
            item->widget()->hide();
            item->widget()->deleteLater();
        }
        delete item;
    }
    cards_.clear();
    for (const Method& method : methods) cards_.push_back(card_of(method));
    shown_ = methods;
}

void MethodsView::choose(const std::string& method) {
    WorkOrder order = work_.work();
    // pressed again it is taken back
    order.method = order.method == method ? std::string() : method;
    std::erase_if(order.set_methods, [&](const SetMethod& one) { return one.method == order.method; });
    const auto chosen = find_method(order, method);
    work_.edit(std::move(order), tr("method: %1").arg(chosen ? text(chosen->name) : QString()));
    refresh();
}

void MethodsView::unfold(const std::string& method) {
    unfolded_ = method;
    refresh();
}

void MethodsView::make_own(const std::string& of) {
    WorkOrder order = work_.work();
    const auto from = find_method(order, of);
    if (!from) return;
    int number = 1;
    while (find_method(order, "own-" + std::to_string(number))) ++number;
    Method own = own_variant(*from, number, tr("%1, my way").arg(text(from->name)).toStdString());
    unfolded_ = own.id;
    order.own_methods.push_back(std::move(own));
    work_.edit(std::move(order), tr("own method"));
    own_->name().setFocus(Qt::OtherFocusReason);
    own_->name().selectAll();
}

QString MethodsView::look_text(const std::string& method) const {
    const auto card = std::find_if(cards_.begin(), cards_.end(), [&](const Card& one) { return one.id == method; });
    return card == cards_.end() ? QString() : card->look->text();
}

void MethodsView::take_focus() {
    if (!cards_.empty()) cards_.front().name->setFocus(Qt::ShortcutFocusReason);
}

void MethodsView::refresh() {
    if (!session_.field()) return;
    const std::vector<Method> methods = methods_to_choose(work_.work());
    if (methods != shown_) build_cards(methods);
    own_->hide();
    for (std::size_t i = 0; i < cards_.size(); ++i) {
        Card& card = cards_[i];
        const bool open = card.id == unfolded_;
        const bool chosen = card.id == work_.work().method;
        const bool own = card.id.starts_with("own-");
        card.name->setChecked(open);
        card.look->setText(look_words(work_, card.id));
        card.steps->setVisible(open && !own);
        if (open) card.steps->setText(steps_words(methods[i], work_));
        card.variant->setVisible(open);
        card.choose->setChecked(chosen);
        card.choose->setText(chosen ? tr("chosen for the field") : tr("choose for the field"));
        card.choose->setAccessibleName(tr("%1: %2").arg(card.choose->text(), text(methods[i].name)));
        if (open && own) {
            list_->insertWidget(static_cast<int>(i) + 1, own_);
            own_->show_method(methods[i]);
            own_->show();
        }
    }
}

}  // namespace plugside
