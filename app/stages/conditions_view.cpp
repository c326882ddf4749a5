#include "app/stages/conditions_view.h"

#include <algorithm>

#include "app/stages/rows_layout.h"
#include "app/window/dresser.h"
#include "app/window/look_sheet.h"
#include "app/words/language.h"
#include "core/sets/row_values.h"
#include "core/sets/water_table.h"

namespace plugside {

namespace {

const std::vector<std::string> yes_no{"yes", "no"};

std::vector<std::string> words_for(Question question) {
    switch (question) {
        case Question::soil_moisture: return {"dry", "damp", "wet"};
        case Question::soil_texture: return {"sand-or-loose", "loam", "clay"};
        case Question::site_use:
            return {"food-crop", "forage",   "orchard-or-vineyard", "pasture", "nursery", "lawn", "sports-field",
                    "fallow",    "other-use"};
        case Question::property:
            return {"home",     "school",   "school-athletic-field", "nursing-home",
                    "day-care", "hospital", "none-of-these",         "not-known"};
        case Question::wildlife: return {"none-known", "known-here", "agency-terms", "awaited"};
        case Question::utilities: return {"not-called", "called", "marked"};
        case Question::pesticide_office: return {"not-asked", "terms-named", "withdrawn"};
        case Question::licence: return {"none", "private-applicator", "commercial-applicator", "other"};
        default: return yes_no;
    }
}

RowSpec spec_of(Question question) {
    RowSpec spec{to_text(question), QString::fromStdString(asked_as(question)), RowKind::words, words_for(question), true};
    if (question == Question::soil_temperature) spec.kind = RowKind::temperature;
    if (question == Question::crop) spec.kind = RowKind::text;
    if (question == Question::property) spec.kind = RowKind::many;
    if (spec.kind == RowKind::temperature || spec.kind == RowKind::text) spec.words.clear();
    return spec;
}

std::vector<RowSpec> more_of(Question question) {
    const std::string row = to_text(question);
    switch (question) {
        case Question::children:
        case Question::public_visits:
        case Question::pets:
        case Question::stock:
            return {{row + ".from", QuestionRow::tr("from which day"), RowKind::day},
                    {row + ".until", QuestionRow::tr("until which day"), RowKind::day},
                    {row + ".when", QuestionRow::tr("when, in your words"), RowKind::text}};
        case Question::wildlife:
            return {{"wildlife-asked", QuestionRow::tr("who was asked, and what they said"), RowKind::text}};
        case Question::utilities: return {{"utilities-ticket", QuestionRow::tr("number of the call"), RowKind::text}};
        case Question::licence:
            return {{"licence.holder", QuestionRow::tr("holder"), RowKind::text},
                    {"licence.number", QuestionRow::tr("number (kept out of what is handed out)"), RowKind::text},
                    {"licence.valid-until", QuestionRow::tr("valid until"), RowKind::day}};
        default: return {};
    }
}

bool in_the_form(Question question) {
    return question != Question::water_days && question != Question::label && question != Question::ingredient &&
           question != Question::method && question != Question::placement;
}

// Whether there is more to say once this is the answer.
bool wants_more(const std::string& answer) {
    return !answer.empty() && answer != "no" && answer != "none" && answer != "not-known";
}

}  // namespace

QuestionRow::QuestionRow(Question question, WorkAccount& work, Choices& choices, QWidget* parent)
    : QWidget(parent), question_(question), work_(work) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 6);
    column->setSpacing(3);
    answer_ = new RowEdit(spec_of(question), work, choices, this);
    column->addWidget(answer_);
    for (RowSpec& spec : more_of(question)) {
        auto* more = new RowEdit(std::move(spec), work, choices, this);
        more->hide();
        more_.push_back(more);
        column->addWidget(more);
    }
    age_ = label_in_role("quiet", this);
    column->addWidget(age_);
    still_so_ = new QPushButton(tr("still so"), this);
    still_so_->setProperty("way", true);
    still_so_->setAccessibleName(tr("still so: %1").arg(answer_->spec().name));
    still_so_->hide();
    auto* keys = RowsLayout::natural(6);
    keys->addWidget(still_so_);
    column->addLayout(keys);
    connect(still_so_, &QPushButton::clicked, this, &QuestionRow::still_so);
}

RowEdit* QuestionRow::more(const std::string& row) {
    const auto found = std::find_if(more_.begin(), more_.end(), [&](RowEdit* edit) { return edit->spec().row == row; });
    return found == more_.end() ? nullptr : *found;
}

void QuestionRow::refresh(const RowValues& values) {
    answer_->show_value(values);
    const auto found = values.find(to_text(question_));
    const bool answered = found != values.end();
    for (RowEdit* more : more_) {
        more->show_value(values);
        more->setVisible(answered && wants_more(found->second));
    }
    std::optional<UtcTime> at;
    if (const auto stamp = values.find(to_text(question_) + ".at"); stamp != values.end()) {
        UtcTime time{};
        if (rows::take(stamp->second, time)) at = time;
    }
    const bool old = is_old(at);
    age_->setVisible(answered && at);
    if (answered && at)
        age_->setText(old ? tr("Answered %1. That is too long ago to be believed: is it still so?").arg(moment_words(*at))
                          : tr("answered %1").arg(moment_words(*at)));
    still_so_->setVisible(answered && old);
}

// The licence is no condition of the ground; its answer ages all the same.
bool QuestionRow::is_old(const std::optional<UtcTime>& at) const {
    if (question_ != Question::licence) return is_questioned(work_.work().conditions, question_, work_.now());
    const auto believed = believed_for(question_);
    return at && believed && work_.now() - *at > *believed;
}

void QuestionRow::still_so() {
    const auto wrong = work_.edit_rows({{to_text(question_) + ".at", rows::text_of(work_.now())}}, answer_->spec().name);
    if (!wrong) answer_->setFocus();
}

ConditionsView::ConditionsView(FieldSession& session, Choices& choices, WorkAccount& work, QWidget* parent)
    : QWidget(parent), session_(session), choices_(choices), work_(work) {
    dress_by_parts(*this);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(6);
    others_ = label_in_role("quiet", this);
    column->addWidget(others_);
    list_ = new QVBoxLayout;
    list_->setSpacing(4);
    column->addLayout(list_, 1);
    first_ = label_in_role("heading", this);
    first_->setText(tr("The method's rules ask"));
    also_ = label_in_role("heading", this);
    also_->setText(tr("Other conditions"));
    for (const Question question : all_questions())
        if (in_the_form(question)) rows_.push_back(new QuestionRow(question, work_, choices_, this));
    build_water();
    buildings_ = new QWidget(this);
    (new QVBoxLayout(buildings_))->setContentsMargins(0, 0, 0, 0);
    connect(&work_, &WorkAccount::changed, this, &ConditionsView::refresh);
    connect(&choices_, &Choices::units_changed, this, [this] {
        shown_of_.reset();
        refresh();
    });
    order_anew();
    refresh();
}

void ConditionsView::build_water() {
    water_ = new QWidget(this);
    auto* column = new QVBoxLayout(water_);
    column->setContentsMargins(0, 0, 0, 6);
    column->setSpacing(3);
    auto* asked = label_in_role("body", water_);
    asked->setText(QString::fromStdString(asked_as(Question::water_days)));
    pasted_ = new QPlainTextEdit(water_);
    pasted_->setAccessibleName(asked->text());
    pasted_->setPlaceholderText(tr("paste lines: a day, rain, irrigation"));
    pasted_->setTabChangesFocus(true);
    pasted_->setMinimumHeight(72);
    pasted_->setMaximumHeight(120);
    auto* take = new QPushButton(tr("take this table"), water_);
    take->setProperty("way", true);
    water_said_ = label_in_role("quiet", water_);
    column->addWidget(asked);
    column->addWidget(pasted_);
    auto* keys = RowsLayout::natural(6);
    keys->addWidget(take);
    column->addLayout(keys);
    column->addWidget(water_said_);
    water_still_so_ = new QPushButton(tr("still so"), water_);
    water_still_so_->setProperty("way", true);
    water_still_so_->setAccessibleName(tr("still so: %1").arg(asked->text()));
    auto* again = RowsLayout::natural(6);
    again->addWidget(water_still_so_);
    column->addLayout(again);
    connect(water_still_so_, &QPushButton::clicked, this, &ConditionsView::water_still_so);
    connect(take, &QPushButton::clicked, this, [this] { paste_water(pasted_->toPlainText()); });
}

void ConditionsView::paste_water(const QString& table) {
    WaterTable read = water_table(table.toStdString(), choices_.units());
    QStringList said;
    for (const Refusal& problem : read.problems) said << QString::fromStdString(sentence(problem));
    if (!read.days.empty()) {
        WorkOrder order = work_.work();
        order.conditions.water_days = {std::move(read.days), work_.now()};
        work_.edit(std::move(order), tr("rain and irrigation"));
        if (said.isEmpty()) pasted_->clear();
    }
    show_water();
    if (!said.isEmpty()) water_said_->setText(said.join(QLatin1Char('\n')));
}

void ConditionsView::show_water() {
    const Told<std::vector<WaterDay>>& told = work_.work().conditions.water_days;
    QStringList lines;
    const bool inches = choices_.units() == LengthUnits::feet_and_inches;
    const auto depth = [&](const std::optional<double>& mm) {
        if (!mm) return tr("not known");
        return inches ? tr("%1 in").arg(decimal(*mm / 25.4, 2)) : tr("%1 mm").arg(decimal(*mm, 1));
    };
    if (told.value)
        for (const WaterDay& day : *told.value)
            lines << tr("%1: rain %2, irrigation %3")
                         .arg(QString::fromStdString(day_shown(day.day)), depth(day.rain_mm), depth(day.irrigation_mm));
    const bool old = told.value && is_questioned(work_.work().conditions, Question::water_days, work_.now());
    if (told.value && told.at)
        lines << (old ? tr("Told %1. That is too long ago to be believed: is it still so?").arg(moment_words(*told.at))
                      : tr("told %1").arg(moment_words(*told.at)));
    water_still_so_->setVisible(old);
    water_said_->setText(lines.join(QLatin1Char('\n')));
    water_said_->setVisible(!lines.isEmpty());
}

void ConditionsView::water_still_so() {
    WorkOrder order = work_.work();
    order.conditions.water_days.at = work_.now();
    work_.edit(std::move(order), tr("rain and irrigation"));
    pasted_->setFocus();
}

QuestionRow* ConditionsView::row(Question question) const {
    const auto found =
        std::find_if(rows_.begin(), rows_.end(), [&](QuestionRow* row) { return row->question() == question; });
    return found == rows_.end() ? nullptr : *found;
}

void ConditionsView::order_anew() {
    std::vector<Question> asked;
    if (work_.judged() && !(work_.work().method.empty() && work_.work().set_methods.empty()))
        asked = work_.judged()->judged.asks();
    const auto is_asked = [&](Question question) { return std::find(asked.begin(), asked.end(), question) != asked.end(); };
    while (QLayoutItem* item = list_->takeAt(0)) delete item;
    order_.clear();
    const auto lay = [&](bool wanted) {
        for (QuestionRow* row : rows_)
            if (is_asked(row->question()) == wanted) {
                list_->addWidget(row);
                order_.push_back(row->question());
            }
    };
    const bool any = std::any_of(rows_.begin(), rows_.end(), [&](QuestionRow* row) { return is_asked(row->question()); });
    first_->setVisible(any);
    also_->setVisible(any);
    list_->addWidget(first_);
    lay(true);
    list_->addWidget(also_);
    list_->addWidget(water_);
    list_->addWidget(buildings_);
    lay(false);
    // Tab follows what is seen
    QWidget* before = nullptr;
    for (int i = 0; i < list_->count(); ++i)
        for (QWidget* part : list_->itemAt(i)->widget()->findChildren<QWidget*>())
            if (part->focusPolicy() & Qt::TabFocus) {
                if (before != nullptr) setTabOrder(before, part);
                before = part;
            }
    QStringList elsewhere;
    for (const Question question : {Question::method, Question::placement, Question::label, Question::ingredient})
        if (is_asked(question)) elsewhere << QString::fromStdString(asked_as(question));
    others_->setText(elsewhere.isEmpty()
                         ? tr("What is not answered speaks against the work until it is. “Not known” is an answer, too.")
                         : tr("Asked on other pages of this step: %1").arg(elsewhere.join(QLatin1Char(' '))));
}

void ConditionsView::take_focus() {
    if (!order_.empty())
        if (QuestionRow* first = row(order_.front()))
            for (QWidget* part : first->answer().findChildren<QWidget*>())
                if (part->focusPolicy() & Qt::TabFocus) {
                    part->setFocus(Qt::ShortcutFocusReason);
                    return;
                }
}

void ConditionsView::refresh() {
    if (!session_.field() || shown_of_ == session_.field()) return;
    shown_of_ = session_.field();
    const RowValues values = row_values(work_.work());
    for (QuestionRow* row : rows_) row->refresh(values);
    show_water();
    show_buildings();
}

// The buildings of the map, and whether anyone may be in them.
void ConditionsView::show_buildings() {
    std::vector<std::string> names;
    for (const KeepClearArea& area : session_.field()->survey.ground.keep_clear)
        if (area.kind == KeepClearKind::building && std::find(names.begin(), names.end(), area.name) == names.end())
            names.push_back(area.name);
    if (names != building_names_) {
        building_names_ = names;
        building_answers_.clear();
        qDeleteAll(buildings_->findChildren<QWidget*>(QString(), Qt::FindDirectChildrenOnly));
        for (const std::string& name : names) {
            auto* asked = label_in_role("body", buildings_);
            asked->setText(tr("May people or domestic animals be in “%1”?").arg(QString::fromStdString(name)));
            auto* choice = page_choice(asked->text(), buildings_);
            choice->addItem(tr("—"), QString());
            for (const char* word : {"yes", "no", "not-known"})
                choice->addItem(row_word_shown(word), QString::fromLatin1(word));
            buildings_->layout()->addWidget(asked);
            buildings_->layout()->addWidget(choice);
            building_answers_.push_back(choice);
            connect(choice, &PageChoice::settled, this,
                    [this, name, choice](int at) { tell_building(name, choice->itemData(at).toString()); });
        }
    }
    for (std::size_t i = 0; i < names.size(); ++i) {
        const auto& told = work_.work().conditions.buildings;
        const auto found =
            std::find_if(told.begin(), told.end(), [&](const BuildingUse& use) { return use.name == names[i]; });
        QString word;
        if (found != told.end() && found->lived_in.value)
            word = *found->lived_in.value ? QStringLiteral("yes") : QStringLiteral("no");
        if (found != told.end() && !found->lived_in.value && found->lived_in.at) word = QStringLiteral("not-known");
        building_answers_[i]->show_item(std::max(0, building_answers_[i]->findData(word)));
    }
}

void ConditionsView::tell_building(const std::string& name, const QString& word) {
    WorkOrder order = work_.work();
    auto& told = order.conditions.buildings;
    std::erase_if(told, [&](const BuildingUse& use) { return use.name == name; });
    if (!word.isEmpty()) {
        BuildingUse use{name, {std::nullopt, work_.now()}, {}};
        if (word != QLatin1String("not-known")) use.lived_in.value = word == QLatin1String("yes");
        told.push_back(std::move(use));
    }
    work_.edit(std::move(order), tr("use of %1").arg(QString::fromStdString(name)));
}

}  // namespace plugside
